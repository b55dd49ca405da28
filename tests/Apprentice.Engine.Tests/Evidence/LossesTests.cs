using System.Text.Json;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Tests.Histories;
using Apprentice.Engine.Topics;
using CsCheck;

namespace Apprentice.Engine.Tests.Evidence;

public sealed class LossesTests
{
    static readonly JsonElement Oracle = JsonDocument.Parse(File.ReadAllText(Network.FileOf("misc_oracles.json"))).RootElement;
    static readonly Topic Topic = Handlebars.Topic;

    [Fact]
    public void The_choice_of_least_expected_loss_need_not_be_the_likeliest()
    {
        var value = Oracle.GetProperty("expected_loss");
        double[][] losses = [.. value.GetProperty("loss rows=decision cols=truth").EnumerateArray().Select(Numbers)];
        var posterior = Numbers(value.GetProperty("posterior"));
        var expected = Numbers(value.GetProperty("expected"));
        foreach (var (e, row) in expected.Zip(losses)) Assert.Equal(e, LineLosses.Expected(row, posterior), 1e-12);
        Assert.Equal(2.1, Line(losses).Least(posterior), 1e-12);
    }

    [Fact]
    public void Choices_side_by_side_come_to_the_same_bits_as_one_after_another()
    {
        var rng = new Rng(7);
        for (var i = 0; i < 300; i++)
        {
            var (choices, combinations) = (1 + rng.Below(40), 1 + rng.Below(30));
            double[][] losses = [.. Enumerable.Range(0, choices).Select(_ => Enumerable.Range(0, combinations).Select(_ => rng.Below(3) == 0 ? 0 : rng.Unit() * 50).ToArray())];
            double[] weights = [.. Enumerable.Range(0, combinations).Select(_ => rng.Below(2) == 0 ? 0 : rng.Unit())];
            var least = losses.Min(l => LineLosses.Expected(l, weights));
            Assert.Equal(BitConverter.DoubleToInt64Bits(least), BitConverter.DoubleToInt64Bits(Line(losses).Least(weights)));
            int[] live = [.. Enumerable.Range(0, combinations).Where(c => weights[c] > 0)];
            if (live.Length > 0) Assert.Equal(least, Line(losses).Over(live).Least(live.Select(c => weights[c]).ToArray()));
        }
    }

    [Fact]
    public void A_test_is_worth_what_it_saves_on_average()
    {
        // H. Raiffa, Decision Analysis, 1968, the oil wildcatter: utilities as negative losses.
        var value = Oracle.GetProperty("oil_wildcatter_raiffa");
        var prior = Numbers(value.GetProperty("prior"));
        double[][] test = [.. value.GetProperty("test_P(out|state) rows dry,wet,soak cols none,open,closed").EnumerateArray().Select(Numbers)];
        var line = Line([[.. Numbers(value.GetProperty("payoff_drill")).Select(x => -x)], [0, 0, 0]]);
        var now = line.Least(prior);
        var after = Enumerable.Range(0, 3).Sum(o => line.Least([.. prior.Select((p, s) => p * test[s][o])]));
        Assert.Equal(-20, now, 1e-12);
        Assert.Equal(-32.5, after, 1e-12);
        Assert.Equal(12.5, now - after, 1e-12);
        Assert.Equal(35, now - Enumerable.Range(0, 3).Sum(s => line.Least([.. prior.Select((p, i) => i == s ? p : 0)])), 1e-12);
    }

    [Theory]
    [InlineData(0.95)]
    [InlineData(0.99)]
    public void Naming_a_class_beats_asking_from_the_settle_level_on(double settleAt)
    {
        // C. K. Chow, On optimum recognition error and reject tradeoff, 1970.
        var line = Assert.Single(Losses.Of(Some.Scene(TwoKinds(settleAt, [])), [0], null));
        Assert.Equal(5, line.Least([settleAt - 1e-6, 1 - settleAt + 1e-6, 0]), 1e-9);
        Assert.True(line.Least([settleAt + 1e-6, 1 - settleAt - 1e-6, 0]) < 5);
    }

    [Fact]
    public void A_part_that_can_hurt_is_not_ordered_below_the_settle_level()
    {
        var spares = new[] { Spare("left", true), Spare("right", true) };
        var line = Assert.Single(Losses.Of(Some.Scene(TwoKinds(0.99, spares)), [0], Want));
        Assert.Equal(5, line.Least([0.9899, 0.0101, 0]), 1e-9);
        Assert.True(LineLosses.Expected(line.Of[0], [0.9899, 0.0101, 0]) > 5);
        Assert.True(LineLosses.Expected(line.Of[0], [0.9999, 0.0001, 0]) < 5);
    }

    [Fact]
    public void Losses_of_an_order_are_return_and_delay_and_two_kinds_return_one()
    {
        var line = Assert.Single(Losses.Of(Some.Scene(TwoKinds(0.95, [Spare("left", false), Spare("right", false)])), [0], Want));
        Assert.Equal([new Choice.Order("left"), new Choice.Order("right"), new Choice.OrderTwo("left", "right"), new Choice.Ask()], line.Choices);
        // Return 6, five days at 4 each; two that both fail: both returns and the delay.
        Assert.Equal([[0, 26, 26], [26, 0, 26], [6, 6, 32], [5, 5, 5]], line.Of);
        Assert.Equal([false, false, true], line.Wrong[2]);
    }

