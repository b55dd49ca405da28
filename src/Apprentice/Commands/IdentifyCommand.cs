using System.CommandLine;
using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary><c>identify TOPIC clue=finding …</c>: what findings on a real bike amount to.</summary>
static class IdentifyCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var topic = new Argument<string>("TOPIC") { Description = "The topic" };
        var findings = new Argument<string[]>("clue=finding") { Description = "What was found, as often as needed: plate=2016 stem-length=335mm stem-length=\"13 3/16in\" plate@phone=2016", Arity = ArgumentArity.ZeroOrMore };
        var provenance = new Option<string?>("--provenance") { Description = "Where the bike comes from", HelpName = "P" };
        var want = new Option<string?>("--want") { Description = "What the customer wants: then decisions are worked out", HelpName = "W" };
        var asks = new Option<string?>("--asks") { Description = "Parts to tell about", HelpName = "part,..." };
        var tools = new Option<string?>("--tools") { Description = "Tools at hand", HelpName = "a,b" };
        var channel = new Option<string?>("--channel") { Description = "How the bike is seen: bench, photo or phone", HelpName = "C" };
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var command = new Command("identify", "Says what findings on a bike amount to") { topic, findings, provenance, want, asks, tools, channel, json, sources.Shipped };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            var it = taught.Topic(parsed.GetRequiredValue(topic));
            taught.Tell(desk.Error, it);
            var by = parsed.GetValue(channel) is { } c ? Choose.Value<Channel>("channel", c) : Channel.Bench;
            var written = parsed.GetValue(findings) ?? [];
            if (written.FirstOrDefault(w => w.StartsWith('-')) is { } option)
                throw new Complaint($"{Choose.Unknown("option", option, command.Options.Select(o => o.Name))} See 'identify --help'.", ExitCode.Usage);
            var found = FindingText.ReadAll(it, written, by);
            var enquiry = EnquiryOf(it, parsed.GetValue(provenance), parsed.GetValue(want), parsed.GetValue(asks), parsed.GetValue(tools), by);
            return Run(desk, it, enquiry, found, parsed.GetValue(json));
        });
        return command;
    }

    static int Run(Desk desk, Topic topic, Enquiry enquiry, IReadOnlyList<Finding> findings, bool json)
    {
        var reasoning = new Workbench(topic).Reason(enquiry, findings);
        if (reasoning.Conflict.Impossible)
            throw new Complaint($"Nothing in {topic.Id} allows these findings together; the one that clashes most is {FindingText.Of(findings[reasoning.Conflict.Worst])}. Look at it again.", ExitCode.Fault);
        if (json) Json.Write(desk.Out, ReasoningJson.Of(topic, enquiry, findings, reasoning));
        else new ReasoningText(desk.Out, topic, enquiry, findings, reasoning).Write();
        return ExitCode.Done;
    }

    static Enquiry EnquiryOf(Topic topic, string? provenance, string? want, string? asks, string? tools, Channel channel)
    {
        var from = provenance is null ? topic.Provenances[0].Id : Choose.One("provenance", provenance, topic.Provenances.Select(p => p.Id));
        var wanted = want is null ? null : Choose.One("want", want, topic.Wants, w => w.Id);
        var asked = asks is null ? wanted?.Asks ?? [.. topic.Parts.Where(p => p.Asked).Select(p => p.Id)] : Choose.Several("part", asks, topic.Parts.Select(p => p.Id));
        if (wanted?.Asks.FirstOrDefault(part => !asked.Contains(part)) is { } missing)
            throw new Complaint($"The want {wanted.Id} depends on {string.Join(", ", wanted.Asks)}; name {missing} in --asks too, or leave --asks out.", ExitCode.Usage);
        var request = new CaseRequest(from, want ?? "", null, Selection.AsTheyCome, channel, ToolsOf(topic, tools));
        return new Enquiry(from, asked, want, channel, CaseMaker.OnOffer(topic, request));
    }

    /// <summary>The tools of clues for which all that they need is named ("rag, lamp" needs both), or null for all.</summary>
    /// <exception cref="Complaint">A tool that no clue of the topic needs.</exception>
    public static IReadOnlyList<string>? ToolsOf(Topic topic, string? tools)
    {
        if (tools is null) return null;
        var all = topic.Clues.Select(c => c.Tool).Distinct(StringComparer.Ordinal).ToList();
        var named = Choose.Several("tool", tools, all.SelectMany(Needs).Distinct(StringComparer.Ordinal));
        return [.. all.Where(t => Needs(t).All(named.Contains))];
    }

    static string[] Needs(string tool) => tool.Split(',', StringSplitOptions.TrimEntries);
}
