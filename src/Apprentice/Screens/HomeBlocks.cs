using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>What stands on a person's start page.</summary>
static class HomeBlocks
{
    const int Skills = 4;
    const int MixUntil = 10;

    /// <summary>All of it, from top to bottom.</summary>
    public static IEnumerable<Block> Of(World world)
    {
        var done = world.History.JobsOf(world.Person).Where(j => j.Given is not null).ToList();
        if (world.History.Unfinished(world.Person) is { } open) yield return new Block.Text(Left(world, open));
        if (done.Count == 0) yield return new Block.Text(Words.Of("home.none-yet"));
        else foreach (var block in Plan(world)) yield return block;
        yield return new Block.Rule(Drop: true);
        if (done.Count > 0) foreach (var block in Table(world)) yield return block;
        var sentences = Sentences(world, done).ToList();
        if (sentences.Count > 0) yield return new Block.Table([new(""), new("")], [.. sentences.Select(s => new Row("", Marked: false, [s.Label, s.Text]))]);
        if (done.Count < MixUntil) yield return new Block.Text(Words.Of("home.mix"));
    }

    static string Left(World world, PastJob open)
    {
        if (!Start.IsHere(world, open)) return Words.Of("home.left-changed", ("job", open.Started.Job));
        var left = Words.Of("home.left", ("job", open.Started.Job), ("topic", TopicsScreen.Title(world, open.Started.Topic)));
        return world.History.LeftFrom(open) is { Count: > 1 } jobs ? $"{left} {Words.Of(jobs.Count == 2 ? "home.left-one" : "home.left-more", ("n", jobs.Count - 1))}" : left;
    }

    static IEnumerable<Block> Plan(World world)
    {
        if (Start.Placing(world)?.Next is { } next)
            yield return Items(world, Words.Of("home.placing"), [next]);
        else if (Start.PlanOf(world, Start.UsualMinutes) is { } plan)
            yield return Items(world, Words.Of("home.today", ("minutes", plan.Minutes)), plan.Items);
        else
            yield return new Block.Text(Words.Of("home.drawn"));
    }

    static Block.Table Items(World world, string title, IReadOnlyList<PlanItem> items) => new(
        [new(title), new(Words.Of("home.min"), Right: true) { Said = "bench.said-min" }, new(Words.Of("home.why"))],
        [.. items.Select(i => new Row("", Marked: false, [LearnerWords.Item(world, i), Spoken.Minutes(i.Minutes), LearnerWords.Why(world, i)]))]);

    static IEnumerable<Block> Table(World world)
    {
        var all = SkillList.Of(world, world.Person);
        if (all.Count == 0)
        {
            yield return new Block.Text(Words.Of(world.Person is null ? "home.table-nobody" : "home.table-empty"));
            yield break;
        }

        yield return SkillList.Table(world, [.. all.Take(Skills)]);
        if (all.Count > Skills) yield return new Block.Text(Words.Of("home.more-skills", ("n", all.Count - Skills)), 2);
        yield return new Block.Rule(Drop: true);
    }

    static IEnumerable<(string Label, string Text)> Sentences(World world, List<PastJob> done)
    {
        if (Assess.ResultListScreen.Waiting(world) is { } waiting) yield return (Words.Of("home.label-tests"), waiting);
        if (LearnerWords.LookOut(world) is { } habit) yield return (Words.Of("home.label-look-out"), habit);
        if (LearnerWords.HowSure(Sureness.Of(world.History, world.Person).High) is { } sure) yield return (Words.Of("home.label-sure"), sure);
        if (done.Any(j => j.Counts)) yield return (Words.Of("home.label-orders"), LearnerWords.Orders(WrongOrders.Of(world.History, world.Person)));
        if (PermissionWords.Next(world) is { } permission) yield return (Words.Of("home.label-permission"), permission);
        if (NewsScreen.All(world).Count(n => !n.IsSeen) is > 0 and var news) yield return (Words.Of("home.label-news"), Words.Of("home.news", ("n", news)));
        if (world.History.Workshop is { } workshop) yield return (workshop.Lead, Words.Of("home.lead-sees"));
    }
}
