using Apprentice.Screens;
using CsCheck;

namespace Apprentice.Tests.Screens;

public sealed class LayoutTests
{
    static readonly Gen<Page> Pages =
        from title in Text(1, 90)
        from right in Text(0, 40)
        from blocks in BlockOf().List[0, 40]
        from keys in Text(1, 25).List[1, 8]
        from foot in Text(0, 200)
        select new Page(title, right, blocks, keys) { Foot = foot.Length == 0 ? [] : [new Block.Text(foot)] };

    static readonly Gen<PageSize> Sizes = Gen.Select(Gen.Int[60, 200], Gen.Int[18, 60], (c, r) => new PageSize(c, r));

    [Fact]
    public void Every_page_fills_its_window_and_no_more() => Gen.Select(Pages, Sizes).Sample((page, size) =>
    {
        var lines = Layout.Of(page, size);
        Assert.Equal(size.Rows, lines.Count);
        Assert.All(lines, l => Assert.InRange(Cells.Width(l.Text), 0, size.Columns));
    });

    [Fact]
    public void Top_and_bottom_are_always_seen() => Gen.Select(Pages, Sizes).Sample((page, size) =>
    {
        var lines = Layout.Of(page, size);
        Assert.StartsWith(" " + page.Title[..Math.Min(page.Title.Length, size.Columns - 2)], lines[0].Text, StringComparison.Ordinal);
        Assert.EndsWith(page.Keys[^1].TrimEnd(), lines[^1].Text.TrimEnd(), StringComparison.Ordinal);
    });

    [Fact]
    public void The_marked_line_is_seen_wherever_it_is() => Gen.Select(Gen.Int[1, 60], Gen.Int[0, 59], Sizes).Sample((count, marked, size) =>
    {
        var rows = Enumerable.Range(0, count).Select(i => new Row((i + 1).ToString(), i == marked % count, [$"line {i}"])).ToList();
        var lines = Layout.Of(new Page("t", "", [new Block.Table([new("")], rows)], ["k"]), size);
        Assert.Contains(lines, l => l.Marked && l.Text.Contains($"line {marked % count}", StringComparison.Ordinal) && l.Text.Contains('>'));
    });

    [Fact]
    public void No_word_of_a_cell_is_lost_in_a_narrow_window()
    {
        var table = new Block.Table(
            [new("What you can check"), new("with"), new("min", Right: true), new("what you found")],
            [new Row("1", Marked: true, ["Round the rim with the tyre off", "tape, rag and lamp", "12.5", "told: loose, lifts off by hand on one side"])]);
        var text = string.Join(' ', Layout.Of(new Page("t", "", [table], ["k"]), new PageSize(60, 20)).Select(l => l.Text));
        Assert.All("Round the rim with tyre off tape, rag and lamp 12.5 told: loose, lifts by hand on one side".Split(' '), w => Assert.Contains(w, text, StringComparison.Ordinal));
    }

    [Fact]
    public void A_window_that_is_too_small_says_so()
    {
        var lines = Layout.Of(new Page("t", "", [], ["k"]), new PageSize(59, 18));
        Assert.Equal("This window is too small.", lines[0].Text);
        Assert.Equal(18, lines.Count);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(5, 2)]
    [InlineData(30, 3)]
    public void A_tiny_window_does_no_harm(int columns, int rows) =>
        Assert.Equal(rows, Layout.Of(new Page("t", "", [], ["k"]), new PageSize(columns, rows)).Count);

    [Fact]
    public void Wide_names_push_nothing_out_of_a_small_window() => Gen.Select(Wide, Wide, Wide, Gen.Int[60, 80]).Sample((title, right, cell, columns) =>
    {
        var table = new Block.Table([new("who"), new("jobs", Right: true), new("topics")], [new Row("1", Marked: true, [cell, "12", $"{right} {cell}"])]);
        var lines = Layout.Of(new Page(title, right, [new Block.Text($"{title} {right} {cell}"), table], ["k"]), new PageSize(columns, 20));
        Assert.All(lines, l => Assert.InRange(Cells.Width(l.Text), 0, columns));
        if (Cells.Width(title) + Cells.Width(right) + 2 <= columns - 2) Assert.Equal((columns - 1, true), (Cells.Width(lines[0].Text), lines[0].Text.EndsWith(right, StringComparison.Ordinal)));
        var row = Assert.Single(lines, l => l.Marked && l.Text.Contains("12", StringComparison.Ordinal)).Text;
        var head = lines.First(l => l.Text.Contains("jobs", StringComparison.Ordinal)).Text;
        Assert.Equal(Cells.Width(head[..(head.IndexOf("jobs", StringComparison.Ordinal) + 4)]), Cells.Width(row[..(row.IndexOf("12", StringComparison.Ordinal) + 2)]));
    });

    [Fact]
    public void A_wide_name_is_typed_and_taken_back_a_sign_at_a_time_and_the_top_line_keeps_its_end()
    {
        var talk = new Talk([Corpus.Sample]) { Size = new PageSize(60, 20) }.At(new NameScreen(null));
        talk.Keys("\u738B\u5C0F\U0001F6B2{Backspace}\u660E");
        Assert.Contains("Name:  \u738B\u5C0F\u660E_", talk.Text, StringComparison.Ordinal);
        talk.Keys("{Enter}");
        var top = talk.Text.Split('\n')[0];
        Assert.StartsWith(" \u738B\u5C0F\u660E ", top, StringComparison.Ordinal);
        Assert.EndsWith("November", top, StringComparison.Ordinal);
        Assert.Equal(59, Cells.Width(top));
    }

    static Gen<string> Wide => Gen.Int[0, CellsTests.Names.Length - 1].Select(i => CellsTests.Names[i]).Array[1, 4].Select(n => string.Join(' ', n));

    static Gen<string> Text(int least, int most) => Gen.Char["abc defg "].Array[least, most].Select(c => new string(c).Trim().Length == 0 && least > 0 ? "x" : new string(c).Trim());

    static Gen<Block> BlockOf() => Gen.OneOf(
        Text(0, 300).Select(t => (Block)new Block.Text(t, 2)),
        Gen.Const((Block)new Block.Gap()),
        Gen.Const((Block)new Block.Rule()),
        Text(0, 60).Array[3].List[1, 20].Select(rows => (Block)new Block.Table([new("one"), new("two", Right: true), new("three", Drop: true)], [.. rows.Select((r, i) => new Row(i.ToString(), i == 1, r))])));
}
