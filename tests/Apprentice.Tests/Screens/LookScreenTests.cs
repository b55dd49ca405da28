using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>From the fourth job of a topic the learner chooses the writing, says what it says, and what it tells; and says what they see.</summary>
public sealed class LookScreenTests
{
    static readonly World Nobody = new([], History.Of([]));
    static readonly PageSize[] Sizes = [new(60, 20), new(80, 24), new(120, 40)];

    [Theory]
    [InlineData("plate-frame", "folding-bar", "plate", "")]
    [InlineData("plate-frame-words", "folding-bar", "plate", "W")]
    [InlineData("plate-says", "folding-bar", "plate", "1")]
    [InlineData("plate-tells", "folding-bar", "plate", "17{Enter}")]
    [InlineData("plate-label", "folding-bar", "label", "")]
    [InlineData("plate-name", "folding-bar", "name", "")]
    [InlineData("plate-wall", "rim-size", "wall-name", "")]
    [InlineData("plate-iso", "rim-size", "wall-iso", "")]
    [InlineData("plate-rim", "rim-size", "rim-iso", "")]
    [InlineData("look-lever", "folding-bar", "lever-look", "")]
    [InlineData("look-rim", "rim-size", "rim-wall", "")]
    public void The_screen_is_as_it_was_looked_at(string name, string topic, string clue, string keys)
    {
        var screen = Keys(Task(topic, clue).Start(), keys);
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", Text(screen, size));
    }

    [Fact]
    public void A_writing_a_finding_and_what_it_tells_come_out()
    {
        var task = Task("folding-bar", "plate");
        var line = (task.Plate?.Markings.ToList().FindIndex(m => m.Writing == 0) ?? -1) + 1;
        var look = Assert.IsType<Taken>(Keys(task.Start(), $"{line}7{{Enter}}3")).Look;
        Assert.Equal(new OwnLook("2012", 0, Bearing.Date), look);
    }

    [Fact]
    public void A_decoy_can_be_taken()
    {
        var task = Task("folding-bar", "plate");
        var decoy = task.Plate?.Markings.First(m => m.Writing == 3) ?? throw new InvalidOperationException("no decoy");
        var look = Assert.IsType<Taken>(Keys(task.Start(), $"{task.Plate.Markings.ToList().IndexOf(decoy) + 1}2{{Enter}}4")).Look;
        Assert.Equal(new OwnLook("2007", 3, Bearing.Nothing), look);
    }

    [Fact]
    public void It_is_not_there_is_an_answer_of_its_own()
    {
        var task = Task("folding-bar", "plate");
        Assert.Equal(new OwnLook("gone", 0), Assert.IsType<Taken>(Keys(task.Start(), $"{task.Plate?.Markings.Count + 1}")).Look);
        Assert.Null(Task("rim-size", "wall-iso").NotThere);
    }

    [Fact]
    public void Escape_goes_back_step_by_step()
    {
        var task = Task("folding-bar", "plate");
        var plate = Assert.IsType<PlateScreen>(Keys(task.Start(), "11{Enter}{Esc}{Esc}"));
        Assert.Same(task.Below, plate.Press(Nobody, new Input(Press.Esc)).Next);
        Assert.Same(task.Below, Keys(Task("folding-bar", "bend", task.Below).Start(), "{Esc}"));
    }

    [Fact]
    public void A_shape_is_described_without_its_name_and_the_finding_comes_out()
    {
        var task = Task("folding-bar", "lever-look");
        Assert.Null(task.Plate);
        Assert.Equal(new OwnLook("cast"), Assert.IsType<Taken>(Keys(task.Start(), "2")).Look);
    }

    [Fact]
    public void A_shape_with_a_drawing_is_drawn_and_W_says_it_in_words()
    {
        var topic = Corpus.Topic("folding-bar");
        var clue = topic.Clues.First(c => c.Id is "lever-look");
        string[] art = ["/====o====\\", "\\=========/"];
        var drawn = new TopicDrawing
        {
            Id = "lever-below",
            Title = "Lever from below",
            Figure = "lever",
            Clues = ["lever-look"],
            Findings = [.. ((Shows.Table)clue.Shows).Findings.Select(f => new DrawnLook(f.Id, new Dictionary<string, FigureValue>(StringComparer.Ordinal), art))],
        };
        var screen = Task(topic with { Drawings = [drawn] }, "lever-look").Start();
        var text = Text(screen, Sizes[1]);
        Assert.Contains("o====\\", text, StringComparison.Ordinal);
        Assert.Contains("W in words", text, StringComparison.Ordinal);
        var words = Text(Keys(screen, "W"), Sizes[1]);
        Assert.DoesNotContain("o====\\", words, StringComparison.Ordinal);
        Assert.Contains("W picture", words, StringComparison.Ordinal);
    }

