using System.Runtime.InteropServices;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>
/// What the writings of a code show, one by one: the true number, the decoys, and which of them a told look took.
/// A plate that cannot be read, or that an event overrules, misleads nobody to a decoy.
/// </summary>
public sealed class PlateShares
{
    readonly Shows.Code _code;
    readonly ClueShares _shares;
    readonly IReadOnlyList<SpineRow> _rows;
    readonly Dictionary<int, double[]> _trueOfSegment = [];
    readonly HistoryTable _table;

    internal PlateShares(HistoryTable table, Clue clue)
    {
        (_table, _rows, _shares) = (table, table.Rows, new ClueShares(table, clue));
        _code = (Shows.Code)clue.Shows;
    }

    /// <summary>A finding for each writing, given what a told look shows: the true number first.</summary>
    /// <param name="row">Row of the spine.</param>
    /// <param name="told">Index of the finding that a told look shows.</param>
    /// <param name="rng">Luck.</param>
    public IReadOnlyList<int> Draw(int row, int told, Rng rng)
    {
        var (shares, overruled) = TrueOf(row);
        var decoys = overruled ? [] : _code.Decoys;
        var dated = Dated(shares, _ => 1);
        var taken = rng.Pick([shares[told] * Right(told, overruled), .. decoys.Select(d => dated * d.Share * d.Shares[told])]);
        var number = taken == 0 ? told : rng.Pick([.. shares.Select((s, f) => IsDated(f) ? s : 0)]);
        return [number, .. _code.Decoys.Select((d, n) => n + 1 == taken ? told : rng.Pick(d.Shares))];
    }

    /// <summary>P(looks, and a told look shows f | row) per finding f.</summary>
    /// <param name="row">Row of the spine.</param>
    /// <param name="looks">Looks at the plate.</param>
    internal double[] Given(int row, IReadOnlyList<SeenWriting> looks)
    {
        var (shares, overruled) = TrueOf(row);
        var given = new double[shares.Count];
        var decoys = overruled ? [] : _code.Decoys;
        var others = _code.Decoys.Select((d, n) => d.Shares.Select((s, f) => s * At(looks, n + 1, f)).Sum()).ToArray();
        var dated = Dated(shares, f => At(looks, 0, f));
        for (var f = 0; f < given.Length; f++)
        {
            var sum = shares[f] * Right(f, overruled) * At(looks, 0, f) * Product(others, -1);
            for (var n = 0; n < decoys.Count; n++) sum += dated * decoys[n].Share * decoys[n].Shares[f] * At(looks, n + 1, f) * Product(others, n);
            given[f] = sum * At(looks, null, f);
        }

        return given;
    }

    double At(IReadOnlyList<SeenWriting> looks, int? writing, int finding)
    {
        var product = 1.0;
        foreach (var look in looks)
        {
            if (look.Writing == writing) product *= look.Given(finding, _code.Findings.Count);
        }

        return product;
    }

    double Dated(IReadOnlyList<double> shares, Func<int, double> weight) => shares.Select((s, f) => IsDated(f) ? s * weight(f) : 0).Sum();

    bool IsDated(int finding) => _code.Findings[finding].Months.Count > 0;

    double Right(int finding, bool overruled) => overruled || !IsDated(finding) ? 1 : 1 - _code.Decoys.Sum(d => d.Share);

    // Months of one segment have the same shares with their decoys, and so without them.
    (IReadOnlyList<double> Shares, bool Overruled) TrueOf(int row)
    {
        if (_shares.OverruledIn(_rows[row]) is { } overruled) return (overruled, true);
        var segment = _rows[row].Segment;
        if (_trueOfSegment.TryGetValue(segment, out var known)) return (known, false);
        var months = _table.Segments[segment].Months;
        if (months.Count == 0) return ([.. _code.Findings.Select(_ => 1.0 / _code.Findings.Count)], true);
        return (_trueOfSegment[segment] = CodeShares.Of(_code with { Decoys = [] }, months[0]), false);
    }

    // The product of all but one; −1 for all.
    static double Product(double[] factors, int but)
    {
        var product = 1.0;
        for (var i = 0; i < factors.Length; i++)
        {
            if (i != but) product *= factors[i];
        }

        return product;
    }
}

/// <summary>A look at a marking.</summary>
/// <param name="Index">Index of the finding that it told.</param>
/// <param name="Misread">Share of misreadings.</param>
/// <param name="Writing">The writing read, or null when not known.</param>
[StructLayout(LayoutKind.Auto)]
readonly record struct SeenWriting(int Index, double Misread, int? Writing)
{
    /// <summary>P(this look | the writing shows a finding).</summary>
    public double Given(int finding, int count) => (Index == finding ? 1 - Misread : 0) + (Misread / count);
}
