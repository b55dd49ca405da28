using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Notebook;

/// <summary>How the program does on the workshop's own bikes in one topic: routine bikes alone, those whose truth never came back told beside.</summary>
/// <param name="Topic">The topic.</param>
/// <param name="Levels">By how sure it was: under 8, 8, 9, more than 9 of 10.</param>
/// <param name="NoTruth">Routine bikes of this topic whose truth is not known.</param>
/// <param name="Puzzling">Puzzling bikes of this topic, which count for nothing here.</param>
public sealed record StandingCheck(string Topic, IReadOnlyList<StandingLevel> Levels, int NoTruth, int Puzzling)
{
    static readonly double[] Ends = [0.75, 0.85, 0.95, double.PositiveInfinity];

    /// <summary>The check per topic that has bikes, in the order in which the topics came.</summary>
    /// <param name="notebook">The notebook.</param>
    public static IReadOnlyList<StandingCheck> Of(BenchNotebook notebook)
    {
        var pairs = notebook.Bikes.SelectMany(b => b.Asked.Select(a => a.Topic).Distinct(StringComparer.Ordinal).Select(t => (Topic: t, Bike: b))).ToList();
        return [.. pairs.Select(p => p.Topic).Distinct(StringComparer.Ordinal).Select(t => Of(t, [.. pairs.Where(p => p.Topic == t).Select(p => p.Bike)]))];
    }

    static StandingCheck Of(string topic, IReadOnlyList<Bike> bikes)
    {
        var routine = bikes.Where(b => b.Put.Routine).ToList();
        var told = routine.Select(b => b.TruthOf(topic)).OfType<LogEntry.BikeConfirmed>()
            .SelectMany(t => t.Held.Where(h => t.Truth.KindOf(h.Part) is not null).Select(h => (h.Leading.Belief, Right: h.IsRight(t.Truth.KindOf(h.Part) ?? "")))).ToList();
        var levels = Ends.Select((end, i) => told.Where(t => t.Belief < end && (i == 0 || t.Belief >= Ends[i - 1])).ToList());
        return new StandingCheck(
            topic, [.. levels.Select((l, i) => new StandingLevel(7 + i, l.Count, l.Count(t => t.Right), l.Sum(t => t.Belief)))],
            routine.Count(b => b.TruthOf(topic) is null), bikes.Count - routine.Count);
    }
}

/// <summary>A level of the standing check.</summary>
/// <param name="Tenths">7 for less than 8 of 10, 8, 9, and 10 for more than 9 of 10.</param>
/// <param name="Bikes">Parts of bikes on which it was so sure.</param>
/// <param name="Right">How often it was right.</param>
/// <param name="Expected">How often it should be right, by what it held.</param>
public sealed record StandingLevel(int Tenths, int Bikes, int Right, double Expected);
