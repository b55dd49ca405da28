using Apprentice.Engine;

namespace Apprentice.Drills;

/// <summary>A skill that is drilled for three minutes.</summary>
/// <param name="Id">Short name for the log.</param>
/// <param name="Name">Key of its name.</param>
/// <param name="Note">Key of a note on it.</param>
abstract record DrillSkill(string Id, string Name, string Note)
{
    /// <summary>The skills, in the order of the list. A new one is a file in this folder and a line here.</summary>
    public static IReadOnlyList<DrillSkill> All { get; } = [new VernierDrill(), new DatumDrill(), new FractionDrill()];

    /// <summary>True when a missed item comes back as it was; false when it comes back with new figures.</summary>
    public virtual bool SameAgain => false;

    /// <summary>The skill of a short name, or null.</summary>
    public static DrillSkill? Of(string id) => All.FirstOrDefault(s => string.Equals(s.Id, id, StringComparison.Ordinal));

    /// <summary>Sorts of item that the topics at hand allow; none when the skill cannot be drilled with them.</summary>
    public abstract IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches);

    /// <summary>The item of a sort and a seed: the same again for the same topics.</summary>
    public abstract DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed);
}
