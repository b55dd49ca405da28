using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Storage;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Stand;

/// <summary>Bikes we asked about in the commands: wherever a provenance can be named, that of the workshop's copy can be.</summary>
public sealed class AskedCommandsTests
{
    static readonly DateTimeOffset Day = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("identify", "identify", "older-newer-bar", "bar-height=112", "--want", "grips", "--provenance", "asked")]
    [InlineData("case", "case", "older-newer-bar", "--seed", "5", "--provenance", "asked", "--opening", "grip", "--solution")]
    [InlineData("topic", "topics", "older-newer-bar")]
    public void A_command_says_what_it_said_when_it_was_looked_at(string name, params string[] args)
    {
        using var folder = Let();
        var said = Said.By([.. args, "--workshop", folder.Path]);
        Assert.Equal(0, said.ExitCode);
        Assert.Matches("^Over older-newer-bar \\(version [0-9a-f]{16}\\) lies change 1 of the workshop", said.Error);
        Screens.Golden.Same($"asked-command-{name}", said.Out);
    }

    [Theory]
    [InlineData("identify", "older-newer-bar", "bar-height=112")]
    [InlineData("case", "older-newer-bar", "--seed", "5")]
    public void Without_the_workshop_there_is_no_such_provenance(params string[] args)
    {
        var said = Said.By([.. args, "--provenance", "asked"]);
        Assert.Equal(2, said.ExitCode);
        Assert.Contains("There is no provenance 'asked'", said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_case_of_theirs_is_graded_where_they_count_and_told_where_they_do_not()
    {
        using var folder = Let();
        var made = Said.By("case", "older-newer-bar", "--seed", "5", "--provenance", "asked", "--json", "--workshop", folder.Path);
        File.WriteAllText(folder.In("case.json"), made.Out);
        File.WriteAllText(folder.In("answer.json"), """
            { "looks": ["bar-height"], "parts": [{ "part": "bar", "kind": "older", "tenths": 9 }], "orders": [{ "do": "order", "spare": "grips-short" }],
              "settledBy": "bar-height", "setAside": "none", "story": "none" }
            """);
        string[] grade = ["grade", folder.In("case.json"), folder.In("answer.json")];
        var there = Said.By([.. grade, "--workshop", folder.Path]);
        Assert.Equal(0, there.ExitCode);
        Assert.StartsWith("Over older-newer-bar (version", there.Error, StringComparison.Ordinal);
        Assert.StartsWith("Right, and for the right reason.", there.Out, StringComparison.Ordinal);
        var here = Said.By(grade);
        Assert.Equal(1, here.ExitCode);
        Assert.Contains("case.json:", here.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_laws_are_checked_for_them_too()
    {
        using var folder = Let();
        var said = Said.By("laws", "older-newer-bar", "--cases", "60", "--workshop", folder.Path);
        Assert.Equal(0, said.ExitCode);
        Assert.Contains("asked, as-they-come: 60 cases", said.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_figures_are_told_before_seen_and_now()
    {
        using var folder = Let();
        using (var log = Log.Open(folder.In("log.db")))
        {
            log.Append(new Logged(Day, new LogEntry.Began(1)));
            foreach (var bike in Bikes.Puzzling().Notebook.Bikes)
            {
                log.Append(new Logged(Day, bike.Put));
                foreach (var entry in bike.Asked.Cast<LogEntry>().Concat(bike.Truths)) log.Append(new Logged(Day, entry));
            }
        }

        Screens.Golden.Same("asked-command-rates", Said.By("rates", "older-newer-bar", "--data", folder.In("log.db"), "--workshop", folder.Path).Out);
    }

    [Fact]
    public void A_routine_bike_that_is_said_to_come_from_there_is_told_with_file_and_field()
    {
        using var folder = Let();
        using (var log = Log.Open(folder.In("log.db"))) log.Append(new Logged(Day, new LogEntry.Began(1)));
        File.WriteAllText(folder.In("cards.json"), """
            { "schema": 1, "bikes": [
              { "name": "puzzling", "card": 21, "topic": "older-newer-bar", "want": "grips", "provenance": "asked" },
              { "name": "routine", "card": 20, "topic": "older-newer-bar", "want": "grips", "provenance": "asked" }
            ] }
            """);
        var said = Said.By("bike", "--import", folder.In("cards.json"), "--data", folder.In("log.db"), "--workshop", folder.Path);
        Assert.Equal(1, said.ExitCode);
        Assert.Contains("cards.json:3: bikes[1].provenance: This is a routine bike: the rule took it in, nobody asked about it. Its provenance would be own or lot.", said.Error, StringComparison.Ordinal);
    }

    static WorkshopCopy Copy()
    {
        var copy = Yard.Copy();
        return copy.With(Approval.OfAsked(copy, Corpus.Sample, AskedBikes.Of(Corpus.Sample, Bikes.Puzzling().Notebook), new DateOnly(2026, 11, 25), "Jo").Changes);
    }

    static TempFolder Let()
    {
        var folder = new TempFolder();
        new WorkshopFolder(folder.Path).Write(Copy().Changes);
        return folder;
    }
}
