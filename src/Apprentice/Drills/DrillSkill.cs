using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Drills;

/// <summary>A skill that is drilled for three minutes.</summary>
/// <param name="Id">Short name for the log.</param>
/// <param name="Name">Key of its name.</param>
/// <param name="Note">Key of a note on it.</param>
abstract record DrillSkill(string Id, string Name, string Note)
{
    /// <summary>The skills, in the order of the list. A new one is a file in this folder and a line here.</summary>
    public static IReadOnlyList<DrillSkill> All { get; } = [new VernierDrill(), new DatumDrill(), new FractionDrill(), new PlateDrill(), new PitchDrill(), new GlanceDrill()];

    /// <summary>True when a missed item comes back as it was; false when it comes back with new figures.</summary>
    public virtual bool SameAgain => false;

    /// <summary>The skill of a short name, or null.</summary>
    public static DrillSkill? Of(string id) => All.FirstOrDefault(s => string.Equals(s.Id, id, StringComparison.Ordinal));

    /// <summary>Sorts of item that the topics at hand allow; none when the skill cannot be drilled with them.</summary>
    public abstract IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches);

    /// <summary>The item of a sort and a seed: the same again for the same topics.</summary>
    public abstract DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed);

    /// <summary>The families of clues of the topics at hand: topic and clue, with a colon between them.</summary>
    protected static IReadOnlyList<string> Clues(IReadOnlyList<Workbench> benches, Func<Clue, bool> drilled) =>
        [.. benches.SelectMany(b => b.Topic.Clues.Where(c => drilled(c) && c.Channels.Any(x => x.Channel == Channel.Bench)).Select(c => $"{b.Topic.Id}:{c.Id}"))];

    /// <summary>The topic of such a family, and the short name behind the colon.</summary>
    protected static (Workbench Bench, string Id) Of(IReadOnlyList<Workbench> benches, string family)
    {
        var colon = family.IndexOf(':');
        return (benches.First(b => string.Equals(b.Topic.Id, family[..colon], StringComparison.Ordinal)), family[(colon + 1)..]);
    }

    /// <summary>A bike of a topic on the bench.</summary>
    protected static Case Bike(Workbench bench, ulong seed) =>
        bench.Make(new CaseRequest(bench.Topic.Provenances[0].Id, bench.Topic.Wants[0].Id, null, Selection.AsTheyCome, Channel.Bench), seed)
        ?? throw new InvalidOperationException($"The topic {bench.Topic.Id} makes no bikes.");
}
