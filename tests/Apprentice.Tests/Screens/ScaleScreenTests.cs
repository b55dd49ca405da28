using Apprentice.Drawing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>From where to where, then the scale itself.</summary>
public sealed class ScaleScreenTests
{
    static readonly World Nobody = new([], History.Of([]));
    static readonly PageSize[] Sizes = [new(60, 20), new(80, 24), new(120, 40)];

    [Theory]
    [InlineData("datum", "rule", "")]
    [InlineData("scale-rule", "rule", "R")]
    [InlineData("scale-rule-near", "rule", "R+++")]
    [InlineData("scale-rule-words", "rule", "RW")]
    [InlineData("scale-rule-wrong", "rule", "Rlong{Enter}")]
    [InlineData("scale-inches", "inches", "R")]
    [InlineData("scale-inches-words", "inches", "RW")]
    [InlineData("scale-chain", "rule, inches, pins", "")]
    [InlineData("scale-chain-words", "rule, inches, pins", "W")]
    [InlineData("scale-inside", "caliper, inside", "R")]
    [InlineData("scale-inside-closed", "caliper, inside", "R+Z")]
    [InlineData("scale-inside-words", "caliper, inside", "RW")]
    [InlineData("scale-tape", "tape", "R")]
    [InlineData("scale-tape-moved", "tape", "R+{Right}{Right}{Right}")]
    [InlineData("scale-caliper", "caliper", "R")]
    [InlineData("scale-caliper-near", "caliper", "R++{Right}")]
    [InlineData("scale-caliper-closed", "caliper", "R+Z")]
    [InlineData("scale-caliper-words", "caliper", "RW")]
    public void The_screen_is_as_it_was_looked_at(string name, string tool, string keys)
    {
        var screen = Keys(Task(tool).Start(), keys);
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", Text(screen, size));
    }

    [Theory]
    [InlineData("rule", "R310.5{Enter}", 0, 310.5)]
    [InlineData("rule", "R12 1/4 in{Enter}", 0, 311.15)]
    [InlineData("inches", "R12 3/8 in{Enter}", 0, 314.325)]
    [InlineData("caliper", "R++{Right}W{Left}Z31.15{Enter}", 0, 31.15)]
    public void A_datum_and_a_reading_come_out(string tool, string keys, int datum, double millimetres)
    {
        var end = Assert.IsType<Taken>(Keys(Task(tool).Start(), keys));
        Assert.Equal(datum, end.Reading.Datum);
        Assert.Equal(millimetres, end.Reading.Millimetres, 9);
    }

