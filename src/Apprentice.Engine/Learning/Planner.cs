using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>What to do next.</summary>
public static class Planner
{
    const double UsualMinutes = 3;
    const double ShortestMinutes = 1;
    const double LongestMinutes = 8;
    const int LookBack = 20;
    const int PlacementJobs = 6;
    const int MostPlacementTopics = 3;

    /// <summary>Lengths of a session that are offered, minutes.</summary>
    public static IReadOnlyList<int> Lengths { get; } = [3, 8, 15, 30];

    /// <summary>The next session of a person: which skills as <see cref="PlanChoice"/> says, six ordinary bikes to four odd on average, each job with its reason.</summary>
    /// <remarks>A job takes as long as the person's last twenty did on average (median, 1 to 8 minutes; 3 without any). The topics are those that the lead chose for this month, else all.</remarks>
    /// <param name="history">The history.</param>
    /// <param name="topics">Topics at hand, in the order of the shelf; at least one.</param>
    /// <param name="person">A name, or null for nobody known.</param>
    /// <param name="minutes">Minutes to spend, at least 1.</param>
    /// <param name="now">The time.</param>
    public static Plan Of(History history, IReadOnlyList<Topic> topics, string? person, int minutes, DateTimeOffset now)
    {
        var chosen = ChosenOf(history, topics);
        var length = JobMinutes(history, person);
        var jobs = Math.Max(1, (int)Math.Round(minutes / length, MidpointRounding.AwayFromZero));
        var known = history.Book.Of(person, now).Where(s => IsPlanned(chosen, s.Skill)).ToList();
        var skills = PlanChoice.Of(known, Fresh(history, chosen, person, known), jobs, now);
        var requests = new PlanRequests(chosen, history.Luck ?? 0, history.NextJob, skills.Count(s => s.Skill.Sort == SkillSort.Pitfall), skills.Count);
        return new Plan(minutes, [.. skills.Select((s, i) => ItemOf(chosen, requests, s, i, known, length, now))]);
    }

    /// <summary>Where the person stands in the placement they asked for last, or null when they asked for none.</summary>
    /// <param name="history">The history.</param>
    /// <param name="topics">Topics at hand.</param>
    /// <param name="person">A name.</param>
    public static Placement? PlacementOf(History history, IReadOnlyList<Topic> topics, string person)
    {
        if (!history.Placements.TryGetValue(person, out var asked)) return null;
        var its = topics.Where(t => asked.Topics.Contains(t.Id)).Take(MostPlacementTopics).ToList();
        if (its.Count == 0) return null;
        var jobs = history.JobsOf(person).Where(j => j.Counts && j.Started.Job >= asked.From && its.Any(t => t.Id == j.Started.Topic)).Take(PlacementJobs).ToList();
        var sound = jobs.Where(j => j.Verdict is { Sound: true }).ToList();
        if (jobs.Count == PlacementJobs)
            return new Placement(jobs.Count, sound.Count, null, [.. its.Where(t => jobs.Where(j => j.Started.Topic == t.Id).All(j => sound.Contains(j))).Select(t => t.Id)]);
        var topic = its[jobs.Count % its.Count];
        var draw = Mix.Of(topic, history.NextJob, history.Luck ?? 0);
        return new Placement(
            jobs.Count, sound.Count,
            new PlanItem(topic.Id, draw, null, UsualMinutes, Remark.Of("plan.why.placement", ("n", Text(jobs.Count + 1)), ("of", Text(PlacementJobs)))), []);
    }

    static List<Topic> ChosenOf(History history, IReadOnlyList<Topic> topics)
    {
        var month = topics.Where(t => history.MonthTopics.Contains(t.Id)).ToList();
        return month.Count > 0 ? month : [.. topics];
    }

    /// <summary>How long a job takes the person, whole minutes.</summary>
    public static double JobMinutes(History history, string? person)
    {
        var last = history.JobsOf(person).Where(j => j.Counts && j.Ended >= j.At).TakeLast(LookBack).Select(j => ((j.Ended ?? j.At) - j.At).TotalMinutes).Order().ToList();
        return last.Count == 0 ? UsualMinutes : Math.Clamp(Math.Round(last[last.Count / 2], MidpointRounding.AwayFromZero), ShortestMinutes, LongestMinutes);
    }

    // A skill of a clue or pitfall that the topic no longer has cannot be planned.
    static bool IsPlanned(List<Topic> topics, SkillKey skill) => topics.FirstOrDefault(t => t.Id == skill.Topic) is { } topic && skill.Sort switch
    {
        SkillSort.Clue or SkillSort.Reading => topic.Clues.Any(c => c.Id == skill.Id),
        SkillSort.Pitfall => topic.Pitfalls.Any(p => p.Id == skill.Id),
        _ => true,
    };

    // Clues never asked: of topics begun first, then in the order of the shelf; within a topic in that of the bench. Placed topics come last.
    static List<SkillKey> Fresh(History history, List<Topic> topics, string? person, List<SkillState> known)
    {
        var asked = known.Select(s => s.Skill).ToHashSet();
        var placed = person is null ? [] : PlacementOf(history, topics, person)?.Placed ?? [];
        return
        [
            .. topics.OrderBy(t => placed.Contains(t.Id)).ThenByDescending(t => known.Any(s => s.Skill.Topic == t.Id))
                .SelectMany(t => t.Clues.Where(c => !c.Safety && Bears(t, c)).Select(c => new SkillKey(SkillSort.Clue, t.Id, c.Id))).Where(k => !asked.Contains(k)),
        ];
    }

    static bool Bears(Topic topic, Clue clue) => clue.Node is not Node.OfPart node || topic.Wants.Any(w => w.Asks.Contains(node.Part));

    static PlanItem ItemOf(
        List<Topic> topics, PlanRequests requests, PlannedSkill chosen, int index, List<SkillState> known, double length, DateTimeOffset now)
    {
        var topic = topics.First(t => t.Id == chosen.Skill.Topic);
        var key = "plan.why." + chosen.Reason.ToString().ToLowerInvariant();
        var state = known.FirstOrDefault(s => s.Skill == chosen.Skill);
        return new PlanItem(topic.Id, requests.Of(topic, chosen.Skill, index), chosen.Skill, length, Remark.Of(
            key, ("skill", NameOf(topic, chosen.Skill)), ("days", Text(state is null ? 0 : Math.Max(0, (int)(now - state.Last).TotalDays))),
            ("right", Text(state?.Right ?? 0)), ("asked", Text(state?.Asked ?? 0))));
    }

    /// <summary>The name of a skill, as a value of a remark: a clue's name, what to know of a pitfall, or a sentence of the words file.</summary>
    public static Value NameOf(Topic topic, SkillKey skill) => skill.Sort switch
    {
        SkillSort.Clue => new Value.Text(topic.Clues.FirstOrDefault(c => c.Id == skill.Id)?.Name ?? skill.Id),
        SkillSort.Reading => new Value.Said(Remark.Of("skills.reading", ("clue", new Value.Text(topic.Clues.FirstOrDefault(c => c.Id == skill.Id)?.Name ?? skill.Id)))),
        SkillSort.Pitfall => new Value.Said(Remark.Of("skills.pitfall." + (topic.Pitfalls.FirstOrDefault(p => p.Id == skill.Id)?.Class.ToString().ToLowerInvariant() ?? "other"))),
        SkillSort.Deciding => new Value.Said(Remark.Of("skills.deciding")),
        _ => new Value.Said(Remark.Of("skills.stopping")),
    };

    static Value.Text Text(int number) => new(number.ToString());
}
