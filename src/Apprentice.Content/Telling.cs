using System.Collections;
using Apprentice.Engine.Grading;

namespace Apprentice.Content;

/// <summary>Remarks that the engine has chosen, in words.</summary>
/// <param name="words">The names of the topic.</param>
public sealed class Telling(TopicWords words)
{
    /// <summary>The sentence of a remark. Short names among its values become names; what each one is follows from the name of its place.</summary>
    /// <exception cref="ArgumentException">The words file has no such sentence, or the remark lacks a value.</exception>
    public string Of(Remark remark) => Spoken.Capital(Words.Of(
        remark.Key, remark.Values.ToDictionary(v => v.Key, v => (object)Value(v.Key, v.Value), StringComparer.Ordinal)));

    string Value(string place, object value) => value switch
    {
        string id => Name(place, id),
        double number => number.ToString("0.##"),
        IEnumerable items => Spoken.List([.. items.Cast<object>().Select(i => Value(place, i))]),
        _ => value.ToString() ?? "",
    };

    string Name(string place, string id) => place.ToUpperInvariant() switch
    {
        var p when p.Contains("CLUE", StringComparison.Ordinal) || p.Contains("CHECK", StringComparison.Ordinal) => words.Clue(id),
        var p when p.Contains("SPARE", StringComparison.Ordinal) => words.Spare(id),
        var p when p.Contains("STORY", StringComparison.Ordinal) || p.Contains("TAG", StringComparison.Ordinal) => words.Tag(id),
        var p when p.Contains("PART", StringComparison.Ordinal) => words.Part(id),
        _ => words.Any(id),
    };
}
