using System.CommandLine;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary><c>topics [TOPIC]</c>: which topics there are, or what one of them knows.</summary>
static class TopicsCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var topic = new Argument<string?>("TOPIC") { Description = "A topic, to see its parts, kinds, clues and orders", Arity = ArgumentArity.ZeroOrOne };
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var command = new Command("topics", "Lists the topics, or what one of them knows") { topic, json, sources.Shipped };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            return parsed.GetValue(topic) is { } id ? One(desk, taught, taught.Topic(id), parsed.GetValue(json)) : All(desk, taught, parsed.GetValue(json));
        });
        return command;
    }

    static int All(Desk desk, Taught taught, bool json)
    {
        var readings = taught.Topics.ReadAll();
        var topics = readings.Select(r => r.Topic).OfType<Topic>().ToList();
        if (json) Json.Write(desk.Out, new { Json.Schema, Topics = topics.Select(t => Short(t, taught.ChangesOf(t.Id))) });
        else foreach (var topic in topics) WriteShort(desk.Out, topic);
        taught.Tell(desk.Error);
        foreach (var reading in readings.Where(r => r.Topic is null))
            desk.Error.WriteLine($"{reading.Faults[0]} (the first of {Plural.Of(reading.Faults.Count, "fault")})");
        if (taught.Topics.Ids.Count == 0) throw new Complaint($"There is no topic in '{taught.Topics.Folder}'.", ExitCode.Fault);
        return topics.Count == readings.Count ? ExitCode.Done : ExitCode.Fault;
    }

    static int One(Desk desk, Taught taught, Topic topic, bool json)
    {
        if (json) Json.Write(desk.Out, Full(topic, taught.ChangesOf(topic.Id)));
        else TopicText.Write(desk.Out, topic);
        taught.Tell(desk.Error, topic);
        return ExitCode.Done;
    }

    static void WriteShort(TextWriter to, Topic topic)
    {
        to.WriteLine($"{topic.Id}: {topic.Title} ({Choose.Dashed(topic.State)})");
        to.WriteLine($"  {topic.Question}");
        to.WriteLine($"  asks for {string.Join(", ", topic.Parts.Where(p => p.Asked).Select(p => p.Id))}; {Plural.Of(topic.Clues.Count, "clue")}");
    }

    static object Short(Topic topic, IReadOnlyList<int> changes) => new
    {
        topic.Id,
        topic.Title,
        topic.Question,
        topic.Version,
        Changes = changes,
        topic.State,
        Asked = topic.Parts.Where(p => p.Asked).Select(p => p.Id),
        Clues = topic.Clues.Count,
    };

    static object Full(Topic topic, IReadOnlyList<int> changes) => new
    {
        Json.Schema,
        topic.Id,
        topic.Title,
        topic.Question,
        topic.Version,
        Changes = changes,
        topic.State,
        topic.CheckedBy,
        Provenances = topic.Provenances.Select(p => new { p.Id, p.Name }),
        Lines = topic.Lines.Select(l => new { l.Id, l.Name }),
        Parts = topic.Parts.Select(p => new { p.Id, p.Name, p.Asked, p.Host, p.SettleAt, Kinds = p.Kinds.Select(k => new { k.Id, k.Name }) }),
        Clues = topic.Clues.Select(Of),
        Openings = topic.Openings.Select(o => new { o.Id, o.Name, Told = o.Clues.Select(c => new { c.Clue, c.Channel }) }),
        Wants = topic.Wants.Select(w => new { w.Id, w.Name, w.Asks, Order = w.OrderLines.Select(l => new { l.Id, l.Name }) }),
        Spares = topic.Spares.Select(s => new { s.Id, s.OrderLine, s.Name, s.Price, s.ReturnCost, s.DelayDays, s.Hazard, Fits = s.Fits.Select(f => new { f.Part, f.Kinds }) }),
        Stories = HistoryTable.Of(topic, 0).Tags.Select(t => new { t.Id, t.Pitfall }),
    };

    static object Of(Clue clue) => new
    {
        clue.Id,
        clue.Name,
        clue.FromTo,
        clue.Tool,
        clue.Minutes,
        clue.Access,
        Channels = clue.Channels.Select(c => c.Channel),
        clue.Family,
        Reads = Json.Of(clue.Node),
        clue.Safety,
        clue.Caution,
        Reading = clue.Shows is Shows.Measured m ? new { Unit = "mm", m.Low, m.High, m.Step, m.Uncertainty, m.Dimension, m.Formula } : null,
        Findings = FindingText.FindingsOf(clue).Select(f => new { f.Id, f.Text }),
    };
}
