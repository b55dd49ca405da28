using Apprentice.Content.Lessons;

namespace Apprentice.Tests.Content;

/// <summary>Search finds a thing under each of its names: block / freewheel, mech / derailleur, UK and US words.</summary>
public class LessonSearchTests
{
    static readonly Library Books = Library.Of(
        [
            ("gears/hanger.md", "# The hanger\n\n## Card\n\nThe derailleur hangs on it.\n\n## How it lies\n\nA bent one."),
            ("gears/words.md", "# Words\n\n| word | also called | meaning |\n|---|---|---|\n| derailleur | mech | What moves the chain. |\n| freewheel | block | Sprockets with a ratchet. |"),
            ("wheels/freewheel.md", "# Which freewheel\n\n## Card\n\nLook at the back of it. Trim nothing."),
        ],
        []);

    [Theory]
    [InlineData("mech", "gears/hanger.md")]
    [InlineData("derailleur", "gears/hanger.md")]
    [InlineData("block", "wheels/freewheel.md")]
    [InlineData("BENT one", "gears/hanger.md")]
    public void A_thing_is_found_under_each_name(string query, string lesson) => Assert.Contains(lesson, LessonSearch.Sections(Books, query, 10).Select(h => h.Lesson.Path));

    [Fact]
    public void A_word_is_found_at_its_beginning_only() => Assert.Empty(LessonSearch.Sections(Books, "rim", 10));

    [Fact]
    public void All_words_have_to_be_there() => Assert.Empty(LessonSearch.Sections(Books, "mech back", 10));

    [Fact]
    public void Words_are_found_by_their_other_names() => Assert.Equal(["freewheel"], LessonSearch.Words(Books, "block").Select(w => w.Name));

    [Fact]
    public void Nothing_asked_finds_nothing() => Assert.Empty(LessonSearch.Sections(Books, "  ", 10));
}
