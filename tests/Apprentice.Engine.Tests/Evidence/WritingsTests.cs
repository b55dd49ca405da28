using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Evidence;

/// <summary>
/// A plate of two years with a decoy that leads to 2011 in 3 of 10 readings, one that leads anywhere in 1 of 10, worn in 1 of 5, misread 1 in 50.
/// Expected values are worked out by hand from MODEL 3: a chosen writing is known, a told one is a mixture.
/// </summary>
public sealed class WritingsTests
{
    const double Misread = 0.02;

    // What a look tells besides what the writing shows: each of the three findings in a third of the misreadings.
    const double Blur = Misread / 3;
    static readonly Workbench Bench = new(Topic());
    static readonly Scene Scene = Bench.SceneOf(Some.Provenance);

    [Fact]
    public void The_true_number_leaves_the_decoys_out()
    {
        // 2010 read off the true number: shown by 8 of 10 bikes of 2010 (the rest are worn), by none of 2011.
        Close((0.8 * (1 - Misread)) + Blur, Blur, Saw("10", 0));
        Close((0.2 * (1 - Misread)) + Blur, (0.2 * (1 - Misread)) + Blur, Saw("worn", 0));
    }

    [Fact]
    public void A_told_number_may_be_a_decoy() =>
        // Of 8 of 10 readable plates 6 of 10 tell the year, 3 of 10 say 2011, 1 of 10 either: 2010 is told by 0.8·(0.6 + 0.05) in 2010 and 0.8·0.05 in 2011.
        Close((0.8 * 0.65 * (1 - Misread)) + Blur, (0.8 * 0.05 * (1 - Misread)) + Blur, Saw("10", null));

    [Theory]
    [InlineData("11", 1)]
    [InlineData("10", 2)]
    public void A_decoy_tells_nothing_of_the_date(string finding, int writing)
    {
        var (before, after) = Years(Saw(finding, writing));
        Assert.Equal(before, after, 1e-15);
    }

    [Fact]
    public void A_told_number_that_its_decoy_explains_is_explained_away()
    {
        // Told 2011; on the bench the first decoy says 2011 as it always does, and the true number 2010.
        // 2010: true 10, and the told look took the first decoy (0.3) or the other (0.1 · ½). 2011: the true number was misread, the told look took it or a decoy.
        var right = 1 - Misread + Blur;
        var of2010 = 0.8 * right * ((0.35 * right) + (0.65 * Blur));
        var of2011 = 0.8 * Blur * ((0.95 * right) + (0.05 * Blur));
        var worn = 0.2 * Blur * Blur;
        Close(of2010 + worn, of2011 + worn, Saw("11", null, Channel.Bench), Saw("10", 0));
    }

    [Fact]
    public void Two_looks_at_one_writing_share_what_it_shows_and_misread_on_their_own()
    {
        var right = 1 - Misread + Blur;
        Close((0.8 * right * right) + (0.2 * Blur * Blur), (0.8 * Blur * Blur) + (0.2 * Blur * Blur), Saw("10", 0), Saw("10", 0));
    }

    [Fact]
    public void Without_a_known_writing_nothing_is_changed()
    {
        // The mixture of all writings, each known, weighed by how often a told look takes it, is the told look.
        var mixed = new double[2];
        foreach (var (writing, share) in new[] { (0, 0.6), (1, 0.3), (2, 0.1) })
        {
            var (of2010, of2011) = Years(Saw("11", writing));
            // A worn plate is told as worn, whatever stands beside it: for a decoy that part is put back.
            var readable = writing == 0 ? (of2010 - (0.2 * Blur), of2011 - (0.2 * Blur)) : (0.8 * of2010, 0.8 * of2011);
            mixed[0] += share * readable.Item1;
            mixed[1] += share * readable.Item2;
        }

        Close(mixed[0] + (0.2 * Blur), mixed[1] + (0.2 * Blur), Saw("11", null));
    }

    [Fact]
    public void What_is_told_is_one_of_the_writings_and_the_rest_is_as_it_was()
    {
        var decoy = 0;
        foreach (var made in Cases(2000))
        {
            var all = Enumerable.Range(0, 3).Select(w => made.Written("plate", 0, w)).ToList();
            Assert.All(all, Assert.NotNull);
            if (made.Look("plate", 0).Seen is Seen.Named { Id: "11" } && all[0] == "10") decoy++;
        }

        // Of the half of the bikes that are of 2010, 0.8 · 0.35 are told as 2011: 280 of 2,000, four standard deviations are 62.
        Assert.InRange(decoy, 280 - 62, 280 + 62);
    }

