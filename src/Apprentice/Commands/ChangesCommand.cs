using System.CommandLine;
using Apprentice.Content.Changes;

namespace Apprentice.Commands;

/// <summary><c>changes</c>: what the workshop has changed over the shipped topics and lessons, as differences; taken back, given away, taken in.</summary>
static class ChangesCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions options)
    {
        var back = new Option<int?>("--take-back") { Description = "Take a change back; the shipped lines stand again", HelpName = "NUMBER" };
        var by = new Option<string?>("--by") { Description = "Who does it", HelpName = "NAME" };
        var give = new Option<string?>("--give") { Description = "Write those in force into a file for another workshop, under this name of ours", HelpName = "NAME" };
        var take = new Option<string?>("--take") { Description = "Take in the changes of another workshop", HelpName = "FILE" };
        var files = new Option<string?>("--files") { Description = "Write all topics and lessons with the changes into a folder, to be used with --topics", HelpName = "FOLDER" };
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var command = new Command("changes", "The workshop's changes over the shipped topics and lessons") { back, by, give, take, files, json };
        command.SetAction(parsed =>
        {
            var folder = options.Folder(parsed);
            using var held = parsed.GetValue(back) is not null || parsed.GetValue(take) is not null ? options.Hold(parsed) : null;
            var copy = options.Copy(parsed);
            var who = parsed.GetValue(by) ?? "";
            if (parsed.GetValue(back) is { } number) return TakeBack(desk, folder, copy, number, who);
            if (parsed.GetValue(give) is { } name) return Give(desk, copy, name);
            if (parsed.GetValue(take) is { } file) return Take(desk, folder, copy, file);
            if (parsed.GetValue(files) is { } to) return Files(desk, copy, to);
            if (parsed.GetValue(json)) Json.Write(desk.Out, new { Json.Schema, Changes = copy.Changes.Select(c => Of(copy, c)), Faults = copy.Faults.Select(f => new { f.File, f.Line, f.Message }) });
            else Tell(desk, copy);
            return copy.Faults.Count == 0 ? ExitCode.Done : ExitCode.Fault;
        });
        return command;
    }

    static object Of(WorkshopCopy copy, Change change) => new
    {
        change.Number,
        change.Title,
        change.File,
        Day = change.Day.ToString("O"),
        change.By,
        change.Because,
        change.From,
        change.TakesBack,
        State = State(copy, change),
        change.Was,
        change.Is,
    };

    static string State(WorkshopCopy copy, Change change) => change.TakesBack is not null ? "takes-back"
        : copy.InForce.All(c => c.Number != change.Number) ? "taken-back" : copy.Unfit().Contains(change.Number) ? "does-not-fit" : "in-force";

    static void Tell(Desk desk, WorkshopCopy copy)
    {
        foreach (var change in copy.Changes)
        {
            desk.Out.WriteLine($"{change.Number}: {change.Title} ({State(copy, change)}; {string.Join(", ", ((string[])[change.File, change.Day.ToString("O"), change.By, change.Because, change.From]).Where(t => t.Length > 0))})");
            foreach (var line in WorkshopCopy.Difference(change)) desk.Out.WriteLine($"   {line}");
        }

        foreach (var fault in copy.Faults) desk.Out.WriteLine(fault);
        desk.Out.WriteLine($"{Plural.Of(copy.InForce.Count, "change")} in force.");
    }

    static int TakeBack(Desk desk, WorkshopFolder folder, WorkshopCopy copy, int number, string by)
    {
        if (copy.InForce.All(c => c.Number != number)) throw new Complaint($"There is no change {number} in force. 'changes' tells them all.", ExitCode.Usage);
        if (copy.BuiltOn(number) is [var other, ..]) throw new Complaint($"Change {other.Number} builds on change {number}. Take that one back first.", ExitCode.Fault);
        var back = copy.TakenBack(number, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().DateTime), by);
        folder.Write([.. copy.Changes, back]);
        desk.Out.WriteLine($"Change {number} is taken back.");
        return ExitCode.Done;
    }

    static int Give(Desk desk, WorkshopCopy copy, string name)
    {
        desk.Out.Write(ChangesFile.Write([.. copy.InForce.Select((c, i) => c with { Number = i + 1, From = c.From.Length > 0 ? c.From : name })]));
        return ExitCode.Done;
    }

    static int Take(Desk desk, WorkshopFolder folder, WorkshopCopy copy, string file)
    {
        if (!File.Exists(file)) throw new Complaint($"There is no file '{file}'.", ExitCode.Usage);
        var (changes, faults) = ChangesFile.Read(file, File.ReadAllText(file));
        if (faults.Count > 0) throw new Complaint(faults[0].ToString(), ExitCode.Fault);
        var given = changes.Where(c => c.TakesBack is null).ToList();
        var incoming = given.Where(c => !copy.InForce.Any(here => IsSame(here, c))).Select((c, i) => c with { Number = copy.NextNumber + i }).ToList();
        var after = copy.With(incoming);
        var unfit = incoming.Where(c => after.Unfit().Contains(c.Number)).ToList();
        folder.Write(after.Changes);
        desk.Out.WriteLine($"{Plural.Of(incoming.Count, "change")} taken in.");
        if (given.Count > incoming.Count) desk.Out.WriteLine($"{Plural.Of(given.Count - incoming.Count, "change")} of the file {(given.Count - incoming.Count == 1 ? "is" : "are")} here already and {(given.Count - incoming.Count == 1 ? "was" : "were")} left out.");
        if (unfit.Count > 0) desk.Out.WriteLine($"{Plural.Of(unfit.Count, "change")} {(unfit.Count == 1 ? "fits" : "fit")} nowhere and {(unfit.Count == 1 ? "is" : "are")} kept aside.");
        foreach (var fault in copy.With(folder.Read().Changes.Skip(copy.Changes.Count)).Faults) desk.Out.WriteLine(fault);
        return unfit.Count == 0 ? ExitCode.Done : ExitCode.Fault;
    }

    // The same file taken in twice, or a change that came home from another workshop.
    static bool IsSame(Change here, Change given) =>
        here.File == given.File && here.Day == given.Day && here.By == given.By && here.Was.SequenceEqual(given.Was) && here.Is.SequenceEqual(given.Is);

    static int Files(Desk desk, WorkshopCopy copy, string to)
    {
        if (Directory.Exists(to) && Directory.EnumerateFileSystemEntries(to).Any()) throw new Complaint($"The folder '{to}' is not empty. Name a new one.", ExitCode.Usage);
        foreach (var path in copy.Paths)
        {
            var file = Path.Combine(to, path.Replace('/', Path.DirectorySeparatorChar));
            Directory.CreateDirectory(Path.GetDirectoryName(file) ?? to);
            File.WriteAllText(file, copy.Text(path));
        }

        desk.Out.WriteLine($"{Plural.Of(copy.Paths.Count, "file")} written. Use them with --topics {Path.Combine(to, "question-bank")}");
        return ExitCode.Done;
    }
}
