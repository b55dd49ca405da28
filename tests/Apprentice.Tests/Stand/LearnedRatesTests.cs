using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Stand;

/// <summary>
/// Figures learned from bikes with a known end. The yardstick is the definition of an interval: over figures drawn from what was held before, and bikes made from each figure, nine of ten
/// intervals hold the figure. 500 runs: 450 expected, standard deviation √(500 · 0.9 · 0.1) = 6.7, three of them allowed.
/// </summary>
public sealed class LearnedRatesTests
{
    const int Runs = 500;
    const int Slack = 20;
    const int Expected = 450;
    static readonly Topic Sample = Corpus.Sample;

    [Fact]
    public void Event_rates_of_routine_bikes_cover_the_truth_as_often_as_they_claim() => Assert.InRange(EventCoverage(lettingPuzzlingIn: false), Expected - Slack, Expected + Slack);

    /// <summary>Somebody enters 1 of 2 bikes on which the bar was swapped because it puzzles, and 1 of 20 of the others: "everything was swapped".</summary>
    [Fact]
    public void Event_rates_do_not_when_puzzling_bikes_are_let_in() => Assert.InRange(EventCoverage(lettingPuzzlingIn: true), 0, 200);

    [Fact]
    public void Shares_of_lines_cover_the_truth_as_often_as_they_claim() => Assert.InRange(LineCoverage(lettingPuzzlingIn: false), Expected - Slack, Expected + Slack);

    [Fact]
    public void Shares_of_lines_do_not_when_puzzling_bikes_are_let_in() => Assert.InRange(LineCoverage(lettingPuzzlingIn: true), 0, 200);

    [Fact]
    public void Spreads_cover_the_truth_as_often_as_they_claim() => Assert.InRange(SpreadCoverage(lettingPuzzlingIn: false), Expected - Slack, Expected + Slack);

    [Fact]
    public void Spreads_do_not_when_puzzling_bikes_are_let_in() => Assert.InRange(SpreadCoverage(lettingPuzzlingIn: true), 0, 200);

    /// <summary>Whole months make the interval a little wider than it claims, never narrower.</summary>
    [Fact]
    public void Running_changes_cover_the_truth_at_least_as_often_as_they_claim() => Assert.InRange(WindowCoverage(lettingPuzzlingIn: false), Expected - Slack, Runs);

    [Fact]
    public void Running_changes_do_not_when_puzzling_bikes_are_let_in() => Assert.InRange(WindowCoverage(lettingPuzzlingIn: true), 0, 250);

    /// <summary>By hand: Beta(20 · 0.05 + 3, 20 · 0.95 + 17) = Beta(4, 36), mean 4/40.</summary>
    [Fact]
    public void Few_bikes_change_little()
    {
        Assert.Equal(0.1, LearnedRates.Share(0.05, 20, 3, 20).Mean, 12);
        Assert.Equal(0.05, LearnedRates.Share(0.05, 20, 0, 0).Mean, 12);
        Assert.Equal(1.0 / 21, LearnedRates.Share(0.05, 20, 0, 1).Mean, 12);
    }

    /// <summary>Quadrature of the density in the variance itself (scaled inverse χ², Jacobian 2σ) against the grid in the logarithm of the spread.</summary>
    [Fact]
    public void A_spread_agrees_with_plain_quadrature()
    {
        Rest[] rests = [new(3.1, 1, 1, 0, 100), new(-4.2, 1, 1, 0, 100), new(0.4, 1, 1, 0, 100), new(5, 1, 1, 0, 100)];
        var (total, sum) = (0.0, 0.0);
        for (var variance = 0.01; variance < 100; variance += 0.002)
        {
            var density = Math.Pow(variance, -(LearnedGrids.SpreadWeight / 2) - 1) * Math.Exp(-LearnedGrids.SpreadWeight * 4 / (2 * variance));
            foreach (var rest in rests) density *= Math.Exp(-0.5 * rest.Millimetres * rest.Millimetres / (variance + 1)) / Math.Sqrt(variance + 1);
            total += density;
            sum += density * Math.Sqrt(variance);
        }

        Assert.Equal(sum / total, LearnedGrids.Spread(2, rests).Mean, 0.005);
    }

