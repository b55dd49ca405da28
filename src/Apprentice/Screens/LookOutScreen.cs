using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>What to look out for: habits with their evidence, all skills, and charts.</summary>
sealed record LookOutScreen : ChoiceScreen
{
    /// <summary>The page; from now on the person has been shown these habits.</summary>
    public static Turn Open(World world) => Turn.To(
        new LookOutScreen(),
        [
            .. world.Person is { } person
                ? Known(world).Where(h => !world.History.HabitsTold.Contains((person, h.Habit))).Select(h => (LogEntry)new LogEntry.HabitTold(person, h.Habit))
                : Array.Empty<LogEntry>(),
        ]);

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var known = Known(world);
        var gone = Habits.Of(world.History, world.Person).Where(h => h.State == HabitStanding.Gone).ToList();
        return new Page(
            Words.Of("lookout.title"),
            world.Who,
            [
                new Block.Text(Words.Of(known.Count == 0 ? "lookout.none" : "lookout.ask")),
                .. known.SelectMany(h => new Block[] { new Block.Gap(Drop: true), new Block.Text(LearnerWords.Evidence(h)), new Block.Text(Words.Of($"{AimedSets.KeyOf(h.Habit)}.look"), 2) }),
                .. gone.Select(h => new Block.Text(Words.Of("lookout.gone", ("habit", Words.Of($"{AimedSets.KeyOf(h.Habit)}.name"))))),
                new Block.Gap(Drop: true),
                new Block.Table([new("")], Rows(
                [
                    .. known.Select(h => (string[])[Words.Of("lookout.habit", ("habit", Words.Of($"{AimedSets.KeyOf(h.Habit)}.name")))]),
                    [Words.Of("lookout.skills")],
                    [Words.Of("lookout.charts")],
                ])),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Known(world).Count + 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var known = Known(world);
        return Turn.To(line < known.Count ? new HabitScreen(known[line].Habit, this) : line == known.Count ? new SkillsScreen(this) : new ChartsScreen(this));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new HomeScreen());

    static List<HabitState> Known(World world) => [.. Habits.Of(world.History, world.Person).Where(h => h.State == HabitStanding.LookOut)];
}
