using Apprentice.Content;
using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Content;

public sealed class SideBySideTests
{
    [Fact]
    public void Results_stand_in_the_order_of_the_things_whoever_worked_them_out()
    {
        var things = Enumerable.Range(0, 1000).Select(n => $"{n}").ToList();
        Assert.Equal(things.Select(int.Parse), SideBySide.Each(things, int.Parse));
        Assert.Equal(things.Select(int.Parse), SideBySide.Each(things, int.Parse, () => { }));
        Assert.Empty(SideBySide.Each(Array.Empty<string>(), int.Parse, () => throw new InvalidOperationException("nothing to go ahead of")));
    }

    [Fact]
    public void What_goes_wrong_on_any_processor_is_told()
    {
        string[] things = ["1", "two", "3"];
        Assert.IsType<FormatException>(Assert.Throws<AggregateException>(() => SideBySide.Each(things, int.Parse)).InnerException);
        var thrown = Record.Exception(() => SideBySide.Each(["1", "2"], int.Parse, () => throw new InvalidDataException("ahead")));
        Assert.Equal(Environment.ProcessorCount > 1, thrown is AggregateException { InnerException: InvalidDataException });
    }

    [Fact]
    public void Topics_read_side_by_side_are_those_read_alone()
    {
        (string File, string Text)[] files =
        [
            (Sample.EveryField, Sample.Text(Sample.EveryField)),
            ("broken.md", "# Broken\n\n## Clues\n"),
            ("deep.md", new string('>', 10_000)),
            .. Corpus.Shipped.Select(id => ($"{id}.md", File.ReadAllText(Path.Combine(Corpus.Root, "question-bank", id + ".md")))),
        ];
        var together = TopicReader.ReadAll(files, () => Corpus.Sources);
        Assert.Equal(files.Length, together.Count);
        foreach (var (file, reading) in files.Zip(together))
        {
            var alone = TopicReader.Read(file.File, file.Text, Corpus.Sources);
            Assert.Equal(alone.Faults, reading.Faults);
            Assert.Equal(alone.Topic?.Version, reading.Topic?.Version);
            Assert.Equal(alone.Topic?.Sources, reading.Topic?.Sources);
            Assert.Equal(alone.Topic?.Clues.Select(c => c.Id), reading.Topic?.Clues.Select(c => c.Id));
            Assert.Equal(alone.Topic?.Spares.Select(s => s.Price), reading.Topic?.Spares.Select(s => s.Price));
        }

        Assert.Contains("too deeply", Assert.Single(together[2].Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_register_holds_every_row_of_every_table_under_any_heading()
    {
        const string Text = "# Sources\n\n| key | source |\n|---|---|\n| A | One *book*. |\n\n## More\n\n| key | source |\n|---|---|\n| B_2 | A page (https://example.org/b). |\n\n### Deeper\n\n| key | source |\n|---|---|\n| C | Three |\n";
        Assert.Equal([new Source("A", "One book."), new Source("B_2", "A page (https://example.org/b)."), new Source("C", "Three")], SourceRegister.Read(Text));
        Assert.Empty(SourceRegister.Read("# Sources\n\nnone yet\n"));
        Assert.Empty(SourceRegister.Read(new string('>', 10_000)));
    }

    [Fact]
    public void The_shipped_register_is_read_whole()
    {
        var rows = File.ReadAllLines(Path.Combine(Corpus.Root, "lessons", "sources.md")).Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Select(l => l.Split('|')[1].Trim()).Where(k => k is not "key").ToList();
        Assert.Equal(rows, Corpus.Sources.Select(s => s.Key));
        Assert.All(Corpus.Sources, s => Assert.False(string.IsNullOrWhiteSpace(s.Text)));
    }
}
