using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Content;

/// <summary>The words of a tool choose what is read; the column "gauge" says which leaf fits.</summary>
public sealed class GaugeReaderTests
{
    [Theory]
    [InlineData("rule", InstrumentSort.Rule, false, false, false)]
    [InlineData("eyes, tape", InstrumentSort.Tape, false, false, false)]
    [InlineData("rule, inches", InstrumentSort.Rule, true, false, false)]
    [InlineData("tape, inches", InstrumentSort.Tape, true, false, false)]
    [InlineData("rule, inches, pins", InstrumentSort.Rule, true, false, true)]
    [InlineData("caliper", InstrumentSort.Caliper, false, false, false)]
    [InlineData("Caliper, inside", InstrumentSort.Caliper, false, true, false)]
    [InlineData("pitch gauge, lamp", InstrumentSort.PitchGauge, false, false, false)]
    [InlineData("chain gauge", InstrumentSort.ChainGauge, false, false, false)]
    public void The_words_of_a_tool_choose_the_scale(string tool, InstrumentSort sort, bool inches, bool inside, bool pins) =>
        Assert.Equal(new Instrument(sort, inches, inside, pins), Instrument.Of(tool));

    [Theory]
    [InlineData("eyes, lamp")]
    [InlineData("hands")]
    [InlineData("chalk")]
    public void Other_tools_have_no_scale(string tool) => Assert.Null(Instrument.Of(tool));

    // 1/24 in = 1.0583 mm. Source: facts U1.1 (24 tpi, 1.058 mm).
    [Fact]
    public void Leaves_of_a_pitch_gauge_are_read_in_mm_and_turns_an_inch()
    {
        var leaves = Findings("pitch gauge", "1.25 mm", "24 tpi", "").Select(f => f.Gauge).ToList();
        Assert.Equal(new Leaf("1.25 mm", 1.25), leaves[0]);
        Assert.Equal(("24 tpi", 1.0583), (leaves[1]?.Name, Math.Round(leaves[1]?.Size ?? 0, 4)));
        Assert.Null(leaves[2]);
    }

    [Fact]
    public void Ends_of_a_chain_gauge_are_read_with_none_for_no_end() =>
        Assert.Equal([0, 0.5, 1], Findings("chain gauge", "none", "0.5", "1.0").Select(f => f.Gauge?.Size ?? -1));

    [Theory]
    [InlineData("eyes", "1 mm", "\"gauge\" is only for clues whose tool is a pitch gauge or a chain gauge.")]
    [InlineData("pitch gauge", "coarse", "\"coarse\" is not a leaf of a pitch gauge: write 1.25 mm or 24 tpi, or leave it blank where none fits.")]
    [InlineData("pitch gauge", "0 tpi", "\"0 tpi\" is not a leaf of a pitch gauge: write 1.25 mm or 24 tpi, or leave it blank where none fits.")]
    [InlineData("chain gauge", "9", "\"9\" is not an end of a chain gauge: write none, 0.5, 0.75 or 1.0.")]
    public void A_leaf_that_is_none_is_told_with_what_would_do(string tool, string gauge, string message) =>
        Assert.Equal(message, Assert.Single(Read(tool, gauge, "", "").Faults).Message);

    [Fact]
    public void A_scale_in_inches_has_steps_of_a_sixteenth_and_a_short_datum()
    {
        var text = Sample.Text(Sample.EveryField)
            .Replace("- Tool: tape", "- Tool: tape, inches\n- Datum: round the teeth", StringComparison.Ordinal)
            .Replace("step 1 mm, limit 1.5 mm, from 190 to 600 mm", "step 1/16 in, limit 1/16 in, from 7 to 24 in", StringComparison.Ordinal);
        var reading = TopicReader.Read(Sample.EveryField, text);
        Assert.Empty(reading.Faults);
        var clue = reading.Topic?.Clues[1];
        Assert.Equal(("tape, inches", "round the teeth"), (clue?.Tool, clue?.Datum));
        Assert.Equal(1.5875, Assert.IsType<Shows.Measured>(clue?.Shows).Step, 1e-12);
    }

    static IReadOnlyList<TableFinding> Findings(string tool, params string[] gauges)
    {
        var reading = Read(tool, gauges);
        Assert.Empty(reading.Faults);
        return Assert.IsType<Shows.Table>(reading.Topic?.Clues[2].Shows).Findings;
    }

    // The clue "look" of the sample with another tool, and a column "gauge" at the end of its table.
    static TopicReading Read(string tool, params string[] gauges)
    {
        var lines = Sample.Text(Sample.EveryField).Split('\n');
        var look = Array.FindIndex(lines, l => l.StartsWith("### look", StringComparison.Ordinal));
        lines[Array.IndexOf(lines, "- Tool: eyes", look)] = $"- Tool: {tool}";
        var header = Array.FindIndex(lines, look, l => l.StartsWith("| finding", StringComparison.Ordinal));
        string[] cells = ["gauge", "---", .. gauges];
        for (var i = 0; i < cells.Length; i++) lines[header + i] = $"{lines[header + i].TrimEnd()} {cells[i]} |";
        return TopicReader.Read(Sample.EveryField, string.Join('\n', lines));
    }
}
