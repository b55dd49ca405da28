using System.Net;
using Apprentice.Commands;

namespace Apprentice.Tests.Commands;

/// <summary>Wall sheets: from the data alone, and known as old once their topic has changed.</summary>
public sealed class SheetTests
{
    static readonly string Html = SheetsCommand.Of(Corpus.Sample).Html("A4", new DateOnly(2026, 11, 25));

    [Fact]
    public void A_sheet_holds_kinds_figures_checks_and_stop_signs()
    {
        var topic = Corpus.Sample;
        var text = WebUtility.HtmlDecode(Html);
        foreach (var kind in topic.Parts.Where(p => p.Asked).SelectMany(p => p.Kinds)) Assert.Contains($"<td>{kind.Name}</td>", text, StringComparison.Ordinal);
        foreach (var clue in topic.Clues.Where(c => !c.Safety)) Assert.Contains(clue.FromTo, text, StringComparison.Ordinal);
        foreach (var caution in topic.Clues.Select(c => c.Caution).Where(c => c.Length > 0)) Assert.Contains(caution, text, StringComparison.Ordinal);
        foreach (var size in topic.Dimensions.Where(d => topic.Parts.First(p => p.Id == d.Part).Asked).SelectMany(d => d.Nominals).OfType<double>())
            Assert.Contains($"<td>{size:0.##} mm</td>", text, StringComparison.Ordinal);
        Assert.Contains($"version {topic.Version}", text, StringComparison.Ordinal);
        Assert.Contains("25 Nov 2026", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Checks_of_a_drawing_are_marked_where_they_are_taken()
    {
        var sheet = SheetsCommand.Of(Corpus.Topic("spokes-valves")).Html("A4", new DateOnly(2026, 11, 25));
        Assert.Contains(" A: ", sheet, StringComparison.Ordinal);
        Assert.Contains(">A</text>", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_is_old_once_its_topic_has_changed()
    {
        var file = Path.Combine(Said.Samples, Corpus.Sample.Id + ".md");
        using var folder = new TempFolder(($"topics/{Corpus.Sample.Id}.md", File.ReadAllText(file)), ("walls/no-sheet.html", "<html></html>"));
        var (topics, walls) = (folder.In("topics"), folder.In("walls"));
        Assert.Equal(0, Said.Bare("sheets", walls, "--paper", "a3", "--topics", topics).ExitCode);
        Assert.Equal("No sheet is old.\n", Said.Bare("sheets", walls, "--old", "--topics", topics).Out);
        File.AppendAllText(folder.In($"topics/{Corpus.Sample.Id}.md"), "\nA word more.\n");
        var old = Said.Bare("sheets", walls, "--old", "--topics", topics).Out;
        Assert.Contains($"{Corpus.Sample.Id}-a3.html: old, the topic is now version ", old, StringComparison.Ordinal);
        Assert.EndsWith("1 sheet to print anew.\n", old, StringComparison.Ordinal);
        File.Delete(folder.In($"topics/{Corpus.Sample.Id}.md"));
        Assert.Contains("its topic is not here any more", Said.Bare("sheets", walls, "--old", "--topics", topics).Out, StringComparison.Ordinal);
    }
}
