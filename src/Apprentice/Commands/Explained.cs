using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>What a topic is able to tell, for its author.</summary>
/// <param name="Topic">Short name.</param>
/// <param name="Provenance">Where the bikes come from.</param>
/// <param name="Rows">Rows of the spine.</param>
/// <param name="States">States per part.</param>
/// <param name="Kinds">Per class of an asked part: the clue that tells it best from its nearest other, and the way to it.</param>
/// <param name="Close">Pairs that stay close.</param>
/// <param name="Cases">How natural cases are.</param>
sealed record Explained(
    string Topic, string Provenance, int Rows, IReadOnlyList<(string Part, int States)> States, IReadOnlyList<ExplainedKind> Kinds, IReadOnlyList<Separation> Close, NaturalCases Cases)
{
    /// <summary>A pair whose best clue is worth less stays close, in decibans: what settles 9 of 10 from evens is 9.5.</summary>
    public const double CloseBelow = 13;

    const int Deepest = 4;
    const int Sample = 200;
    const ulong Seed = 20_261;

    /// <summary>The account of a topic in its first provenance.</summary>
    public static Explained Of(Topic topic)
    {
        var bench = new Workbench(topic);
        var provenance = topic.Provenances[0].Id;
        var scene = bench.SceneOf(provenance);
        var asked = topic.Parts.Where(p => p.Asked).ToList();
        var pairs = asked.SelectMany(p => Separation.Of(scene, p.Id)).ToList();
        var kinds = asked.SelectMany(p =>
        {
            var tree = CheckTree.Of(bench, provenance, p.Id, Deepest);
            return pairs.Where(x => x.Part == p.Id).GroupBy(x => string.Join('/', x.One), StringComparer.Ordinal).Select(g => g.MinBy(x => x.Best.Decibans)).OfType<Separation>()
                .Select(x => new ExplainedKind(p.Id, x.One, x.Other, x.Best.Clue, x.Best.Decibans, tree.MinutesTo(x.One[0])));
        });
        return new Explained(
            topic.Id, provenance, scene.Table.Rows.Count, [.. topic.Parts.Select((p, i) => (p.Id, scene.Table.States[i].Count))], [.. kinds],
            [.. pairs.Where(p => p.Best.Decibans < CloseBelow)], NaturalCases.Of(bench, provenance, Sample, Seed));
    }

    /// <summary>The account as text.</summary>
    public void Write(TextWriter to)
    {
        to.WriteLine($"{Topic}, bikes of '{Provenance}'");
        to.WriteLine($"Spine: {Rows} rows. Parts: {string.Join(", ", States.Select(s => $"{s.Part} {s.States} states"))}.");
        to.WriteLine("Each kind: its nearest other, the clue that tells them apart best, and the shortest way that settles it");
        foreach (var kind in Kinds)
        {
            var way = kind.Minutes is { } minutes ? $"{minutes:0.#} min" : "no way in four checks";
            to.WriteLine($"  {kind.Part} {string.Join('/', kind.Kinds)}: from {string.Join('/', kind.Nearest)} by {kind.Clue}, {kind.Decibans:0.0} decibans; {way}");
        }

        to.WriteLine(Close.Count == 0 ? "No pair stays close." : $"Pairs that stay close (best clue below {CloseBelow:0} decibans):");
        foreach (var pair in Close) to.WriteLine($"  {pair.Part} {string.Join('/', pair.One)} taken for {string.Join('/', pair.Other)}: {pair.Best.Clue}, {pair.Best.Decibans:0.0} decibans");
        Cases.Write(to);
    }
}

/// <summary>How one kind is told.</summary>
/// <param name="Part">The part.</param>
/// <param name="Kinds">Kinds of its order class.</param>
/// <param name="Nearest">The class that is hardest to tell from it.</param>
/// <param name="Clue">The clue that tells them apart best.</param>
/// <param name="Decibans">Its expected weight.</param>
/// <param name="Minutes">Bench minutes of the shortest way that settles it, or null.</param>
sealed record ExplainedKind(string Part, IReadOnlyList<string> Kinds, IReadOnlyList<string> Nearest, string Clue, double Decibans, double? Minutes);
