using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>How hard cases are that come as they come, and whether their answers hang on a guess.</summary>
/// <param name="Count">Cases made.</param>
/// <param name="Odd">Cases to which something happened.</param>
/// <param name="Settled">Cases that everything on the bench settles.</param>
/// <param name="Minutes">Mean bench minutes of the engine's own path.</param>
/// <param name="Checks">Mean number of its checks.</param>
/// <param name="Robust">Cases whose best decisions stay the same whichever judged figure is moved.</param>
/// <param name="Breaks">Cases that each move breaks.</param>
sealed record NaturalCases(int Count, int Odd, int Settled, double Minutes, double Checks, int Robust, IReadOnlyList<(string Move, int Cases)> Breaks)
{
    static readonly string[] Moves = ["rates halved", "rates doubled", "spreads smaller by a third", "spreads bigger by half", "prices halved", "prices doubled"];

    /// <summary>The account of so many cases.</summary>
    public static NaturalCases Of(Workbench bench, string provenance, int count, ulong seed)
    {
        var made = Enumerable.Range(0, count).Select(i => bench.Make(Request(bench.Topic, provenance, i), seed + (ulong)i)).OfType<Case>().ToList();
        var broken = new int[Moves.Length];
        var known = new Dictionary<string, string?>(StringComparer.Ordinal);
        var (odd, settled, robust, minutes, checks) = (0, 0, 0, 0.0, 0);
        foreach (var it in made)
        {
            var proof = bench.Prove(it);
            if (it.Truth.Story.Count > 0) odd++;
            if (proof.Parts.All(p => p.Settled)) settled++;
            var path = bench.PathOf(it, known).Skip(it.Job.Told.Count).Select(f => f.Clue).Distinct(StringComparer.Ordinal).Select(c => bench.Topic.Clues.First(x => x.Id == c)).ToList();
            minutes += path.Sum(c => c.Minutes) + path.Select(c => c.Access).OfType<string>().Distinct(StringComparer.Ordinal).Sum(a => bench.Topic.Accesses.First(x => x.Id == a).Minutes);
            checks += path.Count;
            var breaks = bench.Variants.Select(v => !Same(proof, v.Prove(it))).ToList();
            for (var m = 0; m < broken.Length; m++) broken[m] += breaks[m] ? 1 : 0;
            if (!breaks.Contains(true)) robust++;
        }

        var n = Math.Max(1, made.Count);
        return new NaturalCases(made.Count, odd, settled, minutes / n, (double)checks / n, robust, [.. Moves.Select((m, i) => (m, broken[i]))]);
    }

    /// <summary>The account as text.</summary>
    public void Write(TextWriter to)
    {
        to.WriteLine($"{Count} cases as they come: {Odd} with something changed, {Settled} settled by all checks; the engine's path takes {Checks:0.0} checks and {Minutes:0.0} min.");
        to.WriteLine($"Answers that hang on no guess: {Robust} of {Count}. Broken by {string.Join(", ", Breaks.OrderByDescending(b => b.Cases).Select(b => $"{b.Move} {b.Cases}"))}.");
    }

    static CaseRequest Request(Topic topic, string provenance, int i) => new(
        provenance, topic.Wants[i % topic.Wants.Count].Id, topic.Openings.Count == 0 ? null : topic.Openings[i % topic.Openings.Count].Id, Selection.AsTheyCome, Channel.Bench);

    static bool Same(Proof one, Proof other) => one.Parts.Zip(other.Parts).All(p => p.First.Leading == p.Second.Leading && p.First.Settled == p.Second.Settled)
        && one.Decisions.Zip(other.Decisions).All(d => d.First.Options[0].Choice == d.Second.Options[0].Choice);
}
