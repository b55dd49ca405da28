using System.Runtime.InteropServices;

namespace Apprentice.Screens;

/// <summary>What stands on a screen, before it is laid out to a size.</summary>
/// <param name="Title">Top line, left: what this is.</param>
/// <param name="Right">Top line, right: who this is, or empty.</param>
/// <param name="Body">Blocks from top to bottom.</param>
/// <param name="Keys">Bottom line: the keys, each with a word, always in the same order.</param>
sealed record Page(string Title, string Right, IReadOnlyList<Block> Body, IReadOnlyList<string> Keys)
{
    /// <summary>Blocks that stay above the bottom line while the body scrolls; at most two fifths of the window.</summary>
    public IReadOnlyList<Block> Foot { get; init; } = [];

    /// <summary>True when there are lines to choose from, so that the arrows mark and do not scroll.</summary>
    public bool IsMarked => Body.Any(b => b is Block.Table table && table.Rows.Any(r => r.Marked || r.Key.Length > 0));
}

/// <summary>A block of a page.</summary>
abstract record Block
{
    Block()
    {
    }

    /// <summary>A paragraph, wrapped at words.</summary>
    /// <param name="Words">The text.</param>
    /// <param name="Indent">Columns of indent.</param>
    /// <param name="Hang">Characters at the beginning that the lines after the first stand clear of: the dash or number of a point.</param>
    public sealed record Text(string Words, int Indent = 0, int Hang = 0) : Block;

    /// <summary>A line across.</summary>
    /// <param name="Drop">True when it may be left out where the page is longer than the window.</param>
    public sealed record Rule(bool Drop = false) : Block;

    /// <summary>An empty line.</summary>
    /// <param name="Drop">True when it may be left out where the page is longer than the window.</param>
    public sealed record Gap(bool Drop = false) : Block;

    /// <summary>Rows in columns; a cell that is too long goes on in the next line.</summary>
    /// <param name="Columns">Columns, from left to right.</param>
    /// <param name="Rows">Rows, each with a cell a column.</param>
    public sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<Row> Rows) : Block
    {
        /// <summary>True when all of it may be left out where the page is longer than the window.</summary>
        public bool Drop { get; init; }
    }

    /// <summary>A drawing that fills what the rest of the body leaves free; at most one a page.</summary>
    /// <param name="Draw">Draws to a width and a number of rows (it may take fewer, and more where there is too little room).</param>
    public sealed record Picture(Func<PageSize, IReadOnlyList<string>> Draw) : Block
    {
        /// <summary>The picture in sentences, for plain lines; empty where they stand elsewhere on the page.</summary>
        public IReadOnlyList<string> InWords { get; init; } = [];
    }
}

/// <summary>A column of a table.</summary>
/// <param name="Header">Its header, or empty.</param>
/// <param name="Right">True when it is set to the right.</param>
/// <param name="Drop">True when it may be left out of a narrow window.</param>
sealed record Column(string Header, bool Right = false, bool Drop = false)
{
    /// <summary>Key of the words that say a cell (<c>cell</c>) in a plain line; empty for the header and the cell.</summary>
    public string Said { get; init; } = "";
}

/// <summary>A row of a table.</summary>
/// <param name="Key">The key that takes it, or empty.</param>
/// <param name="Marked">True for the line you are on.</param>
/// <param name="Cells">A cell a column.</param>
sealed record Row(string Key, bool Marked, IReadOnlyList<string> Cells);

/// <summary>Size of a window, in cells.</summary>
/// <param name="Columns">Columns.</param>
/// <param name="Rows">Rows.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct PageSize(int Columns, int Rows)
{
    /// <summary>The smallest window that can be worked in.</summary>
    public static PageSize Smallest { get; } = new(60, 18);
}

/// <summary>A line of a window.</summary>
/// <param name="Text">The text, no wider than the window in cells.</param>
/// <param name="Marked">True for the line you are on.</param>
sealed record Line(string Text, bool Marked = false);
