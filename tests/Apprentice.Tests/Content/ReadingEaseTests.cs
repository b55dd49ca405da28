using Apprentice.Content.Lessons;

namespace Apprentice.Tests.Content;

/// <summary>How hard a text reads. Formula: Kincaid et al. 1975; the counts are made by hand.</summary>
public class ReadingEaseTests
{
    [Fact]
    public void Sentences_words_and_syllables_are_counted()
    {
        // Two sentences; The cat sat on the mat (6 words, 6 syllables), It purred a little (4 words: 1, 1, 1, 2).
        var ease = ReadingEase.Of("The cat sat on the mat. It purred a little.");
        Assert.Equal((2, 10, 11), (ease.Sentences, ease.Words, ease.Syllables));
        Assert.Equal(5, ease.MeanSentence);
        Assert.Equal((0.39 * 5) + (11.8 * 1.1) - 15.59, ease.Grade, 10);
    }

    [Fact]
    public void Nothing_is_easy() => Assert.Equal(0, ReadingEase.Of("").Grade);

    [Theory]
    [InlineData("don't stop-gap it's 12 mm", "don't stop-gap it's mm")]
    public void Words_are_runs_of_letters(string text, string words) => Assert.Equal(words, string.Join(' ', ReadingEase.WordsOf(text)));
}
