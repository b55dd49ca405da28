using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Assessing;

/// <summary>A paper kit: jobs on paper in a format of their own. The findings are given; what is chosen is the answer, the decision and the next check. Its results stand apart from those of papers.</summary>
/// <param name="Id">Number of the kit; it says nothing about the seeds.</param>
/// <param name="Permission">The permission.</param>
/// <param name="Jobs">Jobs in order of place.</param>
public sealed record Kit(string Id, string Permission, IReadOnlyList<KitJob> Jobs)
{
    /// <summary>Jobs of a kit. Judgement: about an hour.</summary>
    public const int Usual = 20;

    /// <summary>When a kit of so many jobs is passed: at most one job in ten not sound. Judgement; its exact chances are printed.</summary>
    public static StagedRule RuleOf(int jobs) => new([new StageCheck(jobs, jobs / 10, (jobs / 10) + 1)]);
}

/// <summary>A job of a kit.</summary>
/// <param name="Place">Place, from 1.</param>
/// <param name="Family">Its sort.</param>
/// <param name="Version">Version of the topic.</param>
/// <param name="Seed">Seed of the case: for sealed files only.</param>
/// <param name="Given">Findings given: what was told, then looks.</param>
/// <param name="Questions">Questions in order: parts, order lines, next check.</param>
public sealed record KitJob(int Place, JobFamily Family, string Version, ulong Seed, IReadOnlyList<Finding> Given, IReadOnlyList<KitQuestion> Questions)
{
    /// <summary>What is wrong with digits as an answer, a sentence, or null.</summary>
    /// <param name="digits">A digit a question, 0 for none.</param>
    public string? Fault(string digits)
    {
        if (digits.Length != Questions.Count) return $"job {Place} has {Questions.Count} questions: type {Questions.Count} digits, 0 for a question that was left out";
        for (var i = 0; i < digits.Length; i++)
        {
            if (!char.IsAsciiDigit(digits[i]) || digits[i] - '0' > Questions[i].Options.Count) return $"question {i + 1} of job {Place} has the lines 1 to {Questions[i].Options.Count}; \"{digits[i]}\" is none of them";
        }

        return null;
    }

    /// <summary>The mark of an answer in digits.</summary>
    /// <exception cref="ArgumentException">See <see cref="Fault"/>.</exception>
    public KitMark Mark(string digits)
    {
        if (Fault(digits) is { } fault) throw new ArgumentException(fault, nameof(digits));
        var chosen = Questions.Select((q, i) => digits[i] == '0' ? null : q.Options[digits[i] - '1']).ToList();
        var hurts = chosen.Any(o => o is { Hurts: true });
        return new KitMark(
            Place, Family.Key, Version, digits, !hurts && Questions.Zip(chosen).All(x => x.First.Ask == KitAsk.Next || x.Second is { Right: true }), hurts,
            Questions.Zip(chosen).All(x => x.First.Ask != KitAsk.Next || x.Second is { Right: true }));
    }
}

/// <summary>What a question of a kit asks.</summary>
public enum KitAsk
{
    /// <summary>Which kind a part is, on these findings.</summary>
    Part,

    /// <summary>What to do for an order line.</summary>
    Order,

    /// <summary>Which check comes next.</summary>
    Next,
}

/// <summary>A question of a kit.</summary>
/// <param name="Ask">What it asks.</param>
/// <param name="Subject">The part or the order line; empty for the next check.</param>
/// <param name="Options">Lines to choose from, at most nine.</param>
public sealed record KitQuestion(KitAsk Ask, string Subject, IReadOnlyList<KitOption> Options);

/// <summary>A line to choose.</summary>
/// <param name="Kinds">Of a part: the kinds of the class, or null for "not settled".</param>
/// <param name="Choice">Of an order line: the choice, or null for "wait, take the check first".</param>
/// <param name="Clue">Of the next check: the clue, or null for none.</param>
/// <param name="Right">True when it is accepted.</param>
/// <param name="Hurts">True when somebody could be hurt.</param>
public sealed record KitOption(IReadOnlyList<string>? Kinds, Choice? Choice, string? Clue, bool Right, bool Hurts);

/// <summary>The mark of a job of a kit.</summary>
/// <param name="Place">Its place.</param>
/// <param name="Family">Key of its sort.</param>
/// <param name="Version">Version of the topic.</param>
/// <param name="Digits">The answer as it was entered.</param>
/// <param name="Sound">True when every part and every order is right and nobody could be hurt.</param>
/// <param name="SafetyError">True when somebody could be hurt.</param>
/// <param name="NextRight">True when the next check is right: a line of its own.</param>
public sealed record KitMark(int Place, string Family, string Version, string Digits, bool Sound, bool SafetyError, bool NextRight);

/// <summary>What somebody did with a kit. It is never counted with papers.</summary>
/// <param name="Kit">Number of the kit.</param>
/// <param name="Permission">The permission.</param>
/// <param name="Candidate">Who.</param>
/// <param name="By">Who entered it.</param>
/// <param name="At">When it was entered.</param>
/// <param name="Marks">Marks in order of place.</param>
public sealed record KitResult(string Kit, string Permission, string Candidate, string By, DateTimeOffset At, IReadOnlyList<KitMark> Marks)
{
    /// <summary>Sound jobs.</summary>
    public int Sound => Marks.Count(m => m.Sound);

    /// <summary>Jobs in which somebody could be hurt.</summary>
    public int SafetyErrors => Marks.Count(m => m.SafetyError);

    /// <summary>Right next checks.</summary>
    public int NextRight => Marks.Count(m => m.NextRight);

    /// <summary>True when it is passed: by the rule of the kit, and without a safety error.</summary>
    public bool Passed => SafetyErrors == 0 && Engine.Assessing.Kit.RuleOf(Marks.Count).Decide(Marks.Count, Marks.Count - Sound) == StageDecision.Passed;
}
