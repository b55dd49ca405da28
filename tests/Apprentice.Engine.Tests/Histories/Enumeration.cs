using Apprentice.Engine.Evidence;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using MathNet.Numerics.Distributions;

namespace Apprentice.Engine.Tests.Histories;

/// <summary>All histories of a topic of one provenance, month by month, straight from the words of the topic: no segments, no tables, no messages.</summary>
sealed class Enumeration
{
    readonly Topic _topic;

    public Enumeration(Topic topic)
    {
        _topic = topic;
        Lives = [.. topic.Lines.SelectMany((_, line) => OfLine(line))];
    }

    public IReadOnlyList<Life> Lives { get; }

    /// <summary>Each life with P(findings and it).</summary>
    public IReadOnlyList<(Life Life, double P)> Weighed(IReadOnlyList<Finding> findings)
    {
        var chances = findings.Select(ChanceOf).ToList();
        return [.. Lives.Select(life => (life, chances.Aggregate(life.Weight, (p, chance) => p * chance(life))))];
    }

    // Worked out once for each value that the clue reads and each set of events that bear on it.
    Func<Life, double> ChanceOf(Finding finding)
    {
        var clue = _topic.Clues.Single(c => c.Id == finding.Clue);
        var bearing = 0UL;
        foreach (var (e, it) in _topic.Events.Index())
        {
            if (clue.Node is Node.OfEvent of && of.Event == it.Id) bearing |= 1UL << e;
            if (it.Effects.Any(x => x is Effect.Shift || (x is Effect.Overrule o && o.Clue == clue.Id))) bearing |= 1UL << e;
        }

        var known = new Dictionary<(int, ulong), double>();
        return life =>
        {
            var value = clue.Node switch
            {
                Node.OfPart of => life.Kinds[PartAt(of.Part)],
                Node.OfLine => life.Line,
                Node.OfDate => life.Built.Index,
                _ => 0,
            };
            var key = (value, life.Events & bearing);
            return known.TryGetValue(key, out var p) ? p : known[key] = Chance(life, clue, finding);
        };
    }

    IEnumerable<Life> OfLine(int index)
    {
        var line = _topic.Lines[index];
        var months = _topic.Years.SelectMany(y => Enumerable.Range(1, 12).Select(m => (Month: Month.Of(y.Year, m), Weight: y.Shares[0])))
            .Where(m => m.Month >= line.From && m.Month <= line.To).ToList();
        var total = months.Sum(m => m.Weight);
        return months.SelectMany(m => OfMonth(index, m.Month).Select(life => life with { Weight = life.Weight * line.Shares[0] * m.Weight / total }));
    }

    // Events that touch more than one part, or none, and packages of several parts are drawn first: given them the parts are independent but for their hosts.
    IEnumerable<Life> OfMonth(int index, Month month)
    {
        var line = _topic.Lines[index];
        var possible = _topic.Events.Where(e => (e.Lines.Count == 0 || e.Lines.Contains(line.Id)) && !(month < e.BuiltFrom) && !(month > e.BuiltTo)).ToList();
        foreach (var (shared, p) in Subsets([.. possible.Where(e => OwnerOf(e) is null)]))
        {
            foreach (var (sets, q) in Choices([.. _topic.Packages.Where(k => k.Parts.Count > 1)], line, month))
            {
                List<Life> lives = [new Life(index, month, [], Bits(shared), p * q)];
                foreach (var part in _topic.Parts)
                {
                    var fates = Fates(part, line, month, sets, shared, [.. possible.Where(e => OwnerOf(e) == part.Id)]);
                    lives = [.. lives.SelectMany(life => Fitted(part, life, fates))];
                }

                foreach (var life in lives) yield return life;
            }
        }
    }

    IEnumerable<Life> Fitted(Part part, Life life, List<(string Kind, ulong Events, double P)> fates)
    {
        var host = part.Host is { } id ? KindIds(PartAt(id))[life.Kinds[PartAt(id)]] : "";
        bool Fits(string kind) => !_topic.FitRules.Any(r => r.Part == part.Id && r.Kind == kind && r.HostKind == host);
        var left = fates.Where(f => Fits(f.Kind)).Sum(f => f.P);
        return fates.Where(f => Fits(f.Kind)).Select(f => life with
        {
            Kinds = [.. life.Kinds, KindIds(PartAt(part.Id)).IndexOf(f.Kind)],
            Events = life.Events | f.Events,
            Weight = life.Weight * f.P / left,
        });
    }

    List<(string Kind, ulong Events, double P)> Fates(
        Part part, Line line, Month month, Dictionary<string, string> sets, List<BikeEvent> shared, List<BikeEvent> own)
    {
        var fates = new List<(string Kind, ulong Events, double P)>();
        foreach (var (built, p) in AsBuilt(part, line, month, sets))
        {
            foreach (var (happened, q) in Subsets(own))
            {
                foreach (var (kind, r) in After(part, built, [.. _topic.Events.Where(e => shared.Contains(e) || happened.Contains(e))]))
                    fates.Add((kind, Bits(happened), p * q * r * (1 - part.NonePrior)));
            }

            if (part.NonePrior > 0) fates.Add((Kind.NoneId, 0, p * part.NonePrior));
        }

        return fates;
    }

