using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>Works out the losses of an enquiry.</summary>
public static class Losses
{
    /// <summary>The losses of each order line of the want, or of naming each part where there is no want or it orders nothing.</summary>
    /// <param name="scene">The topic.</param>
    /// <param name="parts">Indices of the parts asked about, ascending; their classes are the combinations, the last fastest.</param>
    /// <param name="want">The want, or null.</param>
    public static IReadOnlyList<LineLosses> Of(Scene scene, IReadOnlyList<int> parts, Want? want) =>
        want is { OrderLines.Count: > 0 }
            ? [.. want.OrderLines.Select(line => OfLine(scene, parts, line.Id))]
            : [.. parts.Select((_, i) => OfName(scene, parts, i))];

    /// <summary>The class of each part in each combination.</summary>
    public static IReadOnlyList<int[]> Combinations(Scene scene, IReadOnlyList<int> parts)
    {
        var all = new List<int[]> { Array.Empty<int>() };
        foreach (var part in parts)
            all = [.. all.SelectMany(c => Enumerable.Range(0, scene.Classes[part].Count).Select(k => (int[])[.. c, k]))];
        return all;
    }

    static LineLosses OfLine(Scene scene, IReadOnlyList<int> parts, string line)
    {
        var topic = scene.Table.Topic;
        var combinations = Combinations(scene, parts);
        var spares = topic.Spares.Where(s => s.OrderLine == line).ToList();
        var fits = spares.Select(s => combinations.Select(c => Fits(scene, parts, c, s)).ToArray()).ToList();
        var hazards = spares.Select(s => Hazard(topic, s)).ToList();
        var choices = new List<Choice>();
        var of = new List<double[]>();
        var wrong = new List<bool[]>();
        for (var i = 0; i < spares.Count; i++)
        {
            var bad = spares[i].ReturnCost + (spares[i].DelayDays * topic.Costs.DayCost) + hazards[i];
            choices.Add(new Choice.Order(spares[i].Id));
            of.Add([.. fits[i].Select(f => f ? 0 : bad)]);
            wrong.Add([.. fits[i].Select(f => !f)]);
        }

        AddPairs(topic, spares, fits, hazards, choices, of, wrong);
        choices.Add(new Choice.Ask());
        of.Add([.. combinations.Select(_ => topic.Costs.AskCost)]);
        wrong.Add(new bool[combinations.Count]);
        return new LineLosses(line, choices, [.. of], [.. wrong]);
    }

    // The one of two that does not fit can hurt as it would alone: two kinds at hand do not tell which one belongs on the bike.
    static void AddPairs(
        Topic topic, List<Spare> spares, List<bool[]> fits, List<double> hazards, List<Choice> choices, List<double[]> of, List<bool[]> wrong)
    {
        for (var i = 0; i < spares.Count; i++)
        {
            for (var j = i + 1; j < spares.Count; j++)
            {
                var (a, b) = (spares[i], spares[j]);
                var neither = a.ReturnCost + b.ReturnCost + (Math.Max(a.DelayDays, b.DelayDays) * topic.Costs.DayCost) + Math.Max(hazards[i], hazards[j]);
                choices.Add(new Choice.OrderTwo(a.Id, b.Id));
                var (onlyA, onlyB) = (b.ReturnCost + hazards[j], a.ReturnCost + hazards[i]);
                of.Add([.. fits[i].Zip(fits[j], (x, y) => x && y ? Math.Min(a.ReturnCost, b.ReturnCost) : x ? onlyA : y ? onlyB : neither)]);
                wrong.Add([.. fits[i].Zip(fits[j], (x, y) => !x && !y)]);
            }
        }
    }

    /// <summary>True when a spare fits a combination of classes; "none of these" never fits, a part that was not asked about is no hindrance.</summary>
    static bool Fits(Scene scene, IReadOnlyList<int> parts, int[] combination, Spare spare) => spare.Fits.All(f =>
    {
        var at = parts.ToList().IndexOf(scene.Table.Names.Part(f.Part));
        return at < 0 || scene.Classes[parts[at]].Members[combination[at]].Any(f.Kinds.Contains);
    });

    // (loss of asking) / (1 − τ): ordering a part that can hurt below the settle level is worse than asking.
    static double Hazard(Topic topic, Spare spare)
    {
        if (!spare.Hazard) return 0;
        var settle = topic.Parts.Where(p => spare.Fits.Any(f => f.Part == p.Id)).Select(p => p.SettleAt).DefaultIfEmpty(0.99).Max();
        return topic.Costs.AskCost / (1 - settle);
    }

    // Naming a class: the reject rule of C. K. Chow, On optimum recognition error and reject tradeoff, IEEE Trans. Inf. Theory 16, 1970.
    static LineLosses OfName(Scene scene, IReadOnlyList<int> parts, int at)
    {
        var part = parts[at];
        var ask = scene.Table.Topic.Costs.AskCost;
        var error = ask / (1 - scene.SettleAt(part));
        var combinations = Combinations(scene, parts);
        var names = scene.Classes[part].Members.Select((members, k) => (Choice: (Choice)new Choice.Order(members[0]), Class: k)).ToList();
        return new LineLosses(
            scene.Table.Topic.Parts[part].Id,
            [.. names.Select(n => n.Choice), new Choice.Ask()],
            [.. names.Select(n => combinations.Select(c => c[at] == n.Class ? 0 : error).ToArray()), combinations.Select(_ => ask).ToArray()],
            [.. names.Select(n => combinations.Select(c => c[at] != n.Class).ToArray()), new bool[combinations.Count]]);
    }
}
