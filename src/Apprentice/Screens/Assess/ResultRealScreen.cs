using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;

namespace Apprentice.Screens.Assess;

/// <summary>The real bikes of a paper: what each was, what was said, what the checks said. They count for nothing.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Below">The result.</param>
sealed record ResultRealScreen(string Paper, Screen Below) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var telling = new RealTelling(world.Topics);
        var result = world.History.Assessments.Result(Paper);
        return new Page(
            Words.Of("realbike.title", ("paper", Paper)),
            result?.Candidate ?? "",
            [new Block.Text(Words.Of("realbike.what")), .. (result?.Real ?? []).SelectMany(m => Bike(telling, m))],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);

    static IEnumerable<Block> Bike(RealTelling telling, RealMark mark) =>
    [
        new Block.Rule(Drop: true),
        new Block.Text(telling.Bike(mark)),
        .. telling.Lines(mark).Select(l => new Block.Text(l, 2)),
        .. telling.Found(mark).Select(f => new Block.Text($"{f.Check}: {f.Seen}   ({Words.Of(f.Opened ? "realbike.check-opened" : "realbike.check-left")})", 4)),
    ];
}
