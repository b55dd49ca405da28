using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Stand;

/// <summary>
/// Real problems from published tables, handbooks and question threads, worked through in the bench notebook: right, or "not settled" with a sensible next check. The source stands beside
/// each; figures that are not in it are said to be so. The sources are those of the fact bases of the trade (keys as there).
/// </summary>
public sealed class RealProblemsTests
{
    static readonly Dictionary<string, Workbench> Benches = new(StringComparer.Ordinal);

    /// <summary>"28 inch" is 622 or 635, and 27 inch (630) is bigger than most 28: WP_5775, FIETS. The name alone settles nothing; tape or marks do.</summary>
    [Fact]
    public void A_caller_says_28_inch() => NotSettled("rim-size", "tyre", ["round", "wall-iso", "rim-iso", "wall-name"], Channel.Phone, Told("said", "said-28"));

    /// <summary>26 x 1 3/8 is 590, or 597 in another family: DIMINFO. A caller reads it from the wall.</summary>
    [Fact]
    public void A_caller_reads_26_x_1_3_8_from_the_wall() => NotSettled("rim-size", "tyre", ["round", "rim-iso"], Channel.Phone, Told("wall-name", "26x1-3-8"));

    /// <summary>The same bike on the stand: 597 lies 1875.5 mm round its bed (CHARTCOPY, π × 597), 590 lies 1853.5.</summary>
    [Fact]
    public void The_tape_round_the_bed_finds_the_597_rim() => Settled("rim-size", "tyre", "597", Told("wall-name", "26x1-3-8"), Mm("round", 1876), Mm("round", 1875), Sound);

    /// <summary>A ten-speed was built for 27 inch, its wheels were changed for 622: the pads sit 4 mm off, VAAL (question thread). The wall still says 27 x 1 1/4; 622 × π = 1954.1.</summary>
    [Fact]
    public void A_ten_speed_whose_wheels_were_changed()
    {
        var view = Settled("rim-size", "tyre", "622", Named("sort", "ten"), Named("wall-name", "27x1-1-4"), Named("tyre-sits", "loose"), Mm("round", 1954), Mm("round", 1953), Sound);
        Assert.All(view.Reasoning.Parts[0].Weights.Take(2), w => Assert.True(w.Share < 0, "The sort and the wall speak for 630."));
    }

    /// <summary>A reading of 27.18 is a 27.2 post: S54. It says what is in the bike, not what the frame takes; a gauge rod in the tube does.</summary>
    [Fact]
    public void A_post_reads_27_18() => NotSettled("seatpost", "post", ["rod", "bore-size"], Channel.Bench, Mm("post-size", 27.2), Named("feel", "smooth"), Named("insert", "hidden"));

    /// <summary>A careful user read 27.6, "a size that hardly exists": S57b (question thread). It is measured again before anything else.</summary>
    [Fact]
    public void A_post_reads_27_6()
    {
        var view = NotSettled("seatpost", "post", ["post-size", "rod"], Channel.Bench, Mm("post-size", 27.6), Named("insert", "hidden"));
        Assert.Equal("post-size", view.Next[0].Id);
        Assert.Contains(view.Reasoning.Odd, o => o.Stands);
    }

    /// <summary>Stems measured in a question thread (S33): one marked 22.0 read 21.84, those marked 22.2 read 22.10 to 22.12. Read to 0.05 mm on an old French bike, and on a British one.</summary>
    [Theory]
    [InlineData("french", 21.85, "q220")]
    [InlineData("british", 22.10, "q222")]
    public void A_quill_stem_of_22_0_or_22_2(string sort, double reading, string kind)
    {
        var view = View("bar-sizes", "stem", Channel.Bench, Named("sort", sort), Mm("fork-fit", reading), Mm("fork-fit", reading), Named("front-safe", "sound"));
        var fit = view.Reasoning.Parts.First(p => p.Part == "fit");
        Assert.Equal([kind], fit.Classes[fit.Leading].Kinds);
        Assert.True(fit.Settled);
    }

