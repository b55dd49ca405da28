namespace Apprentice.Engine.Topics;

/// <summary>Sorts of evidence, for trust in clues.</summary>
public enum ClueFamily
{
    /// <summary>A number or a date.</summary>
    NumberOrDate,

    /// <summary>A size marking.</summary>
    SizeMarking,

    /// <summary>Measured.</summary>
    Measured,

    /// <summary>A shape seen.</summary>
    ShapeSeen,

    /// <summary>Felt or heard.</summary>
    FeltOrHeard,

    /// <summary>Told by somebody.</summary>
    Told,
}
