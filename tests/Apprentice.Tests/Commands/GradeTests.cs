using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Commands;

public sealed class GradeTests
{
    const string Answer = """
        {
          "looks": ["bar-height", { "clue": "bar-height", "ownReading": "3 15/16 in", "datum": 0 }],
          "parts": [{ "part": "bar", "kind": "newer", "tenths": 9 }],
          "orders": [{ "do": "order", "spare": "grips-long" }],
          "settledBy": "bar-height",
          "setAside": "none",
          "story": "none"
        }
        """;

    static readonly string[] Case = ["case", "older-newer-bar", "--seed", "3", "--opening", "number", "--json"];

    [Fact]
    public void An_answer_is_graded()
    {
        var text = Graded(Answer);
        Assert.Equal("", text.Error);
        Golden.Same("grade", text.Out);
        Golden.Same("grade.json", Graded(Answer, "--json").Out);
    }

    [Fact]
    public void An_own_finding_is_graded_under_reading()
    {
        // The case shows 2018 on its plate (see case-solution.txt).
        string Said(string look) => Graded(Answer.Replace("\"looks\": [\"bar-height\",", $"\"looks\": [{look}, \"bar-height\",", StringComparison.Ordinal)).Out;
        Assert.DoesNotContain("You read at plate", Said("\"plate\""), StringComparison.Ordinal);
        Assert.Contains("It says:", Said("{ \"clue\": \"plate\", \"writing\": 0, \"ownFinding\": \"2023\" }"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_is_graded_alike_with_and_without_its_solution() =>
        Assert.Equal(Graded(Answer).Out, Graded(Answer, CaseFile("--solution")).Out);

    [Theory]
    [InlineData("\"looks\": [\"bar-height\",", "\"looks\": [\"bar-hight\",", "2: looks[0]: There is no check on this bench 'bar-hight'; the nearest are bar-height, ")]
    [InlineData("\"3 15/16 in\"", "\"3 kg\"", "2: looks[1].ownReading: bar-height: '3 kg' is no length; write 310 mm, 12.7 or 27 1/4 in.")]
    [InlineData("\"3 15/16 in\"", "900", "2: looks[1].ownReading: bar-height: 900 mm is outside the tool's range of 50 to 180 mm.")]
    [InlineData("\"datum\": 0", "\"datum\": 2", "2: looks[1].datum: A whole number from 0 to 1 would do here.")]
    [InlineData("\"looks\": [\"bar-height\",", "\"looks\": [{ \"clue\": \"plate\", \"ownFinding\": \"1984\" },", "2: looks[0].ownFinding: There is no finding of plate '1984'; the nearest are 2014, ")]
    [InlineData("\"datum\": 0", "\"ownFinding\": \"2012\"", "2: looks[1].ownFinding: bar-height is measured, so it has a reading and no finding.")]
    [InlineData("\"looks\": [\"bar-height\",", "\"looks\": [{ \"clue\": \"plate\", \"writing\": 3 },", "2: looks[0].writing: A whole number from 0 to 0 would do here.")]
    [InlineData("\"datum\": 0", "\"writing\": 0", "2: looks[1].writing: bar-height is not read off a plate, so it has no writing.")]
    [InlineData("\"looks\": [\"bar-height\",", "\"looks\": [{ \"clue\": \"plate\", \"bearing\": \"year\" },", "2: looks[0].bearing: There is no thing that a marking tells 'year'; ")]
    [InlineData("\"part\": \"bar\"", "\"part\": \"stem\"", "3: parts[0].part: There is no part that this job asks for 'stem'; it can be bar.")]
    [InlineData("\"kind\": \"newer\"", "\"kind\": \"new\"", "3: parts[0].kind: There is no kind of bar 'new'; it can be newer, none or older.")]
    [InlineData("\"tenths\": 9", "\"tenths\": 95", "3: parts[0].tenths: A whole number from 1 to 10 would do here.")]
    [InlineData("\"tenths\": 9", "\"tenth\": 9", "3: parts[0].tenth: There is no field 'tenth'; it can be tenths, part or kind.")]
    [InlineData("[{ \"do\": \"order\", \"spare\": \"grips-long\" }]", "[]", "4: orders: One choice for each of these order lines, in this order, would do here: grips.")]
    [InlineData("\"spare\": \"grips-long\"", "\"spare\": \"lever-newer\"", "4: orders[0].spare: There is no spare for grips 'lever-newer'; it can be ")]
    [InlineData("\"settledBy\": \"bar-height\"", "\"settledBy\": 4", "5: settledBy: A text in \" \" would do here.")]
    [InlineData("\"story\": \"none\"", "\"story\": \"crash\"", "7: story: There is no story 'crash'; the nearest are ")]
    [InlineData("\"story\": \"none\"", "\"story\" \"none\"", "7: This is not JSON: ")]
    public void A_fault_of_an_answer_is_told_with_file_line_and_field(string right, string wrong, string sentence)
    {
        Assert.Contains(right, Answer, StringComparison.Ordinal);
        var said = Graded(Answer.Replace(right, wrong, StringComparison.Ordinal));
        Assert.StartsWith("answer.json:" + sentence, said.Error, StringComparison.Ordinal);
        Assert.Equal(1, said.ExitCode);
        Assert.Equal("", said.Out);
    }

    [Theory]
    [InlineData("\"version\": \"VERSION\"", "\"version\": \"0123456789abcdef\"", "4: version: The case was made with version 0123456789abcdef of older-newer-bar, and this program has VERSION: it would be another case. Make it again.")]
    [InlineData("\"seed\": 3", "\"seed\": -3", "5: seed: A whole number from 0 up would do here.")]
    [InlineData("\"topic\": \"older-newer-bar\"", "\"topic\": \"older-newer-bat\"", "3: topic: There is no topic 'older-newer-bat'; it can be older-newer-bar or every-field.")]
    [InlineData("\"want\": \"grips\"", "\"want\": \"bell\"", "8: want: There is no want 'bell'; it can be ")]
    [InlineData("\"schema\": 1", "\"schema\": 9", "2: schema: This program reads schema 1.")]
    [InlineData("\"select\": \"as-they-come\"", "\"select\": null", "6: request: The field select is missing.")]
    public void A_fault_of_a_case_is_told_with_file_line_and_field(string right, string wrong, string sentence)
    {
        var made = CaseFile();
        Assert.Contains(right, made, StringComparison.Ordinal);
        var said = Graded(Answer, made.Replace(right, wrong, StringComparison.Ordinal));
        Assert.StartsWith("case.json:" + sentence.Replace("want:", "request.want:", StringComparison.Ordinal), said.Error, StringComparison.Ordinal);
        Assert.Equal(1, said.ExitCode);
    }

    static string CaseFile(params string[] more) => Said.By([.. Case, .. more]).Out;

    static Said Graded(string answer, string? made = null)
    {
        var json = made is "--json";
        var text = (json ? null : made) ?? CaseFile();
        using var folder = new TempFolder(("case.json", text.Replace("VERSION", Corpus.Sample.Version, StringComparison.Ordinal)), ("answer.json", answer));
        string[] args = ["grade", folder.In("case.json"), folder.In("answer.json")];
        var said = Said.By(json ? [.. args, "--json"] : args);
        return said with { Error = said.Error.Replace(folder.Path + Path.DirectorySeparatorChar, "", StringComparison.Ordinal) };
    }
}
