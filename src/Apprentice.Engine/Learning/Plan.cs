using Apprentice.Engine.Grading;

namespace Apprentice.Engine.Learning;

/// <summary>A planned session.</summary>
/// <param name="Minutes">Minutes asked for.</param>
/// <param name="Items">What to do, in order; at least one.</param>
public sealed record Plan(int Minutes, IReadOnlyList<PlanItem> Items);

/// <summary>What makes a job of a session.</summary>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Draw">Request and seed. When the request is not met use <see cref="Mix.Plain"/>.</param>
public sealed record PlannedJob(string Topic, Draw Draw);

/// <summary>One job of a session with its reason.</summary>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Draw">Request and seed of the job. When the request is not met use <see cref="Mix.Plain"/>.</param>
/// <param name="Skill">The skill it is for, or null for an ordinary job.</param>
/// <param name="Minutes">About how long, minutes.</param>
/// <param name="Why">Why it is there: a key under <c>plan.why.</c> with its values.</param>
public sealed record PlanItem(string Topic, Draw Draw, SkillKey? Skill, double Minutes, Remark Why)
{
    /// <summary>The job alone.</summary>
    public PlannedJob Job => new(Topic, Draw);
}

/// <summary>Six jobs that place an experienced person.</summary>
/// <param name="Done">How many of them were answered.</param>
/// <param name="Sound">How many were sound.</param>
/// <param name="Next">The next one, or null when all are done.</param>
/// <param name="Placed">Topics in which lessons may be skipped: both of their jobs sound; empty until all are done.</param>
public sealed record Placement(int Done, int Sound, PlanItem? Next, IReadOnlyList<string> Placed);
