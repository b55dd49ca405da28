using System.Text.Json;
using Apprentice.Commands;
using Apprentice.Content.Changes;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Storage;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Assessing;

namespace Apprentice.Tests.Commands;

/// <summary>Commands read the topics as the screens do: with the workshop's changes over the shipped ones.</summary>
public sealed class TaughtTests : IDisposable
{
    const string Permission = "may order tyres alone";
    const string Note = "Over rim-size (version ";

    static readonly string Row = File.ReadLines(Path.Combine(Corpus.Root, "question-bank", "rim-size.md")).First(l => l.StartsWith("| mark-lost | the rim", StringComparison.Ordinal));

    readonly TempFolder _folder = new(("pass.txt", Exam.Passphrase + "\n"));

    string Shipped { get; } = Corpus.Topic("rim-size").Version;

    string ChangesFile => _folder.In("workshop/changes.md");

    /// <summary>Every command that reads one topic: what it says goes with the version that the screens have, and says so.</summary>
    [Theory]
    [InlineData("topics", "rim-size", "--json")]
    [InlineData("identify", "rim-size", "rim-iso@bench=no-mark", "--json")]
    [InlineData("case", "rim-size", "--seed", "3", "--json")]
    [InlineData("paper", "plan", Permission, "rim-size", "--json")]
    public void A_command_has_the_version_that_the_screens_have(params string[] args)
    {
        Write(Change(1, "1 in 20"));
        var said = Run(args);
        Assert.Equal(0, said.ExitCode);
        Assert.Equal(OnScreens(), VersionIn(said.Out));
        Assert.StartsWith($"{Note}{OnScreens()}) lies change 1 of the workshop", said.Error, StringComparison.Ordinal);
        var shipped = Run([.. args, "--shipped"]);
        Assert.Equal((Shipped, ""), (VersionIn(shipped.Out), shipped.Error));
        Assert.NotEqual(Shipped, OnScreens());
    }

    [Theory]
    [InlineData("picture", "rim-size", "front", "--words")]
    [InlineData("sheets", "FOLDER/walls", "--topic", "rim-size")]
    [InlineData("report", "group", "--json")]
    [InlineData("export", "Sam")]
    [InlineData("topics")]
    [InlineData("figures")]
    public void Other_commands_say_that_changes_lie_over(params string[] args)
    {
        Write(Change(1, "1 in 20"));
        using (var log = Log.Open(_folder.In("log.db"))) log.Append(new Logged(DateTimeOffset.UnixEpoch, new LogEntry.PersonAdded("Sam")));
        string[] written = [.. args.Select(a => a.Replace("FOLDER", _folder.Path, StringComparison.Ordinal))];
        if (args[0] == "picture") written[2] = Corpus.Topic("rim-size").Drawings[0].Id;
        if (args[0] == "picture" && Corpus.Topic("rim-size").Drawings[0].Kinds.Count == 0) written = [.. written, "--finding", Corpus.Topic("rim-size").Drawings[0].Findings[0].Of];
        var said = Run(written);
        Assert.Equal(0, said.ExitCode);
        Assert.Contains("lies change 1 of the workshop", said.Error, StringComparison.Ordinal);
        Assert.Equal("", Run([.. written, "--shipped"]).Error);
    }

