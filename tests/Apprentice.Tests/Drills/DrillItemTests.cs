using Apprentice.Content.Values;
using Apprentice.Drawing;
using Apprentice.Drawing.Plates;
using Apprentice.Drills;
using Apprentice.Engine;
using Apprentice.Engine.Topics;
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
    public void A_fraction_is_not_answered_with_itself()
    {
        var item = Items<DrillItem.Type>("fractions").First();
        var asked = item.Prompt["How many millimetres are ".Length..(item.Prompt.IndexOf(" in?", StringComparison.Ordinal) + 3)];
        Assert.All((string[])[asked, asked.Replace(" in", "\"", StringComparison.Ordinal), $"{item.Right / 25.4} IN"], typed => Assert.Null(item.Parse(typed)));
        Assert.All((string[])[$"{item.Right:0.0}", $"{item.Right:0.0}".Replace('.', ','), $"{item.Right:0.0} mm", $"{item.Right / 10:0.00}cm"], typed => Assert.Equal(item.Right, item.Parse(typed) ?? 0, item.Tolerance));
    }

    // The figures of a vernier are tenths: line 8 of 20 stands at the figure 4.
    [Fact]
    public void The_line_that_meets_is_told_by_its_figure_and_by_its_count()
    {
        var said = Items<DrillItem.OnScale>("vernier").Select(i => i.Judge(new OwnReading(0, 1, "")).Why).ToList();
        Assert.Contains(said, s => s.Contains("The line at the figure 4 meets a mark. Counted from zero it is line 8:", StringComparison.Ordinal));
        Assert.Contains(said, s => s.Contains("The line just after the figure 4 meets a mark. Counted from zero it is line 9:", StringComparison.Ordinal));
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

    [Fact]
    public void A_plate_read_sign_by_sign_is_right_and_a_decoy_is_not()
    {
        var items = Items<DrillItem.OnPlate>("plates", seeds: 8).ToList();
        Assert.NotEmpty(items);
        Assert.All(items, item =>
        {
            var one = item.View.Markings.FirstOrDefault(m => m.Writing == 0);
            var finding = one is null ? Gone(item.Clue) : ReadOff(item.Clue, one);
            Assert.True(item.Judge(new OwnLook(finding, 0)).Right, $"{item.Clue.Id}: {one?.Text} is {finding}");
            Assert.All(item.View.Markings.Where(m => m.Writing > 0), m => Assert.False(item.Judge(new OwnLook(finding, m.Writing)).Right));
            Assert.All(LookTask.FindingsOf(item.Clue).Where(f => f.Id != finding), f => Assert.False(item.Judge(new OwnLook(f.Id, 0)).Right));
        });
        Assert.Contains(items, i => i.View.Markings.All(m => m.Writing > 0));
        Assert.Contains(items, i => i.View.Markings.Any(m => m.Writing == 0 && m.Text.Any(c => Wear.By(c) is not null)));
    }

    [Fact]
    public void Every_clue_with_writings_is_drilled() => Assert.Equal(
        Benches.Sum(b => b.Topic.Clues.Count(c => c.Plate is not null && c.Channels.Any(x => x.Channel == Channel.Bench))), DrillSkill.Of("plates")?.Families(Benches).Count);

    [Fact]
    public void The_leaf_that_stands_off_least_is_right_and_the_others_are_not()
    {
        var items = Items<DrillItem.OnGauge>("pitch", seeds: 60).ToList();
        Assert.All(items, item =>
        {
            var fits = item.Leaves.Where(l => l.Gauge is not null).MinBy(l => ThreadView.Of(item.Pitch, l.Gauge?.Size ?? 0, 58, 8, ThreadView.Turns.Count - 1).Lift);
            Assert.Equal([fits], item.Leaves.Where(l => item.Judge(l.Id).Right));
            Assert.All(item.Leaves.Where(l => l.Gauge is not null && l != fits), l => Assert.DoesNotContain("too.", GaugeWords.Thread(item.Pitch, l.Gauge?.Size ?? 1, l.Text)[2], StringComparison.Ordinal));
        });
        Assert.True(items.Select(i => i.Pitch).Distinct().Count() > 8);
    }

    // Facts U6: 24 tpi against 1 mm is 0.58 mm over ten turns, 26 tpi 0.23 mm.
    [Theory]
    [InlineData("24 tpi", "10.58 mm for 10 turns: 0.58 mm off.")]
    [InlineData("26 tpi", "9.77 mm for 10 turns: 0.23 mm off.")]
    public void A_neighbour_is_told_by_its_drift_over_ten_turns(string leaf, string said)
    {
        var item = Items<DrillItem.OnGauge>("pitch", seeds: 60).First(i => i.Pitch is 1 && i.Leaves.Any(l => l.Id == leaf));
        var verdict = item.Judge(leaf);
        Assert.False(verdict.Right);
        Assert.StartsWith("1 mm fits: 1.0 mm from groove to groove, 10 turns in 10.0 mm.", verdict.Why, StringComparison.Ordinal);
        Assert.EndsWith(said, verdict.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void At_a_glance_the_kind_named_is_the_one_drawn_and_the_other_looks_different()
    {
        var skill = DrillSkill.Of("glance") ?? throw new InvalidOperationException();
        var families = skill.Families(Benches);
        Assert.NotEmpty(families);
        foreach (var (family, seed) in families.SelectMany(f => Enumerable.Range(1, 12).Select(s => (f, (ulong)s))))
        {
            var topic = Benches.First(b => family.StartsWith($"{b.Topic.Id}:", StringComparison.Ordinal)).Topic;
            var pair = (DrillItem.Pick)skill.Make(Benches, family, seed);
            var alone = Assert.IsType<DrillItem.Pick>(pair.Alone);
            var drawn = alone.Options.Select(name => Named(topic, family.Split(':')[1], name, seed)).ToList();
            var shown = alone.Picture ?? throw new InvalidOperationException();
            Assert.Equal(drawn[alone.Right].Rows(58, 9), shown.Draw(new(58, 9)));
            Assert.False(drawn[0].Rows(78, 12).SequenceEqual(drawn[1].Rows(78, 12)), $"{family}: {alone.Options[0]}, {alone.Options[1]}");
            Assert.All(alone.Options, name => Assert.All(shown.Words, w => Assert.DoesNotContain(name, w, StringComparison.OrdinalIgnoreCase)));
            Assert.Contains(alone.Options[alone.Right], pair.Prompt, StringComparison.Ordinal);
            var words = (pair.Picture ?? throw new InvalidOperationException()).Words.ToList();
            var told = words.Skip(words.IndexOf($"{pair.Options[pair.Right]}:") + 1);
            var clean = Named(topic, family.Split(':')[1], alone.Options[alone.Right], null).Words;
            Assert.Equal(clean, told.Take(clean.Count));
        }
    }

    // A wheel that is larger fills the window just as a small one does: without a rule beside it nobody sees which it is.
    [Fact]
    public void What_differs_in_size_alone_is_no_matter_of_a_glance()
    {
        var topic = Corpus.Topic("rim-size");
        Assert.Empty(GlanceDrill.Pairs(topic, topic.Drawings.First(d => d.Id == "wheel")));
        Assert.NotEmpty(GlanceDrill.Pairs(topic, topic.Drawings.First(d => d.Id == "section")));
        var spokes = Corpus.Topic("spokes-valves");
        var pairs = GlanceDrill.Pairs(spokes, spokes.Drawings.First(d => d.Id == "spoke")).Select(p => (p.First.Id, p.Second.Id));
        Assert.DoesNotContain(("plain-20", "butted"), pairs);
    }

    // A lever drawn for its distance is the same lever a few millimetres longer: nobody sees fluid or pull in it.
    [Fact]
    public void What_is_drawn_to_be_measured_is_no_matter_of_a_glance()
    {
        var brakes = Corpus.Topic("brakes");
        Assert.Empty(GlanceDrill.Pairs(brakes, brakes.Drawings.First(d => d.Id == "lever")));
        Assert.NotEmpty(GlanceDrill.Pairs(brakes, brakes.Drawings.First(d => d.Id == "fixed")));
    }

    /// <summary>The finding that a writing says, read by its signs alone.</summary>
    internal static string ReadOff(Clue clue, Marking marking)
    {
        var signs = marking.Signs.Where(s => s.OfText).ToList();
        var text = signs.Any(s => Wear.By(s.Drawn) is not null) ? Plate.Worn : string.Concat(signs.Select(s => s.Drawn));
        return PlateView.Looks(clue).First(f => f.Looks == text).Id;
    }

    static string Gone(Clue clue) => PlateView.Looks(clue).First(f => f.Looks is Plate.Nothing).Id;

    static DrawnPart Named(Topic topic, string drawing, string name, ulong? seed)
    {
        var plan = topic.Drawings.First(d => d.Id == drawing);
        var kind = topic.Parts.Where(p => p.Id == plan.Part).SelectMany(p => p.Kinds).FirstOrDefault(k => k.Name == name);
        var finding = topic.Clues.Where(c => plan.Clues.Contains(c.Id)).SelectMany(LookTask.FindingsOf).FirstOrDefault(f => f.Text == name);
        return DrawnPart.Of(topic, drawing, kind is null ? DrawnChoice.Finding(finding.Id) : DrawnChoice.Kind(kind.Id), seed: seed);
    }

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

    static IEnumerable<T> Items<T>(string id, int seeds = Seeds)
        where T : DrillItem
    {
        var skill = DrillSkill.Of(id) ?? throw new InvalidOperationException();
        return Enumerable.Range(1, seeds).SelectMany(s => skill.Families(Benches).Select(f => skill.Make(Benches, f, (ulong)s))).OfType<T>();
    }
}
