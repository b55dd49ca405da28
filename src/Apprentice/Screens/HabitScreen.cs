using System.Globalization;
using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>One habit: the jobs in which it showed, and six jobs for it.</summary>
/// <param name="Habit">The habit.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record HabitScreen(Habit Habit, Screen Below) : ChoiceScreen
{
    const int MostJobs = 8;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var key = AimedSets.KeyOf(Habit);
        return new Page(
            Words.Of("habits.title"),
            world.Who,
            [
                new Block.Text(LearnerWords.Evidence(State(world))),
                new Block.Text(Words.Of($"{key}.look")),
                new Block.Gap(Drop: true),
                new Block.Table([new(""), new("")], Rows([[Words.Of("habits.aimed"), Words.Of("habits.aimed-note")], .. Jobs(world).Select(j => Cells(world, j))])),
                new Block.Gap(Drop: true),
                new Block.Text(Words.Of("habits.lead")),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Jobs(world).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line > 0) return PastScreen.Open(world, Jobs(world)[line - 1], this);
        var items = AimedSets.Of(world.History, [.. world.Practised.Select(b => b.Topic)], Habit);
        if (items.Count == 0 || world.Person is not { } person) return Turn.To(this);
        var turn = new Session([.. items.Select(i => i.Job)]).Begin(world);
        return turn with { Entries = [new LogEntry.AimedAt(person, Habit), .. turn.Entries] };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    HabitState State(World world) => Habits.Of(world.History, world.Person)[(int)Habit];

    List<PastJob> Jobs(World world) => [.. State(world).Evidence.Reverse().Take(MostJobs).Select(n => world.History.Jobs[n - 1])];

    static string[] Cells(World world, PastJob job) =>
    [
        Words.Of("habits.job", ("job", job.Started.Job)),
        $"{TopicsScreen.Title(world, job.Started.Topic)}, {(job.Ended ?? job.At).ToString("d MMM", CultureInfo.InvariantCulture)}",
    ];
}
