using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Evidence;

/// <summary>What a run of several checks would bring where no one or two of them are worth their minutes: each in turn, stopping as soon as all is settled.</summary>
/// <remarks>Readings are told apart only by what they point to most, and a run ends where it would branch too often: both make the value smaller, never larger, so a run that is worth its minutes here really is.</remarks>
sealed class LongRun(Scene scene, FindingSet set, IReadOnlyList<int> parts, IReadOnlyList<LineLosses> losses)
{
    const int MostBranches = 300;
    const int MostChecks = 6;
    readonly IReadOnlyList<int[]> _combinations = Losses.Combinations(scene, parts);
    readonly IReadOnlyList<Query> _queries = [.. parts.Select(scene.ClassQuery)];
    readonly double _total = Belief.Total(scene.Table.Model, set.All);

    /// <summary>Least expected loss and minutes of the run, over all places to end it.</summary>
    /// <param name="checks">The checks in order, with the cost of the minutes of each.</param>
    public double Least(IReadOnlyList<(Outcomes Outcomes, double Cost)> checks)
    {
        var open = new List<Likelihood> { set.All };
        double closed = 0, spent = 0, least = double.PositiveInfinity;
        foreach (var (outcomes, cost) in checks.Take(MostChecks))
        {
            if (open.Count == 0 || open.Count > MostBranches) break;
            spent += cost * open.Sum(o => Belief.Total(scene.Table.Model, o) / _total);
            var next = new List<Likelihood>();
            var answered = 0.0;
            foreach (var branch in open.SelectMany(o => Likelihoods(outcomes).Select(o.And)))
            {
                var weights = Belief.Joint(scene.Table.Model, branch, _queries).Select(w => w / _total).ToArray();
                if (weights.Sum() < 1e-9) continue;
                var loss = losses.Sum(l => l.Least(weights));
                if (Settled(weights))
                {
                    closed += loss;
                }
                else
                {
                    next.Add(branch);
                    answered += loss;
                }
            }

            least = Math.Min(least, spent + closed + answered);
            open = next;
        }

        return least;
    }

    IEnumerable<Likelihood> Likelihoods(Outcomes outcomes)
    {
        foreach (var group in outcomes.Coarse.GroupBy(o => Array.IndexOf(o, o.Max())))
        {
            var joined = group.Aggregate(new double[outcomes.Columns], (sum, o) => [.. sum.Zip(o, (a, b) => a + b)]);
            var values = outcomes.ColumnOf.Select(c => joined[c]).ToArray();
            yield return outcomes.Part < 0 ? Likelihood.OfRows(values, scene.Classes.Count) : Likelihood.OfPart(outcomes.Part, values, scene.Classes.Count);
        }
    }

    bool Settled(double[] weights)
    {
        var total = weights.Sum();
        for (var i = 0; i < parts.Count; i++)
        {
            var classes = new double[scene.Classes[parts[i]].Count];
            for (var c = 0; c < weights.Length; c++) classes[_combinations[c][i]] += weights[c];
            if (classes.Max() < scene.SettleAt(parts[i]) * total) return false;
        }

        return true;
    }
}
