using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>Ranks the checks on offer, says whether the job is ripe, and what to decide.</summary>
sealed class NextChecks
{
    const double LeastMinutes = 0.25;
    const double WorthOrdering = 1e-9;
    readonly Scene _scene;
    readonly Enquiry _enquiry;
    readonly IReadOnlyList<LineLosses> _losses;
    readonly double[] _weights;
    readonly Dictionary<string, Waiting> _waits = new(StringComparer.Ordinal);

    public NextChecks(
        Scene scene, Enquiry enquiry, IReadOnlyList<Finding> findings, FindingSet set, IReadOnlyList<PartBelief> beliefs, IReadOnlyList<OddReading> odd)
    {
        (_scene, _enquiry) = (scene, enquiry);
        var parts = enquiry.Asks.Select(scene.Table.Names.Part).Order().ToList();
        _losses = Losses.Of(scene, parts, enquiry.Want is { } want ? Topic.Wants.First(w => w.Id == want) : null);
        var joint = Belief.Joint(scene.Table.Model, set.All, [.. parts.Select(scene.ClassQuery)]);
        var total = joint.Sum();
        _weights = [.. joint.Select(w => w / total)];
        var unsettled = beliefs.Where(b => !b.Settled).Select(b => scene.Table.Names.Part(b.Part)).ToList();
        var ahead = new Lookahead(scene, set, parts, unsettled, _losses);
        var again = Again(findings, odd).ToList();
        Ranked = unsettled.Count == 0 ? [] : Rank(ahead, findings, again);
        var now = _losses.Sum(l => l.Least(_weights));
        var later = _waits.Values.Select(w => w.Total).DefaultIfEmpty(now).Min();
        if (unsettled.Count > 0 && later >= now - WorthOrdering) later = RunFrom(new LongRun(scene, set, parts, _losses), findings);
        var repeats = Ranked.Any(n => n.Again);
        Ripe = unsettled.Count == 0 || !(repeats || later < now - WorthOrdering);
        Gain = Ripe ? 0 : repeats ? Topic.Costs.AskCost : now - later;
    }

    /// <summary>Best first.</summary>
    public IReadOnlyList<NextCheck> Ranked { get; }

    /// <summary>True when nothing on offer is worth its minutes, or all is settled.</summary>
    public bool Ripe { get; }

    /// <summary>What the best continuation saves over answering now, in the workshop's money; 0 when ripe.</summary>
    public double Gain { get; }

    Topic Topic => _scene.Table.Topic;

    /// <summary>The choices per order line, least expected loss first; a stop sign leaves only to ask.</summary>
    public IReadOnlyList<LineDecision> Decisions(bool stopped) =>
        _enquiry.Want is { } want && Topic.Wants.First(w => w.Id == want).OrderLines.Count > 0 ? [.. _losses.Select((l, i) => Decide(l, i, stopped))] : [];

    // An odd reading is measured again before anything else, up to three times.
    IEnumerable<string> Again(IReadOnlyList<Finding> findings, IReadOnlyList<OddReading> odd) =>
        odd.Where(o => o.Stands).Select(o => findings[o.Finding].Clue).Distinct(StringComparer.Ordinal)
            .Where(clue => _enquiry.OnOffer.Contains(clue) && findings.Count(f => f.Clue == clue) < 3);

    // What was only told can be looked at here; a look already taken here is offered again only when its reading is odd.
    // Where some check alone is worth its minutes, only pairs that could come first are worked out: no pair tells more than all that is in doubt.
    List<NextCheck> Rank(Lookahead ahead, IReadOnlyList<Finding> findings, List<string> again)
    {
        var looked = findings.Where(f => f.Channel == _enquiry.Channel).Select(f => f.Clue).ToHashSet(StringComparer.Ordinal);
        var open = _enquiry.OnOffer.Where(c => !looked.Contains(c) && !_scene.Table.Names.ClueOf(c).Safety).ToList();
        var off = AlreadyOff(findings);
        var outcomes = open.ToDictionary(c => c, c => _scene.Reader.OutcomesOf(c, _enquiry.Channel, findings), StringComparer.Ordinal);
        var singles = open.ToDictionary(c => c, c => ahead.Single(outcomes[c]), StringComparer.Ordinal);
        var ranked = open.Select(c => Check(c, singles[c], Minutes([c], off))).ToList();
        var worth = _waits.Values.Any(w => w.Total < _losses.Sum(l => l.Least(_weights)) - WorthOrdering);
        var toBeat = worth ? ranked.Max(r => r.Score) : 0;
        for (var i = 0; i < open.Count; i++)
        {
            for (var j = i + 1; j < open.Count; j++)
            {
                if (SameSize(open[i], open[j]) || ahead.Doubt / Math.Max(LeastMinutes, Minutes([open[i], open[j]], off)) <= toBeat) continue;
                var pair = ahead.Pair(outcomes[open[i]], outcomes[open[j]]);
                ranked[i] = Better(ranked[i], open[j], pair, Minutes([open[i], open[j]], off));
                ranked[j] = Better(ranked[j], open[i], pair, Minutes([open[i], open[j]], off));
            }
        }

        var repeats = again.Select(c => new NextCheck(c, null, 0, _scene.Table.Names.ClueOf(c).Minutes, double.MaxValue, 0, true));
        return [.. repeats, .. ranked.Where(r => r.Bits > WorthOrdering).OrderByDescending(r => r.Score)];
    }