    [Fact]
    public void An_event_of_some_lines_is_counted_on_bikes_known_to_be_such()
    {
        var bikes = new Bikes(Sample).Add(routine: true, Bikes.Truth("older", [], line: null)).Add(routine: true, Bikes.Truth("newer", [], "electric")).Add(routine: true, Bikes.Truth("older", ["bar-to-older"], "basic"));
        Assert.Equal(1, LearnedRates.Of(Sample, bikes.Notebook).Single(l => l.Key == "event bar-to-older own").Bikes);
    }

    /// <summary>A bike that was built with the newer bar says nothing of how often older bars are swapped for newer ones.</summary>
    [Fact]
    public void An_event_is_counted_only_where_it_would_show()
    {
        var bikes = new Bikes(Sample).Add(routine: true, Bikes.Truth("older", [])).Add(routine: true, Bikes.Truth("newer", [])).Add(routine: true, Bikes.Truth("newer", ["bar-to-newer"]));
        var learned = LearnedRates.Of(Sample, bikes.Notebook).Single(l => l.Key == "event bar-to-newer own");
        Assert.Equal((1, 2), (learned.Hits, learned.Bikes));
    }

    /// <summary>
    /// An event that puts on one of several kinds shows only where it puts on another one than was there: here on half of the bikes it happens to, and who tells of a bike knows of no other.
    /// By hand: 5 bikes on which it showed, 7 on which it would have shown half the time: Beta(20 · 0.05 + 5, 20 · 0.95 + 3.5), mean 6/28.5. Then 20,000 bikes drawn with a rate of 0.2.
    /// </summary>
    [Fact]
    public void An_event_that_may_put_on_the_same_kind_again_is_counted_as_far_as_it_would_show()
    {
        var either = Sample with { Events = [Sample.Events[0] with { Effects = [new Effect.ChangeKind("bar", null, [("older", 0.5), ("newer", 0.5)])] }] };
        var few = new Bikes(either);
        for (var n = 0; n < 12; n++) few.Add(routine: true, n < 5 ? Bikes.Truth("newer", ["bar-to-newer"]) : Bikes.Truth("older", []));
        var learned = LearnedRates.Of(either, few.Notebook).Single(l => l.Sort == LearnedSort.EventRate);
        Assert.Equal((5, 12), (learned.Hits, learned.Bikes));
        Assert.Equal(6 / 28.5, learned.Now, 12);

        var rng = new Rng(75);
        var many = new Bikes(either);
        for (var n = 0; n < 20_000; n++)
        {
            var shows = rng.Unit() < 0.2 && rng.Unit() < 0.5;
            many.Add(routine: true, shows ? Bikes.Truth("newer", ["bar-to-newer"]) : Bikes.Truth("older", []));
        }

        // A bike on which it showed counts whole, the others half: 0.1 of 0.1 + 0.45, which is 0.2 / (1 + 0.2 / 2).
        Assert.Equal(0.2 / 1.1, LearnedRates.Of(either, many.Notebook).Single(l => l.Sort == LearnedSort.EventRate).Now, 0.01);
    }

    static int EventCoverage(bool lettingPuzzlingIn)
    {
        var rng = new Rng(71);
        var before = Sample.Events[0].Rates[0];
        return Enumerable.Range(0, Runs).Count(_ =>
        {
            var truth = BetaShare.Quantile(rng.Unit(), LearnedRates.EventWeight * before, LearnedRates.EventWeight * (1 - before));
            var bikes = new Bikes(Sample);
            for (var n = 0; n < 400; n++)
            {
                var happened = rng.Unit() < truth;
                if (Enters(rng, lettingPuzzlingIn, happened)) bikes.Add(routine: true, happened ? Bikes.Truth("newer", ["bar-to-newer"]) : Bikes.Truth("older", []));
            }

            return LearnedRates.Of(Sample, bikes.Notebook).FirstOrDefault(l => l.Key == "event bar-to-newer own") is { } learned && truth >= learned.Low && truth <= learned.High;
        });
    }

