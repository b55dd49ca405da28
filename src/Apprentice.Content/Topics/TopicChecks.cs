using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Checks of what the sections of a topic say of one another; each only where the sections it needs could be read.</summary>
static class TopicChecks
{
    const int MostTags = 64;

    /// <summary>Notes what does not go together.</summary>
    public static void Check(Draft draft, Topic topic)
    {
        var built = draft.Sound(Headings.Provenances, Headings.Lines, Headings.Years, Headings.Parts, Headings.Kinds);
        if (built && draft.Sound(Headings.AsBuilt)) PackageChecks.Check(draft, topic);
        if (built) DateChecks.Check(draft, topic);
        if (built && draft.Sound(Headings.AsBuilt, Headings.Events)) Stories(draft, topic);
        if (built && draft.Sound(Headings.Clues)) DateChecks.Codes(draft, topic);
        if (draft.Sound(Headings.Parts, Headings.Kinds, Headings.Events)) Events(draft, topic);
        if (draft.Sound(Headings.Parts, Headings.Kinds, Headings.FitRules)) FitRules(draft, topic);
        if (draft.Sound(Headings.Parts, Headings.Kinds, Headings.Sizes, Headings.Events)) RangeChecks.Sizes(draft, topic);
        if (draft.Sound(Headings.Parts, Headings.Kinds, Headings.Sizes, Headings.Events, Headings.Clues)) RangeChecks.Readings(draft, topic);
        if (draft.Sound(Headings.Parts, Headings.Kinds, Headings.Wants, Headings.Spares)) ShopChecks.Check(draft, topic);
    }

    static void Events(Draft draft, Topic topic)
    {
        foreach (var happened in topic.Events)
        {
            foreach (var change in happened.Effects.OfType<Effect.ChangeKind>().Where(change => topic.Parts.Any(part => part.IsDate && Same(part.Id, change.Part))))
                draft.Faults.Add(draft.LineOf(happened), $"\"{change.Part}\" is a build date: nothing changes it.");
        }
    }

    static void Stories(Draft draft, Topic topic)
    {
        var tags = topic.Events.Count + topic.Lines.Count(line => line.Pitfall is not null)
            + topic.Packages.Count(package => package.Builds.Any(build => build.From?.Pitfall is not null))
            + topic.Parts.Sum(part => part.Kinds.Count(kind => kind.Pitfall is not null));
        if (tags > MostTags)
        {
            draft.Faults.Add(
                draft.Section(Headings.Events)?.Heading.Line ?? 1,
                $"Events, and lines, packages and kinds with a pitfall, are {tags} together: at most {MostTags}.");
        }
    }

    static void FitRules(Draft draft, Topic topic)
    {
        foreach (var rules in topic.FitRules.GroupBy(rule => new { rule.Part, rule.HostKind }))
        {
            var part = topic.Parts.First(other => Same(other.Id, rules.Key.Part));
            if (rules.Select(rule => rule.Kind).Distinct(StringComparer.Ordinal).Count() == part.Kinds.Count)
                draft.Faults.Add(draft.LineOf(rules.Last()), $"No kind of \"{part.Id}\" is left that fits on \"{rules.Key.HostKind}\".");
        }
    }

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
