using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>The tables of published sizes on the screen.</summary>
public sealed class PublishedScreenTests
{
    /// <summary>Short names of the topics with such a table.</summary>
    public static TheoryData<string> Topics() => [.. Corpus.Shipped.Where(id => Corpus.Topic(id).Published.Count > 0)];

    [Theory]
    [InlineData(80, 24)]
    [InlineData(60, 20)]
    [InlineData(120, 40)]
    public void A_table_looks_as_ever(int columns, int rows) => Golden.Same($"published-{columns}x{rows}", string.Join('\n', Lines(PageOf("crank"), new(columns, rows), 0)) + "\n");

    [Theory]
    [MemberData(nameof(Topics))]
    public void Every_figure_can_be_read_on_the_smallest_screen(string id)
    {
        var page = PageOf(id);
        var all = new HashSet<string>(StringComparer.Ordinal);
        for (var at = 0; at < 300; at += 8) all.UnionWith(Lines(page, new(60, 20), at));
        foreach (var size in Corpus.Topic(id).Published)
        {
            var figure = $"{size.Value:0.####} {size.Unit}".Trim();
            var first = size.Name[..Math.Min(8, size.Name.Length)].Split(' ')[0];
            Assert.True(all.Any(l => l.Contains(figure, StringComparison.Ordinal) && l.Contains(first, StringComparison.Ordinal)), $"{size.Name}: {figure}");
        }
    }

    static Page PageOf(string id)
    {
        var talk = new Talk([Corpus.Topic(id)]);
        return new PublishedScreen(id, talk.Screen).Show(talk.World);
    }

    static IEnumerable<string> Lines(Page page, PageSize size, int scroll) => Layout.Of(page, size, scroll).Select(l => l.Text.TrimEnd());
}
