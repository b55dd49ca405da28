using Apprentice.Engine.Topics;

namespace Apprentice.Drawing.Plates;

/// <summary>The outlines of the surfaces that writings stand on; the writings' rows stay free.</summary>
static class PlateOutline
{
    const int Step = 6;

    /// <summary>Draws a surface over a whole canvas.</summary>
    public static void Draw(Canvas canvas, Surface surface)
    {
        switch (surface)
        {
            case Surface.NumberPlate:
                NumberPlate(canvas);
                break;
            case Surface.TyreWall:
                TyreWall(canvas);
                break;
            case Surface.CupFace:
                CupFace(canvas);
                break;
            case Surface.Hub:
                Hub(canvas);
                break;
            case Surface.CrankEnd:
                CrankEnd(canvas);
                break;
            case Surface.Rim:
                Rim(canvas);
                break;
            case Surface.BareMetal:
                BareMetal(canvas);
                break;
            case Surface.Stem:
                Tube(canvas);
                End(canvas, canvas.Width - 1, clamp: true);
                break;
            case Surface.Post:
                Tube(canvas);
                End(canvas, 0, clamp: false);
                break;
            default:
                Tube(canvas);
                break;
        }
    }

    static int Low(Canvas canvas) => canvas.Height - 2;

    static void NumberPlate(Canvas canvas)
    {
        var right = canvas.Width - 2;
        canvas.Across(1, 1, right);
        canvas.Across(Low(canvas), 1, right);
        canvas.Down(1, 1, Low(canvas));
        canvas.Down(right, 1, Low(canvas));
        foreach (var column in new[] { 1, (canvas.Width / 2) - 2 })
        {
            canvas.Write(column, 1, "o");
            canvas.Write(column, (canvas.Height / 4) - 2, "o");
        }
    }

    // Tread blocks above, the line beside the rim below; both bend as a wall does.
    static void TyreWall(Canvas canvas)
    {
        for (var x = 0; x < canvas.Width; x++)
        {
            var bend = Bend(canvas, x);
            canvas.Dot(x, 3 + bend);
            canvas.Dot(x, Low(canvas) + bend - 1);
            if (x / Step % 2 == 0) canvas.Down(x, bend, 2 + bend);
            if (x % 2 == 0) canvas.Dot(x, Low(canvas) + bend + 1);
        }
    }

    static int Bend(Canvas canvas, int x)
    {
        var half = canvas.Width / 2;
        return ((x - half) * (x - half) * 3 / (half * half)) - 1;
    }

    // A ring seen from outside: round at both ends, four notches for the tool.
    static void CupFace(Canvas canvas)
    {
        Round(canvas, left: true);
        Round(canvas, left: false);
        canvas.Across(1, Step * 2, canvas.Width - (Step * 2));
        canvas.Across(Low(canvas), Step * 2, canvas.Width - (Step * 2));
        foreach (var x in new[] { canvas.Width / 4, canvas.Width * 3 / 4 })
        {
            canvas.Shade(x - 2, 0, x + 2, 3);
            canvas.Shade(x - 2, Low(canvas) - 2, x + 2, canvas.Height - 1);
        }
    }

    static void Round(Canvas canvas, bool left)
    {
        var (middle, tall) = ((canvas.Height - 1) / 2, (canvas.Height - 2) / 2);
        for (var y = 1; y <= Low(canvas); y++)
        {
            var t = (double)(y - middle) / tall;
            var x = (int)(Step * 2 * (1 - Math.Sqrt(Math.Max(0, 1 - (t * t)))));
            canvas.Dot(left ? x : canvas.Width - 1 - x, y);
            canvas.Dot(left ? x + 1 : canvas.Width - 2 - x, y);
        }
    }

    // A flange with spoke holes at either end, the shell between.
    static void Hub(Canvas canvas)
    {
        foreach (var x in new[] { 1, 5, canvas.Width - 6, canvas.Width - 2 }) canvas.Down(x, 0, canvas.Height - 1);
        canvas.Across(2, 5, canvas.Width - 6);
        canvas.Across(Low(canvas) - 1, 5, canvas.Width - 6);
        for (var row = 0; row < canvas.Height / 4; row += 2)
        {
            canvas.Write(1, row, "o");
            canvas.Write((canvas.Width / 2) - 2, row, "o");
        }
    }

    static void CrankEnd(Canvas canvas)
    {
        Round(canvas, left: false);
        canvas.Across(1, 0, canvas.Width - (Step * 2));
        canvas.Across(Low(canvas), 0, canvas.Width - (Step * 2));
        canvas.Write((canvas.Width / 2) - 3, canvas.Height / 8, "O");
    }

    static void Rim(Canvas canvas)
    {
        canvas.Across(0, 0, canvas.Width - 1);
        canvas.Across(3, 0, canvas.Width - 1);
        canvas.Across(Low(canvas) - 2, 0, canvas.Width - 1);
        canvas.Across(Low(canvas) + 1, 0, canvas.Width - 1);
        canvas.Write(1, canvas.Height / 8, "o");
        canvas.Write((canvas.Width / 2) - 2, canvas.Height / 8, "o");
    }

    // A piece of a surface, close by: its four edges are broken lines, so that nobody takes them for the part's own.
    static void BareMetal(Canvas canvas)
    {
        for (var x = 2; x < canvas.Width - 2; x++)
        {
            if (x / Step % 2 != 0) continue;
            canvas.Dot(x, 1);
            canvas.Dot(x, Low(canvas));
        }
        for (var y = 1; y < Low(canvas); y += 2)
        {
            canvas.Dot(2, y);
            canvas.Dot(canvas.Width - 3, y);
        }
    }

    static void Tube(Canvas canvas)
    {
        canvas.Across(1, 0, canvas.Width - 1);
        canvas.Across(Low(canvas), 0, canvas.Width - 1);
        for (var x = 0; x < canvas.Width; x += 3) canvas.Dot(x, Low(canvas) - 2);
    }

    static void End(Canvas canvas, int x, bool clamp)
    {
        canvas.Down(x, 0, canvas.Height - 1);
        if (clamp) canvas.Down(x - Step, 1, Low(canvas));
    }
}
