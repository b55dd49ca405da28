using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Commands;

public sealed class GoldenTests
{
    static readonly string[] Findings = ["older-newer-bar", "plate@phone=2016", "grip-fixing@phone=bolted", "bar-height=101mm", "stem-length=13 3/16in"];

    [Fact]
    public void Topics_are_listed() => Check("topics", "topics");

    [Fact]
    public void A_topic_is_told_in_full() => Check("topics-one", "topics", "older-newer-bar");

    [Fact]
    public void Findings_are_weighed() => Check("identify", ["identify", .. Findings]);

    [Fact]
    public void Findings_are_weighed_for_an_order() => Check("identify-want", ["identify", .. Findings, "--want", "cables", "--provenance", "lot", "--tools", "tape,eyes"]);

    [Fact]
    public void An_odd_reading_is_to_be_taken_again() => Check("identify-odd", "identify", "older-newer-bar", "stem-length=322", "--asks", "stem");

    [Fact]
    public void A_case_is_made() => Check("case", "case", "older-newer-bar", "--seed", "7", "--provenance", "lot", "--opening", "both", "--select", "conflicting", "--offer", "photo");

    [Fact]
    public void A_case_is_made_with_its_solution() => Check("case-solution", "case", "older-newer-bar", "--seed", "11", "--want", "lever", "--solution");

    [Fact]
    public void The_law_of_calibration_is_tried() => Check("laws", "laws", "older-newer-bar", "--cases", "30");

    [Fact]
    public void Shipped_topics_can_be_told_in_full()
    {
        foreach (var id in Corpus.Shipped) Assert.Equal(0, Said.Bare("topics", id).ExitCode);
    }

    static void Check(string name, params string[] args)
    {
        var text = Said.By(args);
        Assert.Equal("", text.Error);
        Assert.Equal(0, text.ExitCode);
        Golden.Same(name, text.Out);
        var json = Said.By([.. args, "--json"]);
        Assert.Equal(0, json.ExitCode);
        Golden.Same(name + ".json", json.Out);
    }
}
