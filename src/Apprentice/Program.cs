using Apprentice;
using Apprentice.Commands;
using Apprentice.Plain;
using Apprentice.Storage;

if (!args.Any(a => a is "--help" or "-h" or "-?" or "--version")) Shelf.Begin();
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
    var taught = Taught.Of(options.TopicsFolder, options.WorkshopFolder, dataFile);
    var readings = taught.Topics.ReadAll();
    foreach (var fault in taught.Unfit.Concat(readings.SelectMany(r => r.Faults))) Console.Error.WriteLine(fault);
    var topics = readings.Select(r => r.Topic).OfType<Apprentice.Engine.Topics.Topic>().ToList();
    if (topics.Count < readings.Count) return ExitCode.Fault;
    var plain = options.Plain || Environment.GetEnvironmentVariable("APPRENTICE_PLAIN") is "1";
    return Shell.Run(new ShellOptions(dataFile, topics, TimeProvider.System, Console.Error)
    {
        Paper = options.Paper,
        Library = taught.Library(topics),
        Copy = taught.Copy,
        Folder = taught.Folder,
        Plain = plain ? PlainDesk.Own() : null,
    });
}
