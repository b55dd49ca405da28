using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Notebook;

/// <summary>Confirmed real bikes as cases for practice.</summary>
public static class RealCases
{
    /// <summary>Cases of this workshop's own bikes and of other workshops': those whose truth is known and on which something was found.</summary>
    /// <param name="notebook">The notebook.</param>
    public static IReadOnlyList<RealCase> Of(BenchNotebook notebook) =>
        [.. notebook.Bikes.SelectMany(Of), .. notebook.Taken];

    /// <summary>Cases that a paper may hold: another workshop's, since everybody here remembers the own ones, a bike of this workshop that came back in a file too, and none that was asked about. They stand outside the marks' statistics.</summary>
    /// <param name="notebook">The notebook.</param>
    public static IReadOnlyList<RealCase> ForPapers(BenchNotebook notebook)
    {
        var own = notebook.Bikes.SelectMany(Of).ToList();
        return [.. notebook.Taken.Where(c => c.IsForPapers && c.Provenance != AskedBikes.Id && !own.Exists(o => IsSame(o, c)))];
    }

    static bool IsSame(RealCase one, RealCase other) => one.Topic == other.Topic && one.Want == other.Want && one.Provenance == other.Provenance
        && one.Truth.Parts.SequenceEqual(other.Truth.Parts) && one.Findings.SequenceEqual(other.Findings);

    static IEnumerable<RealCase> Of(Bike bike) => bike.Truths.Select(t => (Truth: t, Asked: bike.Asked.First(a => a.Topic == t.Topic), Findings: FoundIn(bike, t.Topic)))
        .Where(p => p.Findings.Any(f => f.Seen is not Seen.Hidden))
        .Select(p => new RealCase($"bike {bike.Number} {p.Truth.Topic}", "", p.Truth.Topic, p.Asked.Want, p.Asked.Provenance, p.Findings, p.Truth.Truth));

    static IReadOnlyList<Finding> FoundIn(Bike bike, string topic) => [.. bike.Findings.Where(f => !f.IsStruck && f.Topic == topic).Select(f => f.Finding)];
}