    [Fact]
    public void Belief_is_that_of_the_changed_topic_and_a_case_of_another_version_is_refused()
    {
        Write(Change(1, "1 in 3"));
        string[] asked = ["identify", "rim-size", "rim-iso@bench=no-mark", "sort@bench=road", "--json"];
        Assert.NotEqual(Run([.. asked, "--shipped"]).Out, Run(asked).Out);
        File.WriteAllText(_folder.In("case.json"), Run("case", "rim-size", "--seed", "3", "--json").Out);
        File.WriteAllText(_folder.In("answer.json"), "{}");
        Assert.Contains($"The case was made with version {OnScreens()} of rim-size, and this program has {Shipped}", Run("grade", _folder.In("case.json"), _folder.In("answer.json"), "--shipped").Error, StringComparison.Ordinal);
        Assert.DoesNotContain("The case was made with version", Run("grade", _folder.In("case.json"), _folder.In("answer.json")).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_changes_and_over_topics_of_ones_own_nothing_is_said()
    {
        Assert.Equal((Shipped, ""), (VersionIn(Run("topics", "rim-size", "--json").Out), Run("topics", "rim-size").Error));
        Write(Change(1, "1 in 20"));
        var own = Run("topics", "rim-size", "--json", "--topics", Path.Combine(Corpus.Root, "question-bank"));
        Assert.Equal((Shipped, ""), (VersionIn(own.Out), own.Error));
        var named = Run("topics", "rim-size", "--json", "--topics", Path.Combine(Corpus.Root, "question-bank"), "--workshop", _folder.In("workshop"));
        Assert.Equal(OnScreens(), VersionIn(named.Out));
    }

    [Fact]
    public void A_paper_keeps_its_version_when_more_is_changed()
    {
        Write(Change(1, "1 in 20"));
        Assert.Equal(0, Run("paper", "plan", Permission, "rim-size", "--save").ExitCode);
        using (var log = Log.Open(_folder.In("log.db"))) log.Append(new Logged(DateTimeOffset.UnixEpoch, new LogEntry.DeskSet("Jo", Exam.Desk.Locked)));
        Assert.Contains("was changed since the plan was made", Run("paper", "make", Permission, "Sam", "--passphrase-file", _folder.In("pass.txt"), "--shipped").Error, StringComparison.Ordinal);
        using var made = JsonDocument.Parse(Run("paper", "make", Permission, "Sam", "--passphrase-file", _folder.In("pass.txt"), "--json").Out);
        var paper = made.RootElement.GetProperty("papers")[0];
        var opened = PaperFile.OpenByCode(File.ReadAllBytes(paper.GetProperty("file").GetString() ?? ""), paper.GetProperty("code").GetString() ?? "");
        var then = OnScreens();
        Assert.All(opened.Paper.Jobs, j => Assert.Equal(then, j.Version));
        Write(Change(1, "1 in 20"), Change(2, "1 in 10", "1 in 20"));
        Assert.NotEqual(then, OnScreens());
        var sat = new SatPaper(opened.Paper.Id, "Sam", 1, 12, [], TimeSpan.FromMinutes(48), DateTimeOffset.UnixEpoch, SittingEnd.TimeUp, []);
        File.WriteAllBytes(_folder.In("back.result"), ResultFile.Sealed(sat, opened.SittingKey));
        var marked = Run("mark", _folder.In("back.result"), "--passphrase-file", _folder.In("pass.txt"));
        Assert.Equal((0, ""), (marked.ExitCode, marked.Error));
        using var log2 = Log.Open(_folder.In("log.db"));
        Assert.All(Assert.Single(Assessments.Of(log2.Read()).Results).Jobs, j => Assert.Equal(then, j.Version));
    }

    /// <summary>Every command that reads topics refuses a file of changes that cannot be read: file and line, no exit code 0, nothing written.</summary>
    [Theory]
    [InlineData("topics")]
    [InlineData("identify", "rim-size")]
    [InlineData("case", "rim-size", "--seed", "3")]
    [InlineData("grade", "case.json", "answer.json")]
    [InlineData("laws", "rim-size", "--cases", "1")]
    [InlineData("figures")]
    [InlineData("sheets", "FOLDER/walls")]
    [InlineData("picture", "rim-size", "front")]
    [InlineData("paper", "plan", Permission, "rim-size", "--save")]
    [InlineData("paper", "make", Permission, "Sam")]
    [InlineData("mark", "back.result")]
    [InlineData("report", "group")]
    [InlineData("export")]
    [InlineData("check", "--workshop", "FOLDER/workshop")]
    [InlineData("bike", "--sheet", "rim-size")]
    public void A_faulty_file_of_changes_is_told_with_file_and_line_and_nothing_is_lost(params string[] args)
    {
        Directory.CreateDirectory(_folder.In("workshop"));
        File.WriteAllText(ChangesFile, "# Changes of the workshop\n\n## 1: no day\n\n- File: question-bank/rim-size.md\n- Colour: blue\n");
        using (var log = Log.Open(_folder.In("log.db"))) log.Append(new Logged(DateTimeOffset.UnixEpoch, new LogEntry.PersonAdded("Sam")));
        var (changes, entries) = (File.ReadAllText(ChangesFile), Entries());
        var said = Run([.. args.Select(a => a.Replace("FOLDER", _folder.Path, StringComparison.Ordinal))]);
        Assert.Equal(ExitCode.Fault, said.ExitCode);
        Assert.Contains($"{ChangesFile}:6: \"Colour: blue\" is not known here.", said.Error, StringComparison.Ordinal);
        Assert.Contains($"{ChangesFile}:3: Change 1 has no day", said.Error, StringComparison.Ordinal);
        Assert.Equal((changes, entries), (File.ReadAllText(ChangesFile), Entries()));
        Assert.False(Directory.Exists(_folder.In("walls")));
    }

    [Fact]
    public void A_change_that_does_not_fit_is_told_left_out_and_kept()
    {
        Write(Change(1, "1 in 20"), Change(2, "1 in 10", "7 in 7"));
        var said = Run("topics", "rim-size", "--json");
        Assert.Equal((0, OnScreens()), (said.ExitCode, VersionIn(said.Out)));
        Assert.Contains("Change 2, \"rate 2\", does not fit: question-bank/rim-size.md", said.Error, StringComparison.Ordinal);
        Assert.Contains("lies change 1 of the workshop", said.Error, StringComparison.Ordinal);
        Assert.Equal(2, new WorkshopFolder(_folder.In("workshop")).Read().Changes.Count);
        using var json = JsonDocument.Parse(said.Out);
        Assert.Equal([1], json.RootElement.GetProperty("changes").EnumerateArray().Select(c => c.GetInt32()));
    }

    [Fact]
    public void Check_tells_a_change_that_does_not_fit_and_none_without_the_changes()
    {
        Write(Change(1, "1 in 10", "7 in 7"));
        var said = Run("check", "--workshop", _folder.In("workshop"));
        Assert.Equal(ExitCode.Fault, said.ExitCode);
        Assert.Contains($"{ChangesFile}:5: Change 1, \"rate 1\", does not fit", said.Out, StringComparison.Ordinal);
        Assert.EndsWith(" 1 fault\n", said.Out, StringComparison.Ordinal);
        Assert.EndsWith(" 0 faults\n", Run("check", "--workshop", _folder.In("workshop"), "--shipped").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Screens_of_a_paper_are_opened_with_the_named_folder_of_changes()
    {
        using var to = new StringWriter();
        ScreenOptions? opened = null;
        Assert.Equal(0, CommandLine.Run(["sit", "stick.paper", "--workshop", "w"], new Apprentice.Commands.Desk(to, to), o => { opened = o; return 0; }));
        Assert.Equal("w", opened?.WorkshopFolder);
    }

    public void Dispose() => _folder.Dispose();

    static Change Change(int number, string rate, string? over = null) => new(number, $"rate {number}")
    {
        File = "question-bank/rim-size.md",
        Day = new DateOnly(2026, 11, 25),
        By = "Jo",
        Was = [Row.Replace("1 in 50", over ?? "1 in 50", StringComparison.Ordinal)],
        Is = [Row.Replace("1 in 50", rate, StringComparison.Ordinal)],
    };

    void Write(params Change[] changes) => new WorkshopFolder(_folder.In("workshop")).Write(changes);

    // The way in which Program opens the screens.
    string OnScreens() => Taught.Of(null, null, _folder.In("log.db")).Topic("rim-size").Version;

    static string VersionIn(string json)
    {
        using var read = JsonDocument.Parse(json);
        return read.RootElement.TryGetProperty("version", out var version) ? version.GetString() ?? "" : read.RootElement.GetProperty("topics")[0].GetProperty("version").GetString() ?? "";
    }

    int Entries()
    {
        using var log = Log.Open(_folder.In("log.db"));
        return log.Read().Count;
    }

    Said Run(params string[] args) => Said.Bare([.. args, "--data", _folder.In("log.db")]);
}
