using Apprentice.Content;
using Apprentice.Drawing;

namespace Apprentice.Screens;

/// <summary>A drawn scale and a field for what is read off it: - and + zoom, the arrows move, W says the picture in words, Z closes a caliper's jaws.</summary>
/// <param name="Task">What is to be read.</param>
/// <param name="Datum">The datum chosen: an index into the task's datums.</param>
sealed record ScaleScreen(ReadingTask Task, int Datum) : FieldScreen
{
    const double StepDots = 40;
    const double FurthestLeft = 300;
    const double FurthestRight = 100;

    /// <summary>The part of the scale that is shown.</summary>
    public ScaleWindow Window { get; init; }

    /// <summary>True when the picture is said in words.</summary>
    public bool InWords { get; init; }

    /// <summary>Letters are keys until something is typed: a reading begins with a digit.</summary>
    public override bool Typing => Typed.Length > 0;

    /// <inheritdoc/>
    public override int? Job => Task.Job;

    /// <inheritdoc/>
    protected override int Longest => 20;

    double Exact => Task.ExactFor(Datum);

    bool IsVernier => Task.Scale is Scale.Vernier;

    string Label => Window.Closed ? "" : LabelOf(Task.Scale);

    /// <summary>What the edge that is read belongs to.</summary>
    public static string LabelOf(Scale scale) => Words.Of(scale switch
    {
        Scale.Ruled { Around: true } => "scale.label-end",
        Scale.Ruled { Pins: true } => "scale.label-pin",
        _ => "scale.label-part",
    });

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Task.Title,
        world.Who,
        [
            .. Task.Notes.Select(n => new Block.Text(n)),
            new Block.Text(Words.Of("scale.fromto", ("fromto", Task.Datums[Datum]))),
            new Block.Text(Caption()),
            .. InWords || world.Plain ? [new Block.Gap(), .. ScaleWords.Of(Task.Scale, Exact, Window.Closed).Select(w => new Block.Text(w, 2))] : new Block[] { new Block.Picture(Draw) },
        ],
        Keys())
    {
        Foot = [new Block.Text($"{Words.Of(IsVernier ? "scale.field-caliper" : "scale.field")}  {Typed}_"), .. Wrong.Length > 0 ? [new Block.Text(Wrong)] : Array.Empty<Block>()],
    };

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => (key.Press, key.Letter) switch
    {
        (Screens.Press.Left, _) => Turn.To(Moved(-1)),
        (Screens.Press.Right, _) => Turn.To(Moved(1)),
        (_, '-') => Turn.To(Zoomed(-1)),
        (_, '+' or '=') => Turn.To(Zoomed(1)),
        (_, 'W') => Turn.To(this with { InWords = !InWords }),
        (_, 'Z') when IsVernier => Turn.To(this with { Window = Window with { Closed = !Window.Closed, Shift = 0 } }),
        _ => base.Press(world, key),
    };

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => ScaleReading.TryParse(text, Task, out var millimetres, out var wrong)
        ? Task.Done(world, new OwnReading(Datum, millimetres, text))
        : Turn.To(this with { Wrong = wrong });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Task.Datums.Count > 1 ? new DatumScreen(Task) : Task.Below);

    ScaleScreen Zoomed(int by) => this with { Window = Window with { Zoom = Math.Clamp(Window.Zoom + by, 0, Task.Scale.Zooms.Count - 1) } };

    ScaleScreen Moved(int by)
    {
        var shift = Window.Shift + (by * StepDots / Task.Scale.Zooms[Window.Zoom] * Task.Scale.Pitch);
        return this with { Window = Window with { Shift = Math.Clamp(shift, -Math.Min(Exact, FurthestLeft), FurthestRight) } };
    }

    string Caption()
    {
        if (Window.Closed) return Words.Of("scale.caliper-closed");
        return Task.Scale switch
        {
            Scale.Ruled { Inches: true } => Words.Of("scale.inches"),
            Scale.Ruled => Words.Of("scale.mm", ("step", Task.Step.ToString("0.###"))),
            _ => Words.Of("scale.caliper", ("step", Task.Scale.Division.ToString("0.###"))),
        };
    }

    IReadOnlyList<string> Draw(PageSize room)
    {
        var view = ScaleView.Of(Task.Scale, Exact, room.Columns, Window);
        var rows = ScaleDrawing.Rows(view, room.Rows - 1, Label);
        var hint = view.Edge < 0 ? "scale.edge-left" : view.Edge >= view.Width ? "scale.edge-right" : view.HasFigure ? "" : "scale.no-figure";
        return hint.Length == 0 || (IsVernier && hint is not "scale.no-figure") ? rows : [.. rows, Words.Of(hint)];
    }

    IReadOnlyList<string> Keys() =>
    [
        Words.Of("key.type"), Words.Of("key.enter-ok"), Words.Of("scale.key-zoom"), Words.Of("scale.key-move"),
        Words.Of(InWords ? "scale.key-picture" : "scale.key-words"),
        IsVernier ? Words.Of(Window.Closed ? "scale.key-open" : "scale.key-closed") : "",
        Words.Of("key.esc-back"), .. Typing ? Array.Empty<string>() : [Words.Of("key.pause"), Words.Of("key.help")],
    ];
}
