using Apprentice.Content.Topics;

namespace Apprentice.Tests.Content;

public sealed class QuestionBankTests
{
    static string Folder => Path.Combine(Corpus.Root, "question-bank");

    /// <summary>Names of the shipped topic files.</summary>
    public static IEnumerable<TheoryDataRow<string>> Files() =>
        Directory.EnumerateFiles(Folder, "*.md").Order(StringComparer.Ordinal).Select(file => new TheoryDataRow<string>(Path.GetFileName(file)));

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_shipped_topic_is_read_without_fault(string file)
    {
        var faults = TopicReader.Read($"question-bank/{file}", File.ReadAllText(Path.Combine(Folder, file)), Corpus.Sources).Faults;
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    // No belief hears what the customer says when they order, so how the old tyre sits, which tells of a tyre for another rim, is no matter for it: it is told under "What is told first".
    [Fact]
    public void No_customer_says_in_passing_how_the_old_tyre_sits()
    {
        var says = Corpus.Topic("rim-size").Wants.SelectMany(w => w.Says).ToList();
        Assert.NotEmpty(says);
        Assert.DoesNotContain(says, s => s.Split(' ', '.', ',', '?', '"').Intersect(["sat", "sit", "sits", "loose", "tight"], StringComparer.OrdinalIgnoreCase).Any());
    }
}
