using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>What a clue that is not measured shows before misreading, per row of the spine or per state of its part.</summary>
sealed class ClueShares(HistoryTable table, Clue clue)
{
    readonly IReadOnlyList<(int Event, IReadOnlyList<double> Shares)> _overrules =
    [
        .. table.Topic.Events.SelectMany((e, i) => e.Effects.OfType<Effect.Overrule>().Where(o => o.Clue == clue.Id).Select(o => (i, o.Shares))),
    ];

    public (int Part, IReadOnlyList<IReadOnlyList<double>> Shares) All() => clue.Node switch
    {
        Node.OfPart of => OfStates(table.Names.Part(of.Part), s => KindRow(s.Kind)),
        Node.OfEvent of when table.Scopes[table.Names.Event(of.Event)] is >= 0 and var part =>
            OfStates(part, s => Row((s.Events >> table.Names.Event(of.Event)) & 1)),
        Node.OfEvent of => OfRows(r => Row((r.Events >> table.Names.Event(of.Event)) & 1)),
        Node.OfLine => OfRows(r => Row((ulong)r.Line)),
        Node.OfDate => OfRows(r => table.Segments[r.Segment].Facts.Codes[table.Names.Clue(clue.Id)] ?? Flat()),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    (int Part, IReadOnlyList<IReadOnlyList<double>> Shares) OfStates(int part, Func<PartState, IReadOnlyList<double>> row) =>
        (part, [.. table.States[part].Select(s => Overruled(s.Events) ?? row(s))]);

    (int Part, IReadOnlyList<IReadOnlyList<double>> Shares) OfRows(Func<SpineRow, IReadOnlyList<double>> row) =>
        (-1, [.. table.Rows.Select(r => Overruled(r.Events) ?? row(r))]);

    /// <summary>What the events of a row of the spine make a code show, or null when none overrules it.</summary>
    public IReadOnlyList<double>? OverruledIn(SpineRow row) => Overruled(row.Events);

    IReadOnlyList<double>? Overruled(ulong events)
    {
        IReadOnlyList<double>? last = null;
        foreach (var (e, shares) in _overrules)
        {
            if ((events & (1UL << e)) != 0) last = shares;
        }

        return last;
    }

    IReadOnlyList<double> KindRow(int kind)
    {
        var shows = (Shows.Table)clue.Shows;
        return kind < shows.Rows.Count ? shows.Rows[kind] : shows.NoneRow ?? Flat();
    }

    IReadOnlyList<double> Row(ulong index) => ((Shows.Table)clue.Shows).Rows[(int)index];

    double[] Flat()
    {
        var n = clue.Shows is Shows.Table t ? t.Findings.Count : ((Shows.Code)clue.Shows).Findings.Count;
        return [.. Enumerable.Repeat(1.0 / n, n)];
    }
}
