using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Checks that an answer belongs to its case, so that the grader need not.</summary>
static class AnswerCheck
{
    public static void Check(Topic topic, Case made, Answer answer)
    {
        var want = topic.Wants.First(w => w.Id == made.Job.Request.Want);
        if (!answer.Parts.Select(p => p.Part).SequenceEqual(want.Asks))
            throw Bad($"the answer must name these parts, in this order: {string.Join(", ", want.Asks)}");
        foreach (var part in answer.Parts) CheckPart(topic.Parts.First(p => p.Id == part.Part), part);
        if (answer.Orders.Count != want.OrderLines.Count)
            throw Bad($"the answer needs one choice for each order line: {string.Join(", ", want.OrderLines.Select(l => l.Id))}");
        for (var i = 0; i < answer.Orders.Count; i++) CheckChoice(topic, made, want.OrderLines[i].Id, answer.Orders[i]);
        foreach (var look in answer.Looks.Where(l => !made.Shows.ContainsKey(l.Clue)))
            throw Bad($"the clue {look.Clue} is not on this bench; on offer are {string.Join(", ", made.Job.Bench)}");
        foreach (var named in new[] { answer.SettledBy, answer.SetAside }.OfType<string>().Where(n => n != Kind.NoneId && topic.Clues.All(c => c.Id != n)))
            throw Bad($"the topic has no clue {named}");
    }

    static void CheckPart(Part part, PartAnswer answer)
    {
        if (answer.Kind is { } kind && kind != Kind.NoneId && part.Kinds.All(k => k.Id != kind))
            throw Bad($"{part.Id} has no kind {kind}; it can be {string.Join(", ", part.Kinds.Select(k => k.Id))} or none");
        if (answer.Tenths is < 1 or > 10) throw Bad($"how sure of {part.Id} must be 1 to 10 tenths, not {answer.Tenths}");
    }

    static void CheckChoice(Topic topic, Case made, string line, Choice choice)
    {
        var spares = topic.Spares.Where(s => s.OrderLine == line).Select(s => s.Id).ToList();
        var named = choice switch
        {
            Choice.Order order => [order.Spare],
            Choice.OrderTwo two => [two.First, two.Second],
            _ => Array.Empty<string>(),
        };
        foreach (var spare in named.Where(n => !spares.Contains(n)))
            throw Bad($"the order line {line} has no spare {spare}; it can be {string.Join(", ", spares)}");
        if (choice is Choice.Wait wait && !made.Job.Bench.Contains(wait.Clue)) throw Bad($"the check {wait.Clue} is not on this bench");
    }

    static ArgumentException Bad(string sentence) => new(sentence, nameof(Answer));
}
