using Apprentice.Content;
using Apprentice.Drills;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>A drill under way: makes its items and says what follows an answer.</summary>
/// <param name="Drill">Number of the drill.</param>
/// <param name="Skill">The skill.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record DrillRun(int Drill, DrillSkill Skill, Screen Below)
{
    /// <summary>Top line.</summary>
    public string Title => Words.Of("drill.title", ("skill", Words.Of(Skill.Name)));

    /// <summary>A new drill with its entries for the log.</summary>
    public static Turn Start(World world, DrillSkill skill, Screen below)
    {
        var history = world.History;
        var number = history.Drills.Count + 1;
        var started = new LogEntry.DrillStarted(number, world.Person, skill.Id, unchecked(((ulong)(history.Luck ?? 0) + ((ulong)number * 0x9E3779B97F4A7C15UL)) >> 1));
        return new DrillRun(number, skill, below).Ask(world, new PastDrill(started), started);
    }

    /// <summary>The next item, or the end when the time is up.</summary>
    public Turn Next(World world)
    {
        var past = Of(world);
        return past.IsUp ? End() : Ask(world, past);
    }

    /// <summary>The end of the drill.</summary>
    public Turn End() => Turn.To(new DrillEndScreen(this), new LogEntry.DrillEnded(Drill));

    /// <summary>What follows an answer.</summary>
    public Turn Answer(DrillItem item, string given, DrillVerdict verdict) =>
        Turn.To(new DrillSaidScreen(this, item.Prompt, given, verdict), new LogEntry.DrillAnswered(Drill, given, verdict.Right));

    /// <summary>The drill as the log has it.</summary>
    public PastDrill Of(World world) => world.History.Drills[Drill - 1];

    /// <summary>How the last answers of the person in this skill went.</summary>
    public DrillState State(World world) => DrillPlan.State(world.History.DrillAnswers(world.Person, Skill.Id));

    /// <summary>Accuracy in words, with the time beside it once it may be shown.</summary>
    public static string Say(DrillState state) => state switch
    {
        { Of: 0 } => Words.Of("drill.state-none"),
        { Seconds: { } seconds } => Words.Of("drill.state-time", ("right", state.Right), ("of", state.Of), ("seconds", Math.Round(seconds))),
        _ => Words.Of("drill.state", ("right", state.Right), ("of", state.Of)),
    };

    Turn Ask(World world, PastDrill past, params LogEntry[] before)
    {
        var draw = DrillPlan.Next(past, Skill.Families(world.Practised), Skill.SameAgain);
        var item = Skill.Make(world.Practised, draw.Family, draw.Seed);
        var alone = DrillPlan.IsAlone(world.History.DrillAnswers(world.Person, Skill.Id));
        return Turn.To(ScreenOf(alone ? item.Alone : item, draw.Back is not null), [.. before, new LogEntry.DrillAsked(Drill, draw)]);
    }

    Screen ScreenOf(DrillItem item, bool back) => item switch
    {
        DrillItem.OnScale scale => Task(scale, back).Start(),
        DrillItem.OnPlate plate => Task(plate, back).Start(),
        DrillItem.OnGauge gauge => Task(gauge, back).Start(),
        DrillItem.Pick pick => new DrillPickScreen(this, pick, back) { Cursor = Cursor.None },
        DrillItem.Type type => new DrillTypeScreen(this, type, back),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    ReadingTask Task(DrillItem.OnScale item, bool back) => new(Title, item.Tool, item.Datums, item.ExactFor, item.Step)
    {
        Scale = item.Scale,
        Low = item.Range.Low,
        High = item.Range.High,
        Seed = item.Seed,
        Below = new DrillLeaveScreen(this),
        Done = (_, own) => Answer(item, Words.Of("drill.read", ("text", own.Text), ("datum", item.Datums.Count > 1 ? Words.Of("drill.read-datum", ("datum", item.Datums[own.Datum])) : "")), item.Judge(own)),
        Notes = Notes(item, back),
        Drawn = item.Drawn,
    };

    LookTask Task(DrillItem.OnPlate item, bool back) => new(Title, item.Clue, "")
    {
        Plate = item.View,
        Below = new DrillLeaveScreen(this),
        Done = (_, own) => Answer(item, Given(item, own), item.Judge(own)),
        Notes = Notes(item, back),
    };

    GaugeTask Task(DrillItem.OnGauge item, bool back) => new(Title, InstrumentSort.PitchGauge, item.Leaves, item.Pitch)
    {
        FromTo = item.FromTo,
        First = item.First,
        Below = new DrillLeaveScreen(this),
        Done = (_, id) => Answer(item, item.Leaves.First(l => string.Equals(l.Id, id, StringComparison.Ordinal)).Text, item.Judge(id)),
        Notes = Notes(item, back),
    };

    static string Given(DrillItem.OnPlate item, OwnLook own)
    {
        var n = item.View.Markings.ToList().FindIndex(m => m.Writing == own.Writing) + 1;
        var text = LookTask.FindingsOf(item.Clue).First(f => string.Equals(f.Id, own.Finding, StringComparison.Ordinal)).Text;
        return n > 0 ? Words.Of("drill.plates-given", ("n", n), ("text", text)) : Words.Of("look.not-there");
    }

    /// <summary>A sentence for an item that comes back.</summary>
    public string BackNote => Words.Of(Skill.SameAgain ? "drill.back-same" : "drill.back");

    IReadOnlyList<string> Notes(DrillItem item, bool back) => [.. ((string[])[back ? BackNote : "", item.Prompt, item.Beside]).Where(n => n.Length > 0)];
}
