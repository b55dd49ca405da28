using Apprentice.Content;
using Apprentice.Content.Topics;

namespace Apprentice.Tests.Content;

public sealed class TopicFaultTests
{
    [Fact]
    public void A_fault_is_printed_as_file_line_and_sentence() =>
        Assert.Equal("question-bank/x.md:7: No.", new Fault("question-bank/x.md", 7, "No.").ToString());

    [Fact]
    public void A_missing_section_is_told_once_and_not_wherever_it_is_needed() => Assert.Equal(
        [
            "1: The section \"## Lines\" is missing.",
            "17: There is no section \"Linse\": use \"Lines\", \"Kinds\" or \"Sizes\"; prose may stand in \"Notes\".",
        ],
        Faulty.Of(Sample.Bar, "## Lines", "## Linse"));

    [Fact]
    public void A_missing_column_is_told_once_and_not_in_every_row() => Assert.Equal(
        ["27: There is no column \"lott\" here: use lot, own or year.", "27: The column \"lot\" is missing."],
        Faulty.Of(Sample.Bar, "| year         | own | lot |", "| year         | own | lott |"));

    [Fact]
    public void A_name_used_of_a_section_that_is_not_there_is_told_once() => Assert.Equal(
        ["22: There is no pitfall \"kept-old-line\": this file names none.", "281: The section \"Spares\" stands twice: put both together."],
        Faulty.Of(Sample.Bar, "## Pitfalls", "## Spares"));

    [Fact]
    public void A_misspelt_field_is_told_and_so_is_the_one_that_is_missing() => Assert.Equal(
        ["222: \"motor: Motor in the front hub\" needs the field \"Minutes\".", "226: There is no field \"Minuts\" here: use Minutes, Lies or Datum."],
        Faulty.Of(Sample.Bar, "- Minutes: 0.5", "- Minuts: 0.5"));

    [Fact]
    public void A_misspelt_column_of_a_clue_is_told_with_the_nearest_first() => Assert.Equal(
        [
            "233: There is no column \"basik\" here: use basic, gauge, text, none, stop, finding, standard, electric, looks like or described.",
            "233: The column \"basic\" is missing.",
        ],
        Faulty.Of(Sample.Bar, "| finding | text     | standard | basic |", "| finding | text     | standard | basik |"));

    [Fact]
    public void A_table_of_sizes_with_a_misspelt_first_column_is_not_passed_over() => Assert.Equal(
        [
            "86: \"Sizes\" needs a table with the columns size, kind, nominal, spread.",
            "94: This table is read by nobody: sizes have a column id, their kinds a column size.",
        ],
        Faulty.Of(Sample.Bar, "| size        | kind", "| sise        | kind"));

    [Fact]
    public void Every_spare_that_depends_on_what_is_not_asked_is_told() => Assert.Equal(
        ["cables-oo", "cables-on", "cables-no", "cables-nn"],
        Faulty.Of(Sample.Bar, "- Asks: bar, stem\n", "- Asks: bar\n").Select(fault => fault.Split('"')[1]));

    [Fact]
    public void A_topic_without_years_tells_everything_that_needs_them()
    {
        const string Years = "## Years\n\n| year         | own | lot |\n|--------------|-----|-----|\n| 2010 to 2016 | 1   | 1   |\n| 2017 to 2023 | 1   | 0.5 |\n";
        const string Remedy = "add the section \"Years\" or take the months out.";
        Assert.Equal(
            [
                $"21: The line \"standard\" has months: {Remedy}",
                $"22: The line \"basic\" has months: {Remedy}",
                $"23: The line \"electric\" has months: {Remedy}",
                $"34: The part \"built\" is a build date: {Remedy}",
                $"58: A running change needs months: {Remedy}",
                $"62: A running change needs months: {Remedy}",
                $"66: A running change needs months: {Remedy}",
                "99: The clue \"plate\" reads the build date: add the section \"Years\".",
            ],
            Faulty.Of(Sample.Bar, Years, ""));
    }