    [Fact]
    public void Outcomes_of_every_clue_add_up_to_1_in_every_state()
    {
        var scene = Some.Scene(Topic);
        foreach (var outcomes in Topic.Clues.Select(c => scene.Reader.OutcomesOf(c.Id, Channel.Bench)))
        {
            for (var column = 0; column < outcomes.Columns; column++)
            {
                Assert.Equal(1, outcomes.Fine.Sum(o => o[column]), 1e-9);
                Assert.Equal(1, outcomes.Coarse.Sum(o => o[column]), 1e-9);
            }
        }
    }

    [Fact]
    public void A_free_finding_never_raises_the_expected_least_loss()
    {
        // Law 6, for orders and for names of three parts, after any findings.
        var scene = Some.Scene(Topic);
        Check.Sample(
            Gen.Select(Gen.ULong, Gen.Bool),
            (seed, orders) =>
            {
                int[] parts = orders ? [0] : [0, 1, 2];
                var losses = Losses.Of(scene, parts, orders ? Topic.Wants[0] : null);
                var findings = scene.Reader.SetOf(Drawn(new Rng(seed))).All;
                var total = Belief.Total(scene.Table.Model, findings);
                var now = Least(scene, parts, losses, findings);
                foreach (var clue in Topic.Clues)
                {
                    var outcomes = scene.Reader.OutcomesOf(clue.Id, Channel.Bench);
                    var after = outcomes.Fine.Sum(o => Least(scene, parts, losses, findings.And(Shown(scene, outcomes, o))));
                    Assert.True(after <= now + (1e-9 * total), $"{clue.Id}: {now / total} {after / total}");
                }
            },
            iter: 15, threads: 1);
    }

    [Fact]
    public void Waiting_for_a_check_that_costs_nothing_is_never_worse_than_deciding_now()
    {
        var free = Topic with { Clues = [.. Topic.Clues.Select(c => c with { Minutes = 0 })] };
        var bench = new Workbench(free);
        var enquiry = new Enquiry(Some.Provenance, ["bar"], "grips", Channel.Bench, [.. free.Clues.Select(c => c.Id)]);
        var waited = 0;
        for (var seed = 1UL; seed <= 6; seed++)
        {
            var reasoning = bench.Reason(enquiry, [.. Drawn(new Rng(seed)).Take(2)]);
            foreach (var decision in reasoning.Decisions)
            {
                var now = decision.Options.Where(o => o.Choice is not Choice.Wait).Min(o => o.Loss);
                foreach (var wait in decision.Options.Where(o => o.Choice is Choice.Wait)) Assert.True(wait.Loss <= now + 1e-9, $"{wait.Choice}: {wait.Loss} {now}");
                waited += decision.Options.Count(o => o.Choice is Choice.Wait);
            }
        }

        Assert.True(waited > 10, $"{waited}");
    }

    static double Least(Scene scene, int[] parts, IReadOnlyList<LineLosses> losses, Likelihood findings)
    {
        var weights = Belief.Joint(scene.Table.Model, findings, [.. parts.Select(scene.ClassQuery)]);
        return losses.Sum(l => l.Least(weights));
    }

    static Likelihood Shown(Scene scene, Outcomes outcomes, double[] outcome)
    {
        double[] values = [.. outcomes.ColumnOf.Select(c => outcome[c])];
        var parts = scene.Table.Topic.Parts.Count;
        return outcomes.Part < 0 ? Likelihood.OfRows(values, parts) : Likelihood.OfPart(outcomes.Part, values, parts);
    }

    static List<Finding> Drawn(Rng rng) =>
    [
        .. new[] { Some.Saw("plate", "12"), Some.Read("stem-length", 300 + rng.Below(40)), Some.Saw("marking", rng.Below(3)), Some.Saw("grip-fixing", rng.Below(3)), Some.Saw("lever-holes", rng.Below(2)) }
            .Where(_ => rng.Below(2) == 0),
    ];

    static LineLosses Line(double[][] losses) => new("line", [.. losses.Select(_ => new Choice.Ask())], losses, [.. losses.Select(l => new bool[l.Length])]);

    static double[] Numbers(JsonElement array) => [.. array.EnumerateArray().Select(x => x.GetDouble())];

    static readonly Want Want = new("want", "want", [""], ["part"], [new OrderLine("line", "line")], "");

    static Topic TwoKinds(double settleAt, IReadOnlyList<Spare> spares)
    {
        var part = Some.Part("part", "left", "right") with { SettleAt = settleAt };
        return Some.Topic([Some.Line("any", 1)], [part], [Some.Built(part, ("", [0.5, 0.5]))]) with { Spares = spares, Wants = [Want] };
    }

    static Spare Spare(string kind, bool hazard) => new()
    {
        Id = kind,
        OrderLine = "line",
        Name = kind,
        Fits = [("part", [kind])],
        Price = 20,
        ReturnCost = 6,
        DelayDays = hazard ? 0 : 5,
        Hazard = hazard,
    };
}
