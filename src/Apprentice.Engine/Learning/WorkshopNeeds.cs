namespace Apprentice.Engine.Learning;

/// <summary>What the people of a workshop need, for the lead: skills and accepted habits, never single answers.</summary>
/// <param name="People">Per person in the order of the log: the eight weakest of the skills that need work, and habits that the lead may see.</param>
/// <param name="NobodyHas">Skills that at least two people were asked and nobody has safe or nearly, most asked first.</param>
public sealed record WorkshopNeeds(IReadOnlyList<PersonNeeds> People, IReadOnlyList<SharedNeed> NobodyHas)
{
    const int FewestPeople = 2;
    const int MostNamed = 8;

    /// <summary>The needs of a workshop at a time.</summary>
    /// <param name="history">The history.</param>
    /// <param name="now">The time.</param>
    public static WorkshopNeeds Of(History history, DateTimeOffset now)
    {
        var book = history.Book;
        var needs = history.People.Select(p => (Person: p, Needs: book.Needs(p, now, MostNamed))).ToList();
        var people = needs.Select(p => new PersonNeeds(
            p.Person, book.Jobs(p.Person), p.Needs.Weakest, p.Needs.Words.Count(w => w.Word == SkillWord.Safe), [.. Habits.ForLead(history, p.Person)]));
        var nobody = needs.SelectMany(p => p.Needs.Words).GroupBy(w => w.Skill)
            .Where(g => g.Count() >= FewestPeople && g.All(w => w.Word is SkillWord.NeedsWork or SkillWord.TooFewYet) && g.Any(w => w.Word == SkillWord.NeedsWork))
            .Select(g => new SharedNeed(g.Key, g.Count(), g.Sum(w => w.Asked), g.Sum(w => w.Right))).OrderByDescending(n => n.Asked);
        return new WorkshopNeeds([.. people], [.. nobody]);
    }
}

/// <summary>What one person needs.</summary>
/// <param name="Person">The name.</param>
/// <param name="Jobs">Jobs that count.</param>
/// <param name="NeedsWork">Skills that need work, the eight weakest, weakest first.</param>
/// <param name="Safe">How many skills are safe.</param>
/// <param name="Habits">Habits that the lead may see.</param>
public sealed record PersonNeeds(string Person, int Jobs, IReadOnlyList<SkillState> NeedsWork, int Safe, IReadOnlyList<HabitState> Habits);
