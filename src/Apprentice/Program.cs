using Apprentice;
using Apprentice.Commands;
using Apprentice.Plain;
using Apprentice.Storage;

try
{
    return CommandLine.Run(args, new Desk(Console.Out, Console.Error), Screens);
}
catch (LogException e)
{
    Console.Error.WriteLine(e.Message);
    return ExitCode.World;
}
catch (Exception e) when (e is IOException or UnauthorizedAccessException)
{
    Console.Error.WriteLine($"The program had to stop: {e.Message}");
    return ExitCode.World;
}

static int Screens(ScreenOptions options)
{
    string[] data = options.DataFile is { } file ? ["--data", file] : [];
    var dataFile = DataFile.Locate(data, Environment.GetEnvironmentVariable);
    var folder = WorkshopFolder.Of(options.WorkshopFolder, dataFile, options.TopicsFolder);
    var (changes, faulty) = folder?.Read() ?? ([], []);
    foreach (var fault in faulty) Console.Error.WriteLine(fault);
    if (faulty.Count > 0) return ExitCode.Fault;
    var shelf = Shelf.OfTopics(options.TopicsFolder);
    var copy = WorkshopFolder.Copy(shelf.Texts, Shelf.OfLessons(options.TopicsFolder).Texts, changes);
    foreach (var fault in copy.Faults) Console.Error.WriteLine(fault);
    var readings = copy.Readings();
    foreach (var fault in readings.SelectMany(r => r.Faults)) Console.Error.WriteLine(fault);
    var topics = readings.Select(r => r.Topic).OfType<Apprentice.Engine.Topics.Topic>().ToList();
    if (topics.Count < readings.Count) return ExitCode.Fault;
    var plain = options.Plain || Environment.GetEnvironmentVariable("APPRENTICE_PLAIN") is "1";
    return Shell.Run(new ShellOptions(dataFile, topics, TimeProvider.System, Console.Error)
    {
        Paper = options.Paper,
        Library = copy.Library(topics),
        Copy = copy,
        Folder = folder,
        Plain = plain ? PlainDesk.Own() : null,
    });
}
