namespace Apprentice.Content.Lessons;

/// <summary>How hard a text is to read.</summary>
/// <param name="Sentences">Number of sentences; a point or cell without a full stop is one.</param>
/// <param name="Words">Number of words.</param>
/// <param name="Syllables">Number of syllables, by groups of vowels.</param>
public sealed record ReadingEase(int Sentences, int Words, int Syllables)
{
    /// <summary>Goal for the mean length of a sentence, in words.</summary>
    public const double GoalWords = 12;

    /// <summary>The highest reading grade that is not reported.</summary>
    public const double HighestGrade = 7;

    /// <summary>Mean length of a sentence, in words; 0 without sentences.</summary>
    public double MeanSentence => Sentences == 0 ? 0 : (double)Words / Sentences;

    /// <summary>Reading grade in school years.</summary>
    /// <remarks>0.39 × words a sentence + 11.8 × syllables a word − 15.59. Source: Kincaid, Fishburne, Rogers and Chissom, Derivation of new readability formulas, 1975.</remarks>
    public double Grade => Words == 0 ? 0 : (0.39 * MeanSentence) + (11.8 * Syllables / Words) - 15.59;

    /// <summary>Two texts together.</summary>
    public static ReadingEase operator +(ReadingEase left, ReadingEase right) =>
        new(left.Sentences + right.Sentences, left.Words + right.Words, left.Syllables + right.Syllables);

    /// <summary>The ease of a lesson: paragraphs and points, tables left out.</summary>
    public static ReadingEase Of(Lesson lesson) => lesson.Sections.SelectMany(s => s.Blocks)
        .Where(b => b is LessonBlock.Paragraph or LessonBlock.Point)
        .Select(b => Of(LessonSpan.Plain(b.AllSpans)))
        .Aggregate(new ReadingEase(0, 0, 0), (sum, ease) => sum + ease);

    /// <summary>The ease of a text.</summary>
    public static ReadingEase Of(string text)
    {
        var sentences = text.Split(['.', '!', '?', ':', ';'], StringSplitOptions.TrimEntries).Count(s => s.Any(char.IsLetter));
        var words = WordsOf(text).ToList();
        return new ReadingEase(sentences, words.Count, words.Sum(SyllablesOf));
    }

    /// <summary>Words of a text: runs of letters with apostrophes and hyphens inside.</summary>
    public static IEnumerable<string> WordsOf(string text)
    {
        var from = -1;
        for (var i = 0; i <= text.Length; i++)
        {
            var inside = i < text.Length && (char.IsLetter(text[i]) || (from >= 0 && text[i] is '\'' or '’' or '-' && i + 1 < text.Length && char.IsLetter(text[i + 1])));
            if (inside && from < 0) from = i;
            if (inside || from < 0) continue;
            yield return text[from..i];
            from = -1;
        }
    }

    static int SyllablesOf(string word)
    {
        var lower = word.ToLowerInvariant();
        var groups = lower.Select((c, i) => IsVowel(c) && (i == 0 || !IsVowel(lower[i - 1])) ? 1 : 0).Sum();
        if (groups > 1 && lower.EndsWith('e') && !lower.EndsWith("le", StringComparison.Ordinal)) groups--;
        if (groups > 1 && lower.EndsWith("ed", StringComparison.Ordinal) && lower[^3] is not ('t' or 'd')) groups--;
        return Math.Max(1, groups);
    }

    static bool IsVowel(char c) => c is 'a' or 'e' or 'i' or 'o' or 'u' or 'y';
}
