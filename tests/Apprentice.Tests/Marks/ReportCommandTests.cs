using System.Text.Json;
using Apprentice.Commands;
using Apprentice.Engine.Learning;
using Apprentice.Storage;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Marks;

/// <summary><c>report</c> on a log that was written to disk and read again.</summary>
public sealed class ReportCommandTests : IDisposable
{
    readonly TempFolder _folder = new();

    public ReportCommandTests()
    {
        using var log = Log.Open(Data);
        foreach (var entry in Sat.Log()) log.Append(entry);
        log.Append(new Logged(Sat.Nine.AddDays(1), new LogEntry.PaperQuestioned(Sat.Passed, 5, "could not be read")));
    }

    string Data => _folder.In("log.db");

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("candidate", "Sam")]
    [InlineData("result", Sat.Passed)]
    [InlineData("group", null)]
    [InlineData("register", null)]
    [InlineData("use", null)]
    public void Each_report_has_three_forms(string what, string? name)
    {
        string[] words = name is null ? ["report", what] : ["report", what, name];
        foreach (var form in new[] { "html", "csv", "json" })
        {
            var said = Said.By([.. words, "--data", Data, "--as", form]);
            Assert.Equal(("", 0), (said.Error, said.ExitCode));
            if (form == "html") Assert.StartsWith("<!doctype html>", said.Out, StringComparison.OrdinalIgnoreCase);
            if (form == "csv") Assert.StartsWith("table,row,column,value\n", said.Out, StringComparison.Ordinal);
            if (form == "json") Assert.Equal(1, JsonDocument.Parse(said.Out).RootElement.GetProperty("schema").GetInt32());
        }

        Assert.Equal(Said.By([.. words, "--data", Data, "--as", "json"]).Out[..40], Said.By([.. words, "--data", Data, "--json"]).Out[..40]);
    }

    [Fact]
    public void The_record_of_a_mark_comes_back_from_the_disk()
    {
        using var log = Log.Open(Data);
        var result = History.Of(log.Read()).Assessments.Result(Sat.Passed);
        Assert.Equivalent(Sat.Result(Sat.Passed).Jobs, result?.Jobs, strict: true);
    }

    [Fact]
    public void Tables_say_what_the_log_says()
    {
        var tables = JsonDocument.Parse(Said.By("report", "candidate", "Sam", "--data", Data, "--json").Out).RootElement.GetProperty("tables");
        Assert.Equal(20, tables.GetProperty("jobs").GetArrayLength());
        Assert.Equal(18, tables.GetProperty("papers")[0].GetProperty("sound").GetInt32());
        Assert.Equal("could not be read", tables.GetProperty("questioned")[0].GetProperty("text").GetString());
    }

    [Fact]
    public void Statements_are_of_one_person_when_asked()
    {
        Assert.Equal(13, JsonDocument.Parse(Said.By("report", "xapi", "Kim", "--data", Data).Out).RootElement.GetArrayLength());
        Assert.Contains("https://shop.example/paper/", Said.By("report", "xapi", "--data", Data, "--home", "https://shop.example").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("report candidate Sma", "Sam")]
    [InlineData("report result 7F2", Sat.Passed)]
    [InlineData("report regster", "register")]
    [InlineData("report candidate", "Write whose")]
    [InlineData("report group --as pdf", "html")]
    [InlineData("report xapi --home shop", "no address")]
    public void What_is_written_wrongly_is_told_with_what_would_do(string written, string would)
    {
        var said = Said.By([.. written.Split(' '), "--data", Data]);
        Assert.Equal(ExitCode.Usage, said.ExitCode);
        Assert.Contains(would, said.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_log_it_says_so() => Assert.Contains("There is no log", Said.By("report", "group", "--data", _folder.In("none.db")).Error, StringComparison.Ordinal);
}
