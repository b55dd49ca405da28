namespace Apprentice.Tests.Commands;

public sealed class CheckTests
{
    [Fact]
    public void The_shipped_topics_and_lessons_have_no_fault()
    {
        var said = Said.Bare("check", Path.Combine(Corpus.Root, "question-bank"), Path.Combine(Corpus.Root, "lessons"));
        Assert.EndsWith(" files, 0 faults\n", said.Out, StringComparison.Ordinal);
        Assert.Equal(0, said.ExitCode);
    }

    [Fact]
    public void Lessons_with_broken_lines_and_dead_links_are_told_by_line()
    {
        using var folder = new TempFolder(
            ("lessons/bar/good.md", "# Good\n\nOne line.\n\n- [there](bad.md#part)\n- [out](https://example.org/)\n- [here](#good)\n"),
            ("lessons/bar/bad.md", "# Bad\n\nA paragraph that\nis broken.\n\n- A [link](nowhere.md) and ![a picture](no.png)\n"));
        var said = Said.Bare("check", folder.In("lessons"));
        var file = folder.In("lessons/bar/bad.md");
        Assert.Equal(
            $"{file}:3: A line ends in the middle of a paragraph: write each paragraph or point in one line.\n"
            + $"{file}:6: The link 'nowhere.md' leads nowhere: write the path from this file to one that is there.\n"
            + $"{file}:6: The link 'no.png' leads nowhere: write the path from this file to one that is there.\n"
            + "2 files, 3 faults\n",
            said.Out);
        Assert.Equal(1, said.ExitCode);
    }

    [Fact]
    public void Tables_that_run_together_are_told()
    {
        using var folder = new TempFolder(("lessons/bar/two.md", "# Two\n\n| a | b |\n|---|---|\n| 1 | 2 |\n| c | d |\n|---|---|\n| 3 | 4 |\n"), ("lessons/bar/one.md", "# One\n\n| a |\n|---|\n| 1 |\n\n| c |\n|---|\n| 3 |\n"));
        Assert.Equal($"{folder.In("lessons/bar/two.md")}:6: Two tables run together: put an empty line between them.\n2 files, 1 fault\n", Said.Bare("check", folder.In("lessons")).Out);
    }

    [Fact]
    public void Faults_of_topics_are_counted_in_JSON_too()
    {
        using var folder = new TempFolder(("question-bank/bad.md", "# Bad\n"));
        var text = Said.Bare("check", folder.In("question-bank"));
        var faults = text.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length - 1;
        using var json = System.Text.Json.JsonDocument.Parse(Said.Bare("check", folder.In("question-bank"), "--json").Out);
        Assert.True(faults > 1);
        Assert.Equal(faults, json.RootElement.GetProperty("faults").GetArrayLength());
        Assert.Equal(1, text.ExitCode);
    }
}
