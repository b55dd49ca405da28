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
    var shelf = Shelf.OfTopics(options.TopicsFolder);
    var readings = shelf.Ids.Select(shelf.Read).ToList();
    foreach (var fault in readings.SelectMany(r => r.Faults)) Console.Error.WriteLine(fault);
    var topics = readings.Select(r => r.Topic).OfType<Apprentice.Engine.Topics.Topic>().ToList();
    if (topics.Count < readings.Count) return ExitCode.Fault;
    string[] data = options.DataFile is { } file ? ["--data", file] : [];
    var plain = options.Plain || Environment.GetEnvironmentVariable("APPRENTICE_PLAIN") is "1";
    return Shell.Run(new ShellOptions(DataFile.Locate(data, Environment.GetEnvironmentVariable), topics, TimeProvider.System, Console.Error)
    {
        Library = Shelf.OfLessons(options.TopicsFolder).Library(topics),
        Paper = options.Paper,
        Plain = plain ? PlainDesk.Own() : null,
    });
}
