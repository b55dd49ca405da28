using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>What the engine makes of findings, as plain lines.</summary>
sealed class ReasoningText(TextWriter to, Topic topic, Enquiry enquiry, IReadOnlyList<Finding> findings, Reasoning reasoning)
{
    const int MostChecks = 5;
    const int MostOptions = 3;
    readonly TopicWords _words = new(topic);

    /// <summary>Writes it.</summary>
    public void Write()
    {
        to.WriteLine($"{topic.Title}. {Spoken.Capital(topic.Provenances.First(p => p.Id == enquiry.Provenance).Name)}.");
        Section("Findings", findings.Select((f, i) => $"{i + 1}  {NameOf(i)}: {_words.Seen(f)}{(f.Channel == Channel.Bench ? "" : $" (by {Choose.Dashed(f.Channel)})")}"));
        Section("Stop", reasoning.Stops);
        foreach (var part in reasoning.Parts) WritePart(part);
        Section("These do not go together", reasoning.Conflict.Shown ? Conflict() : []);
        Section("Measure again", reasoning.Odd.Where(o => o.Stands).Select(o => $"{NameOf(o.Finding)}: {_words.Seen(findings[o.Finding])} is an odd reading and settles nothing"));
        foreach (var decision in reasoning.Decisions) WriteDecision(decision);
        if (reasoning.Next.Count > 0 && reasoning.Stops.Count == 0) Section("Next checks", Next());
    }

    void Section(string title, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0) return;
        to.WriteLine();
        to.WriteLine(title);
        foreach (var line in all) to.WriteLine($"  {line}");
    }

    void WritePart(PartBelief part)
    {
        var settled = part.Settled ? "settled" : "not settled";
        Section($"{Spoken.Capital(_words.Part(part.Part))}: {settled} (settled from {Spoken.Twentieths(part.SettleAt)})", Beliefs(part));
        if (part.Settled && part.DecidingSet.Count > 0) to.WriteLine($"  Settled by {Spoken.List([.. part.DecidingSet.Select(i => $"{NameOf(i)} ({i + 1})")])}.");
        else if (part.Settled) to.WriteLine("  Settled before any check.");
        foreach (var (weight, i) in part.Weights.Select((w, i) => (w, i)).Where(x => findings[x.i].Seen is not Seen.Hidden))
            to.WriteLine($"  Finding {i + 1} says {Says(weight.Share)} {_words.Class(part.Part, part.Classes[part.Leading].Kinds)}; alone {Says(weight.Alone)}.");
    }

    IEnumerable<string> Beliefs(PartBelief part) => part.Classes.Where(c => c.Belief > 0).OrderByDescending(c => c.Belief)
        .Select(c => $"{_words.Class(part.Part, c.Kinds)}: {Spoken.Twentieths(c.Belief)}");

    static string Says(double decibans) => Math.Abs(decibans) > 60 && decibans < 0 ? "it is not" : $"{Spoken.Strength(Math.Min(60, Math.Abs(decibans)))} {(decibans < 0 ? "against" : "for")}";

    IEnumerable<string> Conflict()
    {
        yield return $"Something was changed, or a reading is wrong. Clashes most: {NameOf(reasoning.Conflict.Worst)} ({reasoning.Conflict.Worst + 1}).";
        foreach (var explanation in reasoning.Conflict.Explanations)
            yield return $"It would be explained by: {Spoken.List([.. explanation.Story.Select(tag => $"{_words.Tag(tag)} [{tag}]")])} ({Spoken.Twentieths(explanation.After)}).";
    }

    void WriteDecision(LineDecision decision)
    {
        var line = topic.Wants.SelectMany(w => w.OrderLines).First(l => l.Id == decision.OrderLine);
        Section(line.Name, decision.Options.Take(MostOptions).Select((o, i) => $"{(i == 0 ? "Best" : "Then")}: {_words.Choice(o.Choice)}{Risk(o)}"));
    }

    static string Risk(Option option) => option.Choice switch
    {
        Choice.Order => $" (does not fit {Spoken.Twentieths(option.WrongShare)})",
        Choice.OrderTwo => $" (neither fits {Spoken.Twentieths(option.WrongShare)})",
        _ => "",
    };

    IEnumerable<string> Next() => reasoning.Next.Take(MostChecks).Select(n => n.Again
        ? $"{_words.Clue(n.Clue)}, {Spoken.Minutes(n.Minutes)} min: measure again"
        : $"{_words.Clue(n.Clue)}{(n.With is { } with ? $" and {_words.Clue(with)}" : "")}, {Spoken.Minutes(n.Minutes)} min: settles it {Spoken.Twentieths(n.Settles)} times")
        .Append(reasoning.Ripe ? "None of them is worth its minutes." : "")
        .Where(line => line.Length > 0);

    string NameOf(int finding) => _words.Clue(findings[finding].Clue);
}
