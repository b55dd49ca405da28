using Apprentice.Content.Lessons;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Content;

/// <summary>Search finds a thing under each of its names: block / freewheel, mech / derailleur, UK and US words.</summary>
public class LessonSearchTests
{
    static readonly Library Books = Library.Of(
        [
            ("gears/hanger.md", "# The hanger\n\n## Card\n\nThe derailleur hangs on it.\n\n## How it lies\n\nA bent one."),
            ("gears/words.md", "# Words\n\n| word | also called | meaning |\n|---|---|---|\n| derailleur | mech | What moves the chain. |\n| freewheel | block | Sprockets with a ratchet. |"),
            ("chain/pitch.md", "# Pitch\n\n## Card\n\nA link is 12.7 mm long; a wide one 1/8 in.\n\n## How it lies\n\nA wheel of 28 x 1 1/2 has none."),
            ("wheels/freewheel.md", "# Which freewheel\n\n## Card\n\nLook at the back of it. Trim nothing."),
        ],
        []);

    [Theory]
    [InlineData("mech", "gears/hanger.md")]
    [InlineData("derailleur", "gears/hanger.md")]
    [InlineData("block", "wheels/freewheel.md")]
    [InlineData("BENT one", "gears/hanger.md")]
    public void A_thing_is_found_under_each_name(string query, string lesson) => Assert.Contains(lesson, LessonSearch.Sections(Books, query, 10).Select(h => h.Lesson.Path));

    [Theory]
    [InlineData("1/2 in")]
    [InlineData("link 1/2in")]
    [InlineData("1/2\"")]
    [InlineData("12.7 mm")]
    [InlineData("3.175 mm wide")]
    [InlineData("1/8")]
    public void A_size_is_found_in_inches_and_in_millimetres(string query) => Assert.Equal(("chain/pitch.md", 0), LessonSearch.Sections(Books, query, 10).Select(h => (h.Lesson.Path, h.Section)).Single());

    [Theory]
    [InlineData("3/8 in")]
    [InlineData("12.8 mm")]
    [InlineData("27 mm")]
    public void Another_size_is_not_found(string query) => Assert.Empty(LessonSearch.Sections(Books, query, 10));

    [Fact]
    public void A_word_is_found_at_its_beginning_only() => Assert.Empty(LessonSearch.Sections(Books, "rim", 10));

    [Fact]
    public void All_words_have_to_be_there() => Assert.Empty(LessonSearch.Sections(Books, "mech back", 10));

    [Fact]
    public void Words_are_found_by_their_other_names() => Assert.Equal(["freewheel"], LessonSearch.Words(Books, "block").Select(w => w.Name));

    [Theory]
    [InlineData("derailer", "derailleur")]
    [InlineData("Deraileur", "derailleur")]
    [InlineData("frewheel", "freewheel")]
    [InlineData("blok", "freewheel")]
    [InlineData("mehc", "derailleur")]
    public void A_misspelt_word_finds_those_that_are_nearly_so(string query, string name)
    {
        Assert.Equal([name], LessonSearch.Near(Books, query, 5).Select(w => w.Name));
        var talk = new Talk(plain: false, [Corpus.Sample], Books);
        talk.At(new SearchScreen(new LessonsScreen(new HomeScreen()))).Keys(query + "{Enter}");
        Assert.Contains($"Nothing was found for \"{query}\". Words that are written nearly so:", talk.Text, StringComparison.Ordinal);
        Assert.Equal(name, Assert.IsType<WordScreen>(talk.Keys("{Enter}").Screen).Word.Name);
    }

    [Theory]
    [InlineData("saddle")]
    [InlineData("bck")]
    [InlineData("12.8")]
    public void What_is_far_from_every_word_finds_none(string query) => Assert.Empty(LessonSearch.Near(Books, query, 5));

    [Fact]
    public void Nothing_asked_finds_nothing() => Assert.Empty(LessonSearch.Sections(Books, "  ", 10));
}
