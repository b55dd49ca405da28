using Apprentice.Engine.Cases;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Pages;

/// <summary>How sure after each check, in the jobs in which it is asked.</summary>
public sealed class SureNowTests
{
    [Fact]
    public void One_key_after_a_look_is_kept_and_weighed()
    {
        var talk = Asked();
        talk.Keys("1");
        Assert.IsType<OpinionScreen>(talk.Screen);
        Same("opinion", talk);
        talk.Keys("26");
        Assert.IsType<SureNowScreen>(talk.Screen);
        Same("sure-now", talk);
        talk.Keys("8");
        Assert.IsType<BenchScreen>(talk.Screen);
        var part = ((BenchScreen)talk.Screen).On;
        var update = Assert.Single(talk.Entries.Select(e => e.What).OfType<LogEntry.Updated>());
        Assert.Equal((part.Number, 0, part.Want.Asks[0], 6, 8), (update.Job, update.Look, update.Part, update.Before, update.After));
        Assert.Equal([update], talk.World.History.Jobs[^1].Updates);
    }

    [Fact]
    public void Esc_goes_on_without_an_answer()
    {
        var talk = Asked().Keys("126{Esc}");
        Assert.IsType<BenchScreen>(talk.Screen);
        Assert.DoesNotContain(talk.Entries, e => e.What is LogEntry.Updated);
    }

    [Fact]
    public void The_answer_shows_how_each_check_was_weighed()
    {
        var talk = Asked().Keys("1268A");
        for (var n = 0; n < 20 && talk.Screen is AnswerScreen { Form.Next: { } question }; n++) talk.Keys(question.Scale ? "5" : "{Down}{Enter}");
        talk.Keys("{Enter}");
        var weighed = Assert.Single(Assert.IsType<LogEntry.Answered>(talk.Entries[^1].What).Observed.OfType<Observed.Weighed>());
        Assert.Equal(Math.Log(0.8 / 0.2) - Math.Log(0.6 / 0.4), weighed.Taken, 1e-9);
    }

    [Fact]
    public void It_is_never_asked_of_nobody_known_and_not_in_every_job()
    {
        var history = History.Of(Lives.TenthDay());
        var asked = Enumerable.Range(31, 300).Count(j => TrustAsks.Asked(history, "Sam", j));
        Assert.InRange(asked, 70, 130);
        Assert.DoesNotContain(Enumerable.Range(31, 300), j => TrustAsks.Asked(history, null, j));
    }

    // Shell and crank are asked: the shell's width tells of the shell, the pedal's thread of the crank.
    [Fact]
    public void The_question_is_about_the_part_of_which_the_check_tells_most_and_the_record_names_it()
    {
        var talk = AskedOfTwo();
        void Take(string clue) => talk.Keys($"{((BenchScreen)talk.Screen).On.Made.Job.Bench.ToList().IndexOf(clue) + 1}{{Enter}}");
        Take("width");
        Assert.Equal("shell", Assert.IsType<OpinionScreen>(talk.Screen).Of);
        talk.Keys("1{Enter}57");
        Take("over-pedal");
        Assert.Equal("crank", Assert.IsType<OpinionScreen>(talk.Screen).Of);
        Assert.Contains("tells most about another part", talk.Text, StringComparison.Ordinal);
        Same("opinion-other", talk);
        talk.Keys("268");
        Assert.Equal([("shell", 0), ("crank", 1)], talk.Entries.Select(e => e.What).OfType<LogEntry.Updated>().Select(u => (u.Part, u.Look)));
    }

    static Talk AskedOfTwo()
    {
        var bench = Corpus.Bench("bottom-bracket");
        var request = new CaseRequest("own", "both", null, Selection.AsTheyCome, Channel.Bench, null, null);
        var luck = Enumerable.Range(1, 99).First(l => TrustAsks.Asked(History.Of([new(Lives.Start, new LogEntry.Began(l)), .. Lives.TenthDay().Skip(1)]), "Sam", 31));
        List<Logged> log = [new(Lives.Start, new LogEntry.Began(luck)), .. Lives.TenthDay().Skip(1)];
        Lives.Add(log, new LogEntry.JobStarted(31, "Sam", bench.Topic.Id, bench.Topic.Version, 4, request, Guided: false, 1));
        var made = bench.Make(request, 4) ?? throw new InvalidOperationException();
        return new Talk(log, [bench.Topic]).At(BenchScreen.Of(new BenchJob(31, bench, made, Guided: false, 1, [])));
    }

    static void Same(string name, Talk talk)
    {
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    // A job in which it is asked: the number of the job and the luck of the file decide.
    static Talk Asked()
    {
        for (var luck = 1; luck < 99; luck++)
        {
            List<Logged> log = [new(Lives.Start, new LogEntry.Began(luck)), .. Lives.TenthDay().Skip(1)];
            if (!TrustAsks.Asked(History.Of(log), "Sam", 31)) continue;
            var talk = new Talk(log, [Corpus.Sample]).Keys("1");
            if (talk.Screen is BenchScreen { On: { ReadsScales: false, Left: null } } || talk.Screen is BenchScreen { On.Offer: Channel.Photo }) return talk;
        }

        throw new InvalidOperationException();
    }
}
