using System.Security.Cryptography;
using System.Text;
using Apprentice.Content.Topics;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Content;

public sealed class TopicReaderTests
{
    readonly Topic _topic = Sample.Topic(Sample.EveryField);

    [Fact]
    public void The_head_is_read_and_the_topic_is_called_after_its_file()
    {
        Assert.Equal("every-field", _topic.Id);
        Assert.Equal("Every field", _topic.Title);
        Assert.Equal("which disc is fitted?", _topic.Question);
        Assert.Equal(TopicState.Checked, _topic.State);
        Assert.Equal("by the tests, against nothing, 2026-11-25", _topic.CheckedBy);
        Assert.Equal("x", TopicReader.Read("some\\folder/x.md", Sample.Text(Sample.EveryField)).Topic?.Id);
    }

    [Fact]
    public void The_version_is_the_hash_of_text_and_revision_whatever_the_line_ends()
    {
        var hash = Convert.ToHexString(SHA256.HashData(Encoding.ASCII.GetBytes("a\nb\n" + EngineRevision.Current)));
        Assert.Equal(hash[..16], TopicReader.VersionOf("a\nb"), ignoreCase: true);
        Assert.Equal(TopicReader.VersionOf("a\nb"), TopicReader.VersionOf("a\r\nb"));
        Assert.Equal(TopicReader.VersionOf(Sample.Text(Sample.EveryField)), _topic.Version);
        Assert.Equal(_topic.Version, TopicReader.Read(Sample.EveryField, Sample.Text(Sample.EveryField).Replace("\n", "\r\n")).Topic?.Version);
        Assert.NotEqual(_topic.Version, TopicReader.VersionOf(Sample.Text(Sample.EveryField) + " "));
    }

    [Fact]
    public void Provenances_lines_and_years_are_read_with_their_shares()
    {
        Assert.Equal([new Provenance("shop", "shop", "bought here"), new Provenance("lent", "lent", "lent out by day")], _topic.Provenances);
        var (first, second) = (_topic.Lines[0], _topic.Lines[1]);
        Assert.Equal(("long", "Long line", Month.Of(2010, 1), Month.Of(2012, 6)), (first.Id, first.Name, first.From, first.To));
        Assert.Equal((null, null), (first.Pitfall, first.PitfallFrom));
        Assert.Equal([0.8, 1], first.Shares);
        Assert.Equal(("kept", Month.Of(2011, 1), null), (second.Id, second.From, second.To));
        Assert.Equal(("kept-old", Month.Of(2011, 3)), (second.Pitfall, second.PitfallFrom));
        Assert.Equal(0.2, second.Shares[0], 1e-12);
        Assert.Equal(0, second.Shares[1]);
        Assert.Equal([2010, 2011, 2012], _topic.Years.Select(year => year.Year));
        Assert.Equal([0.25, 1], _topic.Years[1].Shares);
        Assert.Equal([1.0 / 3, 0.5], _topic.Years[2].Shares);
    }

    [Fact]
    public void Parts_are_read_with_hosts_before_what_sits_on_them()
    {
        Assert.Equal(["hub", "disc", "when", "clip"], _topic.Parts.Select(part => part.Id));
        var (hub, disc, when, clip) = (_topic.Parts[0], _topic.Parts[1], _topic.Parts[2], _topic.Parts[3]);
        Assert.Equal(("disc", "Which disc is it?", true, "hub"), (disc.Name, disc.Question, disc.Asked, disc.Host));
        Assert.Equal(new[] { new Kind("small", "small disc", null, null, null), new Kind("big", "big disc", "family", null, null) }, disc.Kinds);
        Assert.Equal((0.02, false), (disc.NonePrior, disc.IsDate));
        Assert.Equal((0.0, true), (hub.NonePrior, hub.Asked));
        Assert.Equal((0.04, false, ""), (clip.NonePrior, clip.Asked, clip.Question));
        Assert.Equal((true, 0.0), (when.IsDate, when.NonePrior));
        Assert.Equal((Month.Of(2011, 1), Month.Of(2012, 12)), (when.Kinds[1].From, when.Kinds[1].To));
    }

