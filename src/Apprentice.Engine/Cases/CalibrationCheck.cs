using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Cases;

/// <summary>Checks that among cases where the engine says p the share that is so is p: the law that careless choosing of cases breaks.</summary>
public sealed class CalibrationCheck
{
    const double LeastVariance = 5;
    readonly Scene _scene;
    readonly IReadOnlyList<int> _parts;
    readonly Dictionary<(string Stage, int Part, int Class, int Tenth), Sums> _sums = [];

    /// <summary>A check of the given parts.</summary>
    /// <param name="scene">The topic.</param>
    /// <param name="asks">Parts whose classes are checked.</param>
    public CalibrationCheck(Scene scene, IReadOnlyList<string> asks)
    {
        _scene = scene;
        _parts = [.. asks.Select(scene.Table.Names.Part)];
    }

    /// <summary>Largest |z| over the cells checked, or 0 when none has enough cases.</summary>
    public double Worst => Cells.Select(c => Math.Abs(c.Z)).DefaultIfEmpty(0).Max();

    /// <summary>Cells with Σp(1−p) of at least 5: an order class of a part, in a tenth of certainty, at a stage.</summary>
    public IReadOnlyList<CalibrationCell> Cells =>
    [
        .. _sums.Where(s => s.Value.Variance >= LeastVariance)
            .Select(s => new CalibrationCell(
                s.Key.Stage, _scene.Table.Topic.Parts[s.Key.Part].Id, string.Join('/', _scene.Classes[s.Key.Part].Members[s.Key.Class]), s.Key.Tenth,
                s.Value.Count, s.Value.Expected, s.Value.True, (s.Value.True - s.Value.Expected) / Math.Sqrt(s.Value.Variance)))
            .OrderBy(c => c.Stage, StringComparer.Ordinal).ThenBy(c => c.Part, StringComparer.Ordinal).ThenBy(c => c.Class, StringComparer.Ordinal).ThenBy(c => c.Tenth),
    ];

    /// <summary>Mean over all answers of |share that is so − mean p| by tenth, weighted by count: the calibration error.</summary>
    /// <param name="stage">The stage.</param>
    public double Error(string stage)
    {
        var mine = _sums.Where(s => s.Key.Stage == stage).Select(s => s.Value).ToList();
        return mine.Sum(s => Math.Abs(s.True - s.Expected)) / mine.Sum(s => s.Count);
    }

    /// <summary>Counts a case after some findings.</summary>
    public void Add(string stage, Truth truth, IReadOnlyList<Finding> findings)
    {
        var likelihood = _scene.Reader.SetOf(findings).All;
        foreach (var part in _parts)
        {
            if (_scene.ClassBeliefs(part, likelihood) is not { } beliefs) continue;
            var real = _scene.Classes[part].ClassOfKind[_scene.Table.Names.Kind(part, truth.Kinds[part])];
            for (var c = 0; c < beliefs.Length; c++) Add((stage, part, c, Math.Min(9, (int)(beliefs[c] * 10))), beliefs[c], c == real);
        }
    }

    /// <summary>The stages of the law for one case: at the opening, after every second check on offer, after an adaptive policy that stops when sure, and where something cannot be seen.</summary>
    public void AddStages(Case made)
    {
        Add("opening", made.Truth, made.Job.Told);
        var fixedSet = made.Job.Bench.Where((_, i) => i % 2 == 0).Select(c => made.Look(c, 0)).ToList();
        Add("fixed checks", made.Truth, [.. made.Job.Told, .. fixedSet]);
        Add("adaptive", made.Truth, Adaptive(made));
        if (fixedSet.Any(f => f.Seen is Seen.Hidden)) Add("cannot be seen", made.Truth, [.. made.Job.Told, .. fixedSet]);
    }

    /// <summary>Findings of a policy that looks where the belief so far sends it, measures odd readings again, and stops when the first part is settled.</summary>
    public IReadOnlyList<Finding> Adaptive(Case made)
    {
        var asks = _parts.Take(1).Select(p => _scene.Table.Topic.Parts[p].Id).ToList();
        var reasoner = new Reasoner(_scene);
        var findings = made.Job.Told.ToList();
        var left = made.Job.Bench.ToList();
        while (left.Count > 0 && reasoner.Settle(asks, findings) is [{ Settled: false } belief])
        {
            var clue = left[(belief.Leading + findings.Count) % left.Count];
            left.Remove(clue);
            findings.Add(made.Look(clue, 0));
            if (findings[^1].Seen is Seen.Reading && belief.Leading % 2 == 0) findings.Add(made.Look(clue, 1));
        }

        return findings;
    }

    void Add((string Stage, int Part, int Class, int Tenth) cell, double p, bool real)
    {
        if (!_sums.TryGetValue(cell, out var sums)) sums = _sums[cell] = new Sums();
        sums.Count++;
        sums.Expected += p;
        sums.True += real ? 1 : 0;
        sums.Variance += p * (1 - p);
    }

    sealed class Sums
    {
        public int Count { get; set; }

        public double Expected { get; set; }

        public double True { get; set; }

        public double Variance { get; set; }
    }
}

/// <summary>One cell of a calibration check.</summary>
/// <param name="Stage">When the engine was asked.</param>
/// <param name="Part">The part.</param>
/// <param name="Class">The order class.</param>
/// <param name="Tenth">0 for certainty below 0.1, …, 9 from 0.9.</param>
/// <param name="Count">Number of cases.</param>
/// <param name="Expected">Σp.</param>
/// <param name="True">How many were so.</param>
/// <param name="Z">(True − Expected) / √Σp(1−p).</param>
public sealed record CalibrationCell(string Stage, string Part, string Class, int Tenth, int Count, double Expected, double True, double Z);
