using Apprentice.Drawing;
using Apprentice.Drawing.Figures;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Drawing;

/// <summary>Pictures of the shipped topics: they say and show what their sizes say, and nothing more.</summary>
public sealed class DrawnPartTests
{
    static IEnumerable<(Topic Topic, TopicDrawing Drawing)> All => Corpus.Shipped.Select(Corpus.Topic).SelectMany(t => t.Drawings.Select(d => (t, d)));

    [Theory]
    [InlineData("folding-bar")]
    [InlineData("rim-size")]
    public void The_first_two_topics_have_drawings(string topic) => Assert.NotEmpty(Corpus.Topic(topic).Drawings);

    [Fact]
    public void Words_never_name_a_kind_or_a_finding()
    {
        foreach (var (topic, drawing) in All)
        {
            var names = topic.Parts.SelectMany(p => p.Kinds).Select(k => k.Name).Concat(topic.Clues.SelectMany(Texts)).Where(n => n.Any(char.IsLetter));
            foreach (var sentence in Choices(drawing).SelectMany(c => DrawnPart.Of(topic, drawing.Id, c).Words))
                Assert.All(names, n => Assert.DoesNotContain(n, sentence, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void A_datum_lies_where_the_topic_says_that_it_does()
    {
        // The bike is invented, so that all its slips are exact; a millimetre for the file's rounding.
        var topic = Corpus.Topic("folding-bar");
        var tried = 0;
        foreach (var drawing in topic.Drawings)
        {
            foreach (var (look, datum) in drawing.Kinds.SelectMany(k => drawing.Datums.Select(d => (k, d))))
            {
                var measured = Assert.IsType<Shows.Measured>(topic.Clues.First(c => c.Id == datum.Clue).Shows);
                var dimension = topic.Dimensions.First(d => d.Id == measured.Dimension);
                var nominal = dimension.Nominals[topic.Parts.First(p => p.Id == dimension.Part).Kinds.ToList().FindIndex(k => k.Id == look.Of)];
                var right = (measured.Scale * Assert.NotNull(nominal)) + measured.Offset;
                var reading = datum.Datum == 0 ? right : (measured.Slips[datum.Datum - 1].Factor * right) + measured.Slips[datum.Datum - 1].Offset;
                var points = DrawnPart.Of(topic, drawing.Id, DrawnChoice.Kind(look.Of)).Points;
                Assert.Equal(reading, points[datum.From].To(points[datum.To]), 1.0);
                tried++;
            }
        }
        Assert.True(tried > 20);
    }

    /// <summary>Measured clues of which nothing is drawn to choose between, each with the reason. There are none.</summary>
    static readonly Dictionary<string, string> ByWordsAlone = new(StringComparer.Ordinal);

    [Fact]
    public void Every_measured_clue_with_slips_has_drawn_points_for_each_of_them()
    {
        var measured = Corpus.Shipped.Select(Corpus.Topic).SelectMany(t => t.Clues.Select(c => (Topic: t, Clue: c))).Where(x => x.Clue.Shows is Shows.Measured { Slips.Count: > 0 }).ToList();
        var without = measured.Where(x => !HasPoints(x.Topic, x.Clue)).Select(x => $"{x.Topic.Id}:{x.Clue.Id}").ToList();
        Assert.True(measured.Count > 40);
        Assert.Equal(ByWordsAlone.Keys.Order(StringComparer.Ordinal), without.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_right_datum_is_drawn_as_long_as_the_size_of_its_kind()
    {
        // To a millimetre or 3 of 100: a clue may read a tenth less than the size, because crests are worn. What is a multiple of its size is drawn as the size.
        // A tape that is laid round is one point of a section and has no length there.
        var tried = 0;
        foreach (var (topic, drawing) in All.Where(x => x.Drawing.IsAlike && x.Drawing.Figure is not ("chain-side" or "bolt")))
        {
            foreach (var (look, datum) in drawing.Kinds.SelectMany(k => drawing.Datums.Where(d => d.Datum == 0 && d.From != d.To).Select(d => (k, d))))
            {
                var measured = Assert.IsType<Shows.Measured>(topic.Clues.First(c => c.Id == datum.Clue).Shows);
                var dimension = topic.Dimensions.First(d => d.Id == measured.Dimension);
                if (dimension.Nominals[topic.Parts.First(p => p.Id == drawing.Part).Kinds.ToList().FindIndex(k => k.Id == look.Of)] is not { } nominal) continue;
                var points = DrawnPart.Of(topic, drawing.Id, DrawnChoice.Kind(look.Of)).Points;
                Assert.InRange(points[datum.From].To(points[datum.To]), nominal - Math.Max(1, 0.03 * nominal), nominal + Math.Max(1, 0.03 * nominal));
                tried++;
            }
        }
        Assert.True(tried > 150, $"{tried}");
    }

    static bool HasPoints(Topic topic, Clue clue) => topic.Drawings.Any(d => d.Part is not null && d.Kinds.Count > 0
        && d.Datums.Count(x => x.Clue == clue.Id) == ((Shows.Measured)clue.Shows).Slips.Count + 1);

    [Fact]
    public void In_a_job_the_true_sizes_of_the_bike_are_drawn()
    {
        var topic = Corpus.Topic("folding-bar");
        var sizes = topic.Dimensions.Select(d => (d.Low + d.High) / 2).ToArray();
        var points = DrawnPart.Of(topic, "front", DrawnChoice.Kind("low"), sizes).Points;
        Assert.Equal(sizes[topic.Dimensions.ToList().FindIndex(d => d.Id == "bar-rise")], points["clamp-centre"].To(points["bend-top"]), 6);
        Assert.Equal(sizes[topic.Dimensions.ToList().FindIndex(d => d.Id == "stem-length")], points["clamp-centre"].To(points["hinge-upper"]), 6);
    }

    [Fact]
    public void A_size_of_another_part_is_that_of_the_kind_named_or_of_its_first()
    {
        var topic = Corpus.Topic("folding-bar");
        Assert.Equal(288, Stem(DrawnChoice.Kind("tall")), 6);
        Assert.Equal(346, Stem(DrawnChoice.Kind("tall", ("stem", "far"))), 6);

        double Stem(DrawnChoice choice) => DrawnPart.Of(topic, "front", choice).Points["clamp-centre"].X;
    }

    [Fact]
    public void A_pair_is_drawn_at_one_scale_and_marks_the_difference()
    {
        var topic = Corpus.Topic("folding-bar");
        var pair = DrawnPair.Of(topic, "front", DrawnChoice.Kind("tall"), DrawnChoice.Kind("low"));
        var rows = pair.Rows(78, 16);
        Assert.Contains(rows, r => r.Contains("152 mm", StringComparison.Ordinal));
        Assert.Contains(rows, r => r.Contains("118 mm", StringComparison.Ordinal));
        Assert.Contains(pair.Words, w => w.Contains("34 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_not_drawn_is_refused()
    {
        var topic = Corpus.Topic("folding-bar");
        Assert.Throws<ArgumentException>(() => DrawnPart.Of(topic, "front", DrawnChoice.Finding("steep")));
        Assert.Throws<ArgumentException>(() => DrawnPart.Of(topic, "none", DrawnChoice.Kind("low")));
    }

    [Fact]
    public void One_picture_in_three_looks_like_the_shop_and_still_shows_what_decides()
    {
        // Of 3,000 seeds 1,000 are expected; 100 either way is nearly 4 standard deviations.
        var topic = Corpus.Topic("folding-bar");
        Assert.InRange(Enumerable.Range(0, 3000).Count(s => ShopLook.IsWorn((ulong)s)), 900, 1100);
        foreach (var seed in Enumerable.Range(0, 60).Select(s => (ulong)s))
        {
            var (clean, seen) = (DrawnPart.Of(topic, "lever", DrawnChoice.Finding("holes")), DrawnPart.Of(topic, "lever", DrawnChoice.Finding("holes"), null, seed));
            Assert.Equal(ShopLook.IsWorn(seed), !seen.Rows(78, 16).SequenceEqual(clean.Rows(78, 16)));
            Assert.Equal(ShopLook.IsWorn(seed), seen.Words.Any(w => w.Contains("at a small angle", StringComparison.Ordinal)));
            Assert.Equal(seen.Rows(78, 16), DrawnPart.Of(topic, "lever", DrawnChoice.Finding("holes"), null, seed).Rows(78, 16));
            Assert.Equal(clean.Points["pivot"].To(clean.Points["cable-centre"]), seen.Points["pivot"].To(seen.Points["cable-centre"]), 6);
            var (low, high) = clean.Sketch.Bounds();
            var near = 0.05 * Math.Max(high.X - low.X, high.Y - low.Y);
            var added = seen.Sketch.Inks.Skip(clean.Sketch.Inks.Count).SelectMany(i => i.Path);
            Assert.All(added, spot => Assert.All(seen.Points.Values, p => Assert.True(p.To(spot) > near)));
        }
    }

    [Fact]
    public void Letters_at_points_are_all_there_in_the_smallest_room()
    {
        foreach (var (topic, drawing) in All)
        {
            var part = DrawnPart.Of(topic, drawing.Id, Choices(drawing).First());
            var marks = drawing.Datums.SelectMany(d => (string[])[d.From, d.To]).Distinct(StringComparer.Ordinal).Select((p, i) => (p, $"{(char)('A' + i)}")).ToList();
            var text = string.Concat(part.Rows(58, 10, marks));
            Assert.All(marks, m => Assert.Single(text, c => c == m.Item2[0]));
        }
    }

    [Fact]
    public void Drawings_of_the_shipped_topics_look_like_this()
    {
        var text = new List<string>();
        foreach (var (topic, drawing) in All)
        {
            foreach (var choice in Choices(drawing).Where((c, i) => c.IsFinding || i < (drawing.IsAlike ? 1 : 3)))
                text.AddRange([$"== {topic.Id} {drawing.Id} {choice.Id}", .. DrawnPart.Of(topic, drawing.Id, choice).Rows(78, 16).Select(r => r.TrimEnd())]);
            if (drawing.Kinds.Count < 2 || drawing.IsAlike || drawing.Kinds.Any(k => k.Art.Count > 0)) continue;
            var pair = DrawnPair.Of(topic, drawing.Id, DrawnChoice.Kind(drawing.Kinds[0].Of), DrawnChoice.Kind(drawing.Kinds[1].Of));
            text.AddRange([$"== {topic.Id} {drawing.Id}, two kinds", .. pair.Rows(78, 16).Select(r => r.TrimEnd()), .. pair.Words]);
        }
        Screens.Golden.Same("drawings", string.Join('\n', text) + "\n");
    }

    [Fact]
    public void From_where_to_where_looks_like_this_in_the_smallest_window()
    {
        var text = new List<string>();
        foreach (var (topic, drawing) in All)
        {
            foreach (var clue in drawing.Datums.Select(d => d.Clue).Distinct(StringComparer.Ordinal))
            {
                var ways = drawing.Datums.Where(d => d.Clue == clue).ToList();
                var letters = ways.SelectMany(d => (string[])[d.From, d.To]).Distinct(StringComparer.Ordinal).Select((p, i) => (p, $"{(char)('A' + i)}")).ToList();
                var part = DrawnPart.Of(topic, drawing.Id, DrawnChoice.Kind(drawing.Kinds[0].Of));
                string Letter(string point) => letters.First(l => l.p == point).Item2;
                text.AddRange([$"== {topic.Id} {clue}", .. part.Rows(58, 10, letters).Select(r => r.TrimEnd()), .. ways.Select(w => $"{(w.Datum == 0 ? "right" : $"slip {w.Datum}")}: {Letter(w.From)} to {Letter(w.To)}")]);
            }
        }
        Screens.Golden.Same("datums", string.Join('\n', text) + "\n");
    }

    static IEnumerable<DrawnChoice> Choices(TopicDrawing d) => d.Kinds.Select(k => DrawnChoice.Kind(k.Of)).Concat(d.Findings.Select(f => DrawnChoice.Finding(f.Of)));

    static IEnumerable<string> Texts(Clue clue) => clue.Shows is Shows.Table table ? table.Findings.Select(f => f.Text) : [];
}