    [Fact]
    public void A_slip_is_drawn_from_its_own_points()
    {
        var task = Task("rule");
        var line = task.Order.ToList().IndexOf(1);
        var screen = Assert.IsType<ScaleScreen>(Keys(task.Start(), $"{line + 1}"));
        Assert.Equal(1, screen.Datum);
        Assert.Contains("300", Text(screen, Sizes[1]), StringComparison.Ordinal);
        Assert.DoesNotContain("320", Text(screen, Sizes[1]), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rule", "", "Type what you read, for example 310.")]
    [InlineData("rule", "1,272", "\"1,272\" is not a length. Type what you read, for example 310.")]
    [InlineData("rule", "12 3/8", "Write the unit with \"12 3/8\": mm or in. This scale is in mm.")]
    [InlineData("inches", "12.25", "Write the unit with \"12.25\": mm or in. This scale is in inches.")]
    [InlineData("rule", "9000", "9000 mm cannot be read here. The tool reads from 1 to 600 mm. Look at the unit.")]
    [InlineData("inches", "99 in", "99 in cannot be read here. The tool reads from 1/32 in to 23 5/8 in. Look at the unit.")]
    [InlineData("inches", "12 3/0 in", "\"12 3/0 in\" is not a length. Type what you read, for example 12 3/8 in.")]
    public void A_bad_reading_is_told_with_what_would_do_and_kept(string tool, string text, string sentence)
    {
        var screen = Assert.IsType<ScaleScreen>(Keys(Task(tool).Start(), $"R{text}{{Enter}}"));
        Assert.Equal(sentence, screen.Wrong);
        Assert.Equal(text, screen.Typed);
    }

    [Fact]
    public void A_tool_with_one_datum_goes_to_the_scale_at_once_and_back_to_where_it_came_from()
    {
        var task = Task("rule") with { Datums = ["end to end"] };
        var screen = Assert.IsType<ScaleScreen>(task.Start());
        Assert.Same(task.Below, screen.Press(Nobody, new Input(Press.Esc)).Next);
    }

    [Fact]
    public void Escape_goes_back_to_the_datum_and_then_to_where_it_came_from()
    {
        var task = Task("rule");
        var datum = Assert.IsType<DatumScreen>(Keys(task.Start(), "R{Esc}"));
        Assert.Same(task.Below, datum.Press(Nobody, new Input(Press.Esc)).Next);
    }

    [Fact]
    public void Zoom_and_place_stay_within_bounds()
    {
        var far = Assert.IsType<ScaleScreen>(Keys(Task("caliper").Start(), "R++++++" + string.Concat(Enumerable.Repeat("{Left}", 200))));
        Assert.Equal(2, far.Window.Zoom);
        Assert.Equal(-31.17, far.Window.Shift, 9);
        Assert.Equal(0, Assert.IsType<ScaleScreen>(Keys(far, "------")).Window.Zoom);
    }

    [Fact]
    public void Letters_are_keys_of_the_program_until_a_digit_is_typed()
    {
        var screen = Keys(Task("rule").Start(), "R");
        Assert.False(screen.Typing);
        Assert.True(Keys(screen, "3").Typing);
    }

    [Fact]
    public void The_order_of_the_datums_is_fixed_by_the_seed_and_every_order_comes_up_as_often()
    {
        const int Count = 6000;
        var orders = Enumerable.Range(0, Count).Select(s => string.Concat((Task("rule") with { Seed = (ulong)s }).Order)).ToList();
        Assert.Equal(orders[17], string.Concat((Task("rule") with { Seed = 17 }).Order));
        var counts = orders.CountBy(o => o, StringComparer.Ordinal).ToList();
        Assert.Equal(6, counts.Count);
        Assert.All(counts, c => Assert.InRange(c.Value, (Count / 6) - 120, (Count / 6) + 120));
        var alike = orders.Zip(orders.Skip(1)).Count(p => string.Equals(p.First, p.Second, StringComparison.Ordinal));
        Assert.InRange(alike, (Count / 6) - 120, (Count / 6) + 120);
    }

    [Fact]
    public void Every_clue_measured_with_a_scale_makes_a_task_with_its_own_datum_first()
    {
        var clues = Corpus.Shipped.Select(Corpus.Topic).SelectMany(t => t.Clues).Where(c => c.Shows is Shows.Measured && Scale.Of(c.Tool) is not null).ToList();
        Assert.NotEmpty(clues);
        Assert.All(clues, c =>
        {
            var task = ReadingTask.Of(c.Name, c, _ => 300, 1, new HelpScreen(new HomeScreen()), (_, r) => Turn.To(new Taken(r)));
            Assert.Equal(c.Datum.Length > 0 ? c.Datum : c.FromTo, task?.Datums[0]);
            Assert.Equal(((Shows.Measured)c.Shows).Slips.Count + 1, task?.Datums.Count);
        });
    }

    [Theory]
    [InlineData("rule", "R")]
    [InlineData("inches", "R++{Left}")]
    [InlineData("tape", "R+{Right}{Right}{Right}")]
    [InlineData("caliper", "R")]
    [InlineData("caliper", "R++{Left}{Left}")]
    public void The_scale_fills_every_window_and_no_more(string tool, string keys)
    {
        var page = Keys(Task(tool).Start(), keys).Show(Nobody);
        for (var columns = 60; columns <= 200; columns += 7)
        {
            for (var rows = 18; rows <= 60; rows += 3)
            {
                var lines = Layout.Of(page, new PageSize(columns, rows));
                Assert.Equal(rows, lines.Count);
                Assert.All(lines, l => Assert.InRange(l.Text.Length, 0, columns));
                Assert.DoesNotContain(lines, l => l.Text.Contains("more below", StringComparison.Ordinal) && rows > 18);
            }
        }
    }

    [Fact]
    public void In_60x20_the_whole_scale_is_seen_with_the_longest_datum_and_a_wrong_reading()
    {
        foreach (var clue in Corpus.Shipped.Select(Corpus.Topic).SelectMany(t => t.Clues).Where(c => c.Shows is Shows.Measured))
        {
            if (ReadingTask.Of(clue.Name, clue, _ => 104.6, 1, new HelpScreen(new HomeScreen()), (_, r) => Turn.To(new Taken(r))) is not { } task) continue;
            var text = Text(Keys(new ScaleScreen(task, 0), "99999{Enter}"), Sizes[0]);
            Assert.Contains("cannot be read here", text, StringComparison.Ordinal);
            Assert.Contains(" 110", text, StringComparison.Ordinal);
            Assert.DoesNotContain("more below", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_clue_without_a_scale_makes_no_task() => Assert.All(
        Corpus.Shipped.Select(Corpus.Topic).SelectMany(t => t.Clues).Where(c => c.Shows is not Shows.Measured),
        c => Assert.Null(ReadingTask.Of(c.Name, c, _ => 300, 1, new HelpScreen(new HomeScreen()), (_, r) => Turn.To(new Taken(r)))));

    static ReadingTask Task(string tool)
    {
        Screen below = new HelpScreen(new HomeScreen());
        double[] exact = tool switch { "rule, inches, pins" => [306.9], "caliper, inside" => [27.17, 26.6], "caliper" => [31.17, 28.42], "tape" => [1955.3, 1986.1], _ => [310.3, 294.1, 321.2] };
        string[] datums = tool switch
        {
            "rule, inches, pins" => ["middle of a pin to the middle of the 24th after it"],
            "caliper, inside" => ["across the bore, below the slot", "across the slot"],
            "caliper" => ["over the clamped zone, square to the tube", "over the taper beside it"],
            "tape" => ["round the bed of the rim, where the tyre sits", "round the outer edge of the rim"],
            _ => ["middle of the hinge pin to middle of the clamp bolt", "middle of the hinge pin to the edge of the clamp", "lower hinge plate to middle of the clamp bolt"],
        };
        var scale = Scale.Of(tool is "inches" ? "rule, inches" : tool, zeroError: 0.05) ?? throw new InvalidOperationException(tool);
        return new ReadingTask("Job 12   stem length", tool is "inches" ? "rule" : tool, datums, d => exact[d], scale is Scale.Vernier ? 0.05 : 0.5)
        {
            Scale = scale is Scale.Ruled { Tape: true } ruled ? ruled with { Around = true } : scale,
            Low = 1,
            High = tool is "tape" ? 2500 : 600,
            Seed = 5,
            Below = below,
            Done = (_, reading) => Turn.To(new Taken(reading)),
            Job = 12,
        };
    }

    /// <summary>Presses keys as <see cref="Talk"/> does; R in front takes the right datum.</summary>
    static Screen Keys(Screen screen, string keys) => keys.StartsWith('R') && screen is DatumScreen datum
        ? Keystrokes.Pressed(screen, Nobody, (char)('1' + datum.Task.Order.ToList().IndexOf(0)) + keys[1..])
        : Keystrokes.Pressed(screen, Nobody, keys);

    static string Text(Screen screen, PageSize size) => string.Join('\n', Layout.Of(screen.Show(Nobody), size).Select(l => l.Text.TrimEnd())) + "\n";

    sealed record Taken(OwnReading Reading) : Screen
    {
        public override Page Show(World world) => new("", "", [], []);

        public override Turn Press(World world, Input key) => Turn.To(this);
    }
}
