using Apprentice.Content;
using Apprentice.Content.Values;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;

namespace Apprentice.Screens;

/// <summary>A real part is measured: each part twice, the second round in another order, the first readings not shown.</summary>
/// <param name="Set">The parts.</param>
/// <param name="Series">Number of the series.</param>
/// <param name="Order">Numbers of the parts in the order in which they are read: both rounds.</param>
/// <param name="Done">How many were read.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record RealPartScreen(RealSet Set, int Series, IReadOnlyList<int> Order, int Done, Screen Below) : FieldScreen
{
    int Part => Order[Done];

    int Round => Done < Set.Parts ? 1 : 2;

    /// <inheritdoc/>
    protected override int Longest => 20;

    /// <summary>The first part of a new series.</summary>
    public static RealPartScreen Start(World world, RealSet set, Screen below)
    {
        var series = world.History.RealParts.Select(s => s.Number).DefaultIfEmpty().Max() + 1;
        return new RealPartScreen(set, series, OrderOf(set.Parts, world.History.Luck ?? 0, series), 0, below);
    }

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("real.title"),
        world.Who,
        [
            .. Done == 0 ? [new Block.Text(Words.Of("real.lay-out", ("set", Words.Of(Set.Name)), ("n", Set.Parts))), new Block.Gap()]
                : Done == Set.Parts ? [new Block.Text(Words.Of(Set.Parts > 2 ? "real.again" : "real.again-both")), new Block.Gap()] : Array.Empty<Block>(),
            new Block.Text(Words.Of("real.part", ("part", Part), ("round", Round), ("nth", (Done % Set.Parts) + 1), ("of", Set.Parts))),
            new Block.Text(Words.Of("where.measured", ("where", Words.Of(Set.FromTo))), 2),
            new Block.Text(Words.Of("real.with", ("tool", Set.ToolName)), 2),
            new Block.Gap(),
            .. Field(Words.Of("real.field")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (Complaint(text, out var millimetres) is { } wrong) return Turn.To(this with { Wrong = wrong });
        var entry = new LogEntry.RealPartRead(Series, world.Person, Set.Id, Part, Round, millimetres, text);
        return Turn.To(
            Done + 1 < Order.Count ? new RealPartScreen(Set, Series, Order, Done + 1, Below) : new RealEndScreen(Set, Series, Below), entry);
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    string? Complaint(string text, out double millimetres)
    {
        millimetres = 0;
        if (text.Length == 0) return Words.Of("scale.empty", ("example", Set.Tool.Example));
        if (!LengthText.TryParseTyped(text, out millimetres)) return Words.Of("scale.number", ("text", text), ("example", Set.Tool.Example));
        return millimetres >= Set.Low && millimetres <= Set.High
            ? null
            : Words.Of("real.range", ("mm", millimetres.ToString("0.##")), ("set", Words.Of(Set.Name)), ("low", Set.Low), ("high", Set.High));
    }

    // The second round has another order and begins with another part than the first one ended with. Of two parts only the latter can be had.
    static IReadOnlyList<int> OrderOf(int parts, long luck, int series)
    {
        var rng = new Rng(unchecked((ulong)luck + ((ulong)series * 0x9E3779B97F4A7C15UL)), stream: 7);
        for (var i = 0; i < 8; i++) rng.Next();
        var second = Enumerable.Range(1, parts).ToArray();
        for (var i = parts - 1; i > 0; i--)
        {
            var j = rng.Below(i + 1);
            (second[i], second[j]) = (second[j], second[i]);
        }
        if (second[0] == parts) (second[0], second[^1]) = (second[^1], second[0]);
        if (parts > 2 && second.SequenceEqual(Enumerable.Range(1, parts))) (second[0], second[1]) = (second[1], second[0]);
        return [.. Enumerable.Range(1, parts), .. second];
    }
}
