using Apprentice.Content.Lessons;

namespace Apprentice.Commands;

/// <summary>How the lessons read.</summary>
/// <param name="MeanSentence">Mean length of a sentence, in words.</param>
/// <param name="Grade">Reading grade.</param>
/// <param name="Hard">Lessons that read harder than they should.</param>
/// <param name="Unknown">Words that are neither plain words nor in the glossary.</param>
sealed record ReadingText(double MeanSentence, double Grade, IReadOnlyList<string> Hard, IReadOnlyList<string> Unknown)
{
    const int Width = 12;

    /// <summary>The reading of a shelf of lessons.</summary>
    public static ReadingText Of(LibraryCheck check, Shelf lessons)
    {
        var text = lessons.Texts.FirstOrDefault(f => f.Path == Library.PlainWordsFile).Text?.Invoke() ?? "";
        var plain = text.Split('\n').Where(line => !line.StartsWith('#')).SelectMany(ReadingEase.WordsOf).Select(w => w.ToLowerInvariant()).ToHashSet(StringComparer.Ordinal);
        return new ReadingText(Math.Round(check.Ease.MeanSentence, 2), Math.Round(check.Ease.Grade, 2), check.Hard(), check.UnknownWords(plain));
    }

    /// <summary>Lines for a person.</summary>
    public IEnumerable<string> Lines =>
    [
        .. Hard,
        .. Unknown.Chunk(Width).Select((words, i) => $"{(i == 0 ? "Words in no glossary: " : "  ")}{string.Join(", ", words)}"),
        $"All lessons: mean sentence {MeanSentence:0.0} words (goal {ReadingEase.GoalWords:0}), reading grade {Grade:0.0} (at most {ReadingEase.HighestGrade:0}).",
    ];
}