    [Fact]
    public void Parts_that_can_hurt_settle_at_99_of_100_unless_stated()
    {
        double Level(string part) => _topic.Parts.First(other => other.Id == part).SettleAt;
        Assert.Equal(0.99, Level("disc"));
        Assert.Equal(0.995, Level("hub"));
        Assert.Equal(0.95, Level("when"));
        Assert.Equal(0.95, Level("clip"));
    }

    [Fact]
    public void Packages_are_read_with_windows_and_kinds_in_the_order_of_their_parts()
    {
        Assert.Equal(["wheel", "clip"], _topic.Packages.Select(package => package.Id));
        var wheel = _topic.Packages[0];
        Assert.Equal(["disc", "hub"], wheel.Parts);
        Assert.Equal([["small", "thin"], ["big", "thick"], ["small", "thick"], ["small", "thin"]], wheel.Builds.Select(build => build.Kinds));
        Assert.Equal([1, 0.25, 0.75, 1], wheel.Builds.Select(build => build.Share));
        var change = new Window(Month.Of(2010, 6), Month.Of(2011, 2), Month.Of(2010, 10), "early");
        Assert.Equal([null, change, change, null], wheel.Builds.Select(build => build.From));
        Assert.Equal([[], [], [], ["kept"]], wheel.Builds.Select(build => build.Lines));
        Assert.Equal(new Window(Month.Of(2011, 1), Month.Of(2011, 1), Month.Of(2011, 1), null), _topic.Packages[1].Builds[1].From);
    }

    [Fact]
    public void Events_are_read_with_all_their_effects_in_order()
    {
        var swapped = _topic.Events[0];
        Assert.Equal(("swapped", "the wheel was swapped", "swap", "book"), (swapped.Id, swapped.Story, swapped.Pitfall, swapped.RateSource));
        Assert.Equal([0.02, 1.0 / 9], swapped.Rates);
        Assert.Equal(["long"], swapped.Lines);
        Assert.Equal((Month.Of(2010, 1), Month.Of(2011, 12)), (swapped.BuiltFrom, swapped.BuiltTo));
        var first = Assert.IsType<Effect.ChangeKind>(swapped.Effects[0]);
        Assert.Equal(("disc", null), (first.Part, first.From));
        Assert.Equal([("small", 0.75), ("big", 0.25)], first.To);
        var second = Assert.IsType<Effect.ChangeKind>(swapped.Effects[1]);
        Assert.Equal(("hub", "thick"), (second.Part, second.From));
        Assert.Equal([("thin", 1)], second.To);
        Assert.Equal((Month.Of(2011, 1), null), (_topic.Events[1].BuiltFrom, _topic.Events[1].BuiltTo));
        Assert.Equal(new Effect.Shift("disc-size", -0.3, 0.1), _topic.Events[1].Effects[0]);
        Assert.Equal([0, 0, 0, 1], Assert.IsType<Effect.Overrule>(_topic.Events[1].Effects[1]).Shares);
        Assert.Equal((null, Month.Of(2011, 12)), (_topic.Events[2].BuiltFrom, _topic.Events[2].BuiltTo));
        Assert.Equal([0, 0.25, 0, 0.75], Assert.IsType<Effect.Overrule>(_topic.Events[2].Effects[0]).Shares);
        Assert.Equal(new Effect.Shift("disc-size", 0.2, 0), _topic.Events[2].Effects[1]);
        Assert.Equal([new FitRule("disc", "big", "thin")], _topic.FitRules);
    }

    [Fact]
    public void A_plate_has_the_true_writing_first_then_the_decoys_in_their_order_then_the_others()
    {
        var stamp = _topic.Clues.First(clue => clue.Id == "stamp");
        Assert.Equal(Surface.Hub, stamp.Plate?.Surface);
        Assert.Equal(
            [
                new Writing("{text}-{09}", "date stamp", "When it was made", "flange"), new Writing("B {text}{A}", "batch number", "The batch", "shell"),
                new Writing("S{text}", "size number", "Its size", "inside"), new Writing("{09}{09}H", "spoke holes", "How many holes", ""),
            ],
            stamp.Plate?.Writings);
        Assert.Equal(["0{A}", "10", "11", "worn"], ((Shows.Code)stamp.Shows).Findings.Select(finding => finding.LooksLike));
    }

