using System.CommandLine;
using Apprentice.Content.Changes;
using Apprentice.Engine;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using Apprentice.Reports;
using Apprentice.Storage;
using Report = Apprentice.Reports.Report;

namespace Apprentice.Commands;

/// <summary><c>bike</c>, <c>inbox</c> and <c>rates</c>: real bikes of this log, lines sent to the lead, and figures learned from them.</summary>
static class StandCommands
{
    static readonly string[] Forms = ["text", "csv", "json", "html"];

    /// <summary><c>bike [NUMBER]</c>: all bikes, or one with all that is known; <c>bike --sheet TOPIC</c>: what to measure before the shop is rung.</summary>
    public static Command Bike(Desk desk, SourceOptions options)
    {
        var number = new Argument<int?>("NUMBER") { Description = "Which bike; without it all of them", Arity = ArgumentArity.ZeroOrOne };
        var form = Form();
        var sheet = new Option<string?>("--sheet") { Description = "What to measure and photograph before the shop is rung, about a topic (no log is needed)", HelpName = "TOPIC" };
        var cases = new Option<string?>("--cases") { Description = "Write the confirmed bikes as cases for another workshop, under this name of ours", HelpName = "NAME" };
        var take = new Option<string?>("--take") { Description = "Take in the cases of another workshop", HelpName = "FILE" };
        var import = new Option<string?>("--import") { Description = "Take in bikes from a JSON file: old job cards", HelpName = "FILE" };
        var command = new Command("bike", "Real bikes: findings, what they amount to, decisions, what it really was") { number, form, sheet, cases, take, import };
        command.SetAction(parsed =>
        {
            var chosen = FormOf(parsed.GetValue(form));
            var copy = options.Copy(parsed);
            if (parsed.GetValue(sheet) is { } topic) return Sheet(desk, Topic(copy, topic), chosen);
            if (parsed.GetValue(take) is { } file) return Take(desk, options.LogFile(parsed), copy, file);
            if (parsed.GetValue(import) is { } cards) return Import(desk, options.LogFile(parsed), copy, cards);
            var history = options.History(parsed);
            if (parsed.GetValue(cases) is { } name) return Write(desk, CaseExchange.Write(name, [.. RealCases.Of(history.Notebook).Where(c => !c.IsForPapers)]));
            return parsed.GetValue(number) is { } one ? One(desk, Known(history, one), history, copy, chosen) : Write(desk, Text(StandReport.Bikes(history), chosen));
        });
        return command;
    }

    /// <summary><c>inbox</c>: lines sent with "this is wrong", and their answers.</summary>
    public static Command Inbox(Desk desk, SourceOptions options)
    {
        var form = Form();
        var command = new Command("inbox", "Lines sent with \"this is wrong\" and \"this bike did not match\", and their answers") { form };
        command.SetAction(parsed => Write(desk, Text(StandReport.Inbox(options.History(parsed)), FormOf(parsed.GetValue(form)))));
        return command;
    }

    /// <summary><c>rates [TOPIC]</c>: the standing check, and figures learned from routine bikes.</summary>
    public static Command Rates(Desk desk, SourceOptions options)
    {
        var topic = new Argument<string?>("TOPIC") { Description = "Of which topic; without it how often the program was right, by topic", Arity = ArgumentArity.ZeroOrOne };
        var form = Form();
        var command = new Command("rates", "How often the program was right on routine bikes; figures learned from them: before, seen, now") { topic, form };
        command.SetAction(parsed =>
        {
            var (history, copy) = (options.History(parsed), options.Copy(parsed));
            var report = parsed.GetValue(topic) is { } id ? StandReport.Rates(Approval.Prior(copy, Topic(copy, id), history.Notebook), history) : StandReport.Standing(history, TopicsOf(copy));
            return Write(desk, Text(report, FormOf(parsed.GetValue(form))));
        });
        return command;
    }

