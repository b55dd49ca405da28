using System.CommandLine;
using Apprentice.Content;
using Apprentice.Content.Lessons;
using Apprentice.Content.Topics;

namespace Apprentice.Commands;

/// <summary><c>check [FOLDER…]</c>: every fault of every topic and lesson.</summary>
static class CheckCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk)
    {
        var folders = new Argument<string[]>("FOLDER") { Description = "Folders to check; else question-bank and lessons, here or beside the program", Arity = ArgumentArity.ZeroOrMore };
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var command = new Command("check", "Checks topic files and lessons") { folders, json };
        command.SetAction(parsed => Run(desk, Shelves(parsed.GetValue(folders) ?? []), parsed.GetValue(json)));
        return command;
    }

    static int Run(Desk desk, IEnumerable<Shelf> shelves, bool json)
    {
        var files = shelves.SelectMany(s => s.Files).ToList();
        var faults = files.SelectMany(FaultsOf).ToList();
        if (json)
        {
            Json.Write(desk.Out, new { Json.Schema, Files = files.Count, Faults = faults.Select(f => new { f.File, f.Line, f.Message }) });
        }
        else
        {
            foreach (var fault in faults) desk.Out.WriteLine(fault);
            desk.Out.WriteLine($"{Plural.Of(files.Count, "file")}, {Plural.Of(faults.Count, "fault")}");
        }

        return faults.Count == 0 ? ExitCode.Done : ExitCode.Fault;
    }

    static IEnumerable<Shelf> Shelves(string[] folders)
    {
        if (folders.Length > 0) return folders.Select(Shelf.OfFolder);
        string[] names = [Shelf.Topics, Shelf.Lessons];
        if (names.Any(Directory.Exists)) return names.Where(Directory.Exists).Select(Shelf.OfFolder);
        var beside = names.Select(name => Path.Combine(AppContext.BaseDirectory, name)).Where(Directory.Exists).ToList();
        return beside.Count > 0 ? beside.Select(Shelf.OfFolder) : names.Select(Shelf.Inside);
    }

    // A file anywhere under a folder called lessons is a lesson; any other is a topic.
    static IReadOnlyList<Fault> FaultsOf(ContentFile file) => IsLesson(file.Name)
        ? LessonCheck.Faults(file.Name, file.Text(), link => IsThere(file.Name, link))
        : TopicReader.Read(file.Name, file.Text()).Faults;

    static bool IsLesson(string name) => Path.GetFullPath(name).Split(Path.DirectorySeparatorChar).SkipLast(1).Contains(Shelf.Lessons, StringComparer.Ordinal);

    static bool IsThere(string file, string link)
    {
        var target = Path.Combine(Path.GetDirectoryName(file) ?? "", link);
        return File.Exists(target) || Directory.Exists(target);
    }
}
