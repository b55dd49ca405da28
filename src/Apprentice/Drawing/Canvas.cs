namespace Apprentice.Drawing;

/// <summary>A canvas of braille dots, 2 x 4 a character, with plain characters over them.</summary>
/// <param name="columns">Columns of characters.</param>
/// <param name="rows">Rows of characters.</param>
sealed class Canvas(int columns, int rows)
{
    // The Unicode Standard, block U+2800: bit of each dot, row by row, left before right.
    static readonly int[] Bits = [0x01, 0x08, 0x02, 0x10, 0x04, 0x20, 0x40, 0x80];

    readonly int[] _dots = new int[columns * rows];
    readonly char[] _over = new char[columns * rows];

    /// <summary>Width in dots.</summary>
    public int Width => 2 * columns;

    /// <summary>Height in dots.</summary>
    public int Height => 4 * rows;

    /// <summary>Sets a dot; outside the canvas nothing happens.</summary>
    /// <param name="x">Dots from the left.</param>
    /// <param name="y">Dots from the top.</param>
    public void Dot(int x, int y)
    {
        if (x < 0 || y < 0 || x >= Width || y >= Height) return;
        _dots[(y / 4 * columns) + (x / 2)] |= Bits[(y % 4 * 2) + (x % 2)];
    }

    /// <summary>Takes a dot away; outside the canvas nothing happens.</summary>
    /// <param name="x">Dots from the left.</param>
    /// <param name="y">Dots from the top.</param>
    public void Wipe(int x, int y)
    {
        if (x < 0 || y < 0 || x >= Width || y >= Height) return;
        _dots[(y / 4 * columns) + (x / 2)] &= ~Bits[(y % 4 * 2) + (x % 2)];
    }

    /// <summary>A straight line, both ends with it.</summary>
    /// <param name="from">Dots from the left and from the top.</param>
    /// <param name="to">Dots from the left and from the top.</param>
    /// <param name="on">Of eight dots along the line, so many are set: 8 for a full line.</param>
    public void Line((int X, int Y) from, (int X, int Y) to, int on = 8)
    {
        var steps = Math.Max(Math.Abs(to.X - from.X), Math.Abs(to.Y - from.Y));
        for (var i = 0; i <= steps; i++)
        {
            if (i % 8 < on) Dot(Along(from.X, to.X, i, steps), Along(from.Y, to.Y, i, steps));
        }
    }

    /// <summary>A line from top to bottom, both ends with it.</summary>
    public void Down(int x, int top, int bottom)
    {
        for (var y = top; y <= bottom; y++) Dot(x, y);
    }

    /// <summary>A line from left to right, both ends with it.</summary>
    public void Across(int y, int left, int right)
    {
        for (var x = Math.Max(0, left); x <= Math.Min(right, Width - 1); x++) Dot(x, y);
    }

    /// <summary>Every second dot of a rectangle, its sides with it.</summary>
    public void Shade(int left, int top, int right, int bottom)
    {
        for (var y = top; y <= bottom; y++)
        {
            for (var x = Math.Max(0, left); x <= Math.Min(right, Width - 1); x++)
            {
                if ((x + y) % 2 == 0) Dot(x, y);
            }
        }
    }

    /// <summary>Characters over the dots; what stands outside is left out.</summary>
    public void Write(int column, int row, string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (column + i >= 0 && column + i < columns && row >= 0 && row < rows) _over[(row * columns) + column + i] = text[i];
        }
    }

    /// <summary>The rows of text, from top to bottom, each as wide as the canvas; a cell without dots is a space.</summary>
    public IReadOnlyList<string> Rows() => [.. Enumerable.Range(0, rows).Select(r => string.Concat(Enumerable.Range(0, columns).Select(c => Cell((r * columns) + c))))];

    static int Along(int from, int to, int step, int steps) => steps == 0 ? from : from + (int)Math.Floor((((2.0 * (to - from) * step) + steps) / (2.0 * steps)));

    char Cell(int cell) => _over[cell] != '\0' ? _over[cell] : _dots[cell] == 0 ? ' ' : (char)(0x2800 + _dots[cell]);
}
