using Apprentice.Content.Lessons;

namespace Apprentice.Tests.Content;

/// <summary>Lessons as values: sections, points, tables, links, drawings, examples.</summary>
public class LessonReaderTests
{
    const string Text = """
        # The tape

        ## Card

        - Look for: the seat, [622 mm](size:bead-seat/622).
        - Safety: let the air out.

        ## How to do it

        1. Take the [tyre](word:tyre) off.
        2. Lay the tape, see [how it lies](#how-it-lies).

        ![rim section](drawing:rim/622+630)

        | seat | tape |
        |---|---|
        | 622 | [1954 mm](reading:round/622) |

        ```
        | id | name |
        ```

        ## How it lies

        Over the edge it reads long.
        """;

    static Lesson Read(string text) => LessonReader.Read("rim-size/round.md", text).Lesson ?? throw new InvalidOperationException("no lesson");

    [Fact]
    public void A_lesson_has_its_title_and_its_sections()
    {
        var lesson = Read(Text);
        Assert.Equal(("The tape", "rim-size", "round"), (lesson.Title, lesson.Topic, lesson.Id));
        Assert.Equal(["Card", "How to do it", "How it lies"], lesson.Sections.Select(s => s.Heading));
        Assert.Equal([3, 8, 23], lesson.Sections.Select(s => s.Line));
        Assert.Equal(2, lesson.SectionOf("how-it-lies"));
        Assert.Equal(0, lesson.SectionOf("nowhere"));
    }

    [Fact]
    public void Points_keep_their_numbers_and_links()
    {
        var points = Read(Text).Sections[1].Blocks.OfType<LessonBlock.Point>().ToList();
        Assert.Equal([1, 2], points.Select(p => p.Number ?? 0));
        Assert.Equal([new LessonSpan("Take the "), new LessonSpan("tyre", "word:tyre"), new LessonSpan(" off.")], points[0].Spans);
        Assert.Null(Read(Text).Sections[0].Blocks.OfType<LessonBlock.Point>().First().Number);
    }

    [Fact]
    public void Tables_drawings_and_examples_are_read()
    {
        var blocks = Read(Text).Sections[1].Blocks;
        var table = Assert.Single(blocks.OfType<LessonBlock.Table>());
        Assert.Equal("seat | tape | 622 | 1954 mm", table.Text);
        var picture = Assert.Single(blocks.OfType<LessonBlock.Picture>());
        Assert.Equal(("rim", "rim section"), (picture.Drawing, picture.Caption));
        Assert.Equal(["622", "630"], picture.Kinds);
        Assert.Equal(["| id | name |"], Assert.Single(blocks.OfType<LessonBlock.Verbatim>()).Lines);
    }

    [Theory]
    [InlineData("")]
    [InlineData("no title here")]
    [InlineData("## a section first")]
    public void A_file_without_a_title_is_told_so(string text) =>
        Assert.Equal("A lesson begins with its title: write # and the title in the first line.", LessonReader.Read("a/b.md", text).Fault?.Message);

    [Fact]
    public void Whatever_the_text_it_never_throws()
    {
        var deep = new string('>', 5000) + " a";
        Assert.NotNull(LessonReader.Read("a/b.md", deep).Fault);
    }

    [Theory]
    [InlineData("rim-size/round.md", "across.md", "rim-size/across.md")]
    [InlineData("rim-size/round.md", "../seatpost/overview.md", "seatpost/overview.md")]
    [InlineData("standards.md", "rim-size/round.md", "rim-size/round.md")]
    public void Links_are_followed_from_the_file_they_stand_in(string from, string link, string to) => Assert.Equal(to, Library.Resolve(from, link));
}
