namespace Apprentice.Engine.Topics;

/// <summary>A figure that can be drawn: its name, what it is drawn from, and the points of it that have names. Said here as data; the program draws it.</summary>
/// <param name="Id">Short name in topic files: "bar-side".</param>
/// <param name="Parameters">What it is drawn from.</param>
/// <param name="Points">Names of points from and to which can be measured.</param>
/// <param name="Key">The point beside which two kinds differ most often; one of <paramref name="Points"/>, or empty when there are none.</param>
public sealed record Figure(string Id, IReadOnlyList<FigureParameter> Parameters, IReadOnlyList<string> Points, string Key = "")
{
    /// <summary>The figure that is text art of the topic file.</summary>
    public const string PlainArt = "plain-art";

    /// <summary>A parameter by its name, or null.</summary>
    public FigureParameter? Parameter(string name) => Parameters.FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.Ordinal));
}

/// <summary>A parameter of a figure.</summary>
/// <param name="Name">Short name in topic files: "rise".</param>
/// <param name="Sort">What its values are.</param>
/// <param name="Low">Lowest value, in mm, degrees or as a count; 0 for words.</param>
/// <param name="High">Highest value; 0 for words.</param>
/// <param name="Default">Value when a topic gives none; for words the place of the word.</param>
/// <param name="Words">The words that it can be, for words only.</param>
public sealed record FigureParameter(string Name, ParameterSort Sort, double Low, double High, double Default, IReadOnlyList<string> Words);

/// <summary>What the values of a parameter are.</summary>
public enum ParameterSort
{
    /// <summary>A length, mm.</summary>
    Length,

    /// <summary>An angle, degrees.</summary>
    Angle,

    /// <summary>A whole number of things.</summary>
    Count,

    /// <summary>A share, 0 to 1.</summary>
    Share,

    /// <summary>One of some words.</summary>
    Word,
}

/// <summary>A value of a parameter in a topic.</summary>
public abstract record FigureValue
{
    FigureValue()
    {
    }

    /// <summary>A length in mm, an angle in degrees, a count or a share.</summary>
    /// <param name="Value">The value.</param>
    public sealed record Number(double Value) : FigureValue;

    /// <summary>A word.</summary>
    /// <param name="Text">The word.</param>
    public sealed record Word(string Text) : FigureValue;

    /// <summary>A true size of the topic: its nominal for the kind that is drawn, in a job the size of this bike.</summary>
    /// <param name="Dimension">Short name of the size.</param>
    public sealed record Size(string Dimension) : FigureValue;
}
