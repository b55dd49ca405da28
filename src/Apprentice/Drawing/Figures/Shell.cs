namespace Apprentice.Drawing.Figures;

/// <summary>A bottom bracket shell: from its right end on the left, cut through along its axis on the right.</summary>
static class Shell
{
    const double Lean = 5;

    /// <summary>Draws it. The left face of the cut shell is x = 0, its axis y = 0.</summary>
    /// <remarks>Of a thread the far half is seen in the cut: there a right-hand thread leans with its upper ends to the right, a left-hand one to the left (drawing practice). The lean is drawn larger than it is, every third turn.</remarks>
    public static Sketch Draw(Traits t)
    {
        var (width, bore, wall) = (t["width"], t["inner"] / 2, t["wall"]);
        var (outer, end) = (bore + wall, new Spot(-(2 * (bore + wall)), 0));
        var sketch = new Sketch()
            .Circle(end, outer, Fill.Hatch).Circle(end, bore)
            .Box(new(0, bore), new(width, outer), Fill.Hatch).Box(new(0, -outer), new(width, -bore), Fill.Hatch)
            .Line(new(0, -bore), new(0, bore)).Line(new(width, -bore), new(width, bore));
        if (!t.Is("right-thread", "none")) sketch.Arc(end, bore - 1.2, 30, 330);
        Thread(sketch, t.Word("left-thread"), 1, width * 0.36, bore);
        Thread(sketch, t.Word("right-thread"), width * 0.64, width - 1, bore);
        return sketch
            .Point("face-left", new(0, 0)).Point("face-right", new(width, 0)).Point("bore-top", new(width / 2, bore)).Point("bore-bottom", new(width / 2, -bore))
            .Say("figure.shell.lies").Say("figure.shell.wide", ("times", Ratios.Times(width, 2 * bore)))
            .Say("figure.shell.left-end", ("look", Look(t.Word("left-thread")))).Say("figure.shell.right-end", ("look", Look(t.Word("right-thread"))));
    }

    static string Look(string hand) => hand switch
    {
        "none" => Content.Words.Of("figure.shell.smooth"),
        "right-hand" => Content.Words.Of("figure.shell.lean-right"),
        _ => Content.Words.Of("figure.shell.lean-left"),
    };

    static void Thread(Sketch sketch, string hand, double from, double to, double bore)
    {
        if (hand == "none") return;
        for (var x = from + Lean; x < to; x += 3.2)
        {
            var (low, high) = hand == "right-hand" ? (x - Lean, x) : (x, x - Lean);
            sketch.Line(new(low, -bore), new(high, bore));
        }
    }
}
