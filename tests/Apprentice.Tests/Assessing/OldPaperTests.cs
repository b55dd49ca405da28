using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Storage;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Assessing;

/// <summary>Files that the program wrote before papers could hold real bikes: a sealed paper of the sample topic (eight jobs), its result with four answers, and the log of its desk with the marks. They are kept as they were written.</summary>
public sealed class OldPaperTests
{
    const string Code = "XM82-N9PT-JP4P";
    const ulong FirstSeed = 7600946503378293470;

    static string Folder => Path.Combine(Corpus.Root, "tests/Apprentice.Tests/Data/papers");

    [Fact]
    public void An_old_paper_opens_by_code_and_at_its_desk()
    {
        var opened = PaperFile.OpenByCode(Bytes("7F2ABC-Sam.paper"), Code);
        Assert.Equal(("7F2ABC", "Sam", 8, FirstSeed), (opened.Paper.Id, opened.Paper.Candidate, opened.Paper.Jobs.Count, opened.Paper.Jobs[0].Seed));
        Assert.Empty(opened.Paper.Real);
        Assert.Equal(opened.SittingKey, AtDesk().SittingKey);
    }

    /// <summary>The sample topic may have changed since: its version is that of the paper here, and what does not hang on its figures must be as it was.</summary>
    [Fact]
    public void An_old_result_is_collected_and_marked_the_same()
    {
        using var folder = new TempFolder();
        var old = Marked(folder);
        var sat = ResultFile.Collect(Bytes("7F2ABC-Sam.result"), Assessments.Of([new(default, new LogEntry.PaperMade("7F2ABC", Exam.Permission, "Sam", 1))]), _ => AtDesk().SittingKey);
        Assert.Empty(sat.Real);
        var now = sat.Mark(AtDesk().Paper, [new Workbench(Exam.Topic with { Version = AtDesk().Paper.Jobs[0].Version })]);
        Assert.Empty(now.Real);
        Assert.Equal(old.Jobs.Select(j => (j.Place, j.Family, j.Version, j.Sound, j.SafetyError, j.Rule)), now.Jobs.Select(j => (j.Place, j.Family, j.Version, j.Sound, j.SafetyError, j.Rule)));
        Assert.Equal((Outcome.NotYet, 4, 4), (now.Outcome, now.Sound, now.Unsound));
    }

    [Fact]
    public void An_old_log_with_a_plan_and_a_result_opens()
    {
        using var folder = new TempFolder();
        var old = Marked(folder);
        Assert.Empty(old.Real);
        Assert.Equal((8, Outcome.NotYet), (old.Jobs.Count, old.Outcome));
    }

    static PaperResult Marked(TempFolder folder)
    {
        File.Copy(Path.Combine(Folder, "log.db"), folder.In("log.db"));
        using var log = Log.Open(folder.In("log.db"));
        var all = Assessments.Of(log.Read());
        Assert.Equal(0, Assert.Single(all.Plans).RealBikes);
        return Assert.Single(all.Results);
    }

    static OpenedPaper AtDesk() => PaperFile.OpenAtDesk(Bytes("7F2ABC-Sam.paper"), Apprentice.Storage.Papers.Desk.Open(File.ReadAllText(Path.Combine(Folder, "desk.txt")).Trim(), Exam.Passphrase) ?? throw new InvalidOperationException("the old desk does not open"));

    static byte[] Bytes(string name) => File.ReadAllBytes(Path.Combine(Folder, name));
}