    [Fact]
    public void What_is_said_p_after_a_chosen_writing_is_so_in_p_of_the_cases()
    {
        var check = new CalibrationCheck(Scene, ["year"]);
        var blind = new CalibrationCheck(Scene, ["year"]);
        foreach (var made in Cases(4000))
        {
            foreach (var writing in new[] { 0, 1, 2 })
            {
                var shown = Bench.Shown(made, new Engine.Grading.Look("plate", 0, Writing: writing));
                check.Add($"alone {writing}", made.Truth, [shown]);
                check.Add($"after it was told {writing}", made.Truth, [.. made.Job.Told, shown]);
                blind.Add($"as if told {writing}", made.Truth, [shown with { Writing = null }]);
            }
        }

        Assert.True(check.Cells.Count >= 12, $"{check.Cells.Count}");
        Assert.True(check.Worst <= 4, $"{check.Cells.MaxBy(c => Math.Abs(c.Z))}");
        Assert.True(blind.Worst > 4, $"{blind.Worst}");
    }

    [Fact]
    public void Law_four_holds_for_lines_dates_lag_and_events_that_overrule_a_plate()
    {
        var plate = (Shows.Code)Handlebars.Topic.Clues.First(c => c.Id == "plate").Shows;
        var many = plate with { Decoys = [new Decoy("paint batch", 0.3, [0.25, 0.25, 0.25, 0.25, 0]), new Decoy("casting", 0.2, [0, 1, 0, 0, 0])] };
        var bench = new Workbench(Handlebars.Topic with { Clues = [.. Handlebars.Topic.Clues.Select(c => c.Id == "plate" ? c with { Shows = many } : c)] });
        var check = new CalibrationCheck(bench.SceneOf(Some.Provenance), ["bar", "built"]);
        for (var seed = 0UL; seed < 700; seed++)
        {
            var made = bench.Make(new CaseRequest(Some.Provenance, "grips", "number", Selection.AsTheyCome, Channel.Bench), seed) ?? throw new InvalidOperationException("refused");
            for (var w = 0; w < 3; w++) check.Add($"{w}", made.Truth, [.. made.Job.Told, bench.Shown(made, new Engine.Grading.Look("plate", 0, Writing: w))]);
        }

        Assert.True(check.Cells.Count > 10, $"{check.Cells.Count}");
        Assert.True(check.Worst <= 4, $"{check.Cells.MaxBy(c => Math.Abs(c.Z))}");
    }

    static IEnumerable<Case> Cases(int count) => Enumerable.Range(0, count).Select(seed =>
        Bench.Make(new CaseRequest(Some.Provenance, "want", "told", Selection.AsTheyCome, Channel.Bench), (ulong)seed) ?? throw new InvalidOperationException("refused"));

    static Finding Saw(string finding, int? writing, Channel channel = Channel.Bench) => new("plate", channel, new Seen.Named(finding), Writing: writing);

    static (double Of2010, double Of2011) Years(params Finding[] findings)
    {
        var rows = Scene.Reader.SetOf(findings).All.Rows ?? throw new InvalidOperationException("reads no row");
        var year = Scene.Table.Rows.Select((r, i) => (Scene.Table.Segments[r.Segment].Months[0], rows[i])).ToLookup(x => x.Item1.Year, x => x.Item2);
        return (year[2010].Distinct().Single(), year[2011].Distinct().Single());
    }

    static void Close(double of2010, double of2011, params Finding[] findings)
    {
        var (a, b) = Years(findings);
        Assert.Equal(of2010, a, 1e-12);
        Assert.Equal(of2011, b, 1e-12);
    }

    static Topic Topic()
    {
        var year = new Part
        {
            Id = "year",
            Name = "year",
            Question = "Which year is it?",
            Asked = true,
            IsDate = true,
            NonePrior = 0,
            Kinds = [new Kind("first", "first", null, Some.Month(2010, 1), Some.Month(2010, 12)), new Kind("second", "second", null, Some.Month(2011, 1), Some.Month(2011, 12))],
        };
        var plate = Some.Clue("plate", new Node.OfDate(), new Shows.Code
        {
            Findings =
            [
                new CodeFinding("10", "10", [(Some.Month(2010, 1), Some.Month(2010, 12))], 0),
                new CodeFinding("11", "11", [(Some.Month(2011, 1), Some.Month(2011, 12))], 0),
                new CodeFinding("worn", "worn away", [], 0.2),
            ],
            Decoys = [new Decoy("casting", 0.3, [0, 1, 0]), new Decoy("paint", 0.1, [0.5, 0.5, 0])],
            Misread = Misread,
        });
        var line = new Line("any", "any", [1], Some.Month(2010, 1), Some.Month(2011, 12), null, null);
        var bell = Some.Part("bell", "loud", "soft");
        return Some.Topic([line], [year, bell], [Some.Built(bell, ("", [0.5, 0.5]))], plate) with
        {
            Years = [new YearShare(2010, [1]), new YearShare(2011, [1])],
            Wants = [new Want("want", "want", ["A list, please."], ["year"], [new OrderLine("lists", "lists")], "")],
            Openings = [new Opening("told", "told", [("plate", Channel.Phone)])],
        };
    }
}
