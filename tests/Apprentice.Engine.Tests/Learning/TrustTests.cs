using System.Text.Json;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Learning;

public sealed class TrustTests
{
    // Source: Data/misc2_oracles.json, stepwise_logodds_lens: root mean square error of the slope of 4,000 learners whose true slope is .6, spread .7, size of clues Normal(0, 1.5).
    [Fact]
    public void The_slope_is_as_exact_as_a_second_program_says_it_is()
    {
        var rng = new Rng(71);
        var rows = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "misc2_oracles.json"))).RootElement.GetProperty("stepwise_logodds_lens");
        foreach (var row in rows.EnumerateArray())
        {
            var n = row.GetProperty("n_updates").GetInt32();
            var errors = Enumerable.Range(0, 4000).Select(_ => Trust.SlopeOf(Learner(rng, n, 0.6)).Slope - 0.6).ToList();
            Assert.Equal(row.GetProperty("rmse").GetDouble(), Math.Sqrt(errors.Average(e => e * e)), row.GetProperty("rmse").GetDouble() * 0.05);
            Assert.Equal(row.GetProperty("bias").GetDouble(), errors.Average(), 0.015);
        }
    }

    // The goal of the workshop: mean absolute error below .15 after 20 updates, whatever the learner's slope.
    [Theory]
    [InlineData(0.3)]
    [InlineData(1.0)]
    [InlineData(1.7)]
    public void After_twenty_updates_the_mean_error_is_below_the_goal(double slope)
    {
        var rng = new Rng(72);
        Assert.InRange(Enumerable.Range(0, 2000).Average(_ => Math.Abs(Trust.SlopeOf(Learner(rng, 20, slope)).Slope - slope)), 0, 0.15);
    }

    [Fact]
    public void Below_ten_updates_it_is_not_yet_known()
    {
        Observed.Weighed[] updates = [.. Enumerable.Repeat(new Observed.Weighed("plate", ClueFamily.NumberOrDate, Linked: false, 1.5, 4), 9)];
        Assert.Equal(TrustWord.NotYetKnown, Trust.SlopeOf(updates).Word);
        Assert.Equal(TrustWord.TooMuch, Trust.SlopeOf([.. updates, updates[0]]).Word);
    }

    // Normal equations of the two unknowns clue and family, worked out by hand for one other clue.
    [Fact]
    public void A_single_clue_is_drawn_to_its_family_by_the_others_alone()
    {
        var log = new Logbook();
        log.Job("Sam", 0, Enumerable.Repeat<Observed>(new Observed.Weighed("a", ClueFamily.Measured, Linked: false, 1, 2), 20));
        log.Job("Sam", 0, new Observed.Weighed("b", ClueFamily.Measured, Linked: false, 1, 0));
        var report = Trust.Of(log.History, "Sam");
        var family = ((20 * 2 / 0.49) + (1 / 0.25)) / ((20 / 0.49) + (1 / 0.25));
        var weight = 1 / ((1 / ((20 / 0.49) + 4)) + 0.0625);
        var b = report.Clues.Single(c => c.Clue == "b").Slope;
        Assert.Equal(family * weight / ((1 / 0.49) + weight), b.Slope, 1e-10);
        Assert.Equal(21, report.Families.Single(f => f.Family == ClueFamily.Measured).Slope.Updates);
        Assert.Equal(1, report.Families.Single(f => f.Family == ClueFamily.Told).Slope.Slope, 1e-12);
    }

    [Fact]
    public void Linked_clues_have_a_slope_of_their_own()
    {
        var log = new Logbook().Job("Sam", 0, Enumerable.Repeat<Observed>(new Observed.Weighed("grip", ClueFamily.ShapeSeen, Linked: true, 0.5, 2), 15));
        var report = Trust.Of(log.History, "Sam");
        Assert.Equal(TrustWord.TooMuch, report.Linked.Word);
        Assert.Equal(0, report.Families.Single(f => f.Family == ClueFamily.ShapeSeen).Slope.Updates);
    }

    [Fact]
    public void It_is_asked_in_one_job_of_three_until_known_then_in_one_of_ten()
    {
        var log = new Logbook().Add(new LogEntry.Began(77));
        var before = log.History;
        Assert.InRange(Enumerable.Range(1, 3000).Count(j => TrustAsks.Asked(before, "Sam", j)), 900, 1100);
        log.Job("Sam", 0, Enumerable.Range(0, 30).Select(i => new Observed.Weighed("c", (ClueFamily)(i % 3), Linked: false, 1, 1)));
        var after = log.History;
        Assert.InRange(Enumerable.Range(2, 3000).Count(j => TrustAsks.Asked(after, "Sam", j)), 240, 360);
        Assert.DoesNotContain(Enumerable.Range(2, 50), j => TrustAsks.Asked(after, null, j));
    }

    static List<Observed.Weighed> Learner(Rng rng, int n, double slope)
    {
        var updates = new List<Observed.Weighed>();
        for (var i = 0; i < n; i++)
        {
            var worth = 1.5 * rng.Normal();
            updates.Add(new Observed.Weighed("c", ClueFamily.Measured, Linked: false, worth, (slope * worth) + (0.7 * rng.Normal())));
        }

        return updates;
    }
}
