using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>After the grade each own reading is seen on its scale again, with what was read and what is right.</summary>
public sealed class ReadingsScreenTests
{
    static readonly World Nobody = new([], History.Of([]));
    static readonly PageSize[] Sizes = [new(60, 20), new(80, 24), new(120, 40)];

    [Theory]
    [InlineData("readings-figure", 0, "")]
    [InlineData("readings-figure-words", 0, "W")]
    [InlineData("readings-datum", 1, "")]
    [InlineData("readings-zero", 2, "")]
    [InlineData("readings-zero-near", 2, "++")]
    public void The_screen_is_as_it_was_looked_at(string name, int reading, string keys)
    {
        var screen = Pressed(Readings(reading), keys);
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", Text(screen, size));
    }

    [Fact]
    public void Key_r_of_a_grade_shows_them_one_after_the_other_and_goes_back()
    {
        var grade = Graded();
        Assert.Equal(3, grade.Grade.Readings.Count);
        Assert.Contains("R 5 the reading", Text(grade, Sizes[2]), StringComparison.Ordinal);
        var screen = Pressed(grade, "R");
        foreach (var check in (string[])["Reading 1 of 3", "Reading 2 of 3", "Reading 3 of 3"])
        {
            Assert.Contains(check, Text(screen, Sizes[1]), StringComparison.Ordinal);
            screen = screen.Press(Nobody, new Input(Press.Enter)).Next;
        }
        Assert.Equal(grade, screen);
        Assert.Equal(grade, Pressed(grade, "R0"));
    }

    [Fact]
    public void A_grade_without_own_readings_has_no_such_key()
    {
        var grade = Graded() with { Grade = Graded().Grade with { Readings = [] } };
        Assert.DoesNotContain("R 5", Text(grade, Sizes[2]), StringComparison.Ordinal);
        Assert.Equal(grade, Pressed(grade, "R"));
    }

    [Fact]
    public void What_went_wrong_is_named_with_where_it_would_have_led()
    {
        var grades = Graded().Grade.Readings;
        Assert.Equal([Mistake.Figure, Mistake.Datum, Mistake.ZeroForgotten], grades.Select(g => g.Mistake));
        string[] said = [.. Enumerable.Range(0, 3).Select(i => string.Join(' ', Text(Readings(i), Sizes[1]).Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)))];
        Assert.Contains("counted from the wrong figure", said[0], StringComparison.Ordinal);
        Assert.Contains("You took this datum: upper edge of clamp to top of bend", said[1], StringComparison.Ordinal);
        Assert.Contains("the zero error was not taken off", said[2], StringComparison.Ordinal);
        Assert.All(said, s => Assert.Matches("points at|fits none", s));
    }

    [Fact]
    public void Both_places_are_in_the_window_and_in_the_words()
    {
        var text = Text(Readings(0), Sizes[0]);
        Assert.Contains("you", text, StringComparison.Ordinal);
        Assert.Contains("right", text, StringComparison.Ordinal);
        Assert.DoesNotContain("further", text, StringComparison.Ordinal);
        var words = Text(Pressed(Readings(2), "W"), Sizes[1]);
        Assert.Contains("with its jaws closed: that is taken off", words, StringComparison.Ordinal);
        Assert.Contains("Your reading stands at", words, StringComparison.Ordinal);
    }

    static ReadingsScreen Readings(int reading)
    {
        Screen screen = ReadingsScreen.Of(Graded());
        for (var i = 0; i < reading; i++) screen = screen.Press(Nobody, new Input(Press.Enter)).Next;
        return Assert.IsType<ReadingsScreen>(screen);
    }

    // A stem read 10 mm short, a bar from its wrong point, a lever with the caliper's zero error left in.
    static GradeScreen Graded()
    {
        var topic = Corpus.Topic("folding-bar");
        var fine = topic with { Clues = [.. topic.Clues.Select(c => c is { Id: "lever-pull", Shows: Shows.Measured m } ? c with { Shows = m with { Step = 0.05, Uncertainty = 0.03 } } : c)] };
        var bench = new Workbench(fine);
        var want = topic.Wants.First(w => w.Id == "lever");
        var made = Enumerable.Range(0, 400).Select(s => Laws.Some.Case(bench, new CaseRequest(topic.Provenances[0].Id, want.Id, null, Selection.AsTheyCome, Channel.Bench), (ulong)s))
            .First(c => Workbench.ZeroErrorOf(c) > 0.12 && ((string[])["stem-length", "bar-rise", "lever-pull"]).All(id => c.Job.Bench.Contains(id) && c.Look(id, 0).Seen is Seen.Reading));
        double Edge(string clue, int datum) => bench.EdgeOf(made, clue, 0, datum);
        Look[] looks =
        [
            new("stem-length", 0, Math.Round(Edge("stem-length", 0)) - 10, 0),
            new("bar-rise", 0, Math.Round(Edge("bar-rise", 1)), 1),
            new("lever-pull", 0, (Math.Floor((Edge("lever-pull", 0) * 20) + 0.5) / 20) + Workbench.ZeroErrorOf(made), 0),
        ];
        var job = new BenchJob(12, bench, made, Guided: false, Step: 2, looks);
        var given = new Given([.. want.Asks.Select(p => new PartAnswer(p, null, 5))], [.. want.OrderLines.Select(_ => (Choice)new Choice.Ask())], null, null, null, Forced: false);
        return new GradeScreen(job, given, job.Grade(given));
    }

    static Screen Pressed(Screen screen, string keys) => keys.Aggregate(screen, (s, k) => s.Press(Nobody, Input.Typed(k)).Next);

    static string Text(Screen screen, PageSize size) => string.Join('\n', Layout.Of(screen.Show(Nobody), size).Select(l => l.Text.TrimEnd())) + "\n";
}
