using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;

namespace Apprentice.Engine.Learning;

/// <summary>Something that happened, as the append-only log keeps it: the only stored truth.</summary>
public abstract partial record LogEntry
{
    LogEntry()
    {
    }

    /// <summary>First start on this file.</summary>
    /// <param name="Luck">A number drawn once; with the number of a job it decides which bike comes next.</param>
    public sealed record Began(long Luck) : LogEntry;

    /// <summary>A person gave a name.</summary>
    /// <param name="Name">The name; names are unique on one file.</param>
    /// <param name="Job">Number of the job that the person did before giving it, or null.</param>
    public sealed record PersonAdded(string Name, int? Job = null) : LogEntry;

    /// <summary>A name was corrected: the same person is called so from now on, also in what was done before.</summary>
    /// <param name="Person">The name until now.</param>
    /// <param name="Name">The name from now on.</param>
    public sealed record PersonRenamed(string Person, string Name) : LogEntry;

    /// <summary>A person sat down at this machine.</summary>
    /// <param name="Name">The name, or null for nobody.</param>
    public sealed record SatDown(string? Name) : LogEntry;

    /// <summary>A PIN was set or taken away. It is a courtesy among people who share a machine, not encryption.</summary>
    /// <param name="Person">Whose: a person, or the lead of the workshop.</param>
    /// <param name="Hash">The PIN as a salted PBKDF2 hash in one text, or null for no PIN.</param>
    public sealed record PinSet(string Person, string? Hash) : LogEntry;

    /// <summary>A session of several jobs began; the first of them follows. So a job that was put aside goes on with what was planned after it.</summary>
    /// <param name="Person">Whose, or null for nobody known.</param>
    /// <param name="Jobs">Its jobs, in order.</param>
    public sealed record SessionPlanned(string? Person, IReadOnlyList<PlannedJob> Jobs) : LogEntry;

    /// <summary>A job was put on the bench.</summary>
    /// <param name="Job">Number of the job on this file, from 1.</param>
    /// <param name="Person">Who does it, or null for nobody known.</param>
    /// <param name="Topic">Topic.</param>
    /// <param name="Version">Version of the topic.</param>
    /// <param name="Seed">Seed of the case.</param>
    /// <param name="Request">Request of the case.</param>
    /// <param name="Guided">True when the program helped; such a job counts for nothing.</param>
    /// <param name="Step">How much the answer asks: 1, 2 or 3.</param>
    public sealed record JobStarted(
        int Job, string? Person, string Topic, string Version, ulong Seed, CaseRequest Request, bool Guided, int Step) : LogEntry;

    /// <summary>A check was taken.</summary>
    /// <param name="Job">Number of the job.</param>
    /// <param name="Look">The look.</param>
    /// <param name="Shown">What it showed.</param>
    public sealed record Looked(int Job, Look Look, Finding Shown) : LogEntry;

    /// <summary>An answer was handed in and graded.</summary>
    /// <param name="Job">Number of the job.</param>
    /// <param name="Given">The answer without its looks, which have their own entries.</param>
    /// <param name="Verdict">The grade in short.</param>
    public sealed record Answered(int Job, Given Given, Verdict Verdict) : LogEntry
    {
        /// <summary>What the answer showed; empty in entries older than <see cref="Observations"/>.</summary>
        public IReadOnlyList<Observed> Observed { get; init; } = [];
    }

    /// <summary>How sure the learner was of one and the same kind before and after a check.</summary>
    /// <param name="Job">Number of the job.</param>
    /// <param name="Look">Index of the look, from 0.</param>
    /// <param name="Part">The part asked about.</param>
    /// <param name="Kind">The kind asked about, "none" for none of these: the one that the learner held for likeliest before the check.</param>
    /// <param name="Before">0 to 10 of ten before it; 0 is as good as certain that it is not.</param>
    /// <param name="After">0 to 10 of ten after it.</param>
    public sealed record Updated(int Job, int Look, string Part, string Kind, int Before, int After) : LogEntry;

    /// <summary>A habit was shown to the learner.</summary>
    /// <param name="Person">Who.</param>
    /// <param name="Habit">The habit.</param>
    public sealed record HabitTold(string Person, Habit Habit) : LogEntry;

    /// <summary>A learner began a set of jobs aimed at a habit; the jobs that follow are its.</summary>
    /// <param name="Person">Who.</param>
    /// <param name="Habit">The habit.</param>
    public sealed record AimedAt(string Person, Habit Habit) : LogEntry;

    /// <summary>"I can do this already": the six jobs that follow place the person.</summary>
    /// <param name="Person">Who.</param>
    /// <param name="Topics">Topics to be placed in, three at most; one gets six jobs, two three each, three two each.</param>
    public sealed record PlacementAsked(string Person, IReadOnlyList<string> Topics) : LogEntry;

    /// <summary>The lead chose the topics that count this month.</summary>
    /// <param name="Topics">The topics; empty for all.</param>
    public sealed record TopicsChosen(IReadOnlyList<string> Topics) : LogEntry;

    /// <summary>"This is wrong": a line for the lead.</summary>
    /// <param name="Job">Number of the job.</param>
    /// <param name="Text">The line.</param>
    public sealed record Questioned(int Job, string Text) : LogEntry;

