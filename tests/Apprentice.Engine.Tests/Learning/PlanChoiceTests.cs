using Apprentice.Engine.Learning;
using static Apprentice.Engine.Tests.Learning.Logbook;

namespace Apprentice.Engine.Tests.Learning;

public sealed class PlanChoiceTests
{
    static readonly DateTimeOffset Now = Start.AddDays(30);

    [Fact]
    public void Errors_come_first_then_what_is_longest_due()
    {
        var chosen = PlanChoice.Of([State("late", due: -2), State("later", due: -5), State("missed", due: -1, lastRight: false), State("not-yet", due: 4)], [], 3, Now);
        Assert.Equal([new PlannedSkill(Skill("missed"), PlanReason.Error), new PlannedSkill(Skill("later"), PlanReason.Due), new PlannedSkill(Skill("late"), PlanReason.Due)], chosen);
    }

    [Fact]
    public void Then_the_weakest_that_can_be_learned_then_the_least_safe()
    {
        var chosen = PlanChoice.Of([State("safe", due: 1, low: 0.8), State("hard", due: 3, chance: 0.1, low: 0.46), State("weak", due: 3, chance: 0.6, low: 0.55), State("weaker", due: 9, low: 0.5), State("less", due: 9, low: 0.7)], [], 5, Now);
        Assert.Equal(["weaker", "weak", "hard", "less", "safe"], chosen.Select(c => c.Skill.Id));
        Assert.Equal([PlanReason.Weakest, PlanReason.Weakest, PlanReason.Weakest, PlanReason.Next, PlanReason.Next], chosen.Select(c => c.Reason));
    }

    [Fact]
    public void What_needs_work_comes_again_before_what_is_known() =>
        Assert.Equal(["due", "weak", "weak"], PlanChoice.Of([State("safe", due: 3, low: 0.7), State("weak", due: 5, low: 0.2), State("due", due: -1)], [], 3, Now).Select(c => c.Skill.Id));

    [Fact]
    public void A_new_one_comes_in_a_short_block_and_once_more_among_the_others()
    {
        var chosen = PlanChoice.Of([State("a", due: -1), State("b", due: -2), State("c", due: -3)], [Skill("new"), Skill("newer")], 5, Now);
        Assert.Equal(["c", "new", "new", "b", "new"], chosen.Select(c => c.Skill.Id));
        Assert.Equal(PlanReason.Mixed, chosen[^1].Reason);
    }

    [Fact]
    public void A_short_session_of_someone_with_things_due_brings_nothing_new() =>
        Assert.Equal(["a"], PlanChoice.Of([State("a", due: -1)], [Skill("new")], 1, Now).Select(c => c.Skill.Id));

    [Fact]
    public void On_the_first_day_all_is_new() =>
        Assert.All(PlanChoice.Of([], [Skill("new"), Skill("newer")], 3, Now), c => Assert.Contains(c.Reason, (PlanReason[])[PlanReason.New, PlanReason.Mixed]));

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(10)]
    public void A_session_has_as_many_jobs_as_it_should_have_and_none_follows_itself(int jobs)
    {
        var chosen = PlanChoice.Of([State("a", due: -1), State("b", due: 2), State("c", due: 3, chance: 0.4)], [Skill("new")], jobs, Now);
        Assert.Equal(jobs, chosen.Count);
        Assert.All(chosen.Zip(chosen.Skip(1)).Where(p => p.Second.Reason != PlanReason.New), p => Assert.NotEqual(p.First.Skill, p.Second.Skill));
    }

    static SkillState State(string id, double due, double chance = 0.8, bool lastRight = true, double low = 0.62) =>
        new(Skill(id), 9, 8, 4, chance, low, 0.95, SkillWord.Safe, Now.AddDays(-9), lastRight, Now.AddDays(due));
}
