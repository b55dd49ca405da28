using Apprentice.Content;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>The marks of a job whose topic was changed since: only what the log holds.</summary>
/// <param name="Past">The job.</param>
sealed record OldGradeScreen(PastJob Past) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Past.Started.Job;

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
        ],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? new PastScreen() : this);

    static string Mark(double mark) =>
        Words.Of($"mark.{new GradePart(Aspect.Reading, mark, Remark.Of(""), Remark.Of("")).Word}");
}
