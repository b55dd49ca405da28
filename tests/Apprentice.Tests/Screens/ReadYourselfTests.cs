using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>From the fourth job of a topic the learner chooses from where to where and reads the scale.</summary>
public sealed class ReadYourselfTests
{
    static readonly CaseRequest Request = new("own", "cables", "number", Selection.AsTheyCome, Channel.Bench);

    // An open job of step 2: the start page goes on with it by key 1; check 2 is the stem, measured.
    static Talk Bench(int step) => new Talk([Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"), new LogEntry.JobStarted(1, "Sam", Corpus.Sample.Id, Corpus.Sample.Version, 7, Request, false, step)).Keys("1");

    [Fact]
    public void Early_jobs_show_the_reading()
    {
        var talk = Bench(1).Keys("2");
        Assert.IsType<BenchScreen>(talk.Screen);
        Assert.Null(Assert.Single(Looks(talk)).Look.OwnReading);
    }

    [Fact]
    public void Later_jobs_let_the_learner_choose_the_datum_and_read()
    {
        var talk = Bench(2).Keys("2");
        Assert.True(talk.Screen is DatumScreen, talk.Text + talk.Screen);
        Assert.Empty(Looks(talk));
        talk.Keys("1");
        Assert.IsType<ScaleScreen>(talk.Screen);
        talk.Keys("333{Enter}");
        Assert.IsType<BenchScreen>(talk.Screen);
        var look = Assert.Single(Looks(talk));
        Assert.Equal(333, look.Look.OwnReading);
        Assert.Equal(new Seen.Reading(333), look.Shown.Seen);
        Assert.Contains("333 mm", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_datum_chosen_moves_the_edge_by_the_slip()
    {
        var bench = new Engine.Workbench(Corpus.Sample);
        var made = Laws.Some.Case(bench, Request, 7);
        Assert.Equal(-14, bench.EdgeOf(made, "stem-length", 0, 1) - bench.EdgeOf(made, "stem-length", 0, 0), 1e-9);
        Assert.NotEqual(bench.EdgeOf(made, "stem-length", 0, 0), bench.EdgeOf(made, "stem-length", 1, 0), 1e-9);
    }

    [Fact]
    public void A_bad_reading_gets_a_sentence_and_nothing_is_logged()
    {
        var talk = Bench(2).Keys("219999{Enter}");
        Assert.IsType<ScaleScreen>(talk.Screen);
        Assert.Empty(Looks(talk));
    }

    [Fact]
    public void A_caliper_keeps_its_zero_error_through_the_job_and_what_is_typed_is_what_counts()
    {
        var bench = new Engine.Workbench(Corpus.Sample);
        var made = Laws.Some.Case(bench, Request, 7);
        Assert.Equal(Engine.Workbench.ZeroErrorOf(made), Engine.Workbench.ZeroErrorOf(made with { Truth = made.Truth with { Story = [] } }));
        var talk = Bench(2).Keys("21333{Enter}");
        Assert.Equal(333, Assert.Single(Looks(talk)).Look.OwnReading);
    }

    [Fact]
    public void A_gauge_on_the_bench_is_tried_and_the_leaf_taken_is_kept_as_own_finding()
    {
        var request = Laws.Some.Case(new Engine.Workbench(Corpus.Sample), Request, 7).Job.Bench;
        var clue = Corpus.Sample.Clues.First(c => request.Contains(c.Id) && c.Shows is Shows.Table { Findings.Count: > 1 } && !c.Safety);
        var table = (Shows.Table)clue.Shows;
        var gauge = clue with { Tool = "pitch gauge", HiddenShare = 0, Shows = table with { Findings = [.. table.Findings.Select((f, i) => f with { Gauge = new Leaf($"{i + 1} mm", i + 1) })] } };
        var topic = Corpus.Sample with { Clues = [.. Corpus.Sample.Clues.Select(c => c.Id == clue.Id ? gauge : c)] };
        var talk = new Talk([topic], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"), new LogEntry.JobStarted(1, "Sam", topic.Id, topic.Version, 7, Request, false, 2))
            .Keys($"1{request.ToList().IndexOf(clue.Id) + 1}");
        var screen = Assert.IsType<GaugeScreen>(talk.Screen);
        var taken = screen.Task.Leaves[screen.Leaf].Id;
        talk.Keys("{Enter}");
        Assert.IsType<BenchScreen>(talk.Screen);
        Assert.Equal(taken, Assert.Single(Looks(talk)).Look.OwnFinding);
    }

    [Fact]
    public void A_job_whose_topic_was_changed_still_shows_the_own_readings_of_the_log()
    {
        var talk = Bench(2).Keys("21333{Enter}");
        var past = new PastJob(new LogEntry.JobStarted(1, "Sam", Corpus.Sample.Id, "another", 7, Request, false, 2), DateTimeOffset.UnixEpoch)
        {
            Looks = [.. Looks(talk).Select(l => l.Look)],
            Verdict = new Verdict(Engine.Grading.InShort.RightToWait, [], Sound: true, SafetyError: false),
        };
        var text = string.Join('\n', Layout.Of(new OldGradeScreen(past).Show(talk.World), new PageSize(80, 24)).Select(l => l.Text));
        Assert.Contains(": 333 mm", text, StringComparison.Ordinal);
    }

    static List<LogEntry.Looked> Looks(Talk talk) => [.. talk.Entries.Select(e => e.What).OfType<LogEntry.Looked>()];
}
