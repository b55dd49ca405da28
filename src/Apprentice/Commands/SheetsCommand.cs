using System.CommandLine;
using Apprentice.Content.Sheets;
using Apprentice.Engine;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary><c>sheets FOLDER</c>: wall sheets for print, and which of those printed earlier are old.</summary>
static class SheetsCommand
{
    const int Deepest = 3;

    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var folder = new Argument<string>("FOLDER") { Description = "Where the sheets lie or are written to" };
        var topic = new Option<string[]>("--topic") { Description = "Only these topics", HelpName = "TOPIC", AllowMultipleArgumentsPerToken = true };
        var paper = new Option<string>("--paper") { Description = "A4 or A3", HelpName = "PAPER", DefaultValueFactory = _ => "A4" };
        var old = new Option<bool>("--old") { Description = "Write nothing; list the sheets that a change has made old" };
        var command = new Command("sheets", "Writes wall sheets, HTML for print") { folder, topic, paper, old, sources.Shipped };
        command.SetAction(parsed =>
        {
            var size = parsed.GetRequiredValue(paper).ToUpperInvariant();
            if (size is not ("A4" or "A3")) throw new Complaint($"There is no paper '{parsed.GetValue(paper)}' here; use A4 or A3.", ExitCode.Usage);
            var taught = sources.Taught(parsed);
            var into = parsed.GetRequiredValue(folder);
            if (parsed.GetValue(old)) return Old(desk, taught.Topics, into);
            var ids = parsed.GetValue(topic) is { Length: > 0 } chosen ? chosen : [.. taught.Topics.Ids];
            IReadOnlyList<Topic> wanted = [.. ids.Select(taught.Topic)];
            taught.Tell(desk.Error, wanted);
            return Write(desk, wanted, into, size);
        });
        return command;
    }

    /// <summary>The sheet of a topic.</summary>
    public static WallSheet Of(Topic topic)
    {
        var bench = new Workbench(topic);
        return new WallSheet(topic, [.. topic.Parts.Where(p => p.Asked).Select(p => CheckTree.Of(bench, topic.Provenances[0].Id, p.Id, Deepest))], SheetPictures.Of(topic));
    }

    static int Write(Desk desk, IReadOnlyList<Topic> topics, string folder, string paper)
    {
        Directory.CreateDirectory(folder);
        foreach (var topic in topics)
        {
            var file = Path.Combine(folder, $"{topic.Id}-{paper.ToLowerInvariant()}.html");
            File.WriteAllText(file, Of(topic).Html(paper, DateOnly.FromDateTime(TimeProvider.System.GetLocalNow().Date)));
            desk.Out.WriteLine(file);
        }

        return ExitCode.Done;
    }

    static int Old(Desk desk, Shelf shelf, string folder)
    {
        if (!Directory.Exists(folder)) throw new Complaint($"There is no folder '{folder}'.", ExitCode.Usage);
        var old = 0;
        foreach (var file in Directory.EnumerateFiles(folder, "*.html").Order(StringComparer.Ordinal))
        {
            if (WallSheet.VersionOf(File.ReadAllText(file)) is not { } printed) continue;
            var now = shelf.Ids.Contains(printed.Topic, StringComparer.Ordinal) ? shelf.Read(printed.Topic).Topic?.Version : null;
            if (now == printed.Version) continue;
            old++;
            desk.Out.WriteLine($"{file}: old, {(now is null ? "its topic is not here any more" : $"the topic is now version {now}")}");
        }

        desk.Out.WriteLine(old == 0 ? "No sheet is old." : $"{Plural.Of(old, "sheet")} to print anew.");
        return ExitCode.Done;
    }
}
