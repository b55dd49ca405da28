using System.CommandLine;
using Apprentice.Content;
using Apprentice.Content.Lessons;
using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary><c>check [FOLDER…]</c>: every fault of every topic and lesson.</summary>
static class CheckCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var folders = new Argument<string[]>("FOLDER") { Description = "Folders to check; else question-bank and lessons here; else the shipped ones with the workshop's changes", Arity = ArgumentArity.ZeroOrMore };
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var explain = new Option<string?>("--explain") { Description = "Say what a topic is able to tell: which clues tell which kinds apart, the shortest way to each, how hard its cases are", HelpName = "TOPIC" };
        var command = new Command("check", "Checks topic files and lessons") { folders, json, explain, sources.Shipped };
        command.SetAction(parsed =>
        {
            var (shelves, unfit) = Shelves(parsed.GetValue(folders) ?? [], sources, parsed);
            return parsed.GetValue(explain) is { } topic ? Explain(desk, shelves, topic, parsed.GetValue(json)) : Run(desk, shelves, unfit, parsed.GetValue(json));
        });
        return command;
    }

    static int Run(Desk desk, IReadOnlyList<Shelf> shelves, IReadOnlyList<Fault> unfit, bool json)
    {
        var lessons = shelves.FirstOrDefault(s => s.Files.Any(f => IsLesson(f.Name)));
        var register = lessons is null ? Shelf.RegisterOf(Shelf.OfLessons(null)) : Shelf.RegisterOf(lessons);
        var files = shelves.SelectMany(s => s.Files).ToList();
        var texts = files.Select(f => (f.Name, Text: f.Text(), IsLesson: IsLesson(f.Name))).ToList();
        var topics = TopicReader.ReadAll([.. texts.Where(f => !f.IsLesson).Select(f => (f.Name, f.Text))], () => register);
        var check = lessons is null || topics.Count == 0 ? null : CheckOf(lessons, [.. topics.Select(t => t.Topic).OfType<Topic>()]);
        List<Fault> faults =
        [
            .. topics.SelectMany(t => t.Faults),
            .. SideBySide.Each([.. texts.Where(f => f.IsLesson)], f => LessonCheck.Faults(f.Name, f.Text, link => IsThere(f.Name, link))).SelectMany(f => f),
            .. check?.Faults() ?? [],
            .. unfit,
        ];
        var reading = check is null || lessons is null ? null : ReadingText.Of(check, lessons);
        if (json)
        {
            Json.Write(desk.Out, new { Json.Schema, Files = files.Count, Faults = faults.Select(f => new { f.File, f.Line, f.Message }), Reading = reading });
        }
        else
        {
            foreach (var fault in faults) desk.Out.WriteLine(fault);
            foreach (var line in reading?.Lines ?? []) desk.Out.WriteLine(line);
            desk.Out.WriteLine($"{Plural.Of(files.Count, "file")}, {Plural.Of(faults.Count, "fault")}");
        }

        return faults.Count == 0 ? ExitCode.Done : ExitCode.Fault;
    }

    static int Explain(Desk desk, IReadOnlyList<Shelf> shelves, string id, bool json)
    {
        var shelf = shelves.FirstOrDefault(s => s.Files.Any(f => !IsLesson(f.Name))) ?? throw new Complaint("There are no topics in these folders.", ExitCode.Usage);
        var explained = Explained.Of(shelf.Topic(id));
        if (json) Json.Write(desk.Out, new { Json.Schema, Explained = explained });
        else explained.Write(desk.Out);
        return ExitCode.Done;
    }

    static LibraryCheck CheckOf(Shelf lessons, IReadOnlyList<Topic> topics) => new(topics, lessons.Library(topics), path => $"{lessons.Folder}/{path}");

    // Folders of those who write topics are checked as they stand; the shipped files with the workshop's changes, and the changes too.
    static (IReadOnlyList<Shelf> Shelves, IReadOnlyList<Fault> Unfit) Shelves(string[] folders, SourceOptions sources, ParseResult parsed)
    {
        var named = parsed.GetValue(sources.Topics) ?? parsed.GetValue(sources.Workshop);
        string[] here = folders.Length > 0 ? folders : named is null ? [.. ((string[])[Shelf.Topics, Shelf.Lessons]).Where(Directory.Exists)] : [];
        if (here.Length > 0) return ([.. here.Select(Shelf.OfFolder)], []);
        var taught = sources.Taught(parsed);
        return ([taught.Topics, taught.Lessons], taught.Unfit);
    }

    // A file anywhere under a folder called lessons is a lesson; any other is a topic.
    static bool IsLesson(string name) => Path.GetFullPath(name).Split(Path.DirectorySeparatorChar).SkipLast(1).Contains(Shelf.Lessons, StringComparer.Ordinal);

    static bool IsThere(string file, string link)
    {
        var target = Path.Combine(Path.GetDirectoryName(file) ?? "", link);
        return File.Exists(target) || Directory.Exists(target);
    }
}