    /// <summary>A lesson was opened.</summary>
    /// <param name="Person">Who, or null for nobody known.</param>
    /// <param name="Lesson">Its path under lessons: "rim-size/bed-tape.md".</param>
    public sealed record LessonRead(string? Person, string Lesson) : LogEntry;

    /// <summary>"This is wrong" in a lesson: a line for the lead.</summary>
    /// <param name="Person">Who, or null for nobody known.</param>
    /// <param name="Lesson">Path of the lesson.</param>
    /// <param name="Section">Anchor of the section.</param>
    /// <param name="Text">The line.</param>
    public sealed record LessonQuestioned(string? Person, string Lesson, string Section, string Text) : LogEntry;

    /// <summary>A pause.</summary>
    /// <param name="Job">Number of the job on the bench, or null for none.</param>
    public sealed record Paused(int? Job) : LogEntry;

    /// <summary>The workshop was set up, or its set-up changed.</summary>
    /// <param name="Name">Name of the workshop.</param>
    /// <param name="Lead">Who leads it.</param>
    /// <param name="Topics">Topics that are practised, in the topics' order.</param>
    public sealed record WorkshopSet(string Name, string Lead, IReadOnlyList<string> Topics) : LogEntry;

    /// <summary>A drill of one skill began.</summary>
    /// <param name="Drill">Number of the drill on this file, from 1.</param>
    /// <param name="Person">Who does it, or null for nobody known.</param>
    /// <param name="Skill">Short name of the skill.</param>
    /// <param name="Seed">Seed of its items.</param>
    public sealed record DrillStarted(int Drill, string? Person, string Skill, ulong Seed) : LogEntry;

    /// <summary>An item of a drill was shown.</summary>
    /// <param name="Drill">Number of the drill.</param>
    /// <param name="Item">What was shown.</param>
    public sealed record DrillAsked(int Drill, DrillDraw Item) : LogEntry;

    /// <summary>The item of a drill that was shown last was answered.</summary>
    /// <param name="Drill">Number of the drill.</param>
    /// <param name="Given">What was given, as it was said or typed.</param>
    /// <param name="Right">True when it was right.</param>
    public sealed record DrillAnswered(int Drill, string Given, bool Right) : LogEntry;

    /// <summary>A drill was ended or left.</summary>
    /// <param name="Drill">Number of the drill.</param>
    public sealed record DrillEnded(int Drill) : LogEntry;

    /// <summary>A real part was measured.</summary>
    /// <param name="Series">Number of the series on this file, from 1.</param>
    /// <param name="Person">Who measured, or null for nobody known.</param>
    /// <param name="Set">Short name of the set of parts.</param>
    /// <param name="Part">Number of the part, from 1.</param>
    /// <param name="Nth">1 for the first reading of the part, 2 for the second.</param>
    /// <param name="Millimetres">The reading, mm, not rounded.</param>
    /// <param name="Text">The reading as it was typed.</param>
    public sealed record RealPartRead(int Series, string? Person, string Set, int Part, int Nth, double Millimetres, string Text) : LogEntry;
}

/// <summary>An entry with its time.</summary>
/// <param name="At">When it happened.</param>
/// <param name="What">What happened.</param>
public sealed record Logged(DateTimeOffset At, LogEntry What);

/// <summary>What a learner concluded: an <see cref="Answer"/> without its looks.</summary>
/// <param name="Parts">One answer per part asked.</param>
/// <param name="Orders">One choice per order line.</param>
/// <param name="SettledBy">The clue that settled it, "none", or null when not asked.</param>
/// <param name="SetAside">The clue set aside, "none", or null when not asked.</param>
/// <param name="Story">What happened to the bike, "none", or null when not asked.</param>
/// <param name="Forced">True when a part was forced.</param>
public sealed record Given(
    IReadOnlyList<PartAnswer> Parts, IReadOnlyList<Choice> Orders, string? SettledBy, string? SetAside, string? Story, bool Forced)
{
    /// <summary>The whole answer.</summary>
    /// <param name="looks">Looks in the order taken.</param>
    public Answer With(IReadOnlyList<Look> looks) => new()
    {
        Looks = looks,
        Parts = Parts,
        Orders = Orders,
        SettledBy = SettledBy,
        SetAside = SetAside,
        Story = Story,
        Forced = Forced,
    };
}

/// <summary>A grade in short.</summary>
/// <param name="InShort">Its opening sentence.</param>
/// <param name="Marks">Mark and rule per part of the grade, in the grade's order.</param>
/// <param name="Sound">True when the answer was sound.</param>
/// <param name="SafetyError">True when somebody could have been hurt.</param>
public sealed record Verdict(InShort InShort, IReadOnlyList<AspectMark> Marks, bool Sound, bool SafetyError)
{
    /// <summary>The short form of a grade.</summary>
    public static Verdict Of(Grade grade) => new(
        grade.InShort, [.. grade.Parts.Select(p => new AspectMark(p.Aspect, p.Mark, p.Rule.Key))], grade.Sound, grade.SafetyError);
}

/// <summary>The mark of one part of a grade.</summary>
/// <param name="Aspect">What it judges.</param>
/// <param name="Mark">The mark.</param>
/// <param name="Rule">Key of its rule in the words file.</param>
public sealed record AspectMark(Aspect Aspect, double Mark, string Rule);
