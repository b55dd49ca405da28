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

    static List<LogEntry.Looked> Looks(Talk talk) => [.. talk.Entries.Select(e => e.What).OfType<LogEntry.Looked>()];
}
