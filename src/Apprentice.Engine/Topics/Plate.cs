namespace Apprentice.Engine.Topics;

/// <summary>A surface with writings on it: the one to go by, and others that can be taken for it.</summary>
/// <param name="Surface">What it is drawn on.</param>
/// <param name="Writings">The true one first, then those of the clue's decoys in their order, then others that say nothing of what the clue reads.</param>
public sealed record Plate(Surface Surface, IReadOnlyList<Writing> Writings)
{
    /// <summary>What a finding looks like that cannot be read.</summary>
    public const string Worn = "worn";

    /// <summary>What a finding looks like when the writing is not there at all.</summary>
    public const string Nothing = "nothing";
}

/// <summary>A writing on a plate.</summary>
/// <param name="Pattern">Its characters: {text} stands for those of a finding, {09} for a digit and {A} for a letter at random; all else as written.</param>
/// <param name="Is">What it is: "number of the frame".</param>
/// <param name="Says">What it bounds, or why it says nothing.</param>
/// <param name="Where">Where on the surface it stands, or how it was made: "stamped, on a riveted plate". May be empty.</param>
public sealed record Writing(string Pattern, string Is, string Says, string Where);

/// <summary>What a writing stands on.</summary>
public enum Surface
{
    /// <summary>A riveted plate.</summary>
    NumberPlate,

    /// <summary>The side of a tyre.</summary>
    TyreWall,

    /// <summary>The outer face of a bearing cup.</summary>
    CupFace,

    /// <summary>The shell of a hub.</summary>
    Hub,

    /// <summary>The end of a crank arm.</summary>
    CrankEnd,

    /// <summary>A stem.</summary>
    Stem,

    /// <summary>A seatpost.</summary>
    Post,

    /// <summary>A tube of the frame.</summary>
    Tube,

    /// <summary>The inside of a rim.</summary>
    Rim,

    /// <summary>A place on a part of metal, seen close by: nothing of the part's form.</summary>
    BareMetal,
}

/// <summary>What a writing tells about the job.</summary>
public enum Bearing
{
    /// <summary>It names a part that is asked.</summary>
    Part,

    /// <summary>It names another part, or the sort of bike.</summary>
    OtherPart,

    /// <summary>It is a date, which only bounds which part it can be.</summary>
    Date,

    /// <summary>It tells nothing here.</summary>
    Nothing,
}
