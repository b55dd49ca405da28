using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>A job on the bench with what was looked at so far.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Bench">Its topic.</param>
/// <param name="Made">The case.</param>
/// <param name="Guided">True when the program helps; it counts for nothing.</param>
/// <param name="Step">How much the answer asks: 1, 2 or 3.</param>
/// <param name="Looks">Looks in the order taken.</param>
sealed record BenchJob(int Number, Workbench Bench, Case Made, bool Guided, int Step, IReadOnlyList<Look> Looks)
{
    /// <summary>Its place in a paper that is sat, or null in practice.</summary>
    public SitPlace? Sat { get; init; }

    /// <summary>Its number in the log of practice, or null in a sitting.</summary>
    public int? Logged => Sat is null ? Number : null;

    /// <summary>The session it belongs to, or null.</summary>
    public Session? Session { get; init; }

    /// <summary>What the learner holds for likeliest, where it is asked after each check; else null.</summary>
    public Opinion? Opinion { get; init; }

    /// <summary>How sure the learner was before and after the checks so far.</summary>
    public IReadOnlyList<LogEntry.Updated> Updates { get; init; } = [];

    /// <summary>The topic.</summary>
    public Topic Topic => Bench.Topic;

    /// <summary>What the customer wants.</summary>
    public Want Want => Topic.Wants.First(w => string.Equals(w.Id, Made.Job.Request.Want, StringComparison.Ordinal));

    /// <summary>How the job is seen.</summary>
    public Channel Offer => Made.Job.Request.Offer;

    /// <summary>Clues on offer, safety looks last.</summary>
    public IReadOnlyList<Clue> OnOffer => [.. Made.Job.Bench.Select(Clue)];

    /// <summary>What was told and seen: the opening first, then the looks in order.</summary>
    public IReadOnlyList<Finding> Findings => [.. Made.Job.Told, .. Looks.Select(Seen)];

    /// <summary>True when the learner reads scales and plates and says what they see: from the fourth job of a topic, on the bench.</summary>
    public bool ReadsScales => !Guided && Step > 1 && Offer == Channel.Bench;

    /// <summary>Bench minutes: second readings and safety looks are not counted, what must come off only once.</summary>
    public double Minutes => Looks.Select(l => l.Clue).Distinct(StringComparer.Ordinal).Select(Clue).Sum(MinutesOf);

    /// <summary>Bench minutes of a check: what it took, or what it would take now, with what must come off first.</summary>
    public double MinutesOf(Clue clue) => clue.Safety ? 0 : clue.Minutes + (ComesOff(clue)?.Minutes ?? 0);

    /// <summary>What comes off for a check on the bench, or null: nothing, or what an earlier check took off.</summary>
    public Access? ComesOff(Clue clue)
    {
        if (Offer != Channel.Bench || clue.Access is not { } access) return null;
        var earlier = Looks.Select(l => l.Clue).TakeWhile(c => !string.Equals(c, clue.Id, StringComparison.Ordinal)).Select(Clue);
        return earlier.Any(c => !c.Safety && string.Equals(c.Access, access, StringComparison.Ordinal))
            ? null
            : Topic.Accesses.First(a => string.Equals(a.Id, access, StringComparison.Ordinal));
    }

    /// <summary>Questions left, or null for no limit.</summary>
    public int? Left => Made.Job.Request.Questions - Looks.Count;

    /// <summary>What the findings amount to.</summary>
    public Reasoning Reasoning => Bench.Reason(Bench.EnquiryOf(Made.Job) with { OnOffer = Left <= 0 ? [] : Made.Job.Bench }, Findings);

    /// <summary>The clue of a short name.</summary>
    public Clue Clue(string id) => Topic.Clues.First(c => string.Equals(c.Id, id, StringComparison.Ordinal));

    /// <summary>How often a clue was looked at.</summary>
    public int Times(string clue) => Looks.Count(l => string.Equals(l.Clue, clue, StringComparison.Ordinal));

