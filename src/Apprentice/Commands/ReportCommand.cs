using System.CommandLine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Reports;

namespace Apprentice.Commands;

/// <summary><c>report WHAT</c>: results, the register, sorts of jobs after use, statements of IEEE 9274.1.1. It needs no passphrase.</summary>
static class ReportCommand
{
    static readonly string[] Whats = ["candidate", "result", "group", "register", "use", "xapi"];
    static readonly string[] Forms = ["html", "csv", "json"];

    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var what = new Argument<string>("WHAT") { Description = "candidate, result, group, register, use or xapi" };
        var of = new Argument<string?>("NAME") { Description = "Whose (candidate, xapi), which paper (result), which permission (use)", Arity = ArgumentArity.ZeroOrOne };
        var form = new Option<string>("--as") { Description = "html for print, csv, or json", HelpName = "FORM", DefaultValueFactory = _ => "html" };
        var json = new Option<bool>("--json") { Description = "The same as --as json" };
        var home = new Option<string?>("--home") { Description = "xapi: address that names the workshop", HelpName = "ADDRESS" };
        var command = new Command("report", "Prints results, the register, sorts of jobs after use, or statements for a learning record store") { what, of, form, json, home, sources.Shipped };
        command.SetAction(parsed =>
        {
            var chosen = parsed.GetValue(json) ? "json" : Choose.One("form", parsed.GetRequiredValue(form), Forms);
            var asked = Choose.One("report", parsed.GetRequiredValue(what), Whats);
            var taught = sources.Taught(parsed);
            var request = new Request(sources.History(parsed), taught.Topics.AllTopics(), TimeProvider.System.GetLocalNow(), parsed.GetValue(of), chosen, parsed.GetValue(home));
            taught.Tell(desk.Error);
            desk.Out.Write(Text(asked, request));
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary><c>appeal FILE</c>: a questioned job for the second person.</summary>
    public static Command Appeal(SourceOptions sources, Func<ScreenOptions, int> screens)
    {
        var file = new Argument<string>("FILE") { Description = "The file of a questioned job" };
        var plain = new Option<bool>("--plain") { Description = "Lines in place of screens" };
        var command = new Command("appeal", "Opens a questioned job for a second person, by the code that was given out with it") { file, plain };
        command.SetAction(parsed => screens(sources.Screens(parsed, parsed.GetValue(plain), parsed.GetRequiredValue(file))));
        return command;
    }

    /// <summary>The text of a report.</summary>
    /// <exception cref="Complaint">A name is not known, or there is nothing to report.</exception>
    public static string Text(string what, Request asked)
    {
        var all = asked.History.Assessments;
        switch (what)
        {
            case "candidate":
                return asked.Form == "html"
                    ? AssessPages.Candidate(asked.History, asked.Topics, Candidate(asked), asked.Now)
                    : ReportText.Of(AssessReports.Candidate(asked.History, asked.Topics, Candidate(asked), asked.Now), asked.Form);
            case "result":
                var result = Result(asked);
                return asked.Form == "html"
                    ? AssessCandidatePage.Html(asked.History, asked.Topics, result, asked.Now)
                    : ReportText.Of(AssessReports.Candidate(asked.History, asked.Topics, result.Candidate, asked.Now), asked.Form);
            case "group":
                return asked.Form == "html" ? AssessPages.Group(asked.History, asked.Topics, asked.Now) : ReportText.Of(AssessReports.Group(asked.History, asked.Topics, asked.Now), asked.Form);
            case "register":
                return asked.Form == "html"
                    ? AssessRegister.Html(asked.History, asked.Topics, all.Registers, asked.Now)
                    : ReportText.Of(AssessReports.Register(asked.History, asked.Topics, asked.Now), asked.Form);
            case "use":
                return asked.Form == "html"
                    ? AssessPages.Use(asked.History, asked.Topics, Permission(asked), asked.Now)
                    : ReportText.Of(AssessUse.Report(asked.History, asked.Topics, Permission(asked), asked.Now), asked.Form);
            default:
                return new AssessXapi(Home(asked.Home)).Text(asked.History, asked.Topics, asked.Name is null ? null : Candidate(asked));
        }
    }

    static string Candidate(Request asked)
    {
        var people = asked.History.Assessments.Results.Select(r => r.Candidate).Distinct(StringComparer.Ordinal).ToList();
        return asked.Name is { } name ? Choose.One("candidate", name, people) : throw new Complaint($"Write whose: {Names(people)}.", ExitCode.Usage);
    }

    static PaperResult Result(Request asked)
    {
        var results = asked.History.Assessments.Results;
        return asked.Name is { } name ? Choose.One("paper", name, results, r => r.Paper) : throw new Complaint($"Write which paper: {Names([.. results.Select(r => r.Paper)])}.", ExitCode.Usage);
    }

    static string Permission(Request asked)
    {
        var permissions = asked.History.Assessments.Results.Select(r => r.Permission).Distinct(StringComparer.Ordinal).ToList();
        if (asked.Name is { } name) return Choose.One("permission", name, permissions);
        return permissions.Count == 1 ? permissions[0] : throw new Complaint($"Write which permission: {Names(permissions)}.", ExitCode.Usage);
    }

    static string Names(List<string> names) => names.Count == 0 ? "no paper was marked yet" : string.Join(", ", names.Select(n => $"\"{n}\""));

    static Uri Home(string? home)
    {
        if (home is null) return AssessXapi.Nobody;
        if (!Uri.TryCreate(home, UriKind.Absolute, out var address) || address.Scheme is not ("https" or "http"))
            throw new Complaint($"'{home}' is no address; write one such as https://workshop.example/.", ExitCode.Usage);
        return address.AbsoluteUri.EndsWith('/') ? address : new Uri(address.AbsoluteUri + "/");
    }
}

/// <summary>What is asked of a report.</summary>
/// <param name="History">The history.</param>
/// <param name="Topics">Topics at hand.</param>
/// <param name="Now">The time.</param>
/// <param name="Name">A candidate, a paper or a permission, or null.</param>
/// <param name="Form">html, csv or json.</param>
/// <param name="Home">Address that names the workshop, or null.</param>
sealed record Request(History History, IReadOnlyList<Topic> Topics, DateTimeOffset Now, string? Name, string Form, string? Home);
