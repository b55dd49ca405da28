using Apprentice.Content;
using Apprentice.Engine;

namespace Apprentice.Screens;

/// <summary>The contents: topics with their lessons, search, words, sources, pages of no topic.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record LessonsScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("lessons.title"),
        world.Who,
        [
            new Block.Text(Words.Of("lessons.ask")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")],
                Rows(
                [
                    .. Benches(world).Select(b => (string[])[Spoken.Capital(b.Topic.Title), Read(world, b)]),
                    [Words.Of("lessons.search"), Words.Of("lessons.search-note")],
                    [Words.Of("lessons.words"), Words.Of("lessons.words-note", ("n", world.Library.Glossary.Words.Count))],
                    [Words.Of("lessons.sources"), Words.Of("lessons.sources-note", ("n", world.Library.Sources.Count))],
                    .. world.Library.Pages.Select(p => (string[])[p.Title, ""]),
                ])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("lessons.key-search"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Benches(world).Count + 3 + world.Library.Pages.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var benches = Benches(world);
        return (line - benches.Count) switch
        {
            < 0 => Turn.To(new LessonListScreen(benches[line].Topic.Id, this)),
            0 => Turn.To(new SearchScreen(this)),
            1 => Turn.To(new GlossaryScreen(this)),
            2 => Turn.To(new SourcesScreen(this)),
            var page => LessonScreen.Open(world, world.Library.Pages[page - 3], 0, this),
        };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter == 'S' ? Turn.To(new SearchScreen(this)) : null;

    static List<Workbench> Benches(World world) => [.. world.Benches.Where(b => world.Library.Of(b.Topic.Id).Any())];

    static string Read(World world, Workbench bench)
    {
        var all = world.Library.Of(bench.Topic.Id).Select(l => l.Path).ToList();
        return Words.Of("lessons.read", ("n", all.Count(p => world.History.Read(world.Person, p) is not null)), ("count", all.Count));
    }
}
