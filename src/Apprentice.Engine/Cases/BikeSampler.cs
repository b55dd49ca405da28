using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Cases;

/// <summary>Draws bikes from the histories of a table, with the same numbers that the belief uses.</summary>
public sealed class BikeSampler
{
    readonly Scene _scene;
    readonly double[] _upTo;

    /// <summary>A sampler for a topic and provenance.</summary>
    public BikeSampler(Scene scene)
    {
        _scene = scene;
        var sum = 0.0;
        _upTo = [.. scene.Table.Model.Weights.Select(w => sum += w)];
    }

    /// <summary>A bike.</summary>
    public Bike Draw(Rng rng)
    {
        var table = _scene.Table;
        var row = RowAt(rng.Unit() * _upTo[^1]);
        var parts = table.Model.Parts;
        var entries = new (PartTable Table, int Entry)[parts.Count];
        for (var p = 0; p < entries.Length; p++)
        {
            var mine = parts[p].Tables[parts[p].TableOfRow[row]];
            var hostKind = parts[p].Host < 0 ? 0 : entries[parts[p].Host].Table.Kind[entries[parts[p].Host].Entry];
            entries[p] = (mine, rng.Pick(mine.Given(hostKind)));
        }

        var segment = table.Segments[table.Rows[row].Segment];
        var month = segment.Months.Count == 0 ? null : (Month?)segment.Months[rng.Pick(segment.Weights)];
        var states = entries.Select((e, p) => table.States[p][e.Table.State[e.Entry]]).ToList();
        var sizes = table.Topic.Dimensions.Select(d => SizeOf(d, states[table.Names.Part(d.Part)], rng)).ToList();
        return new Bike(_scene, row, [.. entries.Select(e => e.Table.State[e.Entry])], TruthOf(row, month, entries, sizes), rng);
    }

    int RowAt(double at)
    {
        var found = Array.BinarySearch(_upTo, at);
        var row = found >= 0 ? found + 1 : ~found;
        while (row < _upTo.Length - 1 && _scene.Table.Model.Weights[row] == 0) row++;
        return Math.Min(row, _upTo.Length - 1);
    }

    double SizeOf(Dimension dimension, PartState state, Rng rng)
    {
        var spread = _scene.Reader.SpreadOf(dimension, state);
        return spread.Mean is { } mean ? mean + (spread.Sigma * rng.Normal()) : spread.Low + ((spread.High - spread.Low) * rng.Unit());
    }

    Truth TruthOf(int row, Month? month, (PartTable Table, int Entry)[] entries, IReadOnlyList<double> sizes)
    {
        var table = _scene.Table;
        var tags = entries.Aggregate(table.Model.Tags[row], (all, e) => all | e.Table.Tags[e.Entry]);
        var story = table.Tags.Where((_, t) => (tags & (1UL << t)) != 0).Select(t => t.Id).ToList();
        return new Truth(
            table.Topic.Lines[table.Rows[row].Line].Id,
            month,
            [.. entries.Select((e, p) => table.Names.KindId(p, e.Table.Built[e.Entry]))],
            [.. entries.Select((e, p) => table.Names.KindId(p, e.Table.Kind[e.Entry]))],
            [.. table.Topic.Events.Where((_, e) => (tags & (1UL << e)) != 0).Select(e => e.Id)],
            story,
            sizes);
    }
}

/// <summary>A drawn bike, ready to be looked at: what a marking shows is fixed, each look has its own error.</summary>
public sealed class Bike
{
    readonly Scene _scene;
    readonly int[] _states;
    readonly int _row;
    readonly Rng _marks;
    readonly Dictionary<string, int> _shown = new(StringComparer.Ordinal);

    internal Bike(Scene scene, int row, int[] states, Truth truth, Rng rng)
    {
        (_scene, _row, _states, Truth) = (scene, row, states, truth);
        _marks = new Rng(rng.Next(), rng.Next());
    }

    /// <summary>What is true.</summary>
    public Truth Truth { get; }

    /// <summary>A look at a clue.</summary>
    /// <param name="clue">The clue.</param>
    /// <param name="channel">How it reaches the bench.</param>
    /// <param name="rng">Luck of this look.</param>
    /// <param name="datum">The datum chosen, or null: then a slip can happen.</param>
    public Finding Look(string clue, Channel channel, Rng rng, int? datum = null)
    {
        var it = _scene.Table.Names.ClueOf(clue);
        if (it.Shows is Shows.Measured measured) return new Finding(clue, channel, new Seen.Reading(Read(measured, clue, channel, datum, rng)), datum);
        if (!_shown.TryGetValue(clue, out var shown)) shown = _shown[clue] = _marks.Pick(SharesHere(it));
        var (ids, misread) = ClueReader.FindingsOf(it, channel);
        var read = rng.Unit() < misread ? rng.Below(ids.Count) : shown;
        return new Finding(clue, channel, new Seen.Named(ids[read]));
    }

    /// <summary>What the writings of a code show, look by look, the true number first: what a told look shows is one of them.</summary>
    /// <param name="clue">A code.</param>
    /// <param name="channel">How it reaches the bench.</param>
    /// <param name="looks">How many looks.</param>
    /// <param name="rng">Luck of the writings; what a told look shows is not touched by it.</param>
    public IReadOnlyList<IReadOnlyList<string>> Writings(Clue clue, Channel channel, int looks, Rng rng)
    {
        if (!_shown.TryGetValue(clue.Id, out var shown)) shown = _shown[clue.Id] = _marks.Pick(SharesHere(clue));
        var (ids, misread) = ClueReader.FindingsOf(clue, channel);
        var written = _scene.Reader.PlateOf(clue).Draw(_row, shown, rng);
        return [.. written.Select(f => (IReadOnlyList<string>)[.. Enumerable.Range(0, looks).Select(_ => ids[rng.Unit() < misread ? rng.Below(ids.Count) : f])])];
    }

    double Read(Shows.Measured measured, string clue, Channel channel, int? datum, Rng rng)
    {
        var model = _scene.Reader.ModelOf(clue, channel, datum);
        var size = Truth.Sizes[_scene.Table.Names.Dimension(measured.Dimension)];
        if (rng.Unit() < model.Blunder)
        {
            var steps = Math.Floor(((measured.High - measured.Low) / measured.Step) + 0.5);
            return (Math.Floor((measured.Low / measured.Step) + 0.5) + rng.Below((int)steps + 1)) * measured.Step;
        }

        var way = model.Ways[rng.Pick([.. model.Ways.Select(w => w.Share)])];
        var exact = (way.Slope * size) + way.Intercept + (way.Uncertainty * rng.Normal());
        return Math.Floor((exact / measured.Step) + 0.5) * measured.Step;
    }

    IReadOnlyList<double> SharesHere(Clue clue)
    {
        var (part, shares) = _scene.Reader.SharesOf(clue);
        return shares[part < 0 ? _row : _states[part]];
    }
}
