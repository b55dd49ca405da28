using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>The text of a topic file, before it is known what it means.</summary>
sealed class TopicText
{
    readonly string _lines;
    readonly HashSet<string> _words;

    TopicText(string lines)
    {
        _lines = lines;
        Page = Page.Of(lines);
        Version = VersionOf(lines);
        _words = WordsOf(lines);
    }

    /// <summary>Its headings, points and tables; null when lists or quotes are nested too deeply to be read.</summary>
    public Page? Page { get; }

    /// <summary>Its version.</summary>
    public string Version { get; }

    /// <summary>What stands in a text.</summary>
    /// <param name="text">The file's text.</param>
    public static TopicText Of(string text) => new(text.ReplaceLineEndings("\n"));

    /// <summary>The version of a text, 16 digits: the first eight bytes of the SHA-256 of the text and the engine's revision, in hexadecimal.</summary>
    /// <param name="lines">The text, lines ended by a feed.</param>
    public static string VersionOf(string lines)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes($"{lines}\n{EngineRevision.Current}"));
        return BinaryPrimitives.ReadUInt64BigEndian(hash).ToString("x16", CultureInfo.InvariantCulture);
    }

    /// <summary>The sources that the text names. A key is looked up among the words of the text; one that is no word is looked for.</summary>
    /// <param name="register">All sources.</param>
    public IReadOnlyList<Source> Named(IReadOnlyList<Source> register)
    {
        var named = new List<Source>();
        foreach (var source in register)
        {
            if (_words.Contains(source.Key) || (!IsOneWord(source.Key) && Mentions(_lines, source.Key))) named.Add(source);
        }

        return named;
    }

    static HashSet<string> WordsOf(string text)
    {
        var words = new HashSet<string>(StringComparer.Ordinal);
        var known = words.GetAlternateLookup<ReadOnlySpan<char>>();
        for (var at = 0; at < text.Length; at++)
        {
            var start = at;
            while (at < text.Length && IsWord(text[at])) at++;
            if (at > start) _ = known.Add(text.AsSpan(start, at - start));
        }

        return words;
    }

    static bool Mentions(string text, string key)
    {
        for (var at = text.IndexOf(key, StringComparison.Ordinal); at >= 0; at = text.IndexOf(key, at + 1, StringComparison.Ordinal))
        {
            var end = at + key.Length;
            if ((at == 0 || !IsWord(text[at - 1])) && (end == text.Length || !IsWord(text[end]))) return true;
        }

        return false;
    }

    static bool IsOneWord(string key)
    {
        foreach (var c in key)
        {
            if (!IsWord(c)) return false;
        }

        return true;
    }

    static bool IsWord(char c) => char.IsLetterOrDigit(c) || c == '_';
}
