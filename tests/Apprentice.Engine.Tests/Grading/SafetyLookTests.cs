using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

/// <summary>An order without the safety look: it is told, whatever the bike was like, and no mark hangs on it (MODEL 6: an order that the readings supported is never a safety error).</summary>
public sealed class SafetyLookTests
{
    static readonly Clue Length = Some.Clue("length", new Node.OfPart("fork"), Some.Measured(1, 1, 240, 400));
    static readonly Look Measured = new("length", 0);
    static readonly Look Looked = new("crack", 0);

    [Fact]
    public void An_order_without_the_look_on_a_sound_bike_names_the_look_and_its_minutes()
    {
        var told = Assert.Single(Told(Graded(new Choice.Order("right"), cracked: false, null, Measured)));
        Assert.Equal("grade.safety.not-looked", told.Key);
        Assert.Equal(["crack"], Assert.IsType<Value.OfClues>(told.Values["checks"]).Ids);
        Assert.Equal(new Value.Minutes(2), told.Values["minutes"]);
    }

    [Fact]
    public void The_same_is_told_where_the_bike_had_the_stop_sign_and_then_what_was_there()
    {
        var told = Told(Graded(new Choice.Order("right"), cracked: true, null, Measured));
        Assert.Equal(["grade.safety.not-looked", "grade.safety.was-there"], told.Select(r => r.Key));
        Assert.Equal(new Value.Text("The fork is cracked."), told[1].Values["sign"]);
    }

    [Fact]
    public void Both_kinds_ordered_is_an_order_and_the_look_is_told_after_the_safety_error() =>
        Assert.Equal(["grade.safety.thin", "grade.safety.not-looked"], Told(Graded(new Choice.OrderTwo("left", "right"), cracked: false, null, Measured)).Select(r => r.Key));

    [Fact]
    public void With_the_look_taken_nothing_is_told_of_it()
    {
        Assert.Empty(Told(Graded(new Choice.Order("right"), cracked: false, null, Looked, Measured)));
        Assert.Equal("grade.safety.stop", Assert.Single(Told(Graded(new Choice.Order("right"), cracked: true, null, Looked, Measured))).Key);
    }

    [Fact]
    public void Who_asks_orders_nothing_and_is_told_nothing() => Assert.Empty(Told(Graded(new Choice.Ask(), cracked: true, null, Measured)));

    [Fact]
    public void Where_questions_are_counted_it_is_said_to_be_one_of_them() =>
        Assert.Equal("grade.safety.not-asked", Assert.Single(Told(Graded(new Choice.Order("right"), cracked: false, 3, Measured))).Key);

    // The look tells nothing of the size, so all marks are those of the job with it.
    [Fact]
    public void No_mark_hangs_on_the_look()
    {
        var without = Graded(new Choice.Order("right"), cracked: false, null, Measured);
        var with = Graded(new Choice.Order("right"), cracked: false, null, Looked, Measured);
        Assert.Equal(with.Parts.Select(p => (p.Aspect, Math.Round(p.Mark, 12))), without.Parts.Select(p => (p.Aspect, Math.Round(p.Mark, 12))));
        Assert.True(without.Sound);
        Assert.False(without.SafetyError);
    }

    static List<Remark> Told(Grade grade) => [.. grade.Remarks.Where(r => r.Key.StartsWith("grade.safety.", StringComparison.Ordinal))];

    static Grade Graded(Choice order, bool cracked, int? questions, params Look[] looks)
    {
        var shows = new Shows.Table
        {
            Findings = [new TableFinding("sound", "no crack"), new TableFinding("cracked", "a crack", "The fork is cracked.")],
            Rows = [[0.95, 0.05], [0.95, 0.05]],
            Misread = 0.002,
        };
        var crack = Some.Clue("crack", new Node.OfPart("fork"), shows) with { Safety = true, Minutes = 2 };
        var bench = new Workbench(JobTopic.Of(true, Length, crack));
        var made = JobTopic.Made(bench.Topic, Channel.Bench, questions, [], ("length", new Seen.Reading(335)), ("crack", new Seen.Named(cracked ? "cracked" : "sound")));
        return bench.Grade(made, JobTopic.Answer("right", order, looks));
    }
}
