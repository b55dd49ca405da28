using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>After the grade: each own reading on its scale again, as it stood from the right datum, with what was read and what is right.</summary>
/// <param name="Below">The grade.</param>
/// <param name="Index">Which reading.</param>
/// <param name="Window">The part of the scale that is shown.</param>
sealed record ReadingsScreen(GradeScreen Below, int Index, ScaleWindow Window) : Screen
{
    const double StepDots = 40;
    const double Furthest = 1000;

    /// <summary>True when the picture is said in words.</summary>
    public bool InWords { get; init; }

    /// <inheritdoc/>
    public override int? Job => Below.Job;

    ReadingGrade Graded => Below.Grade.Readings[Index];

    Clue Clue => Below.On.Clue(Graded.Look.Clue);

    double ZeroError => Scale is Drawing.Scale.Vernier ? Workbench.ZeroErrorOf(Below.On.Made) : 0;

    Scale Scale => Drawing.Scale.Of(Clue.Tool, Workbench.ZeroErrorOf(Below.On.Made)) is not { } scale ? new Scale.Ruled(Tape: false, Inches: false)
        : scale is Scale.Ruled ruled ? ruled with { Around = Clue.Shows is Shows.Measured m && Math.Abs(m.Scale - Math.PI) < 1e-6 }
        : scale;

    /// <summary>The first reading, with both places in the window where they fit.</summary>
    public static ReadingsScreen Of(GradeScreen below) => new ReadingsScreen(below, 0, default).At(0);

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var telling = new Telling(Below.On.Topic, Below.On.Made.Job.Bench);
        return new Page(
            Words.Of("readings.title", ("job", Below.On.Number)),
            world.Who,
            [
                new Block.Text(Words.Of("readings.count", ("n", Index + 1), ("count", Below.Grade.Readings.Count), ("check", telling.Check(Clue.Id)))),
                new Block.Text(telling.Of(Graded.Part.Remark)),
                .. Graded.Datum > 0 ? [new Block.Text(Words.Of("readings.right-from", ("fromto", Clue.FromTo)))] : Array.Empty<Block>(),
                .. InWords ? [new Block.Gap(), .. Said().Select(w => new Block.Text(w, 2))] : new Block[] { new Block.Picture(Draw) },
            ],
            [
                Words.Of(Below.Grade.Readings.Count > 1 ? "readings.key-next" : "key.enter-ok"), Words.Of("scale.key-zoom"), Words.Of("scale.key-move"),
                Words.Of(InWords ? "scale.key-picture" : "scale.key-words"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help"),
            ]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => (key.Press, key.Letter) switch
    {
        (Screens.Press.Enter, _) => Turn.To(Index + 1 < Below.Grade.Readings.Count ? At(Index + 1) : Below),
        (Screens.Press.Left, _) => Turn.To(Moved(-1)),
        (Screens.Press.Right, _) => Turn.To(Moved(1)),
        (_, '-') => Turn.To(Zoomed(-1)),
        (_, '+' or '=') => Turn.To(Zoomed(1)),
        (_, 'W') => Turn.To(this with { InWords = !InWords }),
        _ => Turn.To(key.IsBack ? Below : this),
    };

    // From the middle between both places.
    ReadingsScreen At(int index)
    {
        var next = this with { Index = index };
        return next with { Window = new ScaleWindow(0, Math.Clamp((next.Graded.Read - next.Graded.Right) / 2, -Furthest, Furthest)) };
    }

    ReadingsScreen Zoomed(int by) => this with { Window = Window with { Zoom = Math.Clamp(Window.Zoom + by, 0, Scale.Zooms.Count - 1) } };

    ReadingsScreen Moved(int by)
    {
        var shift = Window.Shift + (by * StepDots / Scale.Zooms[Window.Zoom] * Scale.Pitch);
        return this with { Window = Window with { Shift = Math.Clamp(shift, -Furthest, Furthest) } };
    }

    IReadOnlyList<string> Said()
    {
        var (division, inches) = (Scale.Division, Scale is Scale.Ruled { Inches: true });
        return
        [
            .. ScaleWords.Of(Scale, Graded.Right, closed: false),
            .. Math.Abs(ZeroError) > 0 ? [Words.Of("readings.words-zero", ("zero", Spoken.Length(ZeroError, division, inches)))] : Array.Empty<string>(),
            Words.Of("readings.words-right", ("shown", Spoken.Length(Graded.Right, division, inches))),
            Words.Of("readings.words-you", ("read", Spoken.Length(Graded.Read, division, inches))),
        ];
    }

    IReadOnlyList<string> Draw(PageSize room)
    {
        var view = ScaleView.Of(Scale, Graded.Right, room.Columns, Window);
        var (you, right) = (Graded.Read + ZeroError, Graded.Right + ZeroError);
        (double, string)[] places = [(you, Words.Of("readings.you")), (right, Words.Of("readings.right"))];
        var hints = new[] { Hint(view, you, "readings.you-left", "readings.you-right"), Hint(view, right, "readings.right-left", "readings.right-right") }.Where(h => h.Length > 0).ToList();
        return [.. ScaleDrawing.Pointers(view, places), .. ScaleDrawing.Rows(view, room.Rows - places.Length - 1 - hints.Count, ScaleScreen.LabelOf(Scale)), .. hints];
    }

    static string Hint(ScaleView view, double place, string left, string right) => view.DotOf(place) switch
    {
        < 0 => Words.Of(left),
        var dot when dot >= view.Width => Words.Of(right),
        _ => "",
    };
}