    [Fact]
    public void Findings_are_described_in_several_ways()
    {
        var look = (Shows.Table)_topic.Clues.First(clue => clue.Id == "look").Shows;
        Assert.Equal([["light comes through", "many o"], ["smooth all over"], ["a dark line", "a hair that bites"]], look.Findings.Select(finding => finding.Described));
    }

    [Fact]
    public void Sizes_are_read_in_millimetres_and_a_kind_without_a_row_says_nothing()
    {
        var (disc, hub) = (_topic.Dimensions[0], _topic.Dimensions[1]);
        Assert.Equal(("disc-size", "disc", "disc diameter", 100.0, 200.0), (disc.Id, disc.Part, disc.Name, disc.Low, disc.High));
        Assert.Equal("common practice, no source", disc.Source);
        Assert.Equal([140, 158.75], disc.Nominals);
        Assert.Equal([0.5, 1], disc.Spreads);
        Assert.Equal((25.4, 8 * 25.4, "book"), (hub.Low, hub.High, hub.Source));
        Assert.Equal([101.6, null], hub.Nominals);
        Assert.Equal(0.508, hub.Spreads[0], 1e-12);
        Assert.Equal([new Access("wheel", "wheel out", 2.5)], _topic.Accesses);
    }

    [Fact]
    public void A_clue_is_read_in_every_field()
    {
        var clue = _topic.Clues[1];
        Assert.Equal(("round", "Round the disc", "once round", "tape", 2.0), (clue.Id, clue.Name, clue.FromTo, clue.Tool, clue.Minutes));
        Assert.Equal((null, ClueFamily.Measured, "book", true), (clue.Access, clue.Family, clue.Source, clue.Safety));
        Assert.Equal(("How far is it round?", "Let it cool.", "Dirt adds."), (clue.Ask, clue.Caution, clue.Lies));
        Assert.Equal(new Node.OfPart("disc"), clue.Node);
        Assert.Equal([new ClueChannel(Channel.Bench, 0, 0), new ClueChannel(Channel.Photo, 4, 0), new ClueChannel(Channel.Phone, 3.175, 0.1)], clue.Channels);
        Assert.Equal(["datum"], clue.Pitfalls);
        var stamp = _topic.Clues[0];
        Assert.Equal(("wheel", 0.05, false), (stamp.Access, stamp.HiddenShare, stamp.Safety));
        Assert.Equal(["decoy", "early"], stamp.Pitfalls);
        Assert.Equal([0, 0.05, 0.1], stamp.Channels.Select(channel => channel.ExtraMisread));
        ClueFamily[] families = [ClueFamily.NumberOrDate, ClueFamily.Measured, ClueFamily.ShapeSeen, ClueFamily.FeltOrHeard, ClueFamily.Told];
        Assert.Equal(families, _topic.Clues.Select(other => other.Family));
        Assert.Equal([new Node.OfDate(), new Node.OfPart("disc"), new Node.OfPart("disc"), new Node.OfEvent("painted"), new Node.OfLine()], _topic.Clues.Select(other => other.Node));
    }

    [Fact]
    public void A_measured_clue_is_read_with_scale_uncertainty_and_slips()
    {
        var measured = Assert.IsType<Shows.Measured>(_topic.Clues[1].Shows);
        Assert.Equal(("disc-size", Math.PI, 2.0, 1.0, 190.0, 600.0), (measured.Dimension, measured.Scale, measured.Offset, measured.Step, measured.Low, measured.High));
        Assert.Equal(Math.Sqrt((1.5 * 1.5 / 3) + (0.5 * 0.5 / 3)), measured.Uncertainty, 1e-12);
        Assert.Equal((0.0025, "d = c / pi"), (measured.Blunder, measured.Formula));
        Assert.Equal([new Slip("over teeth", 1.0 / 30, 1, 8, "datum"), new Slip("radius", 0.02, 0.5, -1, null)], measured.Slips);
    }

