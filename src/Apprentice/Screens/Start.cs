using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>Where the program opens, and where a job ends.</summary>
static class Start
{
    /// <summary>Minutes of a session when nothing else is chosen.</summary>
    public const int UsualMinutes = 8;

    /// <summary>The first screen: the four choices for a new file, the question who it is where several people work, else the start page.</summary>
    public static Screen Of(World world)
    {
        var history = world.History;
        if (history.Jobs.Count == 0 && history.People.Count == 0 && history.Workshop is null) return new FirstStartScreen();
        return history.People.Count > 1 || (history.Current is { } person && history.Pins.ContainsKey(person)) ? new WhoScreen() : new HomeScreen();
    }

    /// <summary>The page to go back to from anywhere.</summary>
    public static Screen Home(World world) =>
        world.History.Jobs.Count == 0 && world.History.People.Count == 0 && world.History.Workshop is null ? new FirstStartScreen() : new HomeScreen();

    /// <summary>A new job on the bench.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="topic">Short name of the topic, or null to draw one.</param>
    public static Turn Job(World world, string? topic = null)
    {
        var guided = !world.History.JobsOf(world.Person).Any();
        var bench = topic is not null ? world.Bench(topic) : guided ? Easiest(world) : Drawn(world);
        if (bench is null) return Turn.To(new FirstStartScreen());
        var (job, entry) = BenchJob.New(world, bench, guided);
        return Turn.To(BenchScreen.Of(job), entry);
    }

    /// <summary>The plan of a person's next session, or null where nothing can be planned.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="minutes">Minutes to spend.</param>
    public static Plan? PlanOf(World world, int minutes) => world.Person is null || world.Practised.Count == 0
        ? null
        : Planner.Of(world.History, [.. world.Practised.Select(b => b.Topic)], world.Person, minutes, world.Now);

    /// <summary>The job that the person at the machine can go on with, or null: one of a topic that is not here or was changed since cannot be.</summary>
    public static PastJob? Open(World world) => world.History.Unfinished(world.Person) is { } past && IsHere(world, past) ? past : null;

    /// <summary>True when the topic of a job is here as it was.</summary>
    public static bool IsHere(World world, PastJob past) => string.Equals(world.Bench(past.Started.Topic)?.Topic.Version, past.Started.Version, StringComparison.Ordinal);

    /// <summary>Where the person at the machine stands in the jobs that place them, or null.</summary>
    public static Placement? Placing(World world) => world.Person is { } person
        ? Planner.PlacementOf(world.History, world.Topics, person)
        : null;

    /// <summary>Starts what is planned: the first job ever with help, a placement that is under way, else the plan; for nobody known a job that is drawn.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="minutes">Minutes to spend.</param>
    public static Turn Today(World world, int minutes = UsualMinutes)
    {
        if (!world.History.JobsOf(world.Person).Any() || PlanOf(world, minutes) is not { } plan) return Job(world);
        return minutes == UsualMinutes && Placing(world)?.Next is { } next ? new Session([next.Job], Places: true).Begin(world) : Planned(world, plan);
    }

    /// <summary>The jobs of a plan.</summary>
    public static Turn Planned(World world, Plan plan) => new Session([.. plan.Items.Select(i => i.Job)]).Begin(world);

    static Engine.Workbench? Easiest(World world) => world.Practised
        .OrderBy(b => b.Topic.Wants.Min(w => w.Asks.Count)).ThenBy(b => b.Topic.Parts.Count).ThenBy(b => b.Topic.Clues.Count).FirstOrDefault();

    static Engine.Workbench? Drawn(World world) => world.Practised.Count == 0
        ? null
        : world.Practised[Mix.Topic(world.Practised.Count, world.History.NextJob, world.History.Luck ?? 0)];
}