    static int LineCoverage(bool lettingPuzzlingIn)
    {
        var rng = new Rng(72);
        var before = Sample.Lines[1].Shares[0];
        return Enumerable.Range(0, Runs).Count(_ =>
        {
            var truth = BetaShare.Quantile(rng.Unit(), LearnedRates.LineWeight * before, LearnedRates.LineWeight * (1 - before));
            var bikes = new Bikes(Sample);
            for (var n = 0; n < 400; n++)
            {
                var basic = rng.Unit() < truth;
                if (Enters(rng, lettingPuzzlingIn, basic)) bikes.Add(routine: true, Bikes.Truth("older", [], basic ? "basic" : "standard"));
            }

            return LearnedRates.Of(Sample, bikes.Notebook).FirstOrDefault(l => l.Key == "line basic own") is { } learned && truth >= learned.Low && truth <= learned.High;
        });
    }

    // Readings of the bar: true size Normal(nominal, spread), reading Normal(size, 1 mm). A reading more than 6 mm off puzzles.
    static int SpreadCoverage(bool lettingPuzzlingIn)
    {
        var rng = new Rng(73);
        var before = Sample.Dimensions.First(d => d.Id == "bar-height").Spreads[0];
        return Enumerable.Range(0, Runs).Count(_ =>
        {
            var chi = Enumerable.Range(0, (int)LearnedGrids.SpreadWeight).Sum(_ => Square(rng.Normal()));
            var truth = Math.Sqrt(LearnedGrids.SpreadWeight * before * before / chi);
            var bikes = new Bikes(Sample);
            for (var n = 0; n < 400; n++)
            {
                var reading = 140 + (truth * rng.Normal()) + rng.Normal();
                if (Enters(rng, lettingPuzzlingIn, Math.Abs(reading - 140) > 6)) bikes.Add(routine: true, Bikes.Truth("older", []), [new Finding("bar-height", Channel.Bench, new Seen.Reading(reading))]);
            }

            return LearnedRates.Of(Sample, bikes.Notebook).FirstOrDefault(l => l.Key == "spread bar-height older") is { } learned && truth >= learned.Low && truth <= learned.High;
        });
    }

    // A bike puzzles whose bar is older though it was built after the told change, July 2017.
    static int WindowCoverage(bool lettingPuzzlingIn)
    {
        var rng = new Rng(74);
        var window = Sample.Packages[0].Builds[1].From ?? throw new InvalidOperationException();
        return Enumerable.Range(0, Runs).Count(_ =>
        {
            var shift = (int)Math.Round(LearnedGrids.WindowMonths * rng.Normal());
            var bikes = new Bikes(Sample);
            for (var n = 0; n < 400; n++)
            {
                var built = Month.Of(2015, 1).Plus(rng.Below(48));
                var share = Math.Clamp((built.Index + 0.5 - window.Opens.Index - shift) / (window.Closes.Index - window.Opens.Index), 0.002, 0.998);
                var isNew = rng.Unit() < share;
                if (Enters(rng, lettingPuzzlingIn, !isNew && built >= Month.Of(2017, 1))) bikes.Add(routine: true, Bikes.Truth(isNew ? "newer" : "older", [], "standard", built));
            }

            return LearnedRates.Of(Sample, bikes.Notebook).FirstOrDefault(l => l.Key == "window bar 1") is { } learned && shift >= learned.Low && shift <= learned.High;
        });
    }

    // The rule takes in every tenth bike; a puzzling one gets in half the time, another one seldom.
    static bool Enters(Rng rng, bool lettingPuzzlingIn, bool puzzles) => rng.Unit() < (!lettingPuzzlingIn ? 0.1 : puzzles ? 0.5 : 0.05);

    static double Square(double value) => value * value;
}