    /// <summary>A British unit was forced into a French shell and cut its own path: S23b (question thread). Crests cut across stop the job; nothing is ordered.</summary>
    [Fact]
    public void A_shell_whose_thread_was_cut_by_the_wrong_unit()
    {
        var view = View("bottom-bracket", "unit", Channel.Bench, Named("sort", "cont"), Named("shell-thread", "cut"));
        Assert.NotEmpty(view.Reasoning.Stops);
        Assert.Empty(view.Next);
        Assert.All(OrderAdvice.Of(view.Topic, view.Want, view.Reasoning), a => Assert.IsType<Choice.Ask>(a.Best.Choice));
    }

    /// <summary>French 35 x 1 and BSA 34.8 x 24 tpi lie 0.2 mm apart: S04. The hand and one caliper reading are not enough; the thread gauge or the bore is.</summary>
    [Fact]
    public void An_old_tourer_whose_cup_undoes_anticlockwise() => NotSettled(
        "bottom-bracket", "unit", ["shell-thread", "bore", "cup-mark"], Channel.Bench, Named("sort", "cont"), Named("undoes", "anticlockwise"), Mm("over-cup", 34.75), Named("rock", "firm"));

    /// <summary>The same shell: right-hand thread of 1 mm and a core of 33.9 to 34.0 is French: S01, S04.</summary>
    [Fact]
    public void The_thread_gauge_finds_the_French_shell() =>
        Settled("bottom-bracket", "unit", "french", Named("sort", "cont"), Named("shell-thread", "rh-1"), Mm("bore", 33.95), Named("rock", "firm"));

    /// <summary>Early threads for a disc brake lie 68 or 69 mm apart, later ones 74: BIKEMAN_D, BRADAR_D (question thread). The same screws fit both.</summary>
    [Fact]
    public void Brake_threads_68_mm_apart() => Settled("brakes", "screws", "early", Named("mount-look", "along"), Mm("fixing", 68.5), Mm("fixing", 68.5), Named("state", "sound"));

    /// <summary>Studs should stand 80 mm apart; 73 to 80 were measured on real bikes: FRAMEB, MTBR (question thread). 75 mm with studs is no 74 mm mount.</summary>
    [Fact]
    public void Studs_75_mm_apart() => Settled("brakes", "screws", "studs", Named("mount-look", "two-studs"), Mm("fixing", 75), Mm("fixing", 75), Named("state", "sound"));

    /// <summary>Read the cap, never mix: BADV_F. A cap that says DOT can sit on a lever that was filled wrongly; a drop in water tells (it mixes), and nothing is ordered before.</summary>
    [Fact]
    public void A_hose_brake_whose_cap_says_DOT() => NotSettled("brakes", "line", ["drop", "brake-mark"], Channel.Bench, Named("cap", "cap-dot"), Named("place", "disc-hose"), Named("state", "sound"));

    /// <summary>24 pitches of a new chain are 304.8 mm; 1/16 in more, 306.4, is worn: the wear table of the fact base. 306.5 twice lies at the limit: a drop-in gauge decides.</summary>
    [Fact]
    public void A_chain_at_the_limit() => NotSettled("chain", "worn", ["gauge", "teeth-look", "laid", "jump"], Channel.Bench, Named("sort", "trek"), Named("counted", "n8"), Mm("length", 306.5), Mm("length", 306.5), Named("links", "sound"));

    /// <summary>The same chain new, 304.8 mm: good. The sprockets are another question.</summary>
    [Fact]
    public void A_chain_as_new()
    {
        var view = View("chain", "worn", Channel.Bench, Named("sort", "trek"), Named("counted", "n8"), Mm("length", 305), Mm("length", 305), Named("links", "sound"));
        var wear = view.Reasoning.Parts.First(p => p.Part == "wear");
        Assert.Contains("ok", wear.Classes[wear.Leading].Kinds);
        Assert.True(wear.Settled);
    }

    /// <summary>Turned backwards, a fitting that turns with the sprockets is a lockring: PARK_DET; its tool is 23.4 mm: PARK_CASS.</summary>
    [Fact]
    public void A_fitting_that_turns_with_the_sprockets() =>
        Settled("freewheel", "tool", "ring", Named("spin", "turns"), Named("ring-text", "lock"), Named("fitting-look", "ring"), Named("hold", "sound"));

