using System.CommandLine;
using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary><c>case TOPIC --seed N …</c>: the case of a seed and a request.</summary>
static class CaseCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var topic = new Argument<string>("TOPIC") { Description = "The topic" };
        var seed = new Option<string>("--seed") { Description = "Same topic, seed and request, same case", HelpName = "N", Required = true };
        var provenance = new Option<string?>("--provenance") { Description = "Where the bike comes from", HelpName = "P" };
        var want = new Option<string?>("--want") { Description = "What the customer wants", HelpName = "W" };
        var opening = new Option<string?>("--opening") { Description = "What is told first", HelpName = "ID" };
        var select = new Option<string?>("--select") { Description = "How the opening must look: as-they-come, conflicting, suggests-change or leaves-two-open", HelpName = "S" };
        var offer = new Option<string?>("--offer") { Description = "How the job is seen: bench, photo or phone", HelpName = "C" };
        var tools = new Option<string?>("--tools") { Description = "Tools at hand", HelpName = "a,b" };
        var solution = new Option<bool>("--solution") { Description = "Print what is true and every look too" };
        var json = new Option<bool>("--json") { Description = "Print the case file" };
        var command = new Command("case", "Makes a case for practice") { topic, seed, provenance, want, opening, select, offer, tools, solution, json, sources.Shipped };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            var it = taught.Topic(parsed.GetRequiredValue(topic));
            taught.Tell(desk.Error, it);
            var request = RequestOf(it, parsed.GetValue(provenance), parsed.GetValue(want), parsed.GetValue(opening), parsed.GetValue(select), parsed.GetValue(offer), parsed.GetValue(tools));
            return Run(desk, new Workbench(it), request, SeedOf(parsed.GetRequiredValue(seed)), parsed.GetValue(solution), parsed.GetValue(json));
        });
        return command;
    }

    static int Run(Desk desk, Workbench bench, CaseRequest request, ulong seed, bool solution, bool json)
    {
        var made = bench.Make(request, seed) ?? throw new Complaint(
            $"No bike fits: an opening {request.Opening} that is {Choose.Dashed(request.Select)} is too rare among these bikes. Ask for another opening, selection or provenance.", ExitCode.Fault);
        if (json) Json.Write(desk.Out, CaseFile.Of(bench, made, solution));
        else CaseText.Write(desk.Out, bench, made, solution);
        return ExitCode.Done;
    }

    static CaseRequest RequestOf(Topic topic, string? provenance, string? want, string? opening, string? select, string? offer, string? tools)
    {
        var from = provenance is null ? topic.Provenances[0].Id : Choose.One("provenance", provenance, topic.Provenances.Select(p => p.Id));
        var wanted = want is null ? topic.Wants[0].Id : Choose.One("want", want, topic.Wants.Select(w => w.Id));
        var told = opening is null ? null : Choose.One("opening", opening, topic.Openings.Select(o => o.Id));
        var selection = select is null ? Selection.AsTheyCome : Choose.Value<Selection>("selection", select);
        if (told is null && selection != Selection.AsTheyCome)
            throw new Complaint($"--select {select} looks at what is told first, so it needs --opening {Nearest.Or([.. topic.Openings.Select(o => o.Id)])}.", ExitCode.Usage);
        var by = offer is null ? Channel.Bench : Choose.Value<Channel>("channel", offer);
        return new CaseRequest(from, wanted, told, selection, by, IdentifyCommand.ToolsOf(topic, tools));
    }

    static ulong SeedOf(string text) => ulong.TryParse(text, out var seed)
        ? seed : throw new Complaint($"--seed '{text}' is no seed; write a whole number from 0 to {ulong.MaxValue}.", ExitCode.Usage);
}
