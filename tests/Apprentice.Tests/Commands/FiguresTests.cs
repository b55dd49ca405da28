using System.Text.Json;

namespace Apprentice.Tests.Commands;

/// <summary>The command that counts figures by where they come from.</summary>
public sealed class FiguresTests
{
    static readonly string[] Marks = ["sourced", "practice", "judged", "memory", "worked", "unmarked"];

    [Fact]
    public void No_shipped_figure_is_unmarked_and_the_sum_is_that_of_all()
    {
        var said = Said.Bare("figures", "--json", "--topics", Path.Combine(Corpus.Root, "question-bank"));
        using var json = JsonDocument.Parse(said.Out);
        var counts = json.RootElement.GetProperty("figures").EnumerateArray().ToList();
        foreach (var mark in Marks) Assert.Equal(counts.SkipLast(1).Sum(c => c.GetProperty(mark).GetInt32()), counts[^1].GetProperty(mark).GetInt32());
        Assert.Equal(0, counts[^1].GetProperty("unmarked").GetInt32());
        Assert.Equal((2 * Corpus.Shipped.Count()) + 1, counts.Count);
    }

    [Fact]
    public void A_size_from_memory_is_counted_as_one()
    {
        var said = Said.Bare("figures", "--topics", Path.Combine(Corpus.Root, "question-bank")).Out;
        // The flat mount of brakes; three ends of crank axles.
        Assert.Contains(", 1 from memory", said.Split('\n').First(l => l.StartsWith("brakes:", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains(", 3 from memory", said.Split('\n').First(l => l.StartsWith("crank:", StringComparison.Ordinal)), StringComparison.Ordinal);
    }
}
