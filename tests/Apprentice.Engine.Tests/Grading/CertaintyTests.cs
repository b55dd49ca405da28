using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

/// <summary>The mark for "how sure" is a quadratic score: G. W. Brier, Verification of forecasts expressed in terms of probability, 1950; two outcomes, half of his sum.</summary>
public sealed class CertaintyTests
{
    static readonly Workbench Bench = new(Handlebars.Topic);
    static readonly Dictionary<ulong, List<(string Kind, int Tenths, double Mark, PartBelief Belief)>> Known = [];
    static readonly CaseRequest Request = new(Some.Provenance, "grips", "number", Selection.AsTheyCome, Channel.Bench);

    public static TheoryData<ulong> Seeds => [1, 2, 3];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_mark_is_the_expected_quadratic_score_up_to_a_constant(ulong seed)
    {
        foreach (var (kind, tenths, mark, belief) in Marks(seed))
        {
            var (b, q) = (belief.Classes[belief.ClassOf(kind)].Belief, tenths == 10 ? 0.99 : tenths / 10.0);
            var score = (b * (1 - ((1 - q) * (1 - q)))) + ((1 - b) * (1 - (q * q)));
            Assert.Equal(score + b - (belief.Highest * belief.Highest), mark, 1e-12);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void For_each_class_the_nearest_tenth_to_the_belief_marks_highest(ulong seed)
    {
        foreach (var named in Marks(seed).GroupBy(m => m.Kind))
        {
            var belief = named.First().Belief.Classes[named.First().Belief.ClassOf(named.Key)].Belief;
            Assert.Equal(named.MinBy(m => Math.Abs(Certainty(m.Tenths) - belief)).Tenths, named.MaxBy(m => m.Mark).Tenths);
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_other_answer_marks_above_the_likeliest_class_with_its_belief(ulong seed)
    {
        var marks = Marks(seed);
        var belief = marks[0].Belief;
        var best = marks.MaxBy(m => m.Mark);
        Assert.Equal(belief.Leading, belief.ClassOf(best.Kind));
        Assert.InRange(best.Mark, 1 - 0.0025 - 1e-12, 1);
        Assert.All(marks.Where(m => belief.ClassOf(m.Kind) != belief.Leading), m => Assert.True(m.Mark < best.Mark));
    }

    [Fact]
    public void Not_settled_is_marked_as_the_likeliest_class_is()
    {
        var made = Bench.Make(Request, 1) ?? throw new InvalidDataException();
        var named = Bench.Grade(made, Answer("older", 7));
        var open = Bench.Grade(made, Answer(null, 7));
        var leading = named.Reasoning.Parts[0].Classes[named.Reasoning.Parts[0].Leading].Kinds[0];
        Assert.Equal(MarkOf(Bench.Grade(made, Answer(leading, 7))), MarkOf(open), 1e-12);
    }

    static double Certainty(int tenths) => tenths == 10 ? 0.99 : tenths / 10.0;

    // Every kind with every tenth, graded once a seed.
    static List<(string Kind, int Tenths, double Mark, PartBelief Belief)> Marks(ulong seed)
    {
        if (Known.TryGetValue(seed, out var known)) return known;
        var made = Bench.Make(Request, seed) ?? throw new InvalidDataException();
        return Known[seed] =
        [
            .. from kind in new[] { "older", "newer", Kind.NoneId }
               from tenths in Enumerable.Range(1, 10)
               let grade = Bench.Grade(made, Answer(kind, tenths))
               select (kind, tenths, MarkOf(grade), grade.Reasoning.Parts[0]),
        ];
    }

    static double MarkOf(Grade grade) => grade.Parts.Single(p => p.Aspect == Aspect.Certainty).Mark;

    static Answer Answer(string? kind, int tenths) => new() { Looks = [], Parts = [new PartAnswer("bar", kind, tenths)], Orders = [new Choice.Ask()] };
}
