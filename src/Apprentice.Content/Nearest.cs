namespace Apprentice.Content;

/// <summary>Names nearest to a word that is not one of them.</summary>
public static class Nearest
{
    const int LongestWord = 60;

    /// <summary>The nearest names by edit distance, nearest first, equal ones in the order given; case does not count.</summary>
    /// <param name="word">What was written.</param>
    /// <param name="names">The valid names.</param>
    /// <param name="count">At most so many.</param>
    public static IReadOnlyList<string> Of(string word, IEnumerable<string> names, int count) =>
        [.. names.Distinct(StringComparer.Ordinal).OrderBy(name => Distance(Short(word), Short(name))).Take(count)];

    /// <summary>How many edits part a word from the nearest of some names; case does not count.</summary>
    public static int Edits(string word, IEnumerable<string> names) => names.Select(name => Distance(Short(word), Short(name))).DefaultIfEmpty(int.MaxValue).Min();

    /// <summary>The names as a list in a sentence: "bar, stem or lever".</summary>
    public static string Or(IReadOnlyList<string> names) =>
        names.Count < 2 ? string.Concat(names) : $"{string.Join(", ", names.Take(names.Count - 1))} or {names[^1]}";

    /// <summary>Edits (insert, drop, replace, swap two neighbours) that lead from one word to the other.</summary>
    /// <remarks>Source: Damerau, A technique for computer detection and correction of spelling errors, 1964; each pair of letters swapped at most once.</remarks>
    static int Distance(string one, string other)
    {
        var steps = new int[one.Length + 1, other.Length + 1];
        for (var i = 0; i <= one.Length; i++) steps[i, 0] = i;
        for (var j = 0; j <= other.Length; j++) steps[0, j] = j;
        for (var i = 1; i <= one.Length; i++)
        {
            for (var j = 1; j <= other.Length; j++)
            {
                var replaced = steps[i - 1, j - 1] + (one[i - 1] == other[j - 1] ? 0 : 1);
                var best = Math.Min(replaced, Math.Min(steps[i - 1, j], steps[i, j - 1]) + 1);
                var swapped = i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1];
                steps[i, j] = swapped ? Math.Min(best, steps[i - 2, j - 2] + 1) : best;
            }
        }

        return steps[one.Length, other.Length];
    }

    static string Short(string word) => (word.Length > LongestWord ? word[..LongestWord] : word).ToLowerInvariant();
}
