namespace Apprentice.Engine.Learning;

/// <summary>Which item of a drill comes next, and what may be said of the answers so far.</summary>
/// <remarks>That a missed item comes back after two or three others, that help fades after three right in a row and that the clock stays hidden until 8 of the last 10 were right are judgement.</remarks>
public static class DrillPlan
{
    /// <summary>So many answers are looked back on.</summary>
    public const int Window = 10;

    const int FewestBetween = 2;
    const int RightForTime = 8;
    const int RightForAlone = 3;

    /// <summary>The next item: one that was missed two or three items ago, else a new one.</summary>
    /// <param name="drill">The drill so far.</param>
    /// <param name="families">Sorts of item of the skill, at least one.</param>
    /// <param name="sameAgain">True when a missed item comes back as it was; false when it comes back with new figures.</param>
    public static DrillDraw Next(PastDrill drill, IReadOnlyList<string> families, bool sameAgain)
    {
        var number = drill.Answers.Count + 1;
        var dice = new Dice(unchecked((long)drill.Started.Seed), number);
        var family = families[dice.Below(families.Count)];
        var seed = dice.Seed();
        if (Due(drill, number) is not { } missed) return new DrillDraw(family, seed, null);
        var item = drill.Answers[missed - 1].Item;
        return new DrillDraw(item.Family, sameAgain ? item.Seed : seed, missed);
    }

    /// <summary>Accuracy over the last answers of a skill, with the time of each only once 8 of the last 10 were right.</summary>
    /// <param name="answers">All answers of the person in the skill, oldest first.</param>
    public static DrillState State(IReadOnlyList<DrillAnswer> answers)
    {
        var last = answers.TakeLast(Window).ToList();
        var right = last.Count(a => a.Right);
        var times = last.Select(a => a.Time).OfType<TimeSpan>().ToList();
        var shown = last.Count == Window && right >= RightForTime && times.Count > 0;
        return new DrillState(right, last.Count, shown ? times.Average(t => t.TotalSeconds) : null);
    }

    /// <summary>True when help beside an item has faded: the last three answers of the skill were right.</summary>
    /// <param name="answers">All answers of the person in the skill, oldest first.</param>
    public static bool IsAlone(IReadOnlyList<DrillAnswer> answers) => answers.Count >= RightForAlone && answers.TakeLast(RightForAlone).All(a => a.Right);

    // The number of the oldest missed item that was not brought back yet and lies far enough behind.
    static int? Due(PastDrill drill, int number)
    {
        for (var n = 1; n < number; n++)
        {
            var answer = drill.Answers[n - 1];
            var between = FewestBetween + (int)(answer.Item.Seed & 1);
            if (!answer.Right && number - n - 1 >= between && drill.Answers.All(a => a.Item.Back != n)) return n;
        }

        return null;
    }
}

/// <summary>How the last answers of a skill went.</summary>
/// <param name="Right">How many were right.</param>
/// <param name="Of">Of how many, at most ten.</param>
/// <param name="Seconds">Mean time of an answer in seconds, or null while it is hidden.</param>
public sealed record DrillState(int Right, int Of, double? Seconds);
