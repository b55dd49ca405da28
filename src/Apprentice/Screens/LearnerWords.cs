using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>Sentences about what a person can do, how sure they are and what they look out for.</summary>
static class LearnerWords
{
    const double Whole = 0.05;

    /// <summary>A day, or nothing when no time is known.</summary>
    public static string Day(DateTimeOffset now) => StandWords.Day(now);

    /// <summary>A job of a plan.</summary>
    public static string Item(World world, PlanItem item) =>
        item.Skill is { } skill ? SkillList.Name(world, skill) : Words.Of("home.one-job", ("topic", TopicsScreen.Title(world, item.Topic)));

    /// <summary>Why a job is in the plan.</summary>
    public static string Why(World world, PlanItem item) =>
        world.Bench(item.Topic) is { } bench ? Spoken.Lower(new Telling(bench.Topic, []).Of(item.Why)) : "";

    /// <summary>The first habit to look out for, with its evidence; null when there is none.</summary>
    public static string? LookOut(World world) => Habits.Of(world.History, world.Person).FirstOrDefault(h => h.State == HabitStanding.LookOut) is { } habit
        ? $"{Evidence(habit)} {Words.Of("home.key-look-out")}"
        : null;

    /// <summary>The evidence for a habit as a sentence.</summary>
    public static string Evidence(HabitState habit) =>
        Words.Of($"{AimedSets.KeyOf(habit.Habit)}.sentence", ("shown", habit.Shown), ("relevant", habit.Relevant));

    /// <summary>How sure against how right, of answers that were as good as certain to 8 of 10; null without any.</summary>
    public static string? HowSure(SureLevel level)
    {
        if (level.Asked == 0) return null;
        var one = Math.Abs(level.Tenths - Math.Round(level.Tenths)) < Whole && level.Tenths < 9.5;
        var said = one
            ? Words.Of("sure.sentence", ("tenths", (int)Math.Round(level.Tenths)), ("right", level.Right), ("asked", level.Asked))
            : Words.Of("sure.high", ("right", level.Right), ("asked", level.Asked));
        return $"{said} {Words.Of($"sure.word.{level.Word}")}{(level.Few ? " " + Words.Of("sure.few", ("asked", level.Asked)) : "")}";
    }

    /// <summary>Wrong orders now and before.</summary>
    public static string Orders(WrongOrders orders) => orders.JobsBefore == 0
        ? Words.Of(orders.Jobs == 1 ? "orders.one" : "orders.now", ("wrong", orders.Wrong), ("jobs", orders.Jobs))
        : Words.Of("orders.both", ("wrong", orders.Wrong), ("jobs", orders.Jobs), ("wrongbefore", orders.WrongBefore), ("jobsbefore", orders.JobsBefore));
}
