using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>What stands beside the marks: an order without the safety look, and the chart of the part that decided the order.</summary>
public sealed class GradeScreenTests
{
    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];

    [Fact]
    public void An_order_without_the_safety_look_on_a_sound_bike_is_told_above_the_marks()
    {
        var talk = Graded(looks: [], sound: true);
        foreach (var size in Sizes) Golden.Same($"grade-not-looked-{size.Columns}x{size.Rows}", talk.TextAt(size));
        Assert.Contains("\nYou ordered without check 12 (Safety look at the rim's side): 1 min, not counted. Such a look comes first, because what it may find can hurt someone.\n", Graded(looks: [], sound: true, plain: true).Say(""), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_bike_had_a_stop_sign_it_says_which() =>
        Assert.Contains("On this bike it shows a stop sign: The rim is ", Graded(looks: [], sound: false, plain: true).Say(""), StringComparison.Ordinal);

    [Fact]
    public void With_the_look_nothing_is_said_of_it() => Assert.DoesNotContain("You ordered without", Graded(looks: ["rim-wall"], sound: true, plain: true).Say(""), StringComparison.Ordinal);

    [Fact]
    public void The_lessons_begin_with_the_look_that_was_left_out()
    {
        var talk = Graded(looks: [], sound: true).Keys("L");
        Assert.Contains("1  Safety look, left out", talk.Text, StringComparison.Ordinal);
        Assert.Equal("safety", talk.Keys("1{Enter}").Screen is LessonScreen lesson ? lesson.Lesson.Sections[lesson.Section].Anchor : "");
    }

    [Fact]
    public void The_chart_is_of_the_part_that_the_bad_order_was_for()
    {
        var (on, given, grade) = TwoParts(badOrder: true);
        Assert.Equal("crank", GradeChart.First(on, given, grade).Part);
        (on, given, grade) = TwoParts(badOrder: false);
        Assert.Equal("shell", GradeChart.First(on, given, grade).Part);
    }

    [Fact]
    public void One_key_goes_through_the_parts_of_the_chart()
    {
        var (on, given, grade) = TwoParts(badOrder: true);
        var talk = new Talk([on.Topic]).At(new GradeScreen(on, given, grade));
        string Titled() => talk.TextAt(new PageSize(120, 40)).Split('\n').First(l => l.Contains("what each check said of", StringComparison.Ordinal)).Trim();
        Assert.StartsWith("Crank's pedal thread", Titled(), StringComparison.Ordinal);
        talk.Keys("C");
        foreach (var size in Sizes) Golden.Same($"part-chart-{size.Columns}x{size.Rows}", talk.TextAt(size));
        Assert.StartsWith("Shell: what", Titled(), StringComparison.Ordinal);
        talk.Keys("6");
        Assert.StartsWith("Crank's pedal thread", Titled(), StringComparison.Ordinal);
        Assert.IsType<GradeScreen>(talk.Keys("{Enter}").Screen);
    }

    [Fact]
    public void What_was_found_is_one_key_from_the_answer_and_back()
    {
        var talk = new Talk([Corpus.Sample]).Keys("1123AF");
        foreach (var size in Sizes) Golden.Same($"noted-{size.Columns}x{size.Rows}", talk.TextAt(size));
        Assert.IsType<AnswerScreen>(talk.Keys("0").Screen);
        Assert.IsType<NotedScreen>(talk.Keys("2*").Screen);
        Assert.Equal(["which:bar"], Assert.IsType<AnswerScreen>(talk.Keys("{Enter}").Screen).Form.Values.Keys);
    }

    [Fact]
    public void In_plain_lines_what_was_found_is_said_when_it_is_asked_for()
    {
        var said = new Talk(plain: true, [Corpus.Sample]).Keys("1123A").Say("F", "0");
        Assert.Equal(2, said.Split("2, Stem, hinge to bolt, what you found 333 mm").Length);
    }

    // A rear tyre of a bike whose tyre mark settles it, ordered after that mark.
    static Talk Graded(string[] looks, bool sound, bool plain = false)
    {
        var bench = Corpus.Bench("rim-size");
        var made = Enumerable.Range(1, 400).Select(s => bench.Make(new CaseRequest("own", "tyre", null, Selection.AsTheyCome, Channel.Bench), (ulong)s)).OfType<Case>().First(c =>
            c.Look("wall-iso", 0).Seen is Seen.Named { Id: "iso-622" } && c.Look("rim-wall", 0).Seen is Seen.Named wall && wall.Id == "sound" == sound && c.Truth.Story.Count == 0);
        var on = new BenchJob(7, bench, made, Guided: false, 1, [.. looks.Append("wall-iso").Select(c => new Look(c, 0))]);
        var given = new Given([new PartAnswer("rim", "622", 10)], [new Choice.Order("tyre-622")], null, null, null, Forced: false);
        var talk = new Talk(plain, [bench.Topic], Corpus.Lessons([bench.Topic]));
        return talk.At(new GradeScreen(on, given, on.Grade(given)));
    }

    // Shell named otherwise than the checks say; of the pedals the ones that fit best, or others.
    static (BenchJob On, Given Given, Grade Grade) TwoParts(bool badOrder)
    {
        var bench = Corpus.Bench("bottom-bracket");
        var made = bench.Make(new CaseRequest("own", "both", null, Selection.AsTheyCome, Channel.Bench), 4) ?? throw new InvalidOperationException();
        var on = new BenchJob(7, bench, made, Guided: false, 1, [.. made.Job.Bench.Select(c => new Look(c, 0))]);
        var parts = on.Reasoning.Parts;
        string Kind(string part, bool leading) => bench.Topic.Parts.First(p => p.Id == part).Kinds.First(k => parts.First(p => p.Part == part) is var b && b.ClassOf(k.Id) == b.Leading == leading).Id;
        string Spare(string part, bool leading) => bench.Topic.Spares.First(s => s.Fits.Any(f => f.Part == part && f.Kinds.Contains(Kind(part, leading)))).Id;
        var given = new Given(
            [new PartAnswer("shell", Kind("shell", leading: false), 9), new PartAnswer("crank", Kind("crank", leading: true), 9)],
            [new Choice.Order(Spare("shell", leading: true)), new Choice.Order(Spare("crank", leading: !badOrder))], null, null, null, Forced: false);
        return (on, given, on.Grade(given));
    }
}
