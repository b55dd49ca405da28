using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using CsCheck;

namespace Apprentice.Engine.Tests.Histories;

/// <summary>Laws 1 and 2 on a whole topic, against histories counted out one by one.</summary>
public sealed class TopicLawTests
{
    const double Tolerance = 1e-12;

    // Samples run on one thread: a scene keeps what it has worked out.
    static readonly Topic Topic = Handlebars.Topic;
    static readonly Scene Scene = Some.Scene(Topic);
    static readonly Lazy<Enumeration> Lives = new(() => new Enumeration(Topic));

    static readonly Finding[] Seen =
    [
        Some.Saw("plate", "11"), Some.Read("stem-length", 331), Some.Saw("marking", 1), Some.Saw("grip-fixing", 2), Some.Saw("lever-holes", 1),
        Some.Saw("motor", 1), Some.Saw("scratch", 0), Some.Saw("paint", 0),
    ];

    static readonly Lazy<IReadOnlyList<(Life Life, double P)>> Weighed = new(() => Lives.Value.Weighed(Seen));
    static readonly Gen<Finding[]> Findings = Gen.Select(Gen.Int[0, 255], Gen.ULong, (which, seed) => Drawn(which, new Rng(seed)));

    [Fact]
    public void Histories_add_up_to_1()
    {
        Assert.Equal(1, Lives.Value.Lives.Sum(l => l.Weight), Tolerance);
        Assert.Equal(1, Scene.Table.Model.Weights.Sum(), Tolerance);
        Assert.True(Lives.Value.Lives.Count > 20_000, $"{Lives.Value.Lives.Count}");
    }

    [Fact]
    public void Every_belief_equals_the_count_over_all_histories() => Check.Sample(
        Findings,
        findings =>
        {
            var likelihood = Scene.Reader.SetOf(findings).All;
            var lives = Lives.Value.Weighed(findings);
            Assert.Equal(lives.Sum(l => l.P), Belief.Total(Scene.Table.Model, likelihood), Tolerance);
            for (var part = 0; part < Topic.Parts.Count; part++)
            {
                var counted = Counted(lives, Topic.Parts[part].Kinds.Count + 1, l => l.Kinds[part]);
                AssertClose(counted, Belief.Joint(Scene.Table.Model, likelihood, [KindQuery(part)]));
            }
        },
        iter: 8, threads: 1);

    [Fact]
    public void Two_parts_at_once_equal_the_count_over_all_histories()
    {
        var joint = Belief.Joint(Scene.Table.Model, Scene.Reader.SetOf(Seen).All, [KindQuery(0), KindQuery(3)]);
        AssertClose(Counted(Weighed.Value, 12, l => (l.Kinds[0] * 4) + l.Kinds[3]), joint);
    }

    [Theory]
    [InlineData("controls-changed")]
    [InlineData("plate-lost")]
    [InlineData("scratched")]
    [InlineData("stem-filed")]
    [InlineData("bar-painted")]
    public void An_event_is_as_likely_as_the_histories_with_it(string story)
    {
        var bit = 1UL << Scene.Table.Names.Event(story);
        Assert.Equal(
            Weighed.Value.Where(l => (l.Life.Events & bit) != 0).Sum(l => l.P),
            Belief.Total(Scene.Table.Model, Scene.Reader.SetOf(Seen).All, new Belief.Story(bit, 0)), Tolerance);
    }

    [Fact]
    public void A_line_is_as_likely_as_its_histories()
    {
        var query = new Query(-1, 3, [.. Scene.Table.Rows.Select(r => r.Line)]);
        var weights = Belief.Joint(Scene.Table.Model, Scene.Reader.SetOf(Seen).All, [query]);
        AssertClose(Counted(Weighed.Value, 3, l => l.Line), weights);
    }

    [Fact]
    public void What_does_not_fit_the_host_is_never_there()
    {
        var joint = Belief.Joint(Scene.Table.Model, Scene.Nothing, [KindQuery(0), KindQuery(3)]);
        Assert.Equal((0, 0), (joint[(0 * 4) + 1], joint[(1 * 4) + 0]));
    }

    [Fact]
    public void The_order_of_findings_changes_nothing() => Check.Sample(
        Gen.Shuffle(Seen),
        shuffled =>
        {
            foreach (var part in Enumerable.Range(0, Topic.Parts.Count)) AssertClose(Beliefs(part, Seen), Beliefs(part, shuffled));
        },
        iter: 50, threads: 1);

    [Fact]
    public void Beliefs_add_up_to_1() => Check.Sample(
        Findings,
        findings =>
        {
            foreach (var part in Enumerable.Range(0, Topic.Parts.Count)) Assert.Equal(1, Beliefs(part, findings).Sum(), Tolerance);
        },
        iter: 50, threads: 1);

    [Fact]
    public void A_look_that_is_equally_likely_on_every_bike_changes_no_belief()
    {
        var topic = Topic with { Clues = [.. Topic.Clues, Some.Table("bell", new Node.OfPart("bar"), [0.7, 0.3], [0.7, 0.3])] };
        topic = topic with { Clues = [.. topic.Clues.Select(c => c.Id == "bell" ? c with { Shows = (Shows.Table)c.Shows with { NoneRow = [0.7, 0.3] } } : c)] };
        var scene = Some.Scene(topic);
        foreach (var part in Enumerable.Range(0, topic.Parts.Count))
        {
            var after = scene.ClassBeliefs(part, scene.Reader.SetOf([.. Seen, Some.Saw("bell", 1)]).All);
            Assert.NotNull(after);
            AssertClose(Beliefs(part, Seen), after);
        }
    }

    [Fact]
    public void A_clue_that_cannot_be_seen_is_no_evidence()
    {
        foreach (var part in Enumerable.Range(0, Topic.Parts.Count))
        {
            Finding[] hidden = [.. Seen, new Finding("marking", Channel.Bench, new Seen.Hidden())];
            AssertClose(Beliefs(part, Seen), Beliefs(part, hidden));
        }
    }

    static Query KindQuery(int part) => new(part, Topic.Parts[part].Kinds.Count + 1, [.. Scene.Table.States[part].Select(s => s.Kind)]);

    static double[] Counted(IReadOnlyList<(Life Life, double P)> lives, int values, Func<Life, int> value)
    {
        var sums = new double[values];
        foreach (var (life, p) in lives) sums[value(life)] += p;
        return sums;
    }

    static void AssertClose(double[] expected, double[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++) Assert.Equal(expected[i], actual[i], Tolerance);
    }

    static double[] Beliefs(int part, IReadOnlyList<Finding> findings) =>
        Scene.ClassBeliefs(part, Scene.Reader.SetOf(findings).All) ?? throw new InvalidDataException("nothing allows the findings");

    static Finding[] Drawn(int which, Rng rng)
    {
        Finding Of(Clue clue) => clue.Shows switch
        {
            Shows.Measured => Some.Read(clue.Id, 290 + rng.Below(60)),
            Shows.Code code => Some.Saw(clue.Id, code.Findings[rng.Below(5)].Id, rng.Below(2) == 0 ? Channel.Bench : Channel.Phone),
            Shows.Table table => Some.Saw(clue.Id, rng.Below(table.Findings.Count)),
            _ => throw new InvalidDataException(),
        };
        return [.. Topic.Clues.Where((_, i) => (which & (1 << i)) != 0).Select(Of)];
    }
}
