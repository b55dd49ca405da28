using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage;
using Apprentice.Tests.Assessing;
using Apprentice.Tests.Commands;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Pages;

/// <summary>A name that is put right: by the person, by the lead, by a command; and what stands on pages after it.</summary>
public sealed class RenameTests
{
    [Fact]
    public void A_person_puts_their_own_name_right()
    {
        var talk = new Talk(Lives.TenthDay(), [Corpus.Sample]).Keys("067");
        Golden.Same("rename-80x24", talk.Text);
        Golden.Same("rename-60x20", talk.TextAt(new PageSize(60, 20)));
        talk.Keys("Samira{Enter}");
        Assert.Contains("Called Samira from now on.", talk.Text, StringComparison.Ordinal);
        Assert.Equal(new LogEntry.PersonRenamed("Sam", "Samira"), talk.Entries[^1].What);
        Assert.StartsWith(" Samira ", talk.Keys("00").Text, StringComparison.Ordinal);
        Assert.Equal(30, talk.World.History.JobsOf("Samira").Count);
        Assert.Contains("What Samira can do", talk.Keys("0").Keys("62").Sheets[^1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lead_puts_a_name_right_and_the_page_shows_it()
    {
        var talk = AtPeople();
        Golden.Same("people-80x24", talk.Text);
        Golden.Same("people-60x20", talk.TextAt(new PageSize(60, 20)));
        talk.Keys("1Kimberley{Enter}");
        Assert.IsType<PeopleScreen>(talk.Screen);
        Assert.Contains("Kimberley", talk.Text, StringComparison.Ordinal);
        Assert.Contains("Kimberley", talk.Keys("0").Text, StringComparison.Ordinal);
        talk.Keys("{Esc}");
        Assert.DoesNotContain("Kim ", talk.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "Type the name as it should be")]
    [InlineData("sam", "Sam is here already")]
    [InlineData("Kim", "Kim is the name now")]
    public void A_name_that_cannot_be_is_refused_with_a_sentence(string name, string said)
    {
        var talk = AtPeople().Keys($"1{name}{{Enter}}");
        Assert.Contains(said, talk.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(talk.Entries, e => e.What is LogEntry.PersonRenamed);
    }

    [Fact]
    public void A_former_name_is_kept_for_whoever_had_it()
    {
        var talk = AtPeople().Keys("1Kay{Enter}");
        Assert.Contains("Kim was the name of Kay before", talk.Keys("2Kim{Enter}").Text, StringComparison.Ordinal);
        Assert.Contains("kim was the name of Kay before", talk.At(new NameScreen(null)).Keys("kim{Enter}").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_lead_is_put_right_too()
    {
        var talk = AtPeople();
        Assert.Equal("Jo", talk.World.History.Names[^1]);
        talk.Keys("4Joan{Enter}");
        Assert.Equal("Joan", talk.World.History.Workshop?.Lead);
    }

    [Fact]
    public void A_command_puts_a_name_right_and_refuses_what_cannot_be()
    {
        using var folder = new TempFolder();
        var data = folder.In("log.db");
        using (var log = Log.Open(data)) foreach (var entry in Lives.Workshop()) log.Append(entry);
        var (count, said) = (Lives.Workshop().Count, Said.Bare("rename", "Kim", "Kay", "--data", data));
        Assert.Equal((0, "Kim: Called Kay from now on.\n"), (said.ExitCode, said.Out));
        Assert.Contains("Kay", Said.Bare("export", "--data", data).Out, StringComparison.Ordinal);
        foreach (var (name, now, sentence) in new[] { ("Kim", "Kat", "There is no person 'Kim'"), ("Kay", "Sam", "Sam is here already"), ("Sam", "kim", "kim was the name of Kay before"), ("Sam", new string('x', 25), "at most 24 signs"), ("Sam", "S\u202Eam", "plain signs"), ("Sam", " ", "Type the name") })
        {
            var refused = Said.Bare("rename", name, now, "--data", data);
            Assert.NotEqual(0, refused.ExitCode);
            Assert.Contains(sentence, refused.Error, StringComparison.Ordinal);
        }

        using var after = Log.Open(data);
        Assert.Equal(count + 1, after.Read().Count);
    }

    [Fact]
    public void Records_do_not_come_in_under_a_name_that_was_put_right_here()
    {
        using var folder = new TempFolder();
        var data = folder.In("log.db");
        using (var log = Log.Open(data)) foreach (var entry in Lives.TenthDay()) log.Append(entry);
        File.WriteAllText(folder.In("sam.move"), Records.Write("Sam", PersonEntries.Of(Lives.TenthDay(), "Sam")));
        Said.Bare("rename", "Sam", "Samira", "--data", data);
        var said = Said.Bare("import", folder.In("sam.move"), "--data", data);
        Assert.Contains("Sam was the name of Samira here.", said.Error, StringComparison.Ordinal);
        Assert.NotEqual(0, said.ExitCode);
    }

    [Fact]
    public void Erasing_tells_of_every_name_that_the_person_had()
    {
        using var folder = new TempFolder();
        var data = folder.In("log.db");
        var log = Lives.Workshop();
        Lives.Add(log, new LogEntry.LessonQuestioned("Sam", "rim-size/overview.md", "top", "Kim says so too"), new LogEntry.PersonRenamed("Kim", "Kay"));
        using (var file = Log.Open(data)) foreach (var entry in log) file.Append(entry);
        Assert.Contains("1 record of other people still holds this name", Said.Bare("erase", "Kay", "--yes", "--data", data).Out, StringComparison.Ordinal);
        using var after = Log.Open(data);
        Assert.DoesNotContain(after.Read(), e => e.What is LogEntry.PersonRenamed or LogEntry.JobStarted { Person: "Kim" });
    }

    [Fact]
    public void A_paper_sealed_under_the_old_name_is_sat_and_collected_under_the_new_one()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: [.. Exam.Before, new LogEntry.PersonRenamed("Sam", "Samira")]);
        room.PutPaper();
        Assert.Contains("Samira", room.ToDesk().Keys("3").Text, StringComparison.Ordinal);
        room.Keys("1").Keys(Exam.Sealed.Code + "{Enter}");
        Assert.Contains("Samira", Assert.IsType<SitWhoScreen>(room.Screen).Show(room.World).Right, StringComparison.Ordinal);
        Assert.Contains("The candidate cannot confirm this", room.Keys("sam{Enter}").Text, StringComparison.Ordinal);
        room.Keys("{Backspace}{Backspace}{Backspace}Jo{Enter}11");
        Assert.Equal(("Samira", "Samira"), (room.World.Who, room.Sitting.Started.Candidate));
        while (room.Sitting.End is null)
        {
            if (room.Screen is BenchScreen) room.Answer();
            else room.Keys("2");
        }

        room.Keys("{Enter}").ToDesk().Keys("41" + Exam.Passphrase + "{Enter}");
        Assert.Contains("collected and marked", Assert.Single(Assert.IsType<CollectedScreen>(room.Screen).Lines).Sentence, StringComparison.Ordinal);
        Assert.Equal("Samira", room.All.Result(Exam.Number)?.Candidate);
        Assert.Equal(["Samira"], room.All.Registers.Select(r => r.Person));
    }

    static Talk AtPeople() => new Talk(Lives.Workshop(), [Corpus.Sample]).At(new PeopleScreen(new HomeScreen()));
}
