using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>What two readings of each real part say: how far apart, against what the tool allows and against another person.</summary>
/// <param name="Set">The parts.</param>
/// <param name="Series">Number of the series.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record RealEndScreen(RealSet Set, int Series, Screen Below) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var mine = world.History.RealParts.First(s => s.Number == Series);
        var other = RealSetsScreen.OfAnother(world.History, Set, mine.Person);
        return new Page(
            Words.Of("real.title"),
            world.Who,
            [
                new Block.Text(Words.Of("real.end", ("set", Words.Of(Set.Name)), ("tool", Set.ToolName))),
                new Block.Gap(),
                Table(mine, other),
                new Block.Gap(),
                new Block.Text(Words.Of("real.apart", ("apart", Mm(mine.Apart)), ("tool", Set.ToolName), ("allows", Mm(Set.Tool.Allows)))),
                new Block.Text(Words.Of("real.spread", ("spread", Fine(mine.Spread)))),
                .. Far(mine),
                new Block.Gap(Drop: true),
                .. other is null ? [new Block.Text(Words.Of("real.nobody"))] : Against(mine, other),
                new Block.Gap(Drop: true),
                new Block.Text(Words.Of("real.no-truth")),
            ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);

    Block.Table Table(RealSeries mine, RealSeries? other) => new(
        [
            new(Words.Of("real.column-part")), new(Words.Of("real.column-first"), Right: true), new(Words.Of("real.column-second"), Right: true),
            new(Words.Of("real.column-differ"), Right: true), .. other is null ? Array.Empty<Column>() : [new(Words.Of("real.column-other", ("who", other.Person ?? "")), Right: true)],
        ],
        [
            .. mine.Pairs.Select(p => new Row("", Marked: false,
            [
                $"{p.Part}", Mm(p.First), Mm(p.Second), Mm(Math.Abs(p.Difference)),
                .. other is null ? Array.Empty<string>() : [Mm(other.Pairs.First(o => o.Part == p.Part).Mean)],
            ])),
        ]);

    IEnumerable<Block> Far(RealSeries mine) => mine.Pairs.Where(p => Math.Abs(p.Difference) > Set.Tool.Allows + 1e-9)
        .Select(p => new Block.Text(Words.Of("real.far", ("part", p.Part), ("apart", Mm(Math.Abs(p.Difference))))));

    IEnumerable<Block> Against(RealSeries mine, RealSeries other)
    {
        var shifts = mine.Shifts(other);
        var allowed = mine.AllowedBetween(other, Set.Tool.Step);
        var who = other.Person ?? "";
        var worst = shifts.MaxBy(s => Math.Abs(s.Millimetres));
        yield return new Block.Text(Words.Of("real.other", ("who", who), ("shift", Fine(Math.Abs(worst.Millimetres))), ("part", worst.Part), ("allowed", Fine(allowed))));
        yield return new Block.Text(Math.Abs(worst.Millimetres) <= allowed + 1e-9
            ? Words.Of("real.agree")
            : Words.Of(worst.Millimetres > 0 ? "real.larger" : "real.smaller", ("who", who), ("part", worst.Part)));
    }

    string Mm(double millimetres) => Words.Of("spoken.mm", ("n", millimetres.ToString(Set.Tool.Step < 1 ? "0.00" : "0.##")));

    static string Fine(double millimetres) => Words.Of("spoken.mm", ("n", millimetres.ToString("0.###")));
}
