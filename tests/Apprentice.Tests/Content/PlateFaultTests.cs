namespace Apprentice.Tests.Content;

/// <summary>Faults of plates, writings and descriptions, each told with its line.</summary>
public sealed class PlateFaultTests
{
    const string Hub = "- Plate: hub";
    const string First = "| {text}-{09}  | date stamp    | When it was made    | flange    |";
    const string Holes = "| {09}{09}H    | spoke holes   | How many holes      |           |";
    const string Size = "| S{text}      | size number   | Its size            | inside    |";

    /// <summary>Faults: what is written, what is written instead, the message, and text of the line that is told.</summary>
    public static TheoryData<string, string, string, string?> Faults { get; } = new()
    {
        { Hub, "- Plate: rub", "There is no surface \"rub\" to draw on: use number plate, tyre wall, cup face, hub, crank end, stem, post, tube, rim or bare metal.", null },
        { First, First.Replace("{text}", "{09}", StringComparison.Ordinal), "The first writing is the one to go by: {text} must stand in it, once.", null },
        { First, First.Replace("{09}", "{text}", StringComparison.Ordinal), "The first writing is the one to go by: {text} must stand in it, once.", null },
        { First, First.Replace("{09}", "{9}", StringComparison.Ordinal), "\"{9}\" is not understood: use {text}, {09} or {A}.", null },
        { First, First.Replace("When it was made", "", StringComparison.Ordinal), "The says is missing.", null },
        { Holes, Holes.Replace("{09}", "{text}", StringComparison.Ordinal), "{text} stands for a finding, and no decoy \"spoke holes\" leads to one: write other characters.", null },
        { Holes, Holes.Replace("spoke holes", "size number", StringComparison.Ordinal), "The writing \"size number\" stands twice: also on line 130.", "| S{text}" },
        { Holes, Holes.Replace("{09}H", "{09} holes in the flange", StringComparison.Ordinal), "\"{09}{09} holes in the flange\" can be 22 characters long: at most 18.", "| {09}{09} holes" },
        { Size, Size.Replace("size number", "wheel size ", StringComparison.Ordinal), "The decoy \"size number\" has no writing: add a row whose \"is\" is its name.", "| {text}-" },
        { "|        | 11         |", "|        | {text}     |", "\"looks like\" gives the characters that {text} stands for, so {text} cannot stand in it.", null },
        { "|        | 11         |", "|        | {B}        |", "\"{B}\" is not understood: use {text}, {09} or {A}.", null },
        { "|        | 11         |", "|        | 10         |", "The findings \"s10\" and \"s11\" look alike: nobody could tell them apart.", "| s10   | 10" },
        { "|        | 11         |", "|        |            |", "The finding \"s11\" needs its characters in the column \"looks like\": write them, or worn, or nothing.", "### stamp" },
        { "| smooth all over                |", "|                                |", "The finding \"plain\" is not described, and others are: describe all or none.", null },
        { "- Reads: disc\n- Source: judgement\n", "- Reads: disc\n- Source: judgement\n- Plate: stem\n", "\"look: Look of the disc\" needs a table with the columns writing, is, says.", "### look" },
        { "- Measures: disc-size x pi plus 2 mm\n", "- Measures: disc-size x pi plus 2 mm\n- Plate: stem\n", "\"Plate\" is only for clues that are not measured.", "- Plate: stem" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_of_a_plate_is_told_with_its_line(string was, string now, string message, string? at)
    {
        var told = Faulty.Of(Sample.EveryField, was, now).ToList();
        Assert.Contains(told, t => t.EndsWith($": {message}", StringComparison.Ordinal));
        var text = Sample.Text(Sample.EveryField).Replace(was, now, StringComparison.Ordinal);
        var line = 1 + text[..text.IndexOf(at ?? now, StringComparison.Ordinal)].Count(c => c == '\n');
        Assert.Contains($"{line}: {message}", told);
    }

    [Fact]
    public void Writings_without_a_surface_are_told() =>
        Assert.Contains("Writings need a surface to stand on: add \"- Plate: number plate\".", string.Join('\n', Faulty.Of(Sample.EveryField, Hub + "\n", "")), StringComparison.Ordinal);

    [Fact]
    public void One_writing_is_no_choice() =>
        Assert.Contains(
            "A plate has 2 to 6 writings, the one to go by and others, not 1.",
            string.Join('\n', Faulty.Of(Sample.EveryField, Sample.Text(Sample.EveryField)[Sample.Text(Sample.EveryField).IndexOf(Holes, StringComparison.Ordinal)..Sample.Text(Sample.EveryField).IndexOf("### round", StringComparison.Ordinal)], "\n")),
            StringComparison.Ordinal);
}
