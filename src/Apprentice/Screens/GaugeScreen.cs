using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>A gauge on the part: the arrows try another leaf or end, - and + zoom, W says the picture in words, Enter takes the leaf or goes on.</summary>
/// <param name="Task">What is tried.</param>
/// <param name="Leaf">The leaf or end on the part: an index into the task's leaves.</param>
sealed record GaugeScreen(GaugeTask Task, int Leaf) : Screen
{
    /// <summary>Index into <see cref="ThreadView.Turns"/>; ten turns at first.</summary>
    public int Zoom { get; init; } = ThreadView.Turns.Count - 1;

    /// <summary>True when the picture is said in words.</summary>
    public bool InWords { get; init; }

    /// <inheritdoc/>
    public override int? Job => Task.Job;

    bool IsThread => Task.Sort == InstrumentSort.PitchGauge;

    TableFinding Tried => Task.Leaves[Leaf];

    string Name => Tried.Gauge?.Name ?? "";

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Task.Title,
        world.Who,
        [
            .. Task.Notes.Select(n => new Block.Text(n)),
            new Block.Text(Words.Of("scale.fromto", ("fromto", Task.FromTo))),
            new Block.Text(Caption()),
            .. InWords || world.Plain ? [new Block.Gap(), .. Said().Select(w => new Block.Text(w, 2))] : new Block[] { new Block.Picture(Draw) },
        ],
        [
            Words.Of("gauge.key-other"), Words.Of(IsThread ? "gauge.key-take" : "gauge.key-say"), .. IsThread ? [Words.Of("scale.key-zoom")] : Array.Empty<string>(),
            world.Plain ? "" : Words.Of(InWords ? "scale.key-picture" : "scale.key-words"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help"),
        ]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => (key.Press, key.Letter) switch
    {
        (Screens.Press.Left or Screens.Press.Up, _) => Turn.To(Other(-1)),
        (Screens.Press.Right or Screens.Press.Down, _) => Turn.To(Other(1)),
        (Screens.Press.Enter, _) => IsThread ? Task.Done(world, Tried.Id) : Turn.To(new GaugeSayScreen(this)),
        (_, '-') => Turn.To(this with { Zoom = Math.Max(0, Zoom - 1) }),
        (_, '+' or '=') => Turn.To(this with { Zoom = Math.Min(ThreadView.Turns.Count - 1, Zoom + 1) }),
        (_, 'O') => Turn.To(Other(1)),
        (_, 'W') => Turn.To(this with { InWords = !InWords }),
        _ => Turn.To(key.IsBack ? Task.Below : this),
    };

    GaugeScreen Other(int by) => this with { Leaf = (Leaf + by + Task.Leaves.Count) % Task.Leaves.Count };

    string Caption() => (IsThread, Tried.Gauge) switch
    {
        (true, null) => Words.Of("gauge.no-leaf", ("says", Tried.Text)),
        (true, _) => Words.Of("gauge.leaf", ("leaf", Name), ("n", Leaf + 1), ("count", Task.Leaves.Count)),
        _ => Words.Of("gauge.end", ("end", Name), ("n", Leaf + 1), ("count", Task.Leaves.Count)),
    };

    IReadOnlyList<string> Said() => IsThread
        ? GaugeWords.Thread(Task.Exact, Tried.Gauge?.Size, Name)
        : GaugeWords.Chain(new ChainView(Task.Exact, Tried.Gauge?.Size ?? 0), Name);

    IReadOnlyList<string> Draw(PageSize room) => IsThread
        ? GaugeDrawing.Thread(Task.Exact, Tried.Gauge?.Size, Name, (room.Columns, room.Rows), Zoom)
        : GaugeDrawing.Chain(new ChainView(Task.Exact, Tried.Gauge?.Size ?? 0), Name, room.Columns, room.Rows);
}

/// <summary>What a gauge that was tried says.</summary>
/// <param name="From">The gauge.</param>
sealed record GaugeSayScreen(GaugeScreen From) : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => From.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        From.Task.Title,
        world.Who,
        [
            new Block.Gap(), new Block.Text(Words.Of("gauge.ask")), new Block.Gap(),
            new Block.Table([new("")], Rows(From.Task.Findings.Select(f => (string[])[f.Text]))),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => From.Task.Findings.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => From.Task.Done(world, From.Task.Findings[line].Id);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(From);
}
