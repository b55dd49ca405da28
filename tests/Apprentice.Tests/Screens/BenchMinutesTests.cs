using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>The minutes beside a check are what the bench time grows by and what the engine reckons with.</summary>
public sealed class BenchMinutesTests
{
    static readonly Workbench Rims = Corpus.Bench("rim-size");

    [Fact]
    public void What_must_come_off_is_in_the_minutes_until_it_is_off()
    {
        var on = Job();
        var (first, then) = (on.Clue("rim-iso"), on.Clue("round"));
        Assert.Equal(first.Access, then.Access);
        var off = on.ComesOff(first)?.Minutes ?? 0;
        Assert.True(off > 0);
        Assert.Equal(then.Minutes + off, on.MinutesOf(then));
        var after = on.Looking(first.Id);
        Assert.Equal(on.MinutesOf(first), after.Minutes);
        Assert.Equal(on.MinutesOf(first), after.MinutesOf(first));
        Assert.Equal(then.Minutes, after.MinutesOf(then));
        Assert.Equal(after.Minutes + then.Minutes, after.Looking(then.Id).Minutes);
    }

    [Fact]
    public void The_help_names_the_same_minutes()
    {
        var on = Job();
        foreach (var next in on.Reasoning.Next.Where(n => n.With is null)) Assert.Equal(next.Minutes, on.MinutesOf(on.Clue(next.Clue)), 1e-9);
        var after = on.Looking("rim-iso");
        foreach (var next in after.Reasoning.Next.Where(n => n.With is null)) Assert.Equal(next.Minutes, after.MinutesOf(after.Clue(next.Clue)), 1e-9);
    }

    [Fact]
    public void Whoever_knows_enough_is_sent_to_the_safety_look_before_the_answer()
    {
        var on = Enumerable.Range(1, 20).Select(seed => Job((ulong)seed).Looking("wall-iso").Looking("rim-iso") with { Guided = true })
            .First(j => j.Reasoning is { Ripe: true, Stops.Count: 0 } && !j.Reasoning.Odd.Any(o => o.Stands));
        Assert.Contains(Guide.Of(on), s => s.Contains("safety look", StringComparison.Ordinal));
        Assert.DoesNotContain(Guide.Of(on.Looking(on.OnOffer.Single(c => c.Safety).Id)), s => s.Contains("safety look", StringComparison.Ordinal));
    }

    static BenchJob Job(ulong seed = 9)
    {
        var request = new CaseRequest("own", "tyre", Rims.Topic.Openings[0].Id, Selection.AsTheyCome, Channel.Bench);
        return new BenchJob(1, Rims, Rims.Make(request, seed) ?? throw new InvalidOperationException(), Guided: false, Step: 1, []);
    }
}
