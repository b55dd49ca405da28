using Apprentice.Engine.Learning;
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
            if (talk.Screen is BenchScreen { On: { ReadsScales: false, Left: null } } || talk.Screen is BenchScreen { On.Offer: Engine.Topics.Channel.Photo }) return talk;
        }

        throw new InvalidOperationException();
    }
}