    /// <summary>One that stands still is a freewheel: PARK_DET; seven sprockets are either, most often a freewheel: 2NDGEAR.</summary>
    [Fact]
    public void A_fitting_that_stands_still() => Settled("freewheel", "tool", "splined", Named("spin", "still"), Named("counted", "n7"), Named("hold", "sound"));

    /// <summary>An M6 screw reads 5.8 to 5.9 over its crests: PARK_THR. Alone it is not enough for a thread that can hurt; the leaf of 1 mm settles it.</summary>
    [Fact]
    public void An_M6_screw_reads_5_85()
    {
        NotSettled("screw-threads", "nut", ["ten", "leaf", "sort", "tried"], Channel.Bench, Mm("crest", 5.85), Named("joint", "sound"));
        Settled("screw-threads", "nut", "m6", Mm("crest", 5.85), Named("leaf", "p10"), Mm("ten", 10), Named("joint", "sound"));
    }

    /// <summary>126 mm with six sprockets is the usual ten-speed frame: SB_SPACING, MOR_OLD. Before a wheel is ordered the hub on it is measured too.</summary>
    [Fact]
    public void A_frame_of_126_mm() => NotSettled(
        "hub-axle", "wheel", ["axle-tip", "hub-width"], Channel.Bench, Named("sort", "ten"), Mm("gap", 126), Named("sprockets", "six"), Named("drop-safe", "sound"));

    /// <summary>The problems above can fail: the neighbour's reading names the neighbour.</summary>
    [Fact]
    public void The_neighbours_reading_names_the_neighbour() => Settled("rim-size", "tyre", "590", Told("wall-name", "26x1-3-8"), Mm("round", 1853), Mm("round", 1854), Sound);

    static Finding Sound => Named("rim-wall", "sound");

    static StandView Settled(string topic, string want, string kind, params Finding[] findings)
    {
        var view = View(topic, want, Channel.Bench, findings);
        var part = view.Reasoning.Parts[0];
        Assert.Contains(kind, part.Classes[part.Leading].Kinds);
        Assert.True(part.Settled, $"{topic}: {part.Highest:0.0000} of {part.SettleAt}");
        Assert.Empty(view.Reasoning.Stops);
        return view;
    }

    // Not settled, nothing that can hurt is ordered, and a sensible check is among the first three or is what the order waits for.
    static StandView NotSettled(string topic, string want, string[] sensible, Channel channel, params Finding[] findings)
    {
        var view = View(topic, want, channel, findings);
        Assert.Contains(view.Reasoning.Parts, p => !p.Settled);
        var advice = OrderAdvice.Of(view.Topic, view.Want, view.Reasoning);
        Assert.Contains(advice, a => a.Best.Choice is Choice.Wait wait && sensible.Contains(wait.Clue));
        Assert.DoesNotContain(advice, a => a.Hurts.Count > 0 && a.Best.Choice is Choice.Order or Choice.OrderTwo && view.Reasoning.Parts.Count == 1);
        Assert.Contains(view.Next.Where(c => !c.Safety), c => sensible.Contains(c.Id));
        return view;
    }

    static StandView View(string topic, string want, Channel channel, params Finding[] findings)
    {
        if (!Benches.TryGetValue(topic, out var bench)) bench = Benches[topic] = Corpus.Bench(topic);
        var bikes = new Bikes(bench.Topic);
        bikes.Put(new LogEntry.BikePut(1, null, "real", null, Routine: false, channel, ToolLevel.All));
        bikes.Put(new LogEntry.BikeAsked(1, topic, bench.Topic.Version, want, bench.Topic.Provenances[0].Id));
        foreach (var finding in findings) bikes.Put(new LogEntry.BikeFound(1, topic, finding, ""));
        return StandView.Of(bikes.Notebook.Bikes[0], _ => bench)[0];
    }

    static Finding Mm(string clue, double mm) => new(clue, Channel.Bench, new Seen.Reading(mm));

    static Finding Named(string clue, string finding) => new(clue, Channel.Bench, new Seen.Named(finding));

    static Finding Told(string clue, string finding) => new(clue, Channel.Phone, new Seen.Named(finding));
}
