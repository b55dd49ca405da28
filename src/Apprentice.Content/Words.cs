using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Apprentice.Content;

/// <summary>All text that a person sees, from the files of the folder Words: <c>key = text with {names}</c> lines.</summary>
public static partial class Words
{
    static readonly FrozenDictionary<string, string> All = Load();

    /// <summary>All keys, in no order.</summary>
    public static IEnumerable<string> Keys => All.Keys;

    /// <summary>The text of a key as it stands in the file, its names in braces.</summary>
    /// <exception cref="ArgumentException">There is no such key.</exception>
    public static string Raw(string key) =>
        All.TryGetValue(key, out var text) ? text : throw new ArgumentException($"No words for '{key}'.", nameof(key));

    /// <summary>The text of a key with its names filled in.</summary>
    /// <exception cref="ArgumentException">There is no such key, or a name of the text has no value.</exception>
    public static string Of(string key, params (string Name, object Value)[] values) =>
        Of(key, values.ToDictionary(v => v.Name, v => v.Value, StringComparer.Ordinal));

    /// <summary>The text of a key with its names filled in.</summary>
    /// <exception cref="ArgumentException">There is no such key, or a name of the text has no value.</exception>
    public static string Of(string key, IReadOnlyDictionary<string, object> values) => Braces().Replace(
        Raw(key),
        m => values.TryGetValue(m.Groups["name"].Value, out var value)
            ? value.ToString() ?? ""
            : throw new ArgumentException($"The words of '{key}' need a value for {m.Value}.", nameof(values)));

    /// <summary>The names that a text wants filled in.</summary>
    public static IEnumerable<string> Names(string key) => Braces().Matches(Raw(key)).Select(m => m.Groups["name"].Value);

    static FrozenDictionary<string, string> Load()
    {
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (key, text) in Files().SelectMany(Lines))
        {
            if (!texts.TryAdd(key, text))
            {
                throw new InvalidOperationException($"The words of '{key}' are there twice: leave out one.");
            }
        }

        return texts.ToFrozenDictionary(StringComparer.Ordinal);
    }

    static IEnumerable<string> Files() => typeof(Words).Assembly.GetManifestResourceNames()
        .Where(name => name.StartsWith("Apprentice.Content.Words.", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal);

    static IEnumerable<(string Key, string Text)> Lines(string file)
    {
        using var stream = typeof(Words).Assembly.GetManifestResourceStream(file)
            ?? throw new InvalidOperationException($"The words of {file} are not in the program.");
        using var reader = new StreamReader(stream);
        return [.. reader.ReadToEnd().Split('\n')
            .Select(line => line.TrimEnd('\r'))
            .Where(line => line.Contains(" = ", StringComparison.Ordinal) && !line.StartsWith('#'))
            .Select(line => line.Split(" = ", 2))
            .Select(pair => (pair[0].Trim(), pair[1]))];
    }

    [GeneratedRegex(@"\{(?<name>[a-zA-Z]+)\}", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Braces();
}
