using Apprentice.Content.Topics;
using Apprentice.Engine;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Content;

public sealed class TopicFuzzTests
{
    const string Letters = "|-:#,;=. \n0123456789abcxyz\"/*>`[]\\\0é\t+";

    [Theory]
    [InlineData(Sample.Bar, 1)]
    [InlineData(Sample.EveryField, 2)]
    public void A_file_cut_anywhere_is_read_or_told(string file, ulong seed)
    {
        var text = Sample.Text(file);
        var rng = new Rng(seed);
        for (var i = 0; i < 60; i++) ReadOrTold(text[..rng.Below(text.Length + 1)]);
    }

    [Theory]
    [InlineData(Sample.Bar, 3)]
    [InlineData(Sample.EveryField, 4)]
    public void A_mutated_file_is_read_or_told_and_what_is_read_can_be_worked_with(string file, ulong seed)
    {
        var rng = new Rng(seed);
        var lines = Sample.Text(file).Split('\n');
        var read = 0;
        for (var i = 0; i < 120; i++)
        {
            var mutated = lines.ToList();
            for (var n = 1 + rng.Below(3); n > 0; n--) Mutate(mutated, rng);
            if (ReadOrTold(string.Join('\n', mutated)) is not { } topic) continue;
            read++;
            foreach (var provenance in topic.Provenances) _ = new Workbench(topic).SceneOf(provenance.Id);
        }

        Assert.InRange(read, 5, 110);
    }

    [Fact]
    public void Any_text_is_told()
    {
        var rng = new Rng(5);
        for (var i = 0; i < 300; i++)
        {
            var text = string.Concat(Enumerable.Range(0, rng.Below(400)).Select(_ => Letters[rng.Below(Letters.Length)]));
            Assert.Null(ReadOrTold(text));
        }
    }

    static Topic? ReadOrTold(string text)
    {
        var reading = TopicReader.Read("x.md", text);
        Assert.Equal(reading.Topic is null, reading.Faults.Count > 0);
        var lines = text.Count(letter => letter == '\n') + 1;
        Assert.All(reading.Faults, fault => Assert.InRange(fault.Line, 1, lines));
        Assert.All(reading.Faults, fault => Assert.EndsWith(".", fault.Message, StringComparison.Ordinal));
        return reading.Topic;
    }

    static void Mutate(List<string> lines, Rng rng)
    {
        var at = rng.Below(lines.Count);
        var other = rng.Below(lines.Count);
        var line = lines[at];
        switch (rng.Below(7))
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(at, lines[other]);
                break;
            case 2:
                (lines[at], lines[other]) = (lines[other], line);
                break;
            case 3 when line.Length > 0:
                var letter = rng.Below(line.Length);
                lines[at] = line[..letter] + Letters[rng.Below(Letters.Length)] + line[(letter + 1)..];
                break;
            case 4:
                lines[at] = line[..rng.Below(line.Length + 1)];
                break;
            case 5:
                lines[at] = Cells(line, cells => cells[rng.Below(cells.Length)] = "");
                break;
            default:
                var wanted = lines[other].Split('|');
                lines[at] = Cells(line, cells => cells[rng.Below(cells.Length)] = wanted[rng.Below(wanted.Length)]);
                break;
        }
    }

    static string Cells(string line, Action<string[]> change)
    {
        var cells = line.Split('|');
        change(cells);
        return string.Join('|', cells);
    }
}
