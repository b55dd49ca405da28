using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Trade;

/// <summary>From published sizes as readings the engine names the right kind and settles it. The source stands beside each group of rows.</summary>
public sealed class EngineConcludesTests
{
    static readonly Dictionary<string, Workbench> Benches = new(StringComparer.Ordinal);

    /// <summary>Names: chart of traditional and ISO sizes (CHARTCOPY; DIMINFO; WP_ETRTO for 406). Marks: ISO 5775. Tape: π times the bead seat, to the millimetre.</summary>
    [Theory]
    [InlineData("635", "28x1-1-2", 635)]
    [InlineData("630", "27x1-1-4", 630)]
    [InlineData("622", "700c", 622)]
    [InlineData("622", "28-two", 622)]
    [InlineData("622", "29", 622)]
    [InlineData("597", "26x1-1-4", 597)]
    [InlineData("597", "26x1-3-8", 597)]
    [InlineData("590", "26x1-3-8", 590)]
    [InlineData("584", "650b", 584)]
    [InlineData("584", "27-5", 584)]
    [InlineData("584", "26x1-1-2", 584)]
    [InlineData("559", "26x1-75", 559)]
    [InlineData("451", "20x1-3-8", 451)]
    [InlineData("406", "20x1-75", 406)]
    public void A_rim_by_its_name_its_mark_and_a_tape(string kind, string name, double seat) =>
        Concludes("rim-size", "rim", kind, Named("wall-name", name), Named("wall-iso", $"iso-{kind}"), Mm("round", Math.Round(Math.PI * seat)));

    /// <summary>Distances printed at https://www.fa-technik.adfc.de (Lochkreis): 84.6, 76.4, 64.7, 73.5; 79.4, 75.2, 71.7, 55.3 in the table of S84 and S83.</summary>
    [Theory]
    [InlineData("b144", "five", 84.6)]
    [InlineData("b135", "five", 79.4)]
    [InlineData("b130", "five", 76.4)]
    [InlineData("b128", "five", 75.2)]
    [InlineData("b122", "five", 71.7)]
    [InlineData("b110", "five", 64.7)]
    [InlineData("b94", "five", 55.3)]
    [InlineData("b104", "four", 73.5)]
    public void A_bolt_circle_by_the_distance_of_its_holes(string kind, string arms, double gap) =>
        Concludes("crank", "circle", kind, Named("arms", arms), Mm("gap", gap), Mm("gap", gap));

    /// <summary>Uneven and riveted cranks have no bolt circle to measure: S89.</summary>
    [Theory]
    [InlineData("u4", "uneven")]
    [InlineData("riveted", "rivets")]
    public void A_crank_without_an_even_circle_by_its_look(string kind, string arms) =>
        Concludes("crank", "circle", kind, Named("arms", arms), Named("arms", arms), Named("teeth", "t37"));

    /// <summary>
    /// Diameters and pitches: ISO 261 and 262 (M5 x 0.8, M6 x 1, M8 x 1.25, M8 x 1, M10 x 1), JIS B 0225:1960 (7.94 and 9.53 x 26), unified charts (0.190 x 32, 0.250 x 20,
    /// 0.3125 x 24, 0.375 x 24), BSC chart (0.250 x 26). A crest reads about 0.1 mm under its name (an M6 5.8 to 5.9: CREST). The leaf is that of the pitch.
    /// </summary>
    [Theory]
    [InlineData("m5", 5, 0.8, "p08")]
    [InlineData("n10", 0.190 * 25.4, 25.4 / 32, "t32", "american")]
    [InlineData("m6", 6, 1, "p10")]
    [InlineData("c14", 0.250 * 25.4, 25.4 / 26, "t26")]
    [InlineData("u14", 0.250 * 25.4, 25.4 / 20, "t20")]
    [InlineData("m8", 8, 1.25, "p125")]
    [InlineData("m8f", 8, 1, "p10")]
    [InlineData("b26", 7.94, 0.977, "t26")]
    [InlineData("b24", 0.3125 * 25.4, 25.4 / 24, "t24")]
    [InlineData("m10f", 10, 1, "p10")]
    [InlineData("c38", 9.53, 0.977, "t26")]
    [InlineData("c3824", 0.375 * 25.4, 25.4 / 24, "t24")]
    public void A_thread_by_its_diameter_and_ten_pitches(string kind, double diameter, double pitch, string leaf, string? sort = null) =>
        Concludes("screw-threads", "bolt", kind, [.. Twice("crest", Step(diameter - 0.1)), .. Twice("ten", Step(10 * pitch)), Named("leaf", leaf), .. Sort(sort)]);

    /// <summary>Threads: https://sheldonbrown.com/freewheels.html (34.92 x 24 tpi, 34.7 x 1, 30 x 1). Splines: nine (WHEEL_PAGE), eight (CORNANT).</summary>
    [Theory]
    [InlineData("iso", "thread", "tpi24", 34.92)]
    [InlineData("french", "thread", "mm1", 34.7, "french")]
    [InlineData("m30", "small", "mm1", 30)]
    [InlineData("track", "two-steps", "tpi24", 34.92, "single")]
    [InlineData("nine", "nine", "no-thread", 0)]
    [InlineData("eight", "eight", "no-thread", 0, "road")]
    public void A_hub_by_thread_or_splines(string kind, string under, string pitch, double crest, string? sort = null) =>
        Concludes("freewheel", "hub", kind, [Named("under", under), Named("pitch", pitch), .. crest > 0 ? Twice("crest", Step(crest)) : [], .. Sort(sort)]);

