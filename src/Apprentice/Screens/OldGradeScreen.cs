using Apprentice.Content;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>The marks of a job whose topic was changed since: only what the log holds.</summary>
/// <param name="Past">The job.</param>
sealed record OldGradeScreen(PastJob Past) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Past.Started.Job;

    /// <summary>Where it goes back to, or null for the list of past jobs.</summary>
    public Screen? Below { get; init; }

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("grade.title", ("job", Past.Started.Job)),
        world.Who,
        [
            new Block.Text(Words.Of("grade.changed")),
            new Block.Gap(),
            new Block.Text($"{Words.Of("grade.short")}: {Words.Of($"short.{Past.Verdict?.InShort}")}."),
            new Block.Gap(),
            new Block.Table([new(""), new("")], [.. (Past.Verdict?.Marks ?? []).Select(m => new Row("", Marked: false, [Words.Of($"aspect.{m.Aspect}"), Mark(m.Mark)]))]),
            .. OwnReadings(world),
        ],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below ?? new PastScreen() : this);

    // What the log holds of them; a check that the topic no longer has is called by its short name.
    IReadOnlyList<Block> OwnReadings(World world)
    {
        var clues = world.Bench(Past.Started.Topic)?.Topic.Clues ?? [];
        var own = Past.Looks.Where(l => l.OwnReading is not null).Select(l => (Clue: clues.FirstOrDefault(c => string.Equals(c.Id, l.Clue, StringComparison.Ordinal)), Look: l)).ToList();
        return own.Count == 0 ? [] :
        [
            new Block.Gap(), new Block.Text(Words.Of("readings.old")),
            .. own.Select(o => new Block.Text(Words.Of("readings.old-one", ("check", o.Clue?.Name ?? o.Look.Clue), ("read", Read(o.Clue, o.Look))), 2)),
        ];
    }

    static string Read(Clue? clue, Look look)
    {
        var tool = Instrument.Of(clue?.Tool ?? "");
        return Spoken.Length(look.OwnReading ?? 0, tool?.Division ?? 1, tool?.Inches ?? false);
    }

    static string Mark(double mark) =>
        Words.Of($"mark.{new GradePart(Aspect.Reading, mark, Remark.Of(""), Remark.Of("")).Word}");
}
