using Apprentice.Content.Topics;

namespace Apprentice.Tests.Content;

public sealed class QuestionBankTests
{
    /// <summary>Names of the shipped topic files.</summary>
    public static IEnumerable<TheoryDataRow<string>> Files() =>
        Directory.Exists(Folder) ? Directory.EnumerateFiles(Folder, "*.md").Order(StringComparer.Ordinal).Select(file => new TheoryDataRow<string>(Path.GetFileName(file))) : [];

    static string Folder => Path.Combine(Root(AppContext.BaseDirectory), "question-bank");

    [Theory(SkipTestWithoutData = true)]
    [MemberData(nameof(Files))]
    public void Every_shipped_topic_is_read_without_fault(string file)
    {
        var faults = TopicReader.Read($"question-bank/{file}", File.ReadAllText(Path.Combine(Folder, file))).Faults;
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    static string Root(string folder) =>
        File.Exists(Path.Combine(folder, "Apprentice.sln")) ? folder : Root(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("Apprentice.sln lies in no folder above"));
}