    [Fact]
    public void A_table_is_read_by_column_whatever_their_order()
    {
        var table = Assert.IsType<Shows.Table>(_topic.Clues[2].Shows);
        (string, string, string)[] findings = [("holes", "holes", ""), ("plain", "plain", ""), ("crack", "a crack", "Cracked: do not ride it.")];
        Assert.Equal(findings, table.Findings.Select(finding => (finding.Id, finding.Text, finding.Stop)));
        Assert.Equal([0.2, 0.75, 0.05], table.Rows[0], Near);
        Assert.Equal([0.7, 0.25, 0.05], table.Rows[1], Near);
        Assert.Equal([0.5, 0.25, 0.25], table.NoneRow ?? [], Near);
        Assert.Equal(0.002, table.Misread);
        var paint = Assert.IsType<Shows.Table>(_topic.Clues[3].Shows);
        Assert.Equal([0.02, 0.98], paint.Rows[0], Near);
        Assert.Equal([0.9, 0.1], paint.Rows[1], Near);
        Assert.Null(paint.NoneRow);
        Assert.Equal([[0.9, 0.1], [0, 1]], Assert.IsType<Shows.Table>(_topic.Clues[4].Shows).Rows);
    }

    [Fact]
    public void A_code_is_read_with_repeats_lag_and_decoys()
    {
        var code = Assert.IsType<Shows.Code>(_topic.Clues[0].Shows);
        Assert.Equal((3, 0.01), (code.LagMonths, code.Misread));
        Assert.Equal(["s09", "s10", "s11", "gone"], code.Findings.Select(finding => finding.Id));
        Assert.Equal([(Month.Of(2009, 1), Month.Of(2009, 12)), (Month.Of(2012, 1), Month.Of(2012, 12))], code.Findings[0].Months);
        Assert.Equal(("worn away", 0, 0.125), (code.Findings[3].Text, code.Findings[3].Months.Count, code.Findings[3].Share));
        Assert.Equal(["batch number", "size number"], code.Decoys.Select(decoy => decoy.Name));
        Assert.Equal([1.0 / 40, 0.02], code.Decoys.Select(decoy => decoy.Share));
        Assert.Equal([1.0 / 3, 1.0 / 3, 1.0 / 3, 0], code.Decoys[0].Shares);
        Assert.Equal([0, 0.25, 0, 0.75], code.Decoys[1].Shares);
    }

    [Fact]
    public void Openings_wants_spares_and_costs_are_read()
    {
        var opening = Assert.Single(_topic.Openings);
        Assert.Equal(("call", "on a call"), (opening.Id, opening.Name));
        Assert.Equal([("stamp", Channel.Phone), ("look", Channel.Photo)], opening.Clues);
        var want = _topic.Wants[0];
        Assert.Equal(("discs", "A new disc", "The pads."), (want.Id, want.Name, want.AlsoChanges));
        Assert.Equal(["It squeals: what now?", "Once more, please."], want.Says);
        Assert.Equal(["disc", "hub"], want.Asks);
        Assert.Equal([new OrderLine("disc", "Disc"), new OrderLine("pad", "Pads, pair")], want.OrderLines);
        var spare = _topic.Spares[0];
        Assert.Equal(("d-small", "disc", "disc small", 14.5, 6.0, 3.0), (spare.Id, spare.OrderLine, spare.Name, spare.Price, spare.ReturnCost, spare.DelayDays));
        Assert.Equal((true, "The brake can fail."), (spare.Hazard, spare.HazardText));
        Assert.Equal(["disc", "hub"], spare.Fits.Select(fit => fit.Part));
        Assert.Equal([["small"], ["thin", "thick"]], spare.Fits.Select(fit => fit.Kinds));
        Assert.Equal((false, ""), (_topic.Spares[2].Hazard, _topic.Spares[2].HazardText));
        Assert.Equal(new Costs(0.8, 4, 5.5), _topic.Costs);
    }

    [Fact]
    public void Pitfalls_and_sources_are_read()
    {
        Assert.Equal(new Pitfall("kept-old", PitfallClass.KeptOldLine, "One line kept it."), _topic.Pitfalls[3]);
        Assert.Equal(7, _topic.Pitfalls.Count);
        Assert.Equal([new Source("book", "A book, 1999, p. 3")], _topic.Sources);
    }

    static bool Near(double one, double other) => Math.Abs(one - other) < 1e-12;
}
