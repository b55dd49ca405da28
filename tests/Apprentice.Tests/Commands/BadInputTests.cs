namespace Apprentice.Tests.Commands;

public sealed class BadInputTests
{
    [Theory]
    [InlineData("idntify older-newer-bar", "There is no command 'idntify'; the nearest are identify, inbox or topics. See '--help'.")]
    [InlineData("topics older-newer-baz", "There is no topic 'older-newer-baz'; it can be older-newer-bar or every-field.")]
    [InlineData("identify older-newer-bar --wnat grips", "There is no option '--wnat'; the nearest are --want, --asks or --json. See 'identify --help'.")]
    [InlineData("identify older-newer-bar stem=335", "There is no clue 'stem'; the nearest are stem-length, plate or motor.")]
    [InlineData("identify older-newer-bar stem-length", "'stem-length' is no finding; write clue=finding, for example plate=2010.")]
    [InlineData("identify older-newer-bar motor=moter", "There is no finding at motor 'moter'; it can be motor or plain.")]
    [InlineData("identify older-newer-bar stem-length=335kg", "stem-length: '335kg' is no length; write 310 mm, 12.7 or 27 1/4 in.")]
    [InlineData("identify older-newer-bar stem-length=33.5cm,", "stem-length: '33.5cm,' is no length; write 310 mm, 12.7 or 27 1/4 in.")]
    [InlineData("identify older-newer-bar stem-length=335in", "stem-length: 8509 mm is outside the tool's range of 260 to 370 mm.")]
    [InlineData("identify older-newer-bar lever-holes@phone=two-holes", "lever-holes is not seen by phone; write lever-holes@bench=two-holes if that is how.")]
    [InlineData("identify older-newer-bar motor@fone=motor", "There is no channel 'fone'; it can be phone, bench or photo.")]
    [InlineData("identify older-newer-bar --provenance onw", "There is no provenance 'onw'; it can be own or lot.")]
    [InlineData("identify older-newer-bar --want grip", "There is no want 'grip'; it can be grips, lever or cables.")]
    [InlineData("identify older-newer-bar --asks bar,steam", "There is no part 'steam'; the nearest are stem, bar or lever.")]
    [InlineData("identify older-newer-bar --want cables --asks bar", "The want cables depends on bar, stem; name stem in --asks too, or leave --asks out.")]
    [InlineData("identify older-newer-bar --tools ruler", "There is no tool 'ruler'; it can be rule, eyes or tape.")]
    [InlineData("identify older-newer-bar --channel letter", "There is no channel 'letter'; it can be bench, photo or phone.")]
    [InlineData("case older-newer-bar --seed seven", "--seed 'seven' is no seed; write a whole number from 0 to 18446744073709551615.")]
    [InlineData("case older-newer-bar --seed 1 --opening grips", "There is no opening 'grips'; it can be grip, both or number.")]
    [InlineData("case older-newer-bar --seed 1 --select conflict --opening grip", "There is no selection 'conflict'; the nearest are conflicting, as-they-come or suggests-change.")]
    [InlineData("case older-newer-bar --seed 1 --select conflicting", "--select conflicting looks at what is told first, so it needs --opening number, grip or both.")]
    [InlineData("laws older-newer-bar --cases none", "--cases 'none' will not do; write a whole number from 1 to 10000000.")]
    [InlineData("grade no-such-case.json no-such-answer.json", "There is no file 'no-such-case.json'.")]
    public void A_command_written_wrongly_is_answered_with_what_would_do(string command, string sentence)
    {
        var said = Said.By(command.Split(' '));
        Assert.Equal(sentence + "\n", said.Error);
        Assert.Equal(2, said.ExitCode);
        Assert.Equal("", said.Out);
    }

    [Theory]
    [InlineData("topics --topics no-such-folder")]
    [InlineData("check no-such-folder")]
    public void A_folder_that_is_not_there_is_named(string command)
    {
        var said = Said.Bare(command.Split(' '));
        Assert.Equal("There is no folder 'no-such-folder'.\n", said.Error);
        Assert.Equal(2, said.ExitCode);
    }

    [Fact]
    public void A_seed_left_out_is_asked_for()
    {
        var said = Said.By("case", "older-newer-bar");
        Assert.Contains("--seed", said.Error, StringComparison.Ordinal);
        Assert.Equal(2, said.ExitCode);
    }

    [Fact]
    public void More_findings_than_can_be_weighed_are_refused()
    {
        var said = Said.By(["identify", "older-newer-bar", .. Enumerable.Repeat("motor=plain", 61)]);
        Assert.Equal("61 findings are too many; at most 60 can be weighed at once.\n", said.Error);
        Assert.Equal(2, said.ExitCode);
    }

    [Fact]
    public void An_opening_that_never_conflicts_is_refused()
    {
        var said = Said.By("case", "older-newer-bar", "--seed", "1", "--opening", "number", "--select", "conflicting");
        Assert.Equal("No bike fits: an opening number that is conflicting is too rare among these bikes. Ask for another opening, selection or provenance.\n", said.Error);
        Assert.Equal(1, said.ExitCode);
    }

    [Fact]
    public void Findings_that_nothing_allows_name_the_one_that_clashes_most()
    {
        var topic = File.ReadAllText(Path.Combine(Said.Samples, "older-newer-bar.md"))
            .Replace("from 70 to 160 mm", "from 70 to 160 mm, blunders 0", StringComparison.Ordinal)
            .Replace("| grips | grips       |                   | no    | bar     |            |               |", "| grips | grips | | no | bar | | never |", StringComparison.Ordinal);
        using var folder = new TempFolder(("strict.md", topic));
        var said = Said.Bare("identify", "strict", "motor=plain", "grip-length=75", "--topics", folder.Path);
        Assert.Equal("Nothing in strict allows these findings together; the one that clashes most is grip-length=75mm. Look at it again.\n", said.Error);
        Assert.Equal(1, said.ExitCode);
    }

    [Fact]
    public void A_topic_with_faults_names_the_first()
    {
        using var folder = new TempFolder(("bad.md", "# Bad\n"));
        var said = Said.Bare("identify", "bad", "--topics", folder.Path);
        Assert.StartsWith("The topic bad has ", said.Error, StringComparison.Ordinal);
        Assert.Contains("bad.md:1: ", said.Error, StringComparison.Ordinal);
        Assert.Equal(1, said.ExitCode);
    }
}
