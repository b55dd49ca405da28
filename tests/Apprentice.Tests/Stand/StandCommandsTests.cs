using Apprentice.Content.Changes;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using Apprentice.Storage;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Stand;

/// <summary>The commands bike, inbox, rates and changes.</summary>
public sealed class StandCommandsTests
{
    static readonly DateTimeOffset Day = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData("bikes", "bike")]
    [InlineData("bikes-csv", "bike", "--as", "csv")]
    [InlineData("bikes-json", "bike", "--as", "json")]
    [InlineData("bike-json", "bike", "1", "--as", "json")]
    [InlineData("inbox", "inbox")]
    [InlineData("rates", "rates", "older-newer-bar")]
    [InlineData("rates-standing", "rates")]
    [InlineData("bike-cases", "bike", "--cases", "Back yard")]
    public void A_command_says_what_it_said_when_it_was_looked_at(string name, params string[] args)
    {
        using var folder = Folder();
        var said = Said.By([.. args, "--data", folder.In("log.db")]);
        Assert.Equal((0, ""), (said.ExitCode, said.Error));
        Screens.Golden.Same($"command-{name}", said.Out);
    }

    [Fact]
    public void A_bike_is_told_as_its_job_card()
    {
        using var folder = Folder();
        Assert.Contains("For the customer", Said.By("bike", "1", "--data", folder.In("log.db")).Out, StringComparison.Ordinal);
        Assert.Contains("<h2>For the customer</h2>", Said.By("bike", "1", "--as", "html", "--data", folder.In("log.db")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_needs_no_log() => Assert.Contains("Before you ring the shop", Said.By("bike", "--sheet", "older-newer-bar").Out, StringComparison.Ordinal);

    [Theory]
    [InlineData(2, "There is no bike 7; they go from 1 to 1.", "bike", "7")]
    [InlineData(2, "There is no form 'pdf'", "bike", "--as", "pdf")]
    [InlineData(2, "There is no topic 'bars'", "rates", "bars")]
    [InlineData(2, "There is no file 'nowhere.json'.", "bike", "--take", "nowhere.json")]
    [InlineData(2, "Over topics of your own no changes lie", "changes")]
    public void A_wrong_command_gets_a_sentence(int exit, string sentence, params string[] args)
    {
        using var folder = Folder();
        var said = Said.By([.. args, "--data", folder.In("log.db")]);
        Assert.Equal(exit, said.ExitCode);
        Assert.Contains(sentence, said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Confirmed_bikes_travel_to_another_workshop_and_no_further()
    {
        using var folder = Folder();
        File.WriteAllText(folder.In("cases.txt"), Said.By("bike", "--cases", "Back yard", "--data", folder.In("log.db")).Out);
        Assert.Equal("1 case taken in. They are for practice; a paper may hold them too, outside its marks.\n", Said.By("bike", "--take", folder.In("cases.txt"), "--data", folder.In("other.db")).Out);
        using (var log = Log.Open(folder.In("other.db"))) Assert.Equal("Back yard", Assert.Single(RealCases.ForPapers(History.Of(log.Read()).Notebook)).From);
        Assert.Single(Said.By("bike", "--cases", "Front yard", "--data", folder.In("other.db")).Out.TrimEnd().Split('\n'));
    }

    [Theory]
    [InlineData("hello", "Line 1: this is no file of real bikes.")]
    [InlineData("{\"real-bikes\":\"Yard\",\"schema\":1,\"cases\":1}", "holds 0")]
    [InlineData("{\"real-bikes\":\"Yard\",\"schema\":9,\"cases\":0}", "newer version")]
    [InlineData("{\"real-bikes\":\"Yard\",\"schema\":1,\"cases\":1}\n{\"key\":1}", "Line 2: this case cannot be read.")]
    [InlineData("{\"real-bikes\":\"Yard\",\"real-bikes\":\"Shed\",\"schema\":1,\"cases\":0}", "Line 1: the field real-bikes stands there twice.")]
    [InlineData("{\"real-bikes\":\"Yard\",\"schema\":1,\"cases\":1}\n{\"truth\":{\"line\":null,\"line\":\"x\"}}", "Line 2: the field line stands there twice.")]
    public void A_damaged_file_of_cases_is_told(string text, string sentence) =>
        Assert.Contains(sentence, Assert.Throws<LogException>(() => CaseExchange.Read(text)).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("\"topic\":\"older-newer-bar\"", "\"topic\":\"older-bar\"", ":2: topic: There is no topic 'older-bar'")]
    [InlineData("\"kind\":\"", "\"kind\":\"x", ":2: truth.parts[0].kind: There is no kind 'x")]
    [InlineData("\"want\":\"", "\"want\":\"x", ":2: want: There is no want 'x")]
    [InlineData("\"part\":\"", "\"part\":\"x", ":2: truth.parts[0].part: There is no part 'x")]
    [InlineData("\"clue\":\"", "\"clue\":\"x", ":2: findings[0].clue: There is no clue 'x")]
    public void A_case_that_the_topic_does_not_know_is_told_and_nothing_is_taken_in(string was, string now, string sentence)
    {
        using var folder = Folder();
        var text = Said.By("bike", "--cases", "Back yard", "--data", folder.In("log.db")).Out;
        Assert.Contains(was, text, StringComparison.Ordinal);
        File.WriteAllText(folder.In("cases.txt"), text.Replace(was, now, StringComparison.Ordinal));
        var said = Said.By("bike", "--take", folder.In("cases.txt"), "--data", folder.In("other.db"));
        Assert.Equal(1, said.ExitCode);
        Assert.Contains(folder.In("cases.txt") + sentence, said.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.In("other.db")), "A log was made.");
    }

    [Fact]
    public void A_field_that_stands_twice_in_a_file_of_bikes_is_told()
    {
        using var folder = Folder();
        File.WriteAllText(folder.In("bikes.json"), "{ \"schema\": 1,\n\"bikes\": [ {\n\"name\": \"blue\",\n\"name\": \"red\" } ] }");
        var said = Said.By("bike", "--import", folder.In("bikes.json"), "--data", folder.In("log.db"));
        Assert.Contains("bikes.json:4: bikes[0].name: This field stands here twice.", said.Error, StringComparison.Ordinal);
        Assert.NotEqual(0, said.ExitCode);
    }

    [Fact]
    public void Changes_are_told_given_taken_in_and_taken_back_and_the_files_are_the_shipped_ones_again()
    {
        using var folder = new TempFolder();
        var (ours, theirs) = (folder.In("ours"), folder.In("theirs"));
        var row = File.ReadAllText(Path.Combine(Corpus.Root, "question-bank", "rim-size.md")).ReplaceLineEndings("\n").Split('\n').First(l => l.StartsWith("| mark-lost |", StringComparison.Ordinal));
        new WorkshopFolder(ours).Write([new Change(1, "marks are lost more often") { File = "question-bank/rim-size.md", Day = new DateOnly(2026, 11, 25), By = "Jo", Was = [row], Is = [row.Replace("1 in 50", "1 in 20", StringComparison.Ordinal)] }]);
        Assert.Contains("+ | mark-lost | the rim was painted or polished and its mark is gone | mark-lost | 1 in 20 |", Said.Bare("changes", "--workshop", ours).Out, StringComparison.Ordinal);
        File.WriteAllText(folder.In("gift.md"), Said.Bare("changes", "--workshop", ours, "--give", "Back yard").Out);
        Assert.Equal("1 change taken in.\n", Said.Bare("changes", "--workshop", theirs, "--take", folder.In("gift.md")).Out);
        Assert.Equal("0 changes taken in.\n1 change of the file is here already and was left out.\n", Said.Bare("changes", "--workshop", theirs, "--take", folder.In("gift.md")).Out);
        Assert.Equal("0 changes taken in.\n1 change of the file is here already and was left out.\n", Said.Bare("changes", "--workshop", ours, "--take", folder.In("gift.md")).Out);
        Assert.Equal("Back yard", Assert.Single(new WorkshopFolder(theirs).Read().Changes).From);
        Assert.Equal("Change 1 is taken back.\n", Said.Bare("changes", "--workshop", theirs, "--take-back", "1").Out);
        Said.Bare("changes", "--workshop", theirs, "--files", folder.In("all"));
        Assert.Equal(File.ReadAllText(Path.Combine(Corpus.Root, "question-bank", "rim-size.md")), File.ReadAllText(folder.In("all/question-bank/rim-size.md")));
        Said.Bare("changes", "--workshop", ours, "--files", folder.In("changed"));
        Assert.Contains("1 in 20", File.ReadAllText(folder.In("changed/question-bank/rim-size.md")).Split('\n').First(l => l.StartsWith("| mark-lost |", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Changes_that_fit_nowhere_are_kept_and_told_with_file_and_line()
    {
        using var folder = new TempFolder();
        new WorkshopFolder(folder.Path).Write([new Change(1, "old") { File = "question-bank/rim-size.md", Day = new DateOnly(2026, 11, 25), Was = ["| mark-lost | no such row |"], Is = ["x"] }]);
        var said = Said.Bare("changes", "--workshop", folder.Path);
        Assert.Equal(1, said.ExitCode);
        Assert.Contains("changes.md:5: Change 1, \"old\", does not fit: question-bank/rim-size.md:", said.Out, StringComparison.Ordinal);
    }

    const string Card = """
        { "schema": 1, "bikes": [
          { "name": "old card", "card": 20, "topic": "older-newer-bar", "want": "grips", "findings": ["bar-height=140mm", "grip-length@phone=100mm"],
            "truth": { "parts": [{ "part": "bar", "kind": "older" }], "events": [], "line": "basic", "built": "2014-06" } },
          { "name": "puzzling", "topic": "older-newer-bar", "want": "grips" }
        ] }
        """;

    [Fact]
    public void Old_job_cards_are_taken_in_and_the_rule_says_which_are_routine()
    {
        using var folder = Folder();
        File.WriteAllText(folder.In("cards.json"), Card);
        Assert.Equal("2 bikes taken in.\n", Said.By("bike", "--import", folder.In("cards.json"), "--data", folder.In("log.db")).Out);
        using var log = Log.Open(folder.In("log.db"));
        var notebook = History.Of(log.Read()).Notebook;
        Assert.Equal([true, true, false], notebook.Bikes.Select(b => b.Put.Routine));
        Assert.Equal(("older", "basic"), (notebook.Bikes[1].Truths[0].Truth.KindOf("bar"), notebook.Bikes[1].Truths[0].Truth.Line));
        Assert.Equal(2, notebook.Bikes[1].Findings.Count);
    }

    [Theory]
    [InlineData("\"kind\": \"older\"", "\"kind\": \"old\"", "cards.json:3: bikes[0].truth.parts[0].kind: There is no kind 'old'")]
    [InlineData("bar-height=140mm", "bar-height=tall", "cards.json:2: bikes[0].findings[0]: bar-height: 'tall' is no length")]
    [InlineData("\"built\": \"2014-06\"", "\"built\": \"June\"", "cards.json:3: bikes[0].truth.built: A month like 2014-06 would do here.")]
    [InlineData("\"card\": 20", "\"card\": 0", "cards.json:2: bikes[0].card: A whole number from 1")]
    [InlineData("\"old card\"", "\" \"", "cards.json:2: bikes[0].name: A short name of the bike would do here")]
    [InlineData("{ \"part\": \"bar\", \"kind\": \"older\" }", "", "cards.json:3: bikes[0].truth.parts: At least one part with its kind would do here")]
    [InlineData("{ \"part\": \"bar\", \"kind\": \"older\" }", "{ \"part\": \"bar\", \"kind\": \"older\" }, { \"part\": \"bar\", \"kind\": \"newer\" }", "cards.json:3: bikes[0].truth.parts: The part bar stands here twice.")]
    [InlineData("\"bar-height=140mm\"", "5", "cards.json:2: bikes[0].findings[0]: A text in")]
    public void A_fault_in_old_job_cards_is_told_with_file_line_and_field_and_nothing_is_taken_in(string good, string bad, string sentence)
    {
        using var folder = Folder();
        File.WriteAllText(folder.In("cards.json"), Card.Replace(good, bad, StringComparison.Ordinal));
        var said = Said.By("bike", "--import", folder.In("cards.json"), "--data", folder.In("log.db"));
        Assert.Contains(sentence, said.Error, StringComparison.Ordinal);
        using var log = Log.Open(folder.In("log.db"));
        Assert.Single(History.Of(log.Read()).Notebook.Bikes);
    }

    [Fact]
    public void Prices_go_out_and_in_as_CSV()
    {
        using var folder = Folder();
        var list = Said.By("prices", "--data", folder.In("log.db")).Out;
        Assert.Contains("older-newer-bar,grips-short,14,6,5,\n", list, StringComparison.Ordinal);
        File.WriteAllText(folder.In("prices.csv"), list.Replace("grips-short,14,6,5,", "grips-short,12.5,4,3,14", StringComparison.Ordinal));
        Assert.Equal("1 price taken in.\n", Said.By("prices", "--take", folder.In("prices.csv"), "--data", folder.In("log.db")).Out);
        Assert.Contains("older-newer-bar,grips-short,12.5,4,3,14\n", Said.By("prices", "--data", folder.In("log.db")).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("topic\n", "prices.csv:1: The first line would be")]
    [InlineData("topic,spare,price,sending_back,days,return_days\nolder-newer-bar,grips,1,1,1,1\n", "prices.csv:2: There is no spare 'grips'")]
    [InlineData("topic,spare,price,sending_back,days,return_days\nolder-newer-bar,grips-short,cheap,1,1,1\n", "prices.csv:2: \"cheap\" is no number")]
    [InlineData("topic,spare,price,sending_back,days,return_days\nolder-newer-bar,grips-short,1,1,1,soon\n", "prices.csv:2: \"soon\" is no number of days")]
    public void A_fault_in_a_list_of_prices_is_told_with_file_and_line(string text, string sentence)
    {
        using var folder = Folder();
        File.WriteAllText(folder.In("prices.csv"), text);
        Assert.Contains(sentence, Said.By("prices", "--take", folder.In("prices.csv"), "--data", folder.In("log.db")).Error, StringComparison.Ordinal);
    }

    static TempFolder Folder()
    {
        var folder = new TempFolder();
        using var log = Log.Open(folder.In("log.db"));
        var topic = Corpus.Sample;
        LogEntry[] entries =
        [
            new LogEntry.Began(1), new LogEntry.BikePut(1, "Sam", "red, \"folder\"", 4430, Routine: true, Channel.Bench, 3),
            new LogEntry.BikeAsked(1, topic.Id, topic.Version, "grips", "own"),
            new LogEntry.BikeFound(1, topic.Id, new Finding("grip-length", Channel.Phone, new Seen.Reading(100)), ""),
            new LogEntry.BikeFound(1, topic.Id, new Finding("bar-height", Channel.Bench, new Seen.Reading(140)), ""),
            new LogEntry.BikeDecided(1, topic.Id, topic.Version, "grips", new Choice.Order("grips-short"), [new HeldBelief("bar", [new ClassBelief(["older"], 0.97)], true)]),
            new LogEntry.BikeConfirmed(1, topic.Id, topic.Version, Bikes.Truth("older", []), [new HeldBelief("bar", [new ClassBelief(["older"], 0.97)], true)]),
            new LogEntry.BikeQuestioned(1, "Sam", topic.Id, "a longer stem than on the list"),
            new LogEntry.ReportAnswered(1, ReportAnswer.Refused, "Jo", "It is the same one.", "", []),
        ];
        foreach (var entry in entries) log.Append(new Logged(Day, entry));
        return folder;
    }
}
