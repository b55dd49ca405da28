namespace Apprentice.Engine.Learning;

/// <summary>How sure a person was, and how often right.</summary>
/// <param name="Answers">All answers with a kind named.</param>
/// <param name="Levels">Per tenths that were said at least once, low to high.</param>
/// <param name="High">8, 9 and 10 of 10 taken together.</param>
/// <param name="Topics">8, 9 and 10 of 10 per topic; only topics with at least 40 such answers.</param>
public sealed record SureReport(int Answers, IReadOnlyList<SureLevel> Levels, SureLevel High, IReadOnlyList<(string Topic, SureLevel Level)> Topics);

/// <summary>Answers given with one certainty, or several taken together.</summary>
/// <param name="Tenths">Mean of the tenths said, 10 taken as 9.9; 0 without answers.</param>
/// <param name="Asked">How many answers.</param>
/// <param name="Right">How many were right.</param>
/// <param name="Low">Lower end of the 90 of 100 interval.</param>
/// <param name="HighEnd">Upper end.</param>
/// <param name="Word">What may be said.</param>
public sealed record SureLevel(double Tenths, int Asked, int Right, double Low, double HighEnd, SureWord Word)
{
    /// <summary>True below 20 answers: the sentence says that they are few.</summary>
    public bool Few => Asked < Sureness.Enough;
}

/// <summary>Words for how sure against how right.</summary>
public enum SureWord
{
    /// <summary>No answers.</summary>
    None,

    /// <summary>What was said lies in the interval.</summary>
    Fits,

    /// <summary>More sure than right, by less than 2 of 10, or on few answers.</summary>
    BitTooSure,

    /// <summary>More sure than right, by 2 of 10 or more.</summary>
    TooSure,

    /// <summary>Less sure than right, by less than 2 of 10, or on few answers.</summary>
    BitTooUnsure,

    /// <summary>Less sure than right, by 2 of 10 or more.</summary>
    TooUnsure,
}
