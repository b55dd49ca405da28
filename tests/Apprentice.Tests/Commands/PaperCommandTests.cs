using System.Text.Json;
using Apprentice.Commands;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Storage;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Assessing;

namespace Apprentice.Tests.Commands;

/// <summary>Plans, papers and marks for a lead who scripts.</summary>
public sealed class PaperCommandTests : IDisposable
{
    const string Permission = "may order bar parts alone";

    readonly TempFolder _folder = new(
        ("topics/older-newer-bar.md", File.ReadAllText(Path.Combine(Corpus.Root, "tests/Apprentice.Tests/Data/topics/older-newer-bar.md")).Replace("- State: draft", "- State: checked, J. and M., 2026-11-03", StringComparison.Ordinal)),
        ("pass.txt", Exam.Passphrase + "\n"));

    [Fact]
    public void A_plan_is_told_and_saved_only_when_it_is_asked_for()
    {
        var told = Run("paper", "plan", Permission, "older-newer-bar");
        Assert.Contains("12, then 4 more at a time while it is close, at most 36", told.Out, StringComparison.Ordinal);
        Assert.Contains("95 of 100 pass, ", told.Out, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder.In("log.db")));
        using var json = JsonDocument.Parse(Run("paper", "plan", Permission, "older-newer-bar", "--save", "--json").Out);
        Assert.Equal(0.95, json.RootElement.GetProperty("tells")[1].GetProperty("passed").GetDouble(), 0.005);
        Assert.Equal(12, json.RootElement.GetProperty("jobs").GetProperty("first").GetInt32());
        Assert.Contains("Say why it is changed with --reason", Run("paper", "plan", Permission, "older-newer-bar", "--save").Error, StringComparison.Ordinal);
        Assert.Equal(0, Run("paper", "plan", Permission, "older-newer-bar", "--save", "--reason", "a topic was changed").ExitCode);
        Assert.Equal("a topic was changed", Logged().Changes[^1].Reason);
    }

    [Fact]
    public void A_draft_and_an_unknown_topic_are_refused()
    {
        Assert.Contains("is a draft", Said.By("paper", "plan", Permission, "older-newer-bar").Error, StringComparison.Ordinal);
        Assert.Contains("There is no topic", Run("paper", "plan", Permission, "older-bar").Error, StringComparison.Ordinal);
        Assert.Contains("There is no log", Run("paper", "list").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Papers_are_made_listed_shown_sat_and_marked()
    {
        Run("paper", "plan", Permission, "older-newer-bar", "--save");
        Assert.Contains("There is no passphrase at this desk yet", Make("Sam").Error, StringComparison.Ordinal);
        using (var log = Log.Open(_folder.In("log.db"))) log.Append(new Logged(DateTimeOffset.UnixEpoch, new LogEntry.DeskSet("Jo", Exam.Desk.Locked)));
        Assert.Contains("The passphrase is needed", Run("paper", "make", Permission, "Sam").Error, StringComparison.Ordinal);
        using var made = JsonDocument.Parse(Make("Sam", "--json").Out);
        var paper = made.RootElement.GetProperty("papers")[0];
        var (file, code) = (paper.GetProperty("file").GetString() ?? "", paper.GetProperty("code").GetString() ?? "");
        Assert.Contains("Sam, paper 1", Run("paper", "list").Out, StringComparison.Ordinal);
        Assert.Contains("What it holds is sealed", Run("paper", "show", file).Out, StringComparison.Ordinal);
        Assert.Contains("neither a sealed paper nor a result", Run("paper", "show", _folder.In("pass.txt")).Error, StringComparison.Ordinal);
        var opened = PaperFile.OpenByCode(File.ReadAllBytes(file), code);
        var sat = new SatPaper(opened.Paper.Id, "Sam", 1, 12, [], TimeSpan.FromMinutes(48), DateTimeOffset.UnixEpoch, SittingEnd.TimeUp, ["fire alarm"]) { ConfirmedBy = "Jo" };
        File.WriteAllBytes(_folder.In("back.result"), ResultFile.Sealed(sat, opened.SittingKey));
        using var marked = JsonDocument.Parse(Run("mark", _folder.In("back.result"), "--json", "--passphrase-file", _folder.In("pass.txt")).Out);
        var result = marked.RootElement.GetProperty("results")[0];
        Assert.Equal(("not-yet", 12, "fire alarm"), (result.GetProperty("outcome").GetString(), result.GetProperty("jobs").GetArrayLength(), result.GetProperty("stops")[0].GetString()));
        var again = Run("mark", _folder.In("back.result"), _folder.In("none.result"), "--passphrase-file", _folder.In("pass.txt"));
        Assert.Equal(ExitCode.Fault, again.ExitCode);
        Assert.Contains("refused. The result of paper", again.Out, StringComparison.Ordinal);
        Assert.Contains("There is no file", again.Out, StringComparison.Ordinal);
        Assert.Equal(Outcome.NotYet, Logged().Results[0].Outcome);
    }

    [Fact]
    public void Real_bikes_are_planned_made_and_marked_and_count_for_nothing()
    {
        Assert.Contains("--real '4' will not do; write a whole number from 0 to 3.", Run("paper", "plan", Permission, "older-newer-bar", "--real", "4").Error, StringComparison.Ordinal);
        Assert.Contains("Real bikes: none", Run("paper", "plan", Permission, "older-newer-bar").Out, StringComparison.Ordinal);
        var planned = Run("paper", "plan", Permission, "older-newer-bar", "--real", "3", "--save").Out;
        Assert.Contains("3 of other workshops at the end, which do not count", planned, StringComparison.Ordinal);
        Assert.Contains("There is none on these topics now", planned, StringComparison.Ordinal);
        using (var log = Log.Open(_folder.In("log.db")))
        {
            foreach (var entry in (LogEntry[])[new LogEntry.DeskSet("Jo", Exam.Desk.Locked), .. RealExam.Bikes.Select(b => new LogEntry.CaseTaken(b)), new LogEntry.RealTried("Kim", RealExam.Bikes[0].Key, null, 5, Right: false)])
                log.Append(new Logged(DateTimeOffset.UnixEpoch, entry));
        }

        using var plan = JsonDocument.Parse(Run("paper", "plan", Permission, "older-newer-bar", "--json").Out);
        Assert.Equal((3, 3), (plan.RootElement.GetProperty("realBikes").GetProperty("wanted").GetInt32(), plan.RootElement.GetProperty("realBikes").GetProperty("there").GetInt32()));
        Assert.Contains("Kim: 2 of 3 real bikes at the end; they do not count. 1 was left out: met in practice or in a paper.", Make("Kim").Out, StringComparison.Ordinal);
        using var made = JsonDocument.Parse(Make("Sam", "--real", "1", "--json").Out);
        var paper = made.RootElement.GetProperty("papers")[0];
        Assert.Equal((1, 0), (paper.GetProperty("real").GetInt32(), paper.GetProperty("realMet").GetInt32()));
        var opened = PaperFile.OpenByCode(File.ReadAllBytes(paper.GetProperty("file").GetString() ?? ""), paper.GetProperty("code").GetString() ?? "");
        var was = Assert.Single(opened.Paper.Real).Case.Truth.KindOf("bar");
        var sat = new SatPaper(opened.Paper.Id, "Sam", 1, 12, [], TimeSpan.FromMinutes(48), DateTimeOffset.UnixEpoch, SittingEnd.TimeUp, []) { Real = [new SittingReal(1) { Opened = [0], Kind = was, Tenths = 7 }] };
        File.WriteAllBytes(_folder.In("back.result"), ResultFile.Sealed(sat, opened.SittingKey));
        using var marked = JsonDocument.Parse(Run("mark", _folder.In("back.result"), "--json", "--passphrase-file", _folder.In("pass.txt")).Out);
        var result = marked.RootElement.GetProperty("results")[0];
        Assert.Equal(("not-yet", 12), (result.GetProperty("outcome").GetString(), result.GetProperty("jobs").GetArrayLength()));
        Assert.Equal((was, true), (result.GetProperty("realBikes")[0].GetProperty("said").GetString(), result.GetProperty("realBikes")[0].GetProperty("right").GetBoolean()));
        using var report = JsonDocument.Parse(Run("report", "candidate", "Sam", "--json").Out);
        Assert.Equal(was, report.RootElement.GetProperty("tables").GetProperty("real_bikes")[0].GetProperty("was").GetString());
        Assert.DoesNotContain("Yard", Run("report", "xapi").Out + Run("report", "group", "--as", "csv").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wrong_passphrase_is_logged()
    {
        Run("paper", "plan", Permission, "older-newer-bar", "--save");
        using (var log = Log.Open(_folder.In("log.db"))) log.Append(new Logged(DateTimeOffset.UnixEpoch, new LogEntry.DeskSet("Jo", Exam.Desk.Locked)));
        File.WriteAllText(_folder.In("pass.txt"), "something else\n");
        Assert.Contains("does not open the desk", Make("Sam").Error, StringComparison.Ordinal);
        Assert.Equal(1, Logged().WrongTries);
        Assert.Empty(Logged().Papers);
    }

    [Fact]
    public void Sit_opens_the_screens_with_the_paper()
    {
        using var to = new StringWriter();
        ScreenOptions? opened = null;
        Assert.Equal(0, CommandLine.Run(["sit", "stick.paper", "--plain", "--data", "x.db"], new Apprentice.Commands.Desk(to, to), o => { opened = o; return 0; }));
        Assert.Equal(new ScreenOptions("x.db", null, Plain: true, "stick.paper"), opened);
    }

    public void Dispose() => _folder.Dispose();

    Said Make(params string[] more) => Run(["paper", "make", Permission, .. more, "--passphrase-file", _folder.In("pass.txt")]);

    Said Run(params string[] args) => Said.Bare([.. args, "--data", _folder.In("log.db"), "--topics", _folder.In("topics")]);

    Assessments Logged()
    {
        using var log = Log.Open(_folder.In("log.db"));
        return Assessments.Of(log.Read());
    }
}
