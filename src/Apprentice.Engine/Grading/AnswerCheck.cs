using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Checks that an answer belongs to its case.</summary>
public static class AnswerCheck
{
    /// <summary>What is wrong with an answer, a sentence each; empty when it can be graded.</summary>
    public static IReadOnlyList<string> Faults(Topic topic, Case made, Answer answer)
    {
        var want = topic.Wants.First(w => w.Id == made.Job.Request.Want);
        if (!answer.Parts.Select(p => p.Part).SequenceEqual(want.Asks, StringComparer.Ordinal))
            return [$"the answer must name these parts, in this order: {string.Join(", ", want.Asks)}"];
        if (answer.Orders.Count != want.OrderLines.Count)
            return [$"the answer needs one choice for each order line: {string.Join(", ", want.OrderLines.Select(l => l.Id))}"];
        return
        [
            .. answer.Parts.SelectMany(p => OfPart(topic.Parts.First(x => x.Id == p.Part), p)),
            .. answer.Orders.SelectMany((o, i) => OfChoice(topic, made, want.OrderLines[i].Id, o)),
            .. OfLooks(made, answer),
            .. answer.Looks.SelectMany(l => OfMarking(topic, l)),
            .. answer.Looks.Where(l => !made.Shows.ContainsKey(l.Clue))
                .Select(l => $"the clue {l.Clue} is not on this bench; on offer are {string.Join(", ", made.Job.Bench)}"),
            .. new[] { answer.SettledBy, answer.SetAside }.OfType<string>().Where(n => n != Kind.NoneId && topic.Clues.All(c => c.Id != n))
                .Select(n => $"the topic has no clue {n}"),
        ];
    }

    // A look told twice, or one after the last, would count the same luck twice.
    static IEnumerable<string> OfLooks(Case made, Answer answer)
    {
        if (made.Job.Request.Questions is { } most && answer.Looks.Count > most) yield return $"the answer took {answer.Looks.Count} looks, and this job allows no more than {most}";
        foreach (var looks in answer.Looks.GroupBy(l => l.Clue, StringComparer.Ordinal))
        {
            if (looks.Count() > Case.LooksPerClue) yield return $"{looks.Key} can be looked at {Case.LooksPerClue} times, not {looks.Count()} times";
            else if (looks.Where((l, i) => l.Nth != i).Any()) yield return $"the looks at {looks.Key} must be numbered 0, 1, 2 … in the order taken";
        }
    }

    static IEnumerable<string> OfMarking(Topic topic, Look look)
    {
        if (look.OwnFinding is null && look.Writing is null || topic.Clues.FirstOrDefault(c => c.Id == look.Clue) is not { } clue) yield break;
        string[] findings = clue.Shows switch
        {
            Shows.Table table => [.. table.Findings.Select(f => f.Id)],
            Shows.Code code => [.. code.Findings.Select(f => f.Id)],
            _ => [],
        };
        if (findings.Length == 0) yield return $"{clue.Id} is measured, so it has a reading and a datum, no finding and no writing";
        else if (look.OwnFinding is { } own && !findings.Contains(own)) yield return $"{clue.Id} cannot show {own}; it can show {string.Join(", ", findings)}";
        var writings = clue.Plate?.Writings.Count ?? (clue.Shows is Shows.Code plain ? plain.Decoys.Count + 1 : 0);
        if (findings.Length > 0 && look.Writing is { } writing && (writing < 0 || writing >= writings))
            yield return writings == 0 ? $"{clue.Id} is not read off a plate, so it has no writing" : $"{clue.Id} has the writings 0 to {writings - 1}, not {writing}";
    }

    static IEnumerable<string> OfPart(Part part, PartAnswer answer)
    {
        if (answer.Kind is { } kind && kind != Kind.NoneId && part.Kinds.All(k => k.Id != kind))
            yield return $"{part.Id} has no kind {kind}; it can be {string.Join(", ", part.Kinds.Select(k => k.Id))} or none";
        if (answer.Tenths is < 1 or > 10) yield return $"how sure of {part.Id} must be 1 to 10 tenths, not {answer.Tenths}";
    }

    static IEnumerable<string> OfChoice(Topic topic, Case made, string line, Choice choice)
    {
        var spares = topic.Spares.Where(s => s.OrderLine == line).Select(s => s.Id).ToList();
        string[] named = choice switch
        {
            Choice.Order order => [order.Spare],
            Choice.OrderTwo two => [two.First, two.Second],
            _ => [],
        };
        foreach (var spare in named.Where(n => !spares.Contains(n)))
            yield return $"the order line {line} has no spare {spare}; it can be {string.Join(", ", spares)}";
        if (choice is Choice.Wait wait && !made.Job.Bench.Contains(wait.Clue)) yield return $"the check {wait.Clue} is not on this bench";
    }
}
