using System.CommandLine;
using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Reports;
using Apprentice.Storage;

namespace Apprentice.Commands;

/// <summary><c>export</c>, <c>import</c>, <c>erase</c> and <c>rename</c>: a person's records to a file, from a file, away for good, and under a name that is put right.</summary>
static class RecordsCommands
{
    static readonly string[] Forms = ["csv", "json", "html", "move"];

    /// <summary><c>export [NAME]</c>: a person's records, or the workshop's page.</summary>
    public static Command Export(Desk desk, SourceOptions sources)
    {
        var name = new Argument<string?>("NAME") { Description = "Whose records; without it the page of the workshop", Arity = ArgumentArity.ZeroOrOne };
        var form = new Option<string>("--as") { Description = "csv, json, html, or move: the file that import reads on another machine", HelpName = "FORM", DefaultValueFactory = _ => "json" };
        var command = new Command("export", "Writes a person's records, or the workshop's page") { name, form, sources.Shipped };
        command.SetAction(parsed =>
        {
            var chosen = parsed.GetRequiredValue(form);
            if (!Forms.Contains(chosen, StringComparer.Ordinal)) throw new Complaint(Choose.Unknown("form", chosen, Forms), ExitCode.Usage);
            using var log = sources.OpenLog(parsed);
            var entries = log.Read();
            var history = History.Of(entries);
            var taught = sources.Taught(parsed);
            var topics = taught.Topics.AllTopics();
            taught.Tell(desk.Error);
            desk.Out.Write(Text(entries, history, topics, parsed.GetValue(name), chosen));
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary><c>import FILE</c>: records from another machine.</summary>
    public static Command Import(Desk desk, SourceOptions sources)
    {
        var file = new Argument<string>("FILE") { Description = "A file that 'export NAME --as move' wrote" };
        var command = new Command("import", "Takes in a person's records from another machine") { file };
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(file);
            if (!File.Exists(path)) throw new Complaint($"There is no file '{path}'.", ExitCode.Usage);
            var (person, entries) = Read(path);
            using var log = sources.OpenLog(parsed, isNew: true);
            var before = log.Read();
            var history = History.Of(before);
            if (history.Called.Former.Contains(person, StringComparer.OrdinalIgnoreCase))
                throw new Complaint($"{person} was the name of {history.Called.OfTyped(person)} here. Correct the name on the other machine first ('rename'), and write the file anew.", ExitCode.Fault);
            if (history.People.Contains(person, StringComparer.OrdinalIgnoreCase))
                throw new Complaint($"{person} is here already. Erase those records first ('erase \"{person}\" --yes'), or use another file with --data.", ExitCode.Fault);
            var after = PersonEntries.After(history, entries);
            _ = History.Of([.. before, .. after]);
            log.Rewrite([.. before, .. after]);
            desk.Out.WriteLine($"{person}: {Plural.Of(entries.Count, "record")} taken in.");
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary><c>erase NAME --yes</c>: a person's records away for good.</summary>
    public static Command Erase(Desk desk, SourceOptions sources)
    {
        var name = new Argument<string>("NAME") { Description = "Whose records" };
        var yes = new Option<bool>("--yes") { Description = "Do it; without this only what would be erased is said" };
        var command = new Command("erase", "Erases a person's records for good") { name, yes };
        command.SetAction(parsed =>
        {
            using var log = sources.OpenLog(parsed);
            var entries = log.Read();
            var history = History.Of(entries);
            var person = Known(history.People, parsed.GetRequiredValue(name));
            if (string.Equals(history.Workshop?.Lead, person, StringComparison.Ordinal)) throw new Complaint($"{person} leads the workshop. Name another lead first, in the program under 0, \"Change the set-up of the workshop\".", ExitCode.Fault);
            var left = PersonEntries.Without(entries, person);
            var count = entries.Count - left.Count;
            if (!parsed.GetValue(yes))
            {
                desk.Out.WriteLine($"{person}: {Plural.Of(count, "record")} would be erased for good. Nothing was changed. Write --yes to do it.");
                return ExitCode.Done;
            }

            log.Rewrite(left);
            desk.Out.WriteLine($"{person}: {Plural.Of(count, "record")} erased.");
            var lines = history.NamesOf(person).Sum(n => Mentions(left, n));
            if (lines > 0) desk.Out.WriteLine($"{Plural.Of(lines, "record")} of other people still {(lines == 1 ? "holds" : "hold")} this name: what they wrote, or what {person} signed or decided for them.");
            return ExitCode.Done;
        });
        return command;
    }

    /// <summary><c>rename NAME NEW</c>: a name is put right.</summary>
    public static Command Rename(Desk desk, SourceOptions sources)
    {
        var name = new Argument<string>("NAME") { Description = "The name until now" };
        var now = new Argument<string>("NEW") { Description = "The name from now on" };
        var command = new Command("rename", "Corrects a person's name, from now on and everywhere") { name, now };
        command.SetAction(parsed =>
        {
            using var log = sources.OpenLog(parsed);
            var history = History.Of(log.Entries());
            var person = Known(history.Names, parsed.GetRequiredValue(name));
            var called = parsed.GetRequiredValue(now).Trim();
            if (PersonName.Fault(history, person, called) is { } fault) throw new Complaint(fault, ExitCode.Fault);
            log.Append(new Logged(TimeProvider.System.GetLocalNow(), new LogEntry.PersonRenamed(person, called)));
            desk.Out.WriteLine($"{person}: {Words.Of("rename.done", ("name", called))}");
            return ExitCode.Done;
        });
        return command;
    }

    static string Text(IReadOnlyList<Logged> entries, History history, IReadOnlyList<Topic> topics, string? name, string form)
    {
        var now = TimeProvider.System.GetLocalNow();
        if (name is not null)
        {
            var person = Known(history.People, name);
            return form == "move" ? Records.Write(person, PersonEntries.Of(entries, person)) : ReportText.Of(LearnerReport.Of(history, topics, person, now), form);
        }

        if (form == "move") throw new Complaint("Only a person's records can be moved: write whose, 'export NAME --as move'.", ExitCode.Usage);
        return history.Workshop is null
            ? throw new Complaint("No workshop is set up in this file. Write whose records to export, or set the workshop up in the program.", ExitCode.Fault)
            : ReportText.Of(WorkshopView.Report(history, topics, now), form);
    }

    static int Mentions(IReadOnlyList<Logged> entries, string person) =>
        Records.Write("", entries).Split('\n').Count(line => line.Contains(person, StringComparison.OrdinalIgnoreCase));

    static (string Person, IReadOnlyList<Logged> Entries) Read(string path)
    {
        try
        {
            return Records.Read(File.ReadAllText(path));
        }
        catch (LogException e)
        {
            throw new Complaint($"{path}: {e.Message}", ExitCode.Fault);
        }
    }

    static string Known(IReadOnlyList<string> people, string name) => people.FirstOrDefault(p => string.Equals(p, name, StringComparison.Ordinal))
        ?? throw new Complaint(people.Count == 0 ? "Nobody has a name in this file yet." : Choose.Unknown("person", name, people), ExitCode.Usage);
}
