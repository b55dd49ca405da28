using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>Gauges that are tried: which leaf fits, which end drops in.</summary>
public sealed class GaugeScreenTests
{
    const double Inch = 25.4;
    static readonly World Nobody = new([], History.Of([]));
    static readonly PageSize[] Sizes = [new(60, 20), new(80, 24), new(120, 40)];

    static readonly TableFinding[] Threads =
    [
        new("p100", "1 mm") { Gauge = new Leaf("1 mm", 1) },
        new("t24", "24 to the inch") { Gauge = new Leaf("24 tpi", Inch / 24) },
        new("t26", "26 to the inch") { Gauge = new Leaf("26 tpi", Inch / 26) },
        new("none", "no leaf fits"),
    ];

    static readonly TableFinding[] Chains =
    [
        new("new", "no end drops in") { Gauge = new Leaf("none", 0) },
        new("half", "only the end 0.5 drops in") { Gauge = new Leaf("0.5", 0.5) },
        new("most", "0.75 drops in, 1.0 does not") { Gauge = new Leaf("0.75", 0.75) },
        new("worn", "1.0 drops in") { Gauge = new Leaf("1.0", 1) },
    ];

    [Theory]
    [InlineData("gauge-thread-off", "pitch gauge", "t24", 1, "")]
    [InlineData("gauge-thread-far", "pitch gauge", "t24", 1, "--")]
    [InlineData("gauge-thread-fits", "pitch gauge", "t24", 2, "")]
    [InlineData("gauge-thread-words", "pitch gauge", "t24", 1, "W")]
    [InlineData("gauge-thread-none", "pitch gauge", "t24", 3, "")]
    [InlineData("gauge-chain-in", "chain gauge", "half", 0, "")]
    [InlineData("gauge-chain-out", "chain gauge", "half", 1, "")]
    [InlineData("gauge-chain-words", "chain gauge", "half", 1, "W")]
    [InlineData("gauge-chain-say", "chain gauge", "half", 1, "{Enter}")]
    public void The_screen_is_as_it_was_looked_at(string name, string tool, string shown, int leaf, string keys)
    {
        var screen = Keys(new GaugeScreen(Task(tool, shown), leaf), keys);
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", Text(screen, size));
    }

    [Theory]
    [InlineData("pitch gauge", "t26", "{Enter}", 0, "t26")]
    [InlineData("pitch gauge", "t26", "{Right}{Right}{Enter}", 0, "t24")]
    [InlineData("pitch gauge", "t26", "{Left}{Enter}", 0, "none")]
    [InlineData("chain gauge", "worn", "{Right}W-+{Enter}3", 0, "most")]
    public void The_leaf_or_the_words_taken_come_out(string tool, string shown, string keys, int leaf, string finding) =>
        Assert.Equal(finding, Assert.IsType<Taken>(Keys(new GaugeScreen(Task(tool, shown), leaf), keys)).Finding);

    [Fact]
    public void A_chain_is_drawn_as_long_as_its_finding_says_and_no_longer_than_the_next()
    {
        for (var seed = 0UL; seed < 300; seed++)
        {
            Assert.InRange(Task("chain gauge", "new", seed).Exact, 0.01, 0.499);
            Assert.InRange(Task("chain gauge", "half", seed).Exact, 0.5, 0.749);
            Assert.InRange(Task("chain gauge", "most", seed).Exact, 0.75, 0.999);
            Assert.InRange(Task("chain gauge", "worn", seed).Exact, 1, 1.3);
        }
    }

    [Fact]
    public void The_leaf_that_is_tried_first_tells_nothing()
    {
        var firsts = Enumerable.Range(0, 4000).Select(s => Task("pitch gauge", "t24", (ulong)s).First).CountBy(f => f).ToList();
        Assert.Equal(4, firsts.Count);
        Assert.All(firsts, f => Assert.InRange(f.Value, 900, 1100));
    }

    [Fact]
    public void Where_no_leaf_fits_the_thread_is_none_of_them()
    {
        var task = Task("pitch gauge", "none");
        Assert.All(Threads.Where(t => t.Gauge is not null), t => Assert.True(Math.Abs((t.Gauge?.Size ?? 0) / task.Exact - 1) > 0.02));
    }

    [Fact]
    public void A_table_without_leaves_or_with_eyes_makes_no_task()
    {
        Assert.Null(Of("eyes", "t24", 1, Threads));
        Assert.Null(Of("pitch gauge", "p", 1, [new TableFinding("p", "p"), new TableFinding("q", "q")]));
    }

    [Theory]
    [InlineData("pitch gauge", "t24")]
    [InlineData("chain gauge", "half")]
    public void The_gauge_fills_every_window_and_no_more(string tool, string shown)
    {
        var page = new GaugeScreen(Task(tool, shown), 0).Show(Nobody);
        for (var columns = 60; columns <= 200; columns += 7)
        {
            for (var rows = 18; rows <= 60; rows += 3)
            {
                var lines = Layout.Of(page, new PageSize(columns, rows));
                Assert.Equal(rows, lines.Count);
                Assert.All(lines, l => Assert.InRange(l.Text.Length, 0, columns));
            }
        }
    }

    static GaugeTask Task(string tool, string shown, ulong seed = 3) =>
        Of(tool, shown, seed, tool is "pitch gauge" ? Threads : Chains) ?? throw new InvalidOperationException(tool);

    static GaugeTask? Of(string tool, string shown, ulong seed, TableFinding[] findings)
    {
        var clue = Corpus.Sample.Clues[0] with
        {
            Tool = tool,
            FromTo = tool is "pitch gauge" ? "Along the thread of the cup, clean, against the light." : "The longest tight run of the chain, pedal pressed.",
            Shows = new Shows.Table { Findings = findings, Rows = [] },
        };
        return GaugeTask.Of("Job 12   gauge", clue, shown, seed, new HelpScreen(new HomeScreen()), (_, id) => Turn.To(new Taken(id)));
    }

    static Screen Keys(Screen screen, string keys) => Keystrokes.Pressed(screen, Nobody, keys);

    static string Text(Screen screen, PageSize size) => string.Join('\n', Layout.Of(screen.Show(Nobody), size).Select(l => l.Text.TrimEnd())) + "\n";

    sealed record Taken(string Finding) : Screen
    {
        public override Page Show(World world) => new("", "", [], []);

        public override Turn Press(World world, Input key) => Turn.To(this);
    }
}
