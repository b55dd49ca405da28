using Apprentice.Engine.Cases;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>From where to where on a drawn part with lettered points.</summary>
public sealed class DrawnDatumTests
{
    static readonly World Nobody = new([], History.Of([]));
    static readonly PageSize[] Sizes = [new(60, 20), new(80, 24), new(120, 40)];
    static readonly Clue Stem = Corpus.Sample.Clues.First(c => c.Id == "stem-length");

    [Theory]
    [InlineData("datum-drawn", "")]
    [InlineData("datum-drawn-words", "W")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        Screen screen = new DatumScreen(Task(5));
        foreach (var key in keys) screen = screen.Press(Nobody, Input.Typed(key)).Next;
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", string.Join('\n', Layout.Of(screen.Show(Nobody), size).Select(l => l.Text.TrimEnd())) + "\n");
    }

    [Fact]
    public void Every_letter_is_at_every_point_equally_often()
    {
        const int Count = 3000;
        var drawn = Enumerable.Range(0, Count).Select(s => Drawn((ulong)s)).ToList();
        foreach (var point in drawn[0].Letters.Keys)
        {
            foreach (var letter in drawn[0].Letters.Values)
                Assert.InRange(drawn.Count(d => d.Letters[point] == letter), (Count / drawn[0].Letters.Count) - 130, (Count / drawn[0].Letters.Count) + 130);
        }
    }

    [Fact]
    public void Each_choice_names_its_letters_and_the_picture_shows_them()
    {
        var task = Task(5);
        var drawn = Assert.IsType<DrawnDatums>(task.Drawn);
        for (var datum = 0; datum < task.Datums.Count; datum++)
            Assert.Equal($"{drawn.Letters[drawn.Ways[datum].From]} to {drawn.Letters[drawn.Ways[datum].To]}: {task.Datums[datum]}", drawn.Say(datum, task.Datums[datum]));
        var picture = string.Concat(drawn.Part.Rows(76, 12, drawn.Marks));
        Assert.All(drawn.Letters.Values, l => Assert.Contains(l, picture, StringComparison.Ordinal));
    }

    [Fact]
    public void A_drawing_that_leaves_a_slip_without_points_is_not_used() => Assert.Null(DrawnDatums.Of(
        Topic([new DrawnDatum(Stem.Id, 0, "hinge-upper", "clamp-centre")]), Stem, Truth, 1));

    static Truth Truth { get; } = Laws.Some.Case(new Engine.Workbench(Corpus.Sample), new CaseRequest("own", "cables", "number", Selection.AsTheyCome, Channel.Bench), 7).Truth;

    static ReadingTask Task(ulong seed)
    {
        var task = ReadingTask.Of("Job 12   stem length", Stem, _ => 310, seed, new HelpScreen(new HomeScreen()), (_, _) => Turn.To(new HomeScreen()));
        return (task ?? throw new InvalidOperationException()) with { Drawn = Drawn(seed) };
    }

    static DrawnDatums Drawn(ulong seed)
    {
        var slips = ((Shows.Measured)Stem.Shows).Slips.Count;
        (string From, string To)[] ways = [("hinge-upper", "clamp-centre"), ("hinge-upper", "clamp-lower")];
        var topic = Topic([.. Enumerable.Range(0, slips + 1).Select(d => new DrawnDatum(Stem.Id, d, ways[d].From, ways[d].To))]);
        return DrawnDatums.Of(topic, Stem, Truth, seed) ?? throw new InvalidOperationException();
    }

    static Topic Topic(IReadOnlyList<DrawnDatum> datums)
    {
        var part = Corpus.Sample.Parts.First(p => p.Id == ((Node.OfPart)Stem.Node).Part);
        var none = new Dictionary<string, FigureValue>(StringComparer.Ordinal);
        return Corpus.Sample with
        {
            Drawings =
            [
                new TopicDrawing
                {
                    Id = "side", Title = "from the side", Figure = "bar-side", Clues = [Stem.Id], Part = part.Id,
                    Kinds = [.. part.Kinds.Select(k => new DrawnLook(k.Id, none, []))], Datums = datums,
                },
            ],
        };
    }
}
