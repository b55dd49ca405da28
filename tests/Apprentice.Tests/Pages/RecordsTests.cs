using System.Text;
using System.Text.Json;
using Apprentice.Commands;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Storage;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Pages;

/// <summary>PINs, export, the way to another machine, and erasing.</summary>
public sealed class RecordsTests : IDisposable
{
    readonly string _folder = Directory.CreateTempSubdirectory("records").FullName;

    string Data => Path.Combine(_folder, "log.db");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Nothing_of_an_erased_person_is_left_in_the_bytes_of_the_file()
    {
        Write(Data, Lives.Workshop());
        Assert.Contains("Kim", Bytes(), StringComparison.Ordinal);
        Assert.Contains("Nothing was changed.", Run("erase", "Kim").Out, StringComparison.Ordinal);
        Assert.Contains("Kim", Bytes(), StringComparison.Ordinal);
        Assert.Equal(0, Run("erase", "Kim", "--yes").Code);
        Assert.DoesNotContain("Kim", Bytes(), StringComparison.Ordinal);
        Assert.Equal([Data, Data + ".lock"], Directory.GetFiles(_folder).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Tests_and_permissions_are_erased_with_the_person_and_do_not_move()
    {
        var log = Lives.Workshop();
        Lives.Add(
            log, new LogEntry.PaperMade("7F2ABC", "may order rims alone", "Kim", 1), new LogEntry.PaperMade("8A1ABC", "may order rims alone", "Sam", 1),
            new LogEntry.SittingStarted("7F2ABC", "may order rims alone", "Kim", 1, "Jo", 12, 4, 1, Plain: false), new LogEntry.SittingOpened("7F2ABC", 1),
            new LogEntry.PermissionTakenBack("Kim", "may order rims alone", "Jo", "left"));
        Write(Data, log);
        Assert.DoesNotContain("7F2ABC", Run("export", "Kim", "--as", "move").Out, StringComparison.Ordinal);
        Assert.Equal(0, Run("erase", "Kim", "--yes").Code);
        Assert.DoesNotContain("Kim", Bytes(), StringComparison.Ordinal);
        Assert.DoesNotContain("7F2ABC", Bytes(), StringComparison.Ordinal);
        Assert.Contains("8A1ABC", Bytes(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_others_wrote_with_the_name_in_it_is_told()
    {
        var log = Lives.Workshop();
        Lives.Add(log, new LogEntry.LessonQuestioned("Sam", "rim-size/overview.md", "top", "Kim says so too"));
        Write(Data, log);
        Assert.Contains("1 record of other people still holds this name", Run("erase", "Kim", "--yes").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_others_keep_all_that_they_had()
    {
        var log = Lives.Workshop();
        var (before, after) = (History.Of(log), History.Of(PersonEntries.Without(log, "Kim")));
        Assert.Equal(["Sam", "Lou"], after.People);
        Assert.Equal(before.JobsOf("Sam").Select(j => j.At), after.JobsOf("Sam").Select(j => j.At));
        Assert.Equal(Enumerable.Range(1, 30), after.Jobs.Select(j => j.Started.Job));
        Assert.Equal(before.JobsOf("Sam").SelectMany(j => j.Observed), after.JobsOf("Sam").SelectMany(j => j.Observed));
        Assert.Equal("Jo", after.Workshop?.Lead);
        Assert.Null(History.Of(PersonEntries.Without([.. log, new Logged(log[^1].At, new LogEntry.SatDown("Kim"))], "Kim")).Current);
    }

    [Fact]
    public void Records_that_moved_say_the_same_on_another_machine()
    {
        var log = Lives.Workshop();
        Write(Data, log);
        var moved = Path.Combine(_folder, "kim.move");
        File.WriteAllText(moved, Run("export", "Kim", "--as", "move").Out);
        var other = Path.Combine(_folder, "other.db");
        Write(other, Lives.TenthDay());
        Assert.Equal(0, On(other, "import", moved).Code);
        using var read = Log.Open(other);
        var (here, there) = (History.Of(log), History.Of(read.Read()));
        Assert.Equal(here.JobsOf("Kim").SelectMany(j => j.Observed), there.JobsOf("Kim").SelectMany(j => j.Observed));
        Assert.Equal(Habits.Of(here, "Kim").Select(h => (h.Shown, h.State, h.ForLead)), Habits.Of(there, "Kim").Select(h => (h.Shown, h.State, h.ForLead)));
        Assert.Equal(30, there.JobsOf("Sam").Count);
        Assert.Equal("Sam", there.Current);
    }

    [Fact]
    public void A_name_that_is_there_and_a_file_that_is_cut_are_refused_and_change_nothing()
    {
        Write(Data, Lives.TenthDay());
        var moved = Path.Combine(_folder, "sam.move");
        var text = Run("export", "Sam", "--as", "move").Out;
        File.WriteAllText(moved, text);
        Assert.Contains("Sam is here already", Run("import", moved).Error, StringComparison.Ordinal);
        File.WriteAllText(moved, text[..(text.Length / 2)]);
        Assert.Contains("It was cut or changed", Run("import", moved).Error, StringComparison.Ordinal);
        File.WriteAllText(moved, "hello");
        Assert.Contains("Line 1: this is not a file of records", Run("import", moved).Error, StringComparison.Ordinal);
        File.WriteAllText(moved, text.Replace("\"LogEntry", "x", StringComparison.Ordinal).Replace("JobStarted", "JobStartled", StringComparison.Ordinal));
        Assert.Matches("Line [0-9]+: this entry cannot be read", Run("import", moved).Error);
        using var log = Log.Open(Data);
        Assert.Equal(Lives.TenthDay().Count, log.Read().Count);
    }

    [Fact]
    public void Export_says_the_skills_in_three_forms()
    {
        Write(Data, Lives.TenthDay());
        var json = JsonDocument.Parse(Run("export", "Sam").Out).RootElement;
        var asked = Lives.TenthDay().Select(e => e.What).OfType<LogEntry.Answered>().SelectMany(a => a.Observed).OfType<Observed.Mark>().Count();
        Assert.Equal(asked, json.GetProperty("tables").GetProperty("skills").EnumerateArray().Sum(r => r.GetProperty("asked").GetInt32()));
        var csv = Run("export", "Sam", "--as", "csv").Out.Split('\n');
        Assert.Equal(asked, csv.Where(l => l.StartsWith("skills,", StringComparison.Ordinal) && l.Contains(",asked,", StringComparison.Ordinal)).Sum(l => int.Parse(l.Split(',')[^1])));
        Assert.Contains("<h1>What Sam can do</h1>", Run("export", "Sam", "--as", "html").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_do_no_harm_in_HTML_and_CSV()
    {
        var report = new Report("<b>", Lives.Start, [], [new ReportTable("t", "a & b", ["c"], [["=1+1"], ["say \"a, b\""]])]);
        Assert.Contains("<h1>&lt;b&gt;</h1>", ReportText.Of(report, "html"), StringComparison.Ordinal);
        Assert.Equal("table,row,column,value\nt,1,c,'=1+1\nt,2,c,\"say \"\"a, b\"\"\"\n", ReportText.Of(report, "csv"));
    }

    [Theory]
    [InlineData("There is no person 'Ki'", "export", "Ki")]
    [InlineData("There is no form 'pdf'", "export", "Sam", "--as", "pdf")]
    [InlineData("No workshop is set up", "export")]
    [InlineData("Only a person's records can be moved", "export", "--as", "move")]
    [InlineData("There is no file", "import", "nowhere.move")]
    public void Bad_input_is_told(string said, params string[] args)
    {
        Write(Data, Lives.TenthDay());
        var (code, _, error) = Run(args);
        Assert.NotEqual(0, code);
        Assert.Contains(said, error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_log_that_is_not_there_is_told_and_not_made()
    {
        Assert.Contains("There is no log at", Run("erase", "Sam", "--yes").Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder));
    }

    [Fact]
    public void Who_leads_the_workshop_is_not_erased()
    {
        var log = Lives.TenthDay();
        Lives.Add(log, new LogEntry.WorkshopSet("Back yard", "Sam", [Corpus.Sample.Id]));
        Write(Data, log);
        Assert.Contains("Sam leads the workshop", Run("erase", "Sam", "--yes").Error, StringComparison.Ordinal);
        Assert.Contains("You lead the workshop", new Talk(log, [Corpus.Sample]).Keys("076Sam{Enter}").Text.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Erasing_on_the_screen_needs_the_name()
    {
        var talk = new Talk(Lives.TenthDay(), [Corpus.Sample]).Keys("066Sa{Enter}");
        Assert.Contains("Nothing was erased.", talk.Text, StringComparison.Ordinal);
        talk.Keys("Sam{Enter}");
        Assert.IsType<HomeScreen>(talk.Screen);
        Assert.Empty(talk.World.History.People);
        Assert.Equal([typeof(LogEntry.Began), typeof(LogEntry.SatDown)], talk.Entries.Select(e => e.What.GetType()));
    }

    // Oracle: the form of PBKDF2 hashes as the platform derives them, worked out here once more.
    [Fact]
    public void A_PIN_opens_and_another_does_not()
    {
        var talk = new Talk(Lives.TenthDay(), [Corpus.Sample]).Keys("0612468{Enter}2468{Enter}");
        var hash = talk.World.History.Pins["Sam"];
        var parts = hash.Split('$');
        var derived = System.Security.Cryptography.Rfc2898DeriveBytes.Pbkdf2("2468", Convert.FromBase64String(parts[2]), int.Parse(parts[1]), System.Security.Cryptography.HashAlgorithmName.SHA256, 32);
        Assert.Equal(("pbkdf2-sha256", "100000", Convert.ToBase64String(derived)), (parts[0], parts[1], parts[3]));
        Assert.DoesNotContain("2468", hash, StringComparison.Ordinal);
        Assert.IsType<PinScreen>(talk.Keys("00").Keys("P1").Screen);
        Assert.DoesNotContain("1111", talk.Keys("1111").Text, StringComparison.Ordinal);
        Assert.Contains("That is another PIN.", talk.Keys("{Enter}").Text, StringComparison.Ordinal);
        Assert.IsType<HomeScreen>(talk.Keys("2468{Enter}").Screen);
    }

    [Fact]
    public void Somebody_with_a_PIN_is_asked_for_it_when_they_sit_down()
    {
        var log = Lives.TenthDay();
        Lives.Add(log, new LogEntry.PersonAdded("Kim"), new LogEntry.PinSet("Sam", PinHash.Of("2468", "salt")), new LogEntry.SatDown(null));
        var talk = new Talk(log, [Corpus.Sample]).Keys("1");
        Assert.IsType<PinScreen>(talk.Screen);
        Assert.Null(talk.World.Person);
        Assert.Equal("Sam", talk.Keys("2468{Enter}").World.Person);
        Assert.IsType<HomeScreen>(new Talk(log, [Corpus.Sample]).Keys("2").Screen);
    }

    string Bytes() => string.Concat(Directory.GetFiles(_folder).Select(f => Encoding.Latin1.GetString(File.ReadAllBytes(f))));

    static void Write(string path, IReadOnlyList<Logged> entries)
    {
        using var log = Log.Open(path);
        foreach (var entry in entries) log.Append(entry);
    }

    (int Code, string Out, string Error) Run(params string[] args) => On(Data, args);

    static (int Code, string Out, string Error) On(string data, params string[] args)
    {
        using var said = new StringWriter { NewLine = "\n" };
        using var error = new StringWriter { NewLine = "\n" };
        var code = CommandLine.Run([.. args, "--data", data, "--topics", Path.Combine(Corpus.Root, "tests", "Apprentice.Tests", "Data", "topics")], new Desk(said, error), _ => 0);
        return (code, said.ToString(), error.ToString());
    }
}
