using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Cases;

namespace Apprentice.Commands;

/// <summary>A case as plain lines: the job card and the bench, and what is true if it is asked for.</summary>
static class CaseText
{
    /// <summary>Writes it.</summary>
    public static void Write(TextWriter to, Workbench bench, Case made, bool solution)
    {
        var words = new TopicWords(bench.Topic);
        var card = JobCard.Of(bench.Topic, made.Job);
        to.WriteLine($"Job {card.Ticket}: {card.Want}. {card.Arrival} {card.Says}");
        to.WriteLine($"{Spoken.Capital(card.Colour)} bike, {card.Origin}.");
        Section(to, "Told first", made.Job.Told.Select(f => $"{f.Clue}: {words.Seen(f)} (by {Choose.Dashed(f.Channel)})"));
        Section(to, "On the bench", made.Job.Bench.Select(id => OfClue(bench, id)));
        if (solution) WriteSolution(to, bench, made, words);
    }

    /// <summary>What each part of the bike is, and what happened to it.</summary>
    public static IEnumerable<string> Truth(Workbench bench, Case made)
    {
        var words = new TopicWords(bench.Topic);
        foreach (var (part, i) in bench.Topic.Parts.Select((p, i) => (p, i))) yield return $"{part.Name}: {words.Kind(part.Id, made.Truth.Kinds[i])}";
        if (made.Truth.Built is { } month) yield return $"built {month}";
        yield return made.Truth.Story.Count == 0 ? words.Tag(Engine.Topics.Kind.NoneId) : string.Join("; ", made.Truth.Story.Select(words.Tag));
    }

    static void Section(TextWriter to, string title, IEnumerable<string> lines)
    {
        var all = lines.ToList();
        if (all.Count == 0) return;
        to.WriteLine();
        to.WriteLine(title);
        foreach (var line in all) to.WriteLine($"  {line}");
    }

    static string OfClue(Workbench bench, string id)
    {
        var clue = bench.Topic.Clues.First(c => c.Id == id);
        var access = bench.Topic.Accesses.FirstOrDefault(a => a.Id == clue.Access);
        return $"{clue.Id}: {clue.Name} ({clue.Tool}, {Spoken.Minutes(clue.Minutes)} min{(access is null ? "" : $"; {access.Name}, {Spoken.Minutes(access.Minutes)} min")})";
    }

    // A marking shows the same at every look, or nearly every: then it is said once.
    static IEnumerable<string> Looks(Case made, string clue, TopicWords words)
    {
        var seen = made.Shows[clue].Select(words.Seen).ToList();
        return seen.Distinct(StringComparer.Ordinal).Count() == 1 ? seen.Take(1) : seen;
    }

    static void WriteSolution(TextWriter to, Workbench bench, Case made, TopicWords words)
    {
        Section(to, "What each look shows", made.Job.Bench.Select(c => $"{c}: {string.Join(", ", Looks(made, c, words))}"));
        Section(to, "What the bike is", Truth(bench, made));
        var proof = bench.Prove(made);
        Section(to, "With every check", proof.Parts.Select(p => p.Settled
            ? $"{words.Part(p.Part)}: settled, {words.Class(p.Part, p.Classes[p.Leading].Kinds)}"
            : $"{words.Part(p.Part)}: not settled, waiting or asking is right")
            .Concat(proof.Decisions.Select(d => $"{d.OrderLine}: {words.Choice(d.Best.Choice)}")));
    }
}