    static List<(string Kind, double P)> After(Part part, string built, List<BikeEvent> happened)
    {
        List<(string Kind, double P)> kinds = [(built, 1)];
        foreach (var change in happened.SelectMany(e => e.Effects).OfType<Effect.ChangeKind>().Where(c => c.Part == part.Id))
            kinds = [.. kinds.SelectMany(k => change.From is null || change.From == k.Kind ? change.To.Select(t => (t.Kind, k.P * t.Share)) : [k])];
        return kinds;
    }

    List<(string Kind, double P)> AsBuilt(Part part, Line line, Month month, Dictionary<string, string> sets)
    {
        if (part.IsDate) return [(part.Kinds.Single(k => month >= k.From && month <= k.To).Id, 1)];
        if (sets.TryGetValue(part.Id, out var kind)) return [(kind, 1)];
        return [.. Builds(_topic.Packages.Single(k => k.Parts.Contains(part.Id)), line, month).Select(b => (b.Build.Kinds[0], b.P))];
    }

    static IEnumerable<(Dictionary<string, string> Kinds, double P)> Choices(List<Package> packages, Line line, Month month)
    {
        if (packages.Count == 0) return [(new Dictionary<string, string>(), 1)];
        return Builds(packages[0], line, month).SelectMany(b => Choices(packages[1..], line, month).Select(rest =>
            (new Dictionary<string, string>(rest.Kinds.Concat(packages[0].Parts.Zip(b.Build.Kinds, KeyValuePair.Create))), b.P * rest.P)));
    }

    // The share of the new in month m is (m + ½ − opens)/(closes − opens).
    static List<(Build Build, double P)> Builds(Package package, Line line, Month month)
    {
        var mine = package.Builds.Where(b => b.Lines.Contains(line.Id)).ToList();
        if (mine.Count == 0) mine = [.. package.Builds.Where(b => b.Lines.Count == 0)];
        var changes = mine.Where(b => b.From is not null).Select(b => b.From).Distinct().OrderBy(w => w?.Opens.Index).ToList();
        double ShareOf(Build build)
        {
            var share = build.Share * NewAt(build.From, month);
            return changes.Where(w => w?.Opens > (build.From?.Opens ?? new Month(-1))).Aggregate(share, (p, later) => p * (1 - NewAt(later, month)));
        }

        return [.. mine.Select(b => (b, ShareOf(b))).Where(b => b.Item2 > 0)];
    }

    static double NewAt(Window? window, Month month)
    {
        if (window is null || (window.Closes == window.Opens && month >= window.Opens)) return 1;
        if (window.Closes == window.Opens) return 0;
        return Math.Clamp((month.Index + 0.5 - window.Opens.Index) / (window.Closes.Index - window.Opens.Index), 0, 1);
    }

    static IEnumerable<(List<BikeEvent> Happened, double P)> Subsets(List<BikeEvent> events)
    {
        for (var bits = 0; bits < 1 << events.Count; bits++)
        {
            var happened = events.Where((_, i) => (bits & (1 << i)) != 0).ToList();
            yield return (happened, events.Aggregate(1.0, (p, e) => p * (happened.Contains(e) ? e.Rates[0] : 1 - e.Rates[0])));
        }
    }

    string? OwnerOf(BikeEvent e)
    {
        var touched = e.Effects.Select(x => x switch
        {
            Effect.ChangeKind change => change.Part,
            Effect.Shift shift => _topic.Dimensions.Single(d => d.Id == shift.Dimension).Part,
            Effect.Overrule overrule => (_topic.Clues.Single(c => c.Id == overrule.Clue).Node as Node.OfPart)?.Part,
            _ => null,
        }).Distinct().ToList();
        return touched.Count == 1 ? touched[0] : null;
    }

    int PartAt(string id) => _topic.Parts.ToList().FindIndex(p => p.Id == id);

    List<string> KindIds(int part) => [.. _topic.Parts[part].Kinds.Select(k => k.Id), Kind.NoneId];

    ulong Bits(List<BikeEvent> happened) =>
        _topic.Events.Index().Where(e => happened.Contains(e.Item)).Aggregate(0UL, (bits, e) => bits | (1UL << e.Index));

    IEnumerable<BikeEvent> HappenedTo(Life life) => _topic.Events.Where((_, e) => (life.Events & (1UL << e)) != 0);

