using System.CommandLine;

namespace Apprentice.Commands;

/// <summary>The verbs of the program, and what is printed when one is written wrongly.</summary>
public static class CommandLine
{
    static readonly ParserConfiguration Plain = new() { EnablePosixBundling = false, ResponseFileTokenReplacer = null };

    /// <summary>Runs what was written on the command line.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <param name="desk">Where to write.</param>
    /// <param name="screens">Opens the screens, when no verb is written.</param>
    /// <returns>The exit code.</returns>
    public static int Run(IReadOnlyList<string> args, Desk desk, Func<ScreenOptions, int> screens)
    {
        var root = Root(desk, screens);
        var parsed = root.Parse(args, Plain);
        if (parsed.Errors.Count > 0) return Say(desk, Sentence(parsed), ExitCode.Usage);
        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = desk.Out, Error = desk.Error, EnableDefaultExceptionHandler = false });
        }
        catch (Complaint complaint)
        {
            return Say(desk, complaint.Message, complaint.ExitCode);
        }
    }

    static RootCommand Root(Desk desk, Func<ScreenOptions, int> screens)
    {
        var topics = new Option<string?>("--topics") { Description = "Folder of topic files to use instead of the shipped ones", HelpName = "FOLDER", Recursive = true };
        var data = new Option<string?>("--data") { Description = "File of the log", HelpName = "FILE", Recursive = true };
        var workshop = new Option<string?>("--workshop") { Description = "Folder of the workshop's changes, else the folder workshop beside the log", HelpName = "FOLDER", Recursive = true };
        var plain = new Option<bool>("--plain") { Description = "Lines in place of screens: for a screen reader, or a pipe (also APPRENTICE_PLAIN=1)" };
        var sources = new SourceOptions(topics, data, workshop);
        var root = new RootCommand("Teaches to tell which version, standard or size of a part is on the bike. Without a command it opens its screens.")
        {
            topics,
            data,
            workshop,
            plain,
            TopicsCommand.Make(desk, sources),
            IdentifyCommand.Make(desk, sources),
            CaseCommand.Make(desk, sources),
            GradeCommand.Make(desk, sources),
            CheckCommand.Make(desk, sources),
            LawsCommand.Make(desk, sources),
            FiguresCommand.Make(desk, sources),
            SheetsCommand.Make(desk, sources),
            PictureCommand.Make(desk, sources),
            RecordsCommands.Export(desk, sources),
            RecordsCommands.Import(desk, sources),
            RecordsCommands.Erase(desk, sources),
            RecordsCommands.Rename(desk, sources),
            StandCommands.Bike(desk, sources),
            StandCommands.Inbox(desk, sources),
            StandCommands.Rates(desk, sources),
            PricesCommand.Make(desk, sources),
            ChangesCommand.Make(desk, sources),
            PaperCommand.Make(desk, sources),
            MarkCommand.Sit(sources, screens),
            MarkCommand.Mark(desk, sources),
            ReportCommand.Appeal(sources, screens),
            ReportCommand.Make(desk, sources),
        };
        root.SetAction(parsed => screens(sources.Screens(parsed, parsed.GetValue(plain))));
        return root;
    }

    // An unknown word is answered with the nearest verbs or options.
    static string Sentence(ParseResult parsed)
    {
        var error = parsed.Errors[0].Message;
        if (parsed.UnmatchedTokens is not [var word, ..] || !error.Contains(word, StringComparison.Ordinal)) return error;
        var command = parsed.CommandResult.Command;
        var (what, names) = word.StartsWith('-') || command is not RootCommand
            ? ("option", command.Options.Select(o => o.Name))
            : ("command", command.Subcommands.Select(c => c.Name));
        return $"{Choose.Unknown(what, word, names)} See '{(command is RootCommand ? "" : $"{command.Name} ")}--help'.";
    }

    static int Say(Desk desk, string sentence, int exitCode)
    {
        desk.Error.WriteLine(sentence);
        return exitCode;
    }
}

/// <summary>What the screens are opened with.</summary>
/// <param name="DataFile">File of the log, or null for the usual place.</param>
/// <param name="TopicsFolder">Folder of topics, or null for the shipped ones.</param>
/// <param name="Plain">True for lines in place of screens.</param>
/// <param name="Paper">The sealed paper that is sat, or null.</param>
public sealed record ScreenOptions(string? DataFile, string? TopicsFolder, bool Plain, string? Paper = null)
{
    /// <summary>Folder of the workshop's changes, or null for the usual place.</summary>
    public string? WorkshopFolder { get; init; }
}
