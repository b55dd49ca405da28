using Apprentice.Engine.Topics;

namespace Apprentice.Drawing.Figures;

/// <summary>The values that a figure is drawn from, every parameter with one: a length in mm, an angle in degrees, a count, a share, or a word.</summary>
/// <param name="figure">The figure.</param>
/// <param name="numbers">Numbers by name; held within their ranges, because a true size can lie a little outside.</param>
/// <param name="words">Words by name.</param>
sealed class Traits(Figure figure, IReadOnlyDictionary<string, double> numbers, IReadOnlyDictionary<string, string> words)
{
    /// <summary>The figure.</summary>
    public Figure Figure => figure;

    /// <summary>All defaults.</summary>
    public static Traits Usual(Figure figure) => new(figure, new Dictionary<string, double>(StringComparer.Ordinal), new Dictionary<string, string>(StringComparer.Ordinal));

    /// <summary>A number.</summary>
    public double this[string name]
    {
        get
        {
            var parameter = Known(name);
            return Math.Clamp(numbers.TryGetValue(name, out var number) ? number : parameter.Default, parameter.Low, parameter.High);
        }
    }

    /// <summary>A count.</summary>
    public int Count(string name) => (int)Math.Round(this[name]);

    /// <summary>A word.</summary>
    public string Word(string name) => words.TryGetValue(name, out var word) ? word : Known(name).Words[0];

    /// <summary>True when a parameter is this word.</summary>
    public bool Is(string name, string word) => string.Equals(Word(name), word, StringComparison.Ordinal);

    FigureParameter Known(string name) => figure.Parameter(name) ?? throw new ArgumentException($"The figure {figure.Id} has no parameter {name}.", nameof(name));
}
