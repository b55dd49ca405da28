namespace Apprentice.Engine.Topics;

/// <summary>How a finding reached the bench.</summary>
public enum Channel
{
    /// <summary>Looked at on the stand.</summary>
    Bench,

    /// <summary>Read from a photo.</summary>
    Photo,

    /// <summary>Told on the phone or at the counter.</summary>
    Phone,
}
