using System.CommandLine;
using System.Globalization;
using Apprentice.Content.Changes;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Storage;

namespace Apprentice.Commands;

/// <summary><c>prices</c>: the lead's list of prices and days as CSV, out and in again.</summary>
static class PricesCommand
{
    const string Header = "topic,spare,price,sending_back,days,return_days";
    const double Most = 100_000;
    const int MostDays = 3650;

    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions options)
    {
        var take = new Option<string?>("--take") { Description = "Take in a list in the same form; lines without return_days are left as they are", HelpName = "FILE" };
        var command = new Command("prices", "The lead's list of prices and days, as CSV") { take };
        command.SetAction(parsed =>
        {
            var copy = options.Copy(parsed);
            if (parsed.GetValue(take) is not { } file) return Give(desk, options.History(parsed), copy);
            if (!File.Exists(file)) throw new Complaint($"There is no file '{file}'.", ExitCode.Usage);
            var entries = Read(file, File.ReadAllText(file), copy);
            using var log = Log.Open(options.LogFile(parsed));
            foreach (var entry in entries) log.Append(new Logged(TimeProvider.System.GetLocalNow(), entry));
            desk.Out.WriteLine($"{Plural.Of(entries.Count, "price")} taken in.");
            return ExitCode.Done;
        });
        return command;
    }

    static int Give(Desk desk, History history, WorkshopCopy copy)
    {
        desk.Out.WriteLine(Header);
        foreach (var topic in copy.TopicIds.Select(copy.Topic).OfType<Topic>())
        {
            foreach (var spare in history.Notebook.Priced(topic).Spares)
                desk.Out.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{topic.Id},{spare.Id},{spare.Price:0.##},{spare.ReturnCost:0.##},{spare.DelayDays:0.##},{history.Notebook.ReturnDays(topic.Id, spare.Id)}"));
        }

        return ExitCode.Done;
    }

    static List<LogEntry.PriceSet> Read(string file, string text, WorkshopCopy copy)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        if (lines[0].Trim() != Header) throw new Complaint($"{file}:1: The first line would be {Header}.", ExitCode.Fault);
        var topics = new Dictionary<string, Topic?>(StringComparer.Ordinal);
        var entries = new List<LogEntry.PriceSet>();
        for (var n = 1; n < lines.Length; n++)
        {
            var cells = lines[n].Split(',').Select(c => c.Trim()).ToArray();
            if (lines[n].Trim().Length == 0 || (cells.Length == 6 && cells[5].Length == 0)) continue;
            if (cells.Length != 6) throw new Complaint($"{file}:{n + 1}: Six cells would do here, as in the first line; there are {cells.Length}.", ExitCode.Fault);
            if (!topics.TryGetValue(cells[0], out var topic)) topics[cells[0]] = topic = copy.TopicIds.Contains(cells[0]) ? copy.Topic(cells[0]) : null;
            if (topic is null) throw new Complaint($"{file}:{n + 1}: {Choose.Unknown("topic", cells[0], copy.TopicIds)}", ExitCode.Fault);
            if (topic.Spares.All(s => s.Id != cells[1])) throw new Complaint($"{file}:{n + 1}: {Choose.Unknown("spare", cells[1], topic.Spares.Select(s => s.Id))}", ExitCode.Fault);
            double Cell(int c) => double.TryParse(cells[c], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value <= Most
                ? value : throw new Complaint($"{file}:{n + 1}: \"{cells[c]}\" is no number from 0 to {Most:0}; write 12.50.", ExitCode.Fault);
            if (!int.TryParse(cells[5], NumberStyles.None, CultureInfo.InvariantCulture, out var days) || days > MostDays)
                throw new Complaint($"{file}:{n + 1}: \"{cells[5]}\" is no number of days from 0 to {MostDays}.", ExitCode.Fault);
            entries.Add(new LogEntry.PriceSet(topic.Id, cells[1], Cell(2), Cell(3), Cell(4), days));
        }

        return entries;
    }
}
