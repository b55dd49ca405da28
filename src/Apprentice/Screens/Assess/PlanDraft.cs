using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens.Assess;

/// <summary>A test plan while it is looked at and changed.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Wishes">How its twelve were wished to be mixed and seen.</param>
/// <param name="Forecast">What is to be expected of such jobs.</param>
/// <param name="Line">The pass line, or null while nobody has judged.</param>
sealed record PlanDraft(TestPlan Plan, PlanWishes Wishes, PlanForecast Forecast, PassLine? Line)
{
    const int CasesEach = 5;
    const ulong Seed = 20;

    /// <summary>Topics that a plan may take: none in draft.</summary>
    public static IReadOnlyList<Workbench> Ready(World world) => [.. world.Practised.Where(b => b.Topic.State != TopicState.Draft)];

    /// <summary>A plan with everything filled in.</summary>
    /// <param name="world">Topics at hand.</param>
    /// <param name="permission">The permission.</param>
    /// <param name="topics">Its topics, none in draft.</param>
    /// <param name="wishes">Mix and sight, or null for the usual.</param>
    public static PlanDraft Of(World world, string permission, IReadOnlyList<string> topics, PlanWishes? wishes = null)
    {
        var benches = BenchesOf(world, topics);
        var plan = new TestPlanner(benches).Plan(permission, wishes);
        return new PlanDraft(plan, wishes ?? PlanWishes.Usual, new TestPlanner(benches).Forecast(plan, CasesEach, Seed), null);
    }

    /// <summary>A plan that was saved; null when one of its topics is not here, is a draft, or was changed since.</summary>
    public static PlanDraft? Saved(World world, TestPlan plan)
    {
        var benches = BenchesOf(world, [.. plan.Topics.Select(t => t.Id)]);
        if (benches.Count < plan.Topics.Count || benches.Any(b => b.Topic.State == TopicState.Draft || !plan.Topics.Contains(new PlanTopic(b.Topic.Id, b.Topic.Version)))) return null;
        return new PlanDraft(plan, PlanWishes.Usual, new TestPlanner(benches).Forecast(plan, CasesEach, Seed), LineOf(world, plan.Permission));
    }

    /// <summary>The judgements that were kept for a permission, or null.</summary>
    public static PassLine? LineOf(World world, string permission) => world.History.Assessments.PassLines.FirstOrDefault(l => l.Permission == permission)?.Line;

    /// <summary>This plan made anew with other topics or wishes; its times, rule and name stay, and judgements stay where the sorts of jobs are the same.</summary>
    public PlanDraft Anew(World world, IReadOnlyList<string> topics, PlanWishes wishes)
    {
        var fresh = Of(world, Plan.Permission, topics, wishes);
        var plan = fresh.Plan with { Rule = Plan.Rule, MinutesPerJob = Plan.MinutesPerJob, RealBikes = Plan.RealBikes };
        return fresh with { Plan = plan, Line = Line is { } line && line.Faults(plan).Count == 0 ? line : null };
    }

    static List<Workbench> BenchesOf(World world, IReadOnlyList<string> topics) => [.. world.Benches.Where(b => topics.Contains(b.Topic.Id, StringComparer.Ordinal))];
}