    static Option<string> Form() => new("--as") { Description = "text, csv, json or html", HelpName = "FORM", DefaultValueFactory = _ => "text" };

    static string FormOf(string? form) => form is not null && Forms.Contains(form, StringComparer.Ordinal) ? form : throw new Complaint(Choose.Unknown("form", form ?? "", Forms), ExitCode.Usage);

    static string Text(Report report, string form) => form == "text" ? ReportText.Plain(report) : ReportText.Of(report, form);

    static int Write(Desk desk, string text)
    {
        desk.Out.Write(text);
        return ExitCode.Done;
    }

    static Bike Known(History history, int number) => history.Notebook.Find(number)
        ?? throw new Complaint($"There is no bike {number}; {(history.Notebook.Bikes.Count == 0 ? "none is written down yet" : $"they go from 1 to {history.Notebook.Bikes.Count}")}.", ExitCode.Usage);

    static IReadOnlyList<Topic> TopicsOf(WorkshopCopy copy) => [.. copy.TopicIds.Select(copy.Topic).OfType<Topic>()];

    static Topic Topic(WorkshopCopy copy, string id) => copy.Topic(Choose.One("topic", id, copy.TopicIds)) ?? throw new Complaint($"The topic {id} has faults; 'apprentice check' tells them.", ExitCode.Fault);

    static int One(Desk desk, Bike bike, History history, WorkshopCopy copy, string form)
    {
        var benches = new Dictionary<string, Workbench?>(StringComparer.Ordinal);
        Workbench? BenchOf(string id)
        {
            if (!benches.TryGetValue(id, out var bench)) benches[id] = bench = copy.Topic(id) is { } topic ? new Workbench(history.Notebook.Priced(topic)) : null;
            return bench;
        }

        var views = StandView.Of(bike, BenchOf);
        return Write(desk, form switch
        {
            "text" => StandSheets.Card(history.Notebook, bike, views, TimeProvider.System.GetLocalNow()).Text(),
            "html" => StandSheets.Card(history.Notebook, bike, views, TimeProvider.System.GetLocalNow()).Html(),
            _ => ReportText.Of(StandReport.Bike(bike, views), form),
        });
    }

    static int Sheet(Desk desk, Topic topic, string form)
    {
        var page = StandSheets.Before([topic], []);
        return Write(desk, form switch
        {
            "html" => page.Html(),
            "text" => page.Text(),
            _ => throw new Complaint("A sheet is text or html: leave --as out, or write --as html.", ExitCode.Usage),
        });
    }

    static int Import(Desk desk, string logFile, WorkshopCopy copy, string file)
    {
        using var log = Log.Open(logFile);
        var now = TimeProvider.System.GetLocalNow();
        var bikes = new BikeFile(copy, History.Of(log.Read()).Notebook, now);
        foreach (var entry in bikes.Read(file)) log.Append(new Logged(now, entry));
        desk.Out.WriteLine($"{Plural.Of(bikes.Count, "bike")} taken in.");
        return ExitCode.Done;
    }

    static int Take(Desk desk, string logFile, WorkshopCopy copy, string file)
    {
        if (!File.Exists(file)) throw new Complaint($"There is no file '{file}'.", ExitCode.Usage);
        IReadOnlyList<RealCase> cases;
        try
        {
            cases = CaseExchange.Read(File.ReadAllText(file));
        }
        catch (LogException e)
        {
            throw new Complaint($"{file}: {e.Message}", ExitCode.Fault);
        }

        new CaseFaults(file, copy).Check(cases);
        using var log = Log.Open(logFile);
        foreach (var it in cases) log.Append(new Logged(TimeProvider.System.GetLocalNow(), new LogEntry.CaseTaken(it)));
        desk.Out.WriteLine($"{Plural.Of(cases.Count, "case")} taken in. They are for practice; a paper may hold them too, outside its marks.");
        return ExitCode.Done;
    }
}
