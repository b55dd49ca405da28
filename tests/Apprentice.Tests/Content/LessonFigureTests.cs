using Apprentice.Content.Lessons;

namespace Apprentice.Tests.Content;

/// <summary>Figures in lessons cannot drift: what a link leads to has to agree with what is written.</summary>
public class LessonFigureTests
{
    const string File = "rim-size/round.md";

    static string Lesson(string line) => $"""
        # The tape

        ## Card

        - Look for: it.
        - From where to where: here.
        - Settles: all.
        - Does not settle: none.
        - Look-alike: no.
        - Safety: follow the maker.

        ## How to do it

        {line}

        ## Worked example

        The tape says 1953 mm.

        ## How it lies

        It lies.

        ## What it does not prove

        Much.

        ## Minutes

        Few.

        ## Safety

        The maker, the rules, a mechanic.

        On the bike, the part decides. Ask if it disagrees.
        """;

    static IReadOnlyList<string> Faults(string line)
    {
        var topic = Corpus.Bench("rim-size").Topic;
        var library = Library.Of([(File, Lesson(line)), ("rim-size/words.md", "# Words\n\n| word | also called | meaning |\n|---|---|---|\n| tyre | tire | What holds the air. |")], [topic]);
        return [.. new LibraryCheck([topic], library, p => p).Faults().Where(f => f.File == File).Select(f => f.Message)];
    }

    [Theory]
    [InlineData("The seat is [622 mm](size:bead-seat/622).")]
    [InlineData("It reads [1954 mm](reading:round/622).")]
    [InlineData("It reads [1954.1 mm](reading:round/622).")]
    [InlineData("About [1 in 10](rate:wrong-tyre/lot) of a lot.")]
    [InlineData("Half of it is [311 mm](sum:622/2). In inches [24 1/2 in](sum:24.5*25.4).")]
    [InlineData("Published: [622 mm](source:DIMINFO). Else [2 mm](source:common-practice).")]
    [InlineData("See [the tape](#how-it-lies), [a tyre](word:tyre).")]
    [InlineData("A 27 inch is a name, and so are 622 and 28 x 1 1/2.")]
    public void What_agrees_is_no_fault(string line) => Assert.Empty(Faults(line));

    [Theory]
    [InlineData("The seat is [630 mm](size:bead-seat/622).", "\"630 mm\" does not agree with the topic: 'size:bead-seat/622' is 622.")]
    [InlineData("The seat is [622 mm](size:bead-seat/700).", "The link 'size:bead-seat/700' leads to no figure of the topic rim-size: write size:SIZE/KIND.")]
    [InlineData("It reads [1955 mm](reading:round/622).", "\"1955 mm\" does not agree with the topic: 'reading:round/622' is 1954.0706.")]
    [InlineData("About [1 in 20](rate:wrong-tyre/lot).", "\"1 in 20\" does not agree with the topic: 'rate:wrong-tyre/lot' is 0.1.")]
    [InlineData("Published: [622 mm](source:DIMINF).", "There is no source 'DIMINF': use DIMINFO")]
    [InlineData("The seat is 622 mm.", "The figure \"622 mm\" has no link: link it to the topic's data or to a source.")]
    [InlineData("In 1 in 30 cases.", "The figure \"1 in 30\" has no link: link it to the topic's data or to a source.")]
    [InlineData("See [there](elsewhere.md).", "The link 'elsewhere.md' leads to no lesson.")]
    [InlineData("See [there](#elsewhere).", "The lesson of '#elsewhere' has no heading for #elsewhere.")]
    [InlineData("A [spoke](word:spoke).", "The word 'spoke' is not in the glossary: add it to a words.md.")]
    public void What_drifts_is_told(string line, string fault) => Assert.Contains(Faults(line), f => f.StartsWith(fault, StringComparison.Ordinal));

    [Theory]
    [InlineData("2*622-10", 1234)]
    [InlineData("622*pi", 1954.0706)]
    [InlineData("130*sin(pi/5)", 76.4121)]
    [InlineData("sqrt(2*2+(3-1)*(3-1))", 2.8284)]
    public void A_sum_is_worked_out(string sum, double value) => Assert.Equal(value, Sum.Of(sum) ?? double.NaN, 4);

    [Theory]
    [InlineData("2*")]
    [InlineData("((((((((((((((((((((((1))))))))))))))))))))))")]
    [InlineData("x")]
    [InlineData("1/0")]
    public void What_is_no_sum_is_none(string sum) => Assert.Null(Sum.Of(sum));
}
