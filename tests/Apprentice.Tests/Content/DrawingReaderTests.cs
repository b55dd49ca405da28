using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Content;

public sealed class DrawingReaderTests
{
    const string Stem = "## Drawings\n\n### post: Stem from the side\n\n- Figure: bar-side\n- Clue: stem-length\n- Part: stem\n- rise: 120 mm\n\n"
        + "| kind | stem |\n|---|---|\n| older | stem-length |\n| newer | 12 in |\n\n"
        + "| datum | from | to |\n|---|---|---|\n| right | hinge-upper | clamp-centre |\n| 1 | hinge-upper | clamp-lower |\n";

    const string Art = "## Drawings\n\n### post: Stem\n\n- Figure: plain-art\n- Part: stem\n\n```older\n|--o\n```\n\n```newer\n|------o\n```\n";

    /// <summary>Faults: what is written, what is written instead, the message, and text of the line that is told.</summary>
    public static TheoryData<string, string, string, string> Faults { get; } = new()
    {
        { "- Figure: bar-side", "- Figure: bar-sid", "There is no figure \"bar-sid\": use bar-side, ", "- Figure" },
        { "- Figure: bar-side\n", "", "\"post: Stem from the side\" needs the field \"Figure\".", "### post" },
        { "### post: Stem from the side", "### post", "The drawing \"post\" needs a title: write ### post: its title.", "### post" },
        { "- rise: 120 mm", "- height: 120 mm", "There is no field \"height\" here: use ", "- height" },
        { "- rise: 120 mm", "- rise: 1200 mm", "\"rise\" is 1200 mm: a bar-side has 20 to 300 mm.", "- rise" },
        { "- rise: 120 mm", "- rise: 12O mm", "\"12O mm\" is not a length: write 310 mm, 12.7 or 27 1/4 in.", "- rise" },
        { "- rise: 120 mm", "- rise: stem-lenght", "There is no size \"stem-lenght\": use stem-length, ", "- rise" },
        { "| kind | stem |", "| kind | stems |", "There is no column \"stems\" here: use stem, ", "| kind" },
        { "| older | stem-length |", "| oldre | stem-length |", "There is no kind of stem \"oldre\": use older or newer", "| oldre" },
        { "| older | stem-length |\n", "", "\"post: Stem from the side\" does not show the kind \"older\": add it.", "### post" },
        { "| newer | 12 in |", "| newer | 12 in |\n| newer | 13 in |", "The kind \"newer\" is drawn twice here.", "| newer | 13" },
        { "- Part: stem\n", "", "A table of kinds needs the field \"Part\": whose kinds are they?", "| older" },
        { "| right | hinge-upper | clamp-centre |", "| right | hinge | clamp-centre |", "There is no point of this figure \"hinge\": use ", "| right" },
        { "| 1 | hinge-upper | clamp-lower |", "| 7 | hinge-upper | clamp-lower |", "\"stem-length\" has no named slip \"7\": write right, a number from 1 to ", "| 7" },
        { "| 1 | hinge-upper | clamp-lower |\n", "", "The datum \"to the edge of the clamp\" of \"stem-length\" is missing here: add a row.", "| right" },
        { "- Clue: stem-length\n", "", "A table of datums needs the field \"Clue\" with a measured clue.", "| right" },
        { "| datum | from | to |", "| from | to |", "This table is read by nobody: the tables of a drawing have a column kind, finding or datum.", "| from" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_of_a_drawing_is_told_with_its_line(string was, string now, string message, string line)
    {
        Assert.Contains(was, Stem, StringComparison.Ordinal);
        var text = Text(Stem.Replace(was, now, StringComparison.Ordinal));
        var fault = TopicReader.Read(Sample.Bar, text).Faults[0];
        Assert.StartsWith(message, fault.Message, StringComparison.Ordinal);
        Assert.StartsWith(line, text.Split('\n')[fault.Line - 1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawing_is_read()
    {
        var drawing = Assert.Single(Topic(Stem).Drawings);
        Assert.Equal(("post", "Stem from the side", "bar-side", "stem"), (drawing.Id, drawing.Title, drawing.Figure, drawing.Part));
        Assert.Equal(["stem-length"], drawing.Clues);
        Assert.Equal(new FigureValue.Number(120), drawing.Fixed["rise"]);
        Assert.Equal(new FigureValue.Size("stem-length"), drawing.Kinds[0].Values["stem"]);
        Assert.Equal(304.8, Assert.IsType<FigureValue.Number>(drawing.Kinds[1].Values["stem"]).Value, 6);
        Assert.Equal([new DrawnDatum("stem-length", 0, "hinge-upper", "clamp-centre"), new DrawnDatum("stem-length", 1, "hinge-upper", "clamp-lower")], drawing.Datums);
    }

    [Fact]
    public void Text_art_is_read_as_it_stands() => Assert.Equal(["|------o"], Assert.Single(Topic(Art).Drawings).Kinds[1].Art);

    [Theory]
    [InlineData("```newer", "```lang", "\"lang\" is no kind or finding that is drawn here")]
    [InlineData("- Figure: plain-art", "- Figure: valve", "Text art is for the figure plain-art")]
    [InlineData("|------o", "1234567890123456789012345678901234567890123456789012345678901234", "A line of text art has at most 58 characters")]
    public void A_fault_of_text_art_is_told(string was, string now, string message) =>
        Assert.Contains(TopicReader.Read(Sample.Bar, Text(Art.Replace(was, now, StringComparison.Ordinal))).Faults, f => f.Message.StartsWith(message, StringComparison.Ordinal));

    [Fact]
    public void A_finding_is_not_drawn_from_the_truth_behind_it()
    {
        var finding = "## Drawings\n\n### grip: Grip\n\n- Figure: grip-end\n- Clue: grip-fixing\n\n| finding | length |\n|---|---|\n| glued | grip-size |\n| bolted | 100 mm |\n";
        Assert.Contains(TopicReader.Read(Sample.Bar, Text(finding)).Faults, f => f.Message.StartsWith("A finding shows what it says, never the true \"grip-size\" behind it", StringComparison.Ordinal));
    }

    [Fact]
    public void Drawings_change_no_belief()
    {
        var (with, without) = (Topic(Stem), Topic(""));
        Assert.Equal(without.Clues.Count, with.Clues.Count);
        Assert.Empty(without.Drawings);
    }

    static string Text(string drawings) => Sample.Text(Sample.Bar).TrimEnd('\n') + "\n\n" + drawings;

    static Topic Topic(string drawings)
    {
        var reading = TopicReader.Read(Sample.Bar, Text(drawings));
        Assert.Empty(reading.Faults);
        return Assert.IsType<Topic>(reading.Topic);
    }
}
