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
}
