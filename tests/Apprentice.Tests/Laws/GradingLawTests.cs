using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>MODEL 8, law 5: honesty is best, and no strategy without looking pays.</summary>
public class GradingLawTests
{
    static readonly Aspect[] Core = [Aspect.Stopping, Aspect.Identification, Aspect.Certainty, Aspect.Decision];

    public static TheoryData<string> Topics() => [.. Corpus.Shipped];

    [Theory]
    [MemberData(nameof(Topics))]
    public void No_answer_marks_above_the_honest_one(string id)
    {
        var bench = Corpus.Bench(id);
        var want = bench.Topic.Wants[0];
        foreach (var made in Sample(bench, want, 2))
        {
            var grader = new Grader(bench, made);
            foreach (var looks in new[] { [], Strategies.Path(bench, made) })
            {
                var honest = Strategies.Honest(bench, made, looks);
                var best = grader.Grade(honest);
                foreach (var other in Strategies.Others(bench.Topic, want, honest))
                {
                    var grade = grader.Grade(other);
                    foreach (var aspect in Core)
                        Assert.True(Mark(grade, aspect) <= Mark(best, aspect) + 1e-9, $"seed {made.Job.Seed} {aspect}: {Mark(grade, aspect)} > {Mark(best, aspect)} for {other.Parts[0]} {string.Join(", ", other.Orders)}");
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Not_settled_marks_above_every_name_when_nothing_left_settles_it(string id)
    {
        var bench = Corpus.Bench(id);
        var want = bench.Topic.Wants[0];
        var met = 0;
        foreach (var made in Some.Cases(bench, Request(bench, want, Channel.Phone) with { Questions = 1 }, 60))
        {
            var looks = Strategies.Path(bench, made);
            var honest = Strategies.Honest(bench, made, looks);
            var grade = new Grader(bench, made).Grade(honest);
            if (grade.Reasoning.Parts[0].Settled || !grade.Reasoning.Ripe || grade.OpenToArgument) continue;
            met++;
            var waiting = honest with { Parts = [.. honest.Parts.Select(p => p with { Kind = null })] };
            var marks = new Grader(bench, made).Grade(waiting);
            foreach (var kind in bench.Topic.Parts.First(p => p.Id == want.Asks[0]).Kinds.Take(3))
            {
                var named = new Grader(bench, made).Grade(waiting with { Parts = [.. waiting.Parts.Select(p => p with { Kind = kind.Id })] });
                Assert.True(Mark(named, Aspect.Identification) < Mark(marks, Aspect.Identification), $"seed {made.Job.Seed} {kind.Id}");
            }

            if (met == 3) return;
        }

        Assert.True(met > 0, "no such case among these seeds");
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Strategies_without_judgement_score_below_the_engines_path(string id)
    {
        var bench = Corpus.Bench(id);
        var totals = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var made in Sample(bench, bench.Topic.Wants[0], 8))
        {
            var grader = new Grader(bench, made);
            foreach (var (name, answer) in Strategies.Whole(bench, made))
            {
                var grade = grader.Grade(answer);
                totals[name] = totals.GetValueOrDefault(name) + Core.Append(Aspect.Economy).Average(a => Mark(grade, a));
            }
        }

        foreach (var (name, total) in totals.Where(t => t.Key != "path"))
            Assert.True(total < totals["path"] - (0.05 * 8), $"{name} {total / 8:0.000} against {totals["path"] / 8:0.000}");
    }

    [Theory]
    [MemberData(nameof(Topics))]
    public void Right_readings_and_the_order_that_they_support_are_never_a_safety_error(string id)
    {
        var bench = Corpus.Bench(id);
        var ordered = 0;
        foreach (var want in bench.Topic.Wants)
        {
            foreach (var made in Some.Cases(bench, new CaseRequest(bench.Topic.Provenances[0].Id, want.Id, bench.Topic.Openings[0].Id, Selection.AsTheyCome, Channel.Bench), 6))
            {
                var answer = Strategies.OwnHands(bench, made);
                var grade = new Grader(bench, made).Grade(answer);
                Assert.False(grade.SafetyError, $"{want.Id}, seed {made.Job.Seed}: {string.Join(", ", answer.Orders)}");
                if (answer.Orders.Any(o => o is Choice.Order)) ordered++;
            }
        }

        Assert.True(ordered > 0, "nothing was ordered among these seeds");
    }

    static double Mark(Grade grade, Aspect aspect) => grade.Parts.FirstOrDefault(p => p.Aspect == aspect)?.Mark ?? 1;

    static CaseRequest Request(Workbench bench, Want want, Channel offer) =>
        new(bench.Topic.Provenances[0].Id, want.Id, bench.Topic.Openings[0].Id, Selection.LeavesTwoOpen, offer);

    static IReadOnlyList<Case> Sample(Workbench bench, Want want, int count) => Some.Cases(bench, Request(bench, want, Channel.Bench), count);
}