    double Chance(Life life, Clue clue, Finding finding)
    {
        if (clue.Shows is Shows.Measured tape) return ChanceOfReading(life, tape, ((Seen.Reading)finding.Seen).Millimetres);
        var (ids, misread) = clue.Shows is Shows.Code code
            ? (code.Findings.Select(f => f.Id).ToList(), code.Misread)
            : ([.. ((Shows.Table)clue.Shows).Findings.Select(f => f.Id)], ((Shows.Table)clue.Shows).Misread);
        misread += clue.Channels.Single(c => c.Channel == finding.Channel).ExtraMisread;
        var shares = Overruled(life, clue) ?? Shown(life, clue);
        return ((1 - misread) * shares[ids.IndexOf(((Seen.Named)finding.Seen).Id)]) + (misread / ids.Count);
    }

    IReadOnlyList<double>? Overruled(Life life, Clue clue) => HappenedTo(life)
        .SelectMany(e => e.Effects).OfType<Effect.Overrule>().LastOrDefault(o => o.Clue == clue.Id)?.Shares;

    IReadOnlyList<double> Shown(Life life, Clue clue) => clue.Node switch
    {
        Node.OfPart of => Row((Shows.Table)clue.Shows, life.Kinds[PartAt(of.Part)]),
        Node.OfLine => Row((Shows.Table)clue.Shows, life.Line),
        Node.OfEvent of => Row((Shows.Table)clue.Shows, HappenedTo(life).Any(e => e.Id == of.Event) ? 1 : 0),
        _ => Plate((Shows.Code)clue.Shows, life.Built),
    };

    static IReadOnlyList<double> Row(Shows.Table table, int value) =>
        value < table.Rows.Count ? table.Rows[value] : [.. table.Findings.Select(_ => 1.0 / table.Findings.Count)];

    static List<double> Plate(Shows.Code code, Month built)
    {
        var readable = 1 - code.Findings.Sum(f => f.Share);
        var decoys = code.Decoys.Sum(d => d.Share);
        return [.. code.Findings.Select((f, i) => f.Share
            + (readable * code.Decoys.Sum(d => d.Share * d.Shares[i]))
            + (readable * (1 - decoys) * Enumerable.Range(0, code.LagMonths + 1).Average(lag => Stamped(code, f, built.Plus(-lag)))))];
    }

    // Before the first code there is none that stands for the month: then any.
    static double Stamped(Shows.Code code, CodeFinding finding, Month made)
    {
        bool Stands(CodeFinding f) => f.Months.Any(r => made >= r.From && made <= r.To);
        var fitting = code.Findings.Where(Stands).ToList();
        if (fitting.Count == 0) fitting = [.. code.Findings.Where(f => f.Months.Count > 0)];
        return fitting.Contains(finding) ? 1.0 / fitting.Count : 0;
    }

    double ChanceOfReading(Life life, Shows.Measured tape, double reading)
    {
        var size = _topic.Dimensions.Single(d => d.Id == tape.Dimension);
        var kind = life.Kinds[PartAt(size.Part)];
        var slip = tape.Slips.Single();
        var blunder = tape.Blunder / (Math.Round((tape.High - tape.Low) / tape.Step) + 1);
        if (kind == size.Nominals.Count) return blunder + ((1 - slip.Share - tape.Blunder) * Flat(size, tape, reading)) + (slip.Share * Flat(size, tape, reading - slip.Offset));
        var shifts = HappenedTo(life).SelectMany(e => e.Effects).OfType<Effect.Shift>().ToList();
        var mean = size.Nominals[kind] + shifts.Sum(s => s.Millimetres) ?? throw new InvalidDataException();
        var sigma = Math.Sqrt(Square(size.Spreads[kind]) + Square(tape.Uncertainty) + shifts.Sum(s => Square(s.Spread)));
        double At(double centre) => Normal.CDF(centre, sigma, reading + (tape.Step / 2)) - Normal.CDF(centre, sigma, reading - (tape.Step / 2));
        return blunder + ((1 - slip.Share - tape.Blunder) * At(mean)) + (slip.Share * At(mean + slip.Offset));
    }

    static double Flat(Dimension size, Shows.Measured tape, double reading)
    {
        double Under(double x) => ((x * Normal.CDF(0, 1, x)) + Normal.PDF(0, 1, x)) * tape.Uncertainty / (size.High - size.Low);
        double Below(double x) => Under((x - size.Low) / tape.Uncertainty) - Under((x - size.High) / tape.Uncertainty);
        return Below(reading + (tape.Step / 2)) - Below(reading - (tape.Step / 2));
    }

    static double Square(double x) => x * x;
}

/// <summary>One possible life of a bike.</summary>
/// <param name="Line">Index of the line.</param>
/// <param name="Built">Month of build.</param>
/// <param name="Kinds">Index of the kind of each part, "none of these" last.</param>
/// <param name="Events">Events that happened, as bits.</param>
/// <param name="Weight">Probability.</param>
sealed record Life(int Line, Month Built, int[] Kinds, ulong Events, double Weight);