    [Fact]
    public void No_description_gives_its_finding_away()
    {
        foreach (var clue in Corpus.Shipped.Select(Corpus.Topic).SelectMany(t => t.Clues))
        {
            if (clue.Shows is not Shows.Table table || table.Findings[0].Described.Count == 0) continue;
            foreach (var finding in table.Findings)
                Assert.All(finding.Described, told => Assert.DoesNotContain(finding.Text, told, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void Every_clue_that_is_read_seen_felt_or_heard_is_looked_at_and_what_people_say_is_told()
    {
        foreach (var clue in Corpus.Shipped.Select(Corpus.Topic).SelectMany(t => t.Clues).Where(c => c.Shows is not Shows.Measured))
            Assert.Equal(clue.Family != ClueFamily.Told, clue.Plate is not null || clue.Shows is Shows.Table { Findings: [{ Described.Count: > 0 }, ..] });
    }

    [Fact]
    public void In_60x20_every_choice_of_a_plate_is_seen_with_the_drawing()
    {
        foreach (var id in Corpus.Shipped)
        {
            foreach (var clue in Corpus.Topic(id).Clues.Where(c => c.Plate is not null))
            {
                var text = Text(Task(id, clue.Id).Start(), Sizes[0]);
                Assert.DoesNotContain("more below", text, StringComparison.Ordinal);
                Assert.DoesNotContain("more above", text, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void In_practice_looks_are_ones_own_from_the_fourth_job(int step)
    {
        var topic = Corpus.Topic("folding-bar");
        var request = new CaseRequest("own", "grips", "grip-phone", Selection.AsTheyCome, Channel.Bench);
        var seed = Enumerable.Range(1, 99).First(s => Plain(topic, request, (ulong)s));
        var talk = new Talk([topic], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"), new LogEntry.JobStarted(1, "Sam", topic.Id, topic.Version, (ulong)seed, request, Guided: false, step)).Keys("1");
        var number = topic.Clues.Where(c => !c.Safety).ToList().FindIndex(c => c.Id is "plate") + 1;
        talk.Keys($"{number}{{Enter}}");
        Assert.Equal(step > 1, talk.Screen is PlateScreen);
        if (step == 1) return;
        talk.Keys("11{Enter}4");
        Assert.IsType<BenchScreen>(talk.Screen);
        var looked = Assert.Single(talk.Entries.Select(e => e.What).OfType<LogEntry.Looked>());
        Assert.Equal(("plate", "2006", Bearing.Nothing), (looked.Look.Clue, looked.Look.OwnFinding, looked.Look.OwnBearing));
        Assert.Equal(new Seen.Named("2006"), looked.Shown.Seen);
        Assert.Null(looked.Shown.Writing);
        Assert.Contains("begins with 06", talk.Text, StringComparison.Ordinal);
    }

    static bool Plain(Topic topic, CaseRequest request, ulong seed) => Laws.Some.Case(new Workbench(topic), request, seed).Look("plate", 0).Seen is Seen.Named;

    static LookTask Task(string id, string clue, Screen? below = null) => Task(Corpus.Topic(id), clue, below);

    static LookTask Task(Topic topic, string clue, Screen? below = null)
    {
        var bench = new Workbench(topic);
        var it = bench.Topic.Clues.First(c => string.Equals(c.Id, clue, StringComparison.Ordinal));
        var request = new CaseRequest(bench.Topic.Provenances[0].Id, bench.Topic.Wants[0].Id, null, Selection.AsTheyCome, Channel.Bench);
        var made = Laws.Some.Case(bench, request, 4);
        return LookTask.Of($"Job 12   {it.Name}", bench.Topic, it, "Bar", made, 0, below ?? new HelpScreen(new HomeScreen()), (_, look) => Turn.To(new Taken(look)))
            ?? throw new InvalidOperationException($"{clue} is not looked at");
    }

    static Screen Keys(Screen screen, string keys) => Keystrokes.Pressed(screen, Nobody, keys);

    static string Text(Screen screen, PageSize size) => string.Join('\n', Layout.Of(screen.Show(Nobody), size).Select(l => l.Text.TrimEnd())) + "\n";

    sealed record Taken(OwnLook Look) : Screen
    {
        public override Page Show(World world) => new("", "", [], []);

        public override Turn Press(World world, Input key) => Turn.To(this);
    }
}
