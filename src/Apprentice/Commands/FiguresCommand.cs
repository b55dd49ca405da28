using System.CommandLine;
using Apprentice.Content.Lessons;

namespace Apprentice.Commands;

/// <summary><c>figures</c>: how many figures stand in topics and lessons, and where they come from.</summary>
static class FiguresCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var command = new Command("figures", "Counts the figures of topics and lessons by where they come from") { json, sources.Shipped };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            var topics = taught.Topics.AllTopics();
            var counts = FigureCount.Of(topics, taught.Library(topics));
            taught.Tell(desk.Error);
            if (parsed.GetValue(json)) Json.Write(desk.Out, new { Json.Schema, Figures = counts });
            else foreach (var count in counts) desk.Out.WriteLine($"{count.Where}: {count.Sourced} sourced, {count.Practice} common practice, {count.Judged} judgement, {count.Memory} from memory, {count.Worked} worked out, {count.Unmarked} unmarked");
            return counts.All(c => c.Unmarked == 0) ? ExitCode.Done : ExitCode.Fault;
        });
        return command;
    }
}