    // The best checks in turn; a tool that reads the same size twice is taken once, since the two readings share its true size.
    double RunFrom(LongRun run, IReadOnlyList<Finding> findings)
    {
        var chosen = new List<string>();
        foreach (var check in Ranked.Where(r => !r.Again))
        {
            if (chosen.TrueForAll(c => !SameSize(c, check.Clue)) && findings.All(f => !SameSize(f.Clue, check.Clue))) chosen.Add(check.Clue);
        }

        var off = AlreadyOff(findings);
        var checks = new List<(Outcomes Outcomes, double Cost)>();
        foreach (var clue in chosen)
        {
            checks.Add((_scene.Reader.OutcomesOf(clue, _enquiry.Channel, findings), Minutes([clue], off) * Topic.Costs.MinuteCost));
            if (_scene.Table.Names.ClueOf(clue).Access is { } access) off.Add(access);
        }

        var least = run.Least(checks);
        var now = _losses.Sum(l => l.Least(_weights));
        if (least < now - WorthOrdering) _waits[chosen[0]] = new Waiting(0, [.. _losses.Select(l => l.Least(_weights) * least / now)]);
        return least;
    }

    HashSet<string> AlreadyOff(IReadOnlyList<Finding> findings) =>
        findings.Where(f => f.Channel == Channel.Bench).Select(f => _scene.Table.Names.ClueOf(f.Clue).Access).OfType<string>().ToHashSet(StringComparer.Ordinal);

    bool SameSize(string a, string b) =>
        _scene.Table.Names.ClueOf(a).Shows is Shows.Measured x && _scene.Table.Names.ClueOf(b).Shows is Shows.Measured y && x.Dimension == y.Dimension;

    NextCheck Check(string clue, Prospect prospect, double minutes)
    {
        Remember(clue, prospect, minutes);
        return new NextCheck(clue, null, prospect.Bits, minutes, prospect.Bits / Math.Max(LeastMinutes, minutes), prospect.Settles, false);
    }

    NextCheck Better(NextCheck alone, string with, Prospect pair, double minutes)
    {
        Remember(alone.Clue, pair, minutes);
        var score = pair.Bits / Math.Max(LeastMinutes, minutes);
        return score <= alone.Score ? alone : alone with { With = with, Bits = pair.Bits, Minutes = minutes, Score = score, Settles = pair.Settles };
    }

    // The least expected loss of waiting for this check, alone or with a partner.
    void Remember(string clue, Prospect prospect, double minutes)
    {
        var wait = new Waiting(minutes * Topic.Costs.MinuteCost, prospect.After);
        if (!_waits.TryGetValue(clue, out var known) || wait.Total < known.Total) _waits[clue] = wait;
    }

    double Minutes(IReadOnlyList<string> clues, HashSet<string> off)
    {
        var its = clues.Select(c => _scene.Table.Names.ClueOf(c)).ToList();
        var access = _enquiry.Channel != Channel.Bench ? 0 : its.Select(c => c.Access).OfType<string>().Distinct(StringComparer.Ordinal)
            .Where(a => !off.Contains(a)).Sum(a => Topic.Accesses.First(x => x.Id == a).Minutes);
        return its.Sum(c => c.Minutes) + access;
    }

    LineDecision Decide(LineLosses line, int index, bool stopped)
    {
        var options = line.Choices.Select((choice, i) => OptionOf(line, choice, i)).ToList();
        foreach (var again in Ranked.Where(r => r.Again))
            options.Add(new Option(new Choice.Wait(again.Clue), (_scene.Table.Names.ClueOf(again.Clue).Minutes * Topic.Costs.MinuteCost) + (0.5 * line.Least(_weights)), 0, 0, 0));
        options.AddRange(_waits.Select(w => new Option(new Choice.Wait(w.Key), w.Value.Cost + w.Value.After[index], 0, 0, 0)));
        if (stopped) options = [.. options.Where(o => o.Choice is Choice.Ask)];
        return new LineDecision(line.OrderLine, [.. options.OrderBy(o => o.Loss)]);
    }

    Option OptionOf(LineLosses line, Choice choice, int index)
    {
        var wrong = 0.0;
        for (var c = 0; c < _weights.Length; c++) wrong += line.Wrong[index][c] ? _weights[c] : 0;
        var spares = choice switch
        {
            Choice.Order order => Topic.Spares.Where(s => s.Id == order.Spare).ToList(),
            Choice.OrderTwo two => [.. Topic.Spares.Where(s => s.Id == two.First || s.Id == two.Second)],
            _ => [],
        };
        var days = spares.Count == 0 ? 0 : spares.Max(s => s.DelayDays);
        return new Option(choice, LineLosses.Expected(line.Of[index], _weights), wrong, spares.Sum(s => s.ReturnCost), days);
    }

    /// <summary>What waiting for a check costs, and what is lost after it per order line.</summary>
    sealed record Waiting(double Cost, IReadOnlyList<double> After)
    {
        public double Total => Cost + After.Sum();
    }
}