    [Fact]
    public void Faults_of_all_sections_are_told_at_once_in_the_order_of_their_lines()
    {
        var text = Sample.Text(Sample.Bar).Replace("- State: draft", "- State: done").Replace("| 0.15 | kept", "| lots | kept")
            .Replace("- Tool: rule", "- Toll: rule").Replace("| 0.8          | 4 ", "| 0.8          | x ");
        var faults = TopicReader.Read(Sample.Bar, text).Faults;
        Assert.Equal([4, 22, 175, 178, 296], faults.Select(fault => fault.Line));
    }

    [Fact]
    public void An_empty_file_tells_the_sections_that_it_needs()
    {
        var faults = TopicReader.Read("empty.md", "").Faults;
        Assert.All(faults, fault => Assert.Equal(1, fault.Line));
        Assert.Equal(8, faults.Count(fault => fault.Message.StartsWith("The section \"## ", StringComparison.Ordinal)));
        Assert.Contains(faults, fault => fault.Message == "The title is missing: begin with \"# \" and the title.");
    }

    [Theory]
    [InlineData("| ", "Lines", "The table of \"Lines\" has no rows.")]
    [InlineData("### ", "Clues", "There are no clues: add entries such as \"### grip-length: Grip, end to end\".")]
    [InlineData("### ", "What customers want", "Nobody wants anything: add entries such as \"### grips: New grips\".")]
    public void An_empty_section_is_told(string begin, string heading, string message)
    {
        var lines = Sample.Text(Sample.Bar).Split('\n').ToList();
        var from = lines.IndexOf($"## {heading}") + 1;
        var to = lines.FindIndex(from, line => line.StartsWith("## ", StringComparison.Ordinal));
        from = lines.FindIndex(from, line => line.StartsWith(begin, StringComparison.Ordinal)) + (begin == "| " ? 2 : 0);
        lines.RemoveRange(from, to - from);
        lines.Insert(from, "");
        var faults = TopicReader.Read(Sample.Bar, string.Join('\n', lines)).Faults;
        Assert.Contains(new Fault(Sample.Bar, lines.IndexOf($"## {heading}") + 1, message), faults);
    }

    [Fact]
    public void A_topic_that_asks_for_nothing_is_told()
    {
        var text = Sample.Text(Sample.Bar).Replace("| yes  ", "| no   ");
        var faults = TopicReader.Read(Sample.Bar, text).Faults;
        Assert.Equal([32, 248, 255, 255, 262], faults.Select(fault => fault.Line));
        Assert.Equal("No part is asked for: write yes under \"asked\" for at least one.", faults[0].Message);
    }

    [Fact]
    public void A_file_whose_name_is_no_short_name_is_told()
    {
        var faults = TopicReader.Read("My Topic.md", Sample.Text(Sample.Bar)).Faults;
        Assert.Equal(
            ["1: \"My Topic\" is no short name of a topic: call the file by lower-case letters, digits and hyphens, then .md."],
            faults.Select(fault => $"{fault.Line}: {fault.Message}"));
    }

    [Fact]
    public void Text_nested_too_deeply_is_a_fault_and_no_exception()
    {
        var fault = Assert.Single(TopicReader.Read("deep.md", string.Concat(Enumerable.Repeat("> ", 5000))).Faults);
        Assert.Equal((1, "Lists or quotes are nested too deeply to be read: a topic file needs headings, points and tables only."), (fault.Line, fault.Message));
    }

    [Fact]
    public void More_stories_than_the_engine_can_tell_apart_are_a_fault()
    {
        var rows = string.Concat(Enumerable.Range(0, 60).Select(i => $"| more-{i} | something | changed-set | rare | rare | | bar becomes newer | judgement |\n"));
        Assert.Equal(
            ["76: Events, and lines, packages and kinds with a pitfall, are 69 together: at most 64."],
            Faulty.Of(Sample.Bar, "| bar-to-newer     |", rows + "| bar-to-newer     |"));
    }
}