    /// <summary>This job with one more look at a clue.</summary>
    public BenchJob Looking(string clue) => this with { Looks = [.. Looks, new Look(clue, Times(clue))] };

    /// <summary>This job with one more look at a clue, read by the learner.</summary>
    public BenchJob Reading(string clue, OwnReading own) =>
        this with { Looks = [.. Looks, new Look(clue, Times(clue), own.Millimetres, own.Datum)] };

    /// <summary>This job with one more look at a clue, of which the learner says what it is.</summary>
    public BenchJob Finding(string clue, OwnLook own) =>
        this with { Looks = [.. Looks, new Look(clue, Times(clue), OwnFinding: own.Finding, Writing: own.Writing, OwnBearing: own.Bearing)] };

    // What the learner read counts as told: from where it was taken, or off which writing, is theirs to know.
    Finding Seen(Look look)
    {
        var shown = Bench.Shown(Made, look);
        if (look.OwnFinding is { } finding && Made.Look(look.Clue, look.Nth).Seen is Seen.Named) return shown with { Seen = new Seen.Named(finding), Writing = null };
        return look.OwnReading is { } own && shown.Seen is Seen.Reading ? shown with { Seen = new Seen.Reading(own), Datum = null } : shown;
    }

    /// <summary>The grade of an answer.</summary>
    public Grade Grade(Given given) => Bench.Grade(Made, given.With(Looks));

    /// <summary>What a graded answer shows, for the log.</summary>
    /// <param name="given">The answer.</param>
    /// <param name="grade">Its grade.</param>
    public IReadOnlyList<Observed> Observe(Given given, Grade grade) => Observations.Of(Bench, Made, given.With(Looks), grade, Updates);

    /// <summary>A new job with its entry for the log.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="bench">The topic.</param>
    /// <param name="guided">True for a person's first job.</param>
    /// <param name="planned">Request and seed that a plan made, or null.</param>
    public static (BenchJob Job, LogEntry Entry) New(World world, Workbench bench, bool guided, Draw? planned = null)
    {
        var luck = world.History.Luck ?? 0;
        var draw = guided ? Mix.First(bench.Topic, world.History.NextJob, luck) : planned ?? Mix.Next(bench.Topic, world.History, luck);
        if (guided && planned is not null) draw = draw with { Request = draw.Request with { Want = planned.Request.Want } };
        var made = bench.Make(draw.Request, draw.Seed);
        if (made is null)
        {
            draw = Mix.Plain(draw);
            made = bench.Make(draw.Request, draw.Seed) ?? throw new InvalidOperationException($"The topic {bench.Topic.Id} makes no bikes.");
        }
        var job = new BenchJob(world.History.NextJob, bench, made, guided, StepOf(world.History.Done(world.Person, bench.Topic.Id)), []);
        return (job, new LogEntry.JobStarted(
            job.Number, world.Person, bench.Topic.Id, bench.Topic.Version, draw.Seed, draw.Request, guided, job.Step));
    }

    /// <summary>A job of the log on the bench again, or null when its topic is not here or was changed since.</summary>
    public static BenchJob? Again(World world, PastJob past)
    {
        var started = past.Started;
        if (world.Bench(started.Topic) is not { } bench || !string.Equals(bench.Topic.Version, started.Version, StringComparison.Ordinal)) return null;
        return bench.Make(started.Request, started.Seed) is { } made
            ? new BenchJob(started.Job, bench, made, started.Guided, started.Step, past.Looks) { Updates = past.Updates }
            : null;
    }

    /// <summary>How much an answer asks after so many jobs of a topic: from the fourth also what settled it, from the tenth also what was set aside and why.</summary>
    public static int StepOf(int done) => done switch { < 3 => 1, < 9 => 2, _ => 3 };
}

/// <summary>A place in a paper that is sat.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Place">The place.</param>
sealed record SitPlace(string Paper, int Place);
