using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>Ways to answer: honest, other, and thoughtless ones.</summary>
static class Strategies
{
    /// <summary>The looks of the engine's own path.</summary>
    public static IReadOnlyList<Look> Path(Workbench bench, Case made) => LooksOf(bench.PathOf(made).Skip(made.Job.Told.Count));

    /// <summary>Looks with one's own hands as the engine would take them, each from the right datum, by the right writing and read rightly, until it is ripe; then the order that these looks support.</summary>
    public static Answer OwnHands(Workbench bench, Case made)
    {
        var looks = new List<Look>();
        while (true)
        {
            var findings = made.Job.Told.Concat(looks.Select(l => bench.Shown(made, l))).ToList();
            var reasoning = bench.Reason(bench.EnquiryOf(made.Job), findings);
            if (reasoning.Ripe || reasoning.Stops.Count > 0 || reasoning.Next.Count == 0) return Answered(looks, reasoning);
            looks.Add(Look(bench, made, reasoning.Next[0].Clue, looks));
        }
    }

    static Look Look(Workbench bench, Case made, string clue, List<Look> before)
    {
        var nth = before.Count(l => l.Clue == clue);
        var look = new Look(clue, nth);
        return made.Look(clue, nth).Seen switch
        {
            Seen.Reading => look with { Datum = 0, OwnReading = ((Seen.Reading)bench.Shown(made, look with { Datum = 0 }).Seen).Millimetres },
            Seen.Named when bench.Topic.Clues.First(c => c.Id == clue).Plate is not null && bench.Shown(made, look with { Writing = 0 }).Seen is Seen.Named named => look with { Writing = 0, OwnFinding = named.Id },
            Seen.Named named => look with { OwnFinding = named.Id },
            _ => look,
        };
    }

    /// <summary>What somebody answers now who holds the engine's belief; to wait for a check that stands on the bench is no answer.</summary>
    public static Answer Honest(Workbench bench, Case made, IReadOnlyList<Look> looks)
    {
        var findings = made.Job.Told.Concat(looks.Select(l => made.Look(l.Clue, l.Nth))).ToList();
        return Answered(looks, bench.Reason(bench.EnquiryOf(made.Job), findings));
    }

    static Answer Answered(IReadOnlyList<Look> looks, Reasoning reasoning) => new()
    {
        Looks = looks,
        Parts = [.. reasoning.Parts.Select(p => Name(p, reasoning.Ripe))],
        Orders = [.. reasoning.Decisions.Select(d => d.Options.First(o => o.Choice is not Choice.Wait).Choice)],
    };

    /// <summary>Every other name with every certainty, and every other choice.</summary>
    public static IEnumerable<Answer> Others(Topic topic, Want want, Answer honest)
    {
        var kinds = topic.Parts.First(p => p.Id == want.Asks[0]).Kinds.Select(k => (string?)k.Id).Append(Kind.NoneId).Append(null);
        foreach (var kind in kinds) yield return With(honest, honest.Parts[0] with { Kind = kind });
        for (var tenths = 1; tenths <= 10; tenths++) yield return With(honest, honest.Parts[0] with { Tenths = tenths });
        foreach (var spare in topic.Spares.Where(s => s.OrderLine == want.OrderLines[0].Id)) yield return Ordering(honest, new Choice.Order(spare.Id));
        yield return Ordering(honest, new Choice.Ask());
    }

    /// <summary>Whole strategies by name.</summary>
    public static IEnumerable<(string Name, Answer Answer)> Whole(Workbench bench, Case made)
    {
        var path = Honest(bench, made, Path(bench, made));
        var blind = Honest(bench, made, []);
        yield return ("path", path);
        yield return ("nothing looked at, not settled", Waiting(blind));
        yield return ("path, always waiting", Waiting(path));
        yield return ("nothing looked at, the likeliest ordered", Likeliest(bench, made, blind));
        yield return ("everything", Honest(bench, made, [.. made.Job.Bench.Select(c => new Look(c, 0))]));
    }

    static Answer Waiting(Answer answer) => answer with
    {
        Parts = [.. answer.Parts.Select(p => p with { Kind = null })],
        Orders = [.. answer.Orders.Select(_ => (Choice)new Choice.Ask())],
    };

    static Answer Likeliest(Workbench bench, Case made, Answer blind)
    {
        var reasoning = bench.Reason(bench.EnquiryOf(made.Job), made.Job.Told);
        return blind with
        {
            Parts = [.. reasoning.Parts.Select(p => new PartAnswer(p.Part, p.Classes[p.Leading].Kinds[0], 10))],
            Orders = [.. reasoning.Decisions.Select(d => d.Options.First(o => o.Choice is Choice.Order).Choice)],
        };
    }

    static PartAnswer Name(PartBelief part, bool ripe) => new(
        part.Part,
        part.Settled || !ripe ? part.Classes[part.Leading].Kinds[0] : null,
        Enumerable.Range(1, 10).MinBy(t => Math.Abs(new PartAnswer(part.Part, null, t).Certainty - part.Highest)));

    static List<Look> LooksOf(IEnumerable<Finding> findings)
    {
        var looks = new List<Look>();
        foreach (var finding in findings) looks.Add(new Look(finding.Clue, looks.Count(l => l.Clue == finding.Clue)));
        return looks;
    }

    static Answer With(Answer answer, PartAnswer first) => answer with { Parts = [first, .. answer.Parts.Skip(1)] };

    static Answer Ordering(Answer answer, Choice first) => answer with { Orders = [first, .. answer.Orders.Skip(1)] };
}
