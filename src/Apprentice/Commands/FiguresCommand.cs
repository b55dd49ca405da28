using System.CommandLine;
using Apprentice.Content.Lessons;

namespace Apprentice.Commands;

/// <summary><c>figures</c>: how many figures stand in topics and lessons, and where they come from.</summary>
static class FiguresCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, Option<string?> folder)
    {
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var command = new Command("figures", "Counts the figures of topics and lessons by where they come from") { json };
        command.SetAction(parsed =>
        {
            var shelf = Shelf.OfTopics(parsed.GetValue(folder));
            var topics = shelf.AllTopics();
            var counts = FigureCount.Of(topics, Shelf.OfLessons(parsed.GetValue(folder)).Library(topics));
            if (parsed.GetValue(json)) Json.Write(desk.Out, new { Json.Schema, Figures = counts });
            else foreach (var count in counts) desk.Out.WriteLine($"{count.Where}: {count.Sourced} sourced, {count.Practice} common practice, {count.Judged} judgement, {count.Memory} from memory, {count.Worked} worked out, {count.Unmarked} unmarked");
            return counts.All(c => c.Unmarked == 0) ? ExitCode.Done : ExitCode.Fault;
        });
        return command;
    }
}
