using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>Jobs aimed at a habit, made honestly: only where the bike comes from, what is told first, how it is seen and what the opening looks like are asked for.</summary>
/// <remarks>Which aims fit which habit is judgement: an opening that misleads for those who trust too much, ordinary bikes for those who trust too little.</remarks>
public static class AimedSets
{
    const double UsualMinutes = 3;

    /// <summary>Jobs aimed at a habit, from the topics in which it can show, in turn.</summary>
    /// <param name="history">The history; the number of the next job decides which bikes come.</param>
    /// <param name="topics">Topics at hand.</param>
    /// <param name="habit">The habit.</param>
    /// <returns>Six jobs, or none when the habit can show in none of the topics.</returns>
    public static IReadOnlyList<PlanItem> Of(History history, IReadOnlyList<Topic> topics, Habit habit)
    {
        var fitting = topics.Where(t => Fits(t, habit)).ToList();
        if (fitting.Count == 0) return [];
        var why = Remark.Of("plan.why.habit", ("habit", new Value.Said(Remark.Of(KeyOf(habit) + ".name"))));
        return [.. Enumerable.Range(0, Habits.AimedJobs).Select(i => fitting[i % fitting.Count])
            .Select((t, i) => new PlanItem(t.Id, Aimed(t, habit, history.NextJob + i, history.Luck ?? 0), null, UsualMinutes, why))];
    }

    /// <summary>Key under which the words of a habit stand: <c>.name</c>, <c>.sentence</c> (evidence, with {shown} and {relevant}), <c>.look</c> (one line for the learner), <c>.card.1</c> to <c>.card.4</c> (for the lead).</summary>
    public static string KeyOf(Habit habit) =>
        "habit." + string.Concat(habit.ToString().Select((c, i) => char.IsUpper(c) ? (i > 0 ? "-" : "") + char.ToLowerInvariant(c) : c.ToString()));

    /// <summary>True when a habit can show in a topic.</summary>
    public static bool Fits(Topic topic, Habit habit) => habit switch
    {
        Habit.TrustsNumber or Habit.IgnoresNumber => HasFamily(topic, ClueFamily.NumberOrDate),
        Habit.TrustsMarking or Habit.IgnoresMarking => HasFamily(topic, ClueFamily.SizeMarking),
        Habit.CountsSetApart or Habit.DistrustsSet => topic.Events.Any(IsSet),
        Habit.ForgetsKeptOld or Habit.SeesKeptOld => PitfallOf(topic, PitfallClass.KeptOldLine) is not null,
        Habit.WrongPoint => topic.Clues.Any(c => c.Shows is Shows.Measured { Slips.Count: > 0 }),
        Habit.MeasuresTwice or Habit.TakesNearer => HasFamily(topic, ClueFamily.Measured),
        Habit.HurtsOnThin or Habit.AsksThoughSafe or Habit.Forces => topic.Spares.Any(s => s.Hazard),
        Habit.SkipsSafetyLook => topic.Clues.Any(c => c.Safety),
        _ => true,
    };

    static bool HasFamily(Topic topic, ClueFamily family) => topic.Clues.Any(c => c.Family == family);

    static bool IsSet(BikeEvent happened) => happened.Effects.OfType<Effect.ChangeKind>().Select(c => c.Part).Distinct(StringComparer.Ordinal).Count() > 1;

    static string? PitfallOf(Topic topic, PitfallClass of) => topic.Pitfalls.FirstOrDefault(p => p.Class == of)?.Id;

    static Draw Aimed(Topic topic, Habit habit, int job, long luck)
    {
        var draw = Mix.Of(topic, job, luck);
        var plain = draw.Request with { Select = Selection.AsTheyCome, Offer = Channel.Bench, Questions = null };
        var pitfall = habit switch
        {
            Habit.ForgetsKeptOld => PitfallOf(topic, PitfallClass.KeptOldLine),
            Habit.CountsSetApart => topic.Events.FirstOrDefault(IsSet)?.Pitfall,
            Habit.TrustsNumber => PitfallOf(topic, PitfallClass.DecoyNumber) ?? PitfallOf(topic, PitfallClass.SwappedPart),
            Habit.TrustsMarking => PitfallOf(topic, PitfallClass.MarkingNotSize),
            _ => null,
        };
        var request = pitfall is null ? plain : PlanRequests.ForPitfall(topic, plain, pitfall);
        var select = habit switch
        {
            Habit.TrustsNumber or Habit.TrustsMarking => Selection.Conflicting,
            Habit.CountsSetApart or Habit.ForgetsKeptOld => Selection.SuggestsChange,
            Habit.TakesNearer or Habit.OrdersTooSoon or Habit.HurtsOnThin => Selection.LeavesTwoOpen,
            _ => Selection.AsTheyCome,
        };
        if (habit is Habit.HurtsOnThin or Habit.AsksThoughSafe or Habit.Forces) request = request with { Want = Hazardous(topic) ?? request.Want };
        return draw with { Request = request.Opening is null ? request : request with { Select = select } };
    }

    static string? Hazardous(Topic topic) =>
        topic.Wants.FirstOrDefault(w => w.OrderLines.Any(l => topic.Spares.Any(s => s.Hazard && s.OrderLine == l.Id)))?.Id;
}