    /// <summary>Lockring tools of 23.4 and 22.8 mm: LOCKRING_PAGE.</summary>
    [Theory]
    [InlineData("ring", 23.4)]
    [InlineData("ring-228", 22.8)]
    public void A_lockring_by_its_width(string kind, double across) =>
        Concludes("freewheel", "remover", kind, Named("spin", "turns"), Named("fitting-look", "ring"), Mm("fitting-size", across), Mm("fitting-size", across));

    /// <summary>Bands of 28.6, 31.8 and 34.9: https://jitetan.com/term/clamp-on_derailleur.html.</summary>
    [Theory]
    [InlineData("c286", 28.6)]
    [InlineData("c318", 31.8)]
    [InlineData("c349", 34.9)]
    public void A_front_mech_band_by_its_tube(string kind, double tube) =>
        Concludes("gears", "front", kind, Named("front-look", "band"), Mm("tube-size", tube), Mm("tube-size", tube));

    /// <summary>Holes 42.7 and 22.1 mm apart, "about 43" and "about 22" by rule: http://www.hulkbike.com/blog/deraillieur/.</summary>
    [Theory]
    [InlineData("s1", "holes-far")]
    [InlineData("s2", "holes-near")]
    public void A_bolted_front_mech_by_its_holes(string kind, string look) => Concludes("gears", "front", kind, Named("front-look", look), Named("front-look", look));

    /// <summary>M10 x 1: https://escapetothepyrenees.com/post/at-last-a-universal-derailleur-hanger-is-coming. 10 mm x 26 is the thread list's Italian one (THREADS).</summary>
    [Theory]
    [InlineData("std", "lug", "turns", "p10", null)]
    [InlineData("it", "lug", "binds", "p26", "ten")]
    [InlineData("claw", "plate", "turns", "p10", "ten")]
    public void A_hanger_by_its_thread(string kind, string look, string bolt, string pitch, string? sort) =>
        Concludes("gears", "hanger", kind, [Named("hanger-look", look), Named("hanger-look", look), Named("hanger-bolt", bolt), Named("mech-bolt", pitch), .. Sort(sort)]);

    /// <summary>51, 74 and 68 or 69 mm: MOUNT. 80 mm between studs: STUDS. A middle reach of 47 to 57 mm for one bolt: REACH. Flat: from memory, so not here.</summary>
    [Theory]
    [InlineData("bolt", "one", 52)]
    [InlineData("studs", "two-studs", 80)]
    [InlineData("is", "across", 51)]
    [InlineData("post", "along", 74)]
    [InlineData("early", "along", 68)]
    [InlineData("early", "along", 69)]
    public void A_brake_mount_by_the_gap_of_its_fixing(string kind, string look, double gap) =>
        Concludes("brakes", "mount", kind, Named("mount-look", look), Mm("fixing", gap), Mm("fixing", gap));

    /// <summary>A reading that belongs to the neighbour names the neighbour: the rows above could fail.</summary>
    [Fact]
    public void The_neighbours_reading_names_the_neighbour()
    {
        Assert.Equal("b128", Leading(Reason("crank", "circle", Named("arms", "five"), Mm("gap", 75.2), Mm("gap", 75.2))));
        Assert.Equal("c318", Leading(Reason("gears", "front", Named("front-look", "band"), Mm("tube-size", 31.8), Mm("tube-size", 31.8))));
        Assert.Equal("590", Leading(Reason("rim-size", "rim", Named("wall-name", "26x1-3-8"), Mm("round", Math.Round(Math.PI * 590)))));
    }

    // A rare kind needs the sort of bike on which it is at home.
    static IEnumerable<Finding> Sort(string? sort) => sort is null ? [] : [Named("sort", sort)];

    static IEnumerable<Finding> Twice(string clue, double mm) => Enumerable.Repeat(Mm(clue, mm), 2);

    static void Concludes(string topic, string part, string kind, params Finding[] findings)
    {
        var belief = Reason(topic, part, findings);
        Assert.True(belief.Classes[belief.Leading].Kinds.Contains(kind), $"{topic}: {Leading(belief)} {belief.Highest:0.0000} in place of {kind}");
        Assert.True(belief.Settled, $"{topic} {kind}: {belief.Highest:0.0000} of {belief.SettleAt}");
    }

    static PartBelief Reason(string topic, string part, params Finding[] findings)
    {
        if (!Benches.TryGetValue(topic, out var bench)) bench = Benches[topic] = Corpus.Bench(topic);
        return bench.Reason(new Enquiry(bench.Topic.Provenances[0].Id, [part], null, Channel.Bench, []), findings).Parts[0];
    }

    static string Leading(PartBelief belief) => belief.Classes[belief.Leading].Kinds[0];

    // The caliper's step of 0.05 mm.
    static double Step(double mm) => Math.Round(mm * 20) / 20;

    static Finding Mm(string clue, double mm) => new(clue, Channel.Bench, new Seen.Reading(mm));

    static Finding Named(string clue, string finding) => new(clue, Channel.Bench, new Seen.Named(finding));
}
