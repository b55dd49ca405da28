using Apprentice.Content.Values;
using Apprentice.Drawing;
using Apprentice.Drills;
using Apprentice.Engine;
using Apprentice.Screens;
using Apprentice.Tests.Drawing;

namespace Apprentice.Tests.Drills;

/// <summary>Items of drills, solved by somebody who sees only what is shown.</summary>
public sealed class DrillItemTests
{
    const int Seeds = 300;

    static readonly IReadOnlyList<Workbench> Benches = [.. Corpus.Shipped.Select(Corpus.Bench)];

    public static TheoryData<string> Skills => [.. DrillSkill.All.Select(s => s.Id)];

    [Fact]
    public void A_caliper_read_off_its_drawing_is_right_and_a_division_off_is_not()
    {
        var items = Items<DrillItem.OnScale>("vernier").ToList();
        Assert.All(items, item =>
        {
            var scale = (Scale.Vernier)item.Scale;
            var size = ReadBack.Caliper(scale, item.ExactFor(0), 80, closed: false) - ReadBack.Caliper(scale, 0, 80, closed: true);
            Assert.True(item.Judge(new OwnReading(0, size, "")).Right);
            Assert.False(item.Judge(new OwnReading(0, size + scale.Division, "")).Right);
            Assert.False(item.Judge(new OwnReading(0, size - scale.Division, "")).Right);
        });
        Assert.Contains(items, i => ((Scale.Vernier)i.Scale).ZeroSteps < 0);
        Assert.Contains(items, i => ((Scale.Vernier)i.Scale).ZeroSteps == 0);
    }

    // Facts U7.1: main scale 27, line 4 of a 1/20 vernier: 27.20; with a zero error of +0.05 the size is 27.15.
    [Fact]
    public void The_worked_reading_is_told_as_the_handbook_does()
    {
        var item = Items<DrillItem.OnScale>("vernier").First(i => ((Scale.Vernier)i.Scale).ZeroSteps == 1);
        var shown = ReadBack.Caliper((Scale.Vernier)item.Scale, item.ExactFor(0), 80, closed: false);
        var said = item.Judge(new OwnReading(0, shown, "")).Why;
        Assert.StartsWith("The zero error was left in.", said, StringComparison.Ordinal);
        Assert.EndsWith($"Take it away: {shown - 0.05:0.00} mm.", said, StringComparison.Ordinal);
        Assert.Equal(27.15, ReadBack.Caliper(new Scale.Vernier(0.05), 27.15, 80, closed: false) - 0.05, 1e-9);
        Assert.Equal(27.20, ReadBack.Caliper(new Scale.Vernier(0.05), 27.15, 80, closed: false), 1e-9);
    }

    [Fact]
    public void A_tape_read_off_its_drawing_from_the_right_datum_is_right_and_from_another_is_not()
    {
        var skill = DrillSkill.All.Single(s => s.Id is "datum");
        foreach (var family in skill.Families(Benches))
        {
            foreach (var seed in Enumerable.Range(1, 12))
            {
                var item = (DrillItem.OnScale)skill.Make(Benches, family, (ulong)seed);
                Assert.True(item.Datums.Count > 1);
                Assert.True(item.Judge(new OwnReading(0, Read(item, 0), "")).Right, $"{family} {seed}");
                Assert.False(item.Judge(new OwnReading(0, Read(item, 0) + (2 * item.Step), "")).Right);
                Assert.False(item.Judge(new OwnReading(1, Read(item, 1), "")).Right);
            }
        }
    }

    static double Read(DrillItem.OnScale item, int datum) =>
        Math.Round(ReadBack.ByEye(ScaleView.Of(item.Scale, item.ExactFor(datum), 80, new ScaleWindow(item.Scale.Zooms.Count - 1))) / item.Step) * item.Step;

    // One inch is 25.4 mm exactly (international yard and pound agreement, 1959): worked out here apart from the program.
    [Fact]
    public void Fractions_are_worked_out_by_hand()
    {
        var asked = Items<DrillItem.Type>("fractions").ToList();
        Assert.NotEmpty(asked);
        Assert.All(asked, item =>
        {
            var words = item.Prompt["How many millimetres are ".Length..item.Prompt.IndexOf(" in?", StringComparison.Ordinal)].Split(' ');
            var inches = words.Sum(w => w.Contains('/', StringComparison.Ordinal) ? double.Parse(w.Split('/')[0]) / double.Parse(w.Split('/')[1]) : double.Parse(w));
            Assert.Equal(inches * 25.4, item.Right, 1e-9);
            Assert.InRange(item.Tolerance, 0, 25.4 / 16 / 4);
        });
    }

    [Fact]
    public void Of_the_lines_to_choose_from_one_is_right()
    {
        var picks = Items<DrillItem.Pick>("fractions").ToList();
        Assert.All(picks, p => Assert.Equal(p.Options.Distinct(), p.Options));
        Assert.All(picks, p => Assert.InRange(p.Options.Count, 2, 4));
        Assert.Equal([0, 1, 2, 3], picks.Select(p => p.Right).Distinct().Order());
        foreach (var pick in picks.Where(p => p.Prompt.StartsWith("Which inch", StringComparison.Ordinal)))
        {
            Assert.True(LengthText.TryParse(pick.Options[pick.Right], out var right));
            Assert.Equal(double.Parse(pick.Prompt.Split(' ')[4]), right, 0.006);
        }
        foreach (var pick in picks.Where(p => p.Prompt.StartsWith("Which decimal", StringComparison.Ordinal)))
        {
            Assert.True(LengthText.TryParse(pick.Prompt["Which decimal is ".Length..^1], out var asked));
            Assert.True(LengthText.TryParse(pick.Options[pick.Right], out var right));
            Assert.Equal(asked, right, 1e-9);
        }
    }

    // Facts T1 (DIMINFO, CHARTCOPY, WP_ETRTO): bead seat diameters as published.
    [Theory]
    [InlineData("26 x 1 1/2", 584)]
    [InlineData("26 x 1.50", 559)]
    [InlineData("26 x 1 3/4", 571)]
    [InlineData("26 x 1.75", 559)]
    [InlineData("28 x 1 1/2", 635)]
    [InlineData("20 x 1 3/4", 419)]
    [InlineData("20 x 1.75", 406)]
    [InlineData("24 x 1.75", 507)]
    [InlineData("16 x 1 3/4", 317)]
    [InlineData("16 x 1.75", 305)]
    public void Names_of_tyres_stand_for_one_published_seat(string name, int seat) =>
        Assert.Equal([seat], FractionDrill.Published.Where(p => p.Name == name).Select(p => p.Seat));

    [Theory]
    [MemberData(nameof(Skills))]
    public void The_same_seed_makes_the_same_item(string id)
    {
        var skill = DrillSkill.Of(id) ?? throw new InvalidOperationException();
        foreach (var family in skill.Families(Benches))
        {
            var (one, two) = (skill.Make(Benches, family, 77), skill.Make(Benches, family, 77));
            Assert.Equal(one.Prompt, two.Prompt);
            if (one is DrillItem.OnScale scale) Assert.Equal(scale.ExactFor(0), ((DrillItem.OnScale)two).ExactFor(0));
        }
    }

    static IEnumerable<T> Items<T>(string id)
        where T : DrillItem
    {
        var skill = DrillSkill.Of(id) ?? throw new InvalidOperationException();
        return Enumerable.Range(1, Seeds).SelectMany(s => skill.Families(Benches).Select(f => skill.Make(Benches, f, (ulong)s))).OfType<T>();
    }
}
