using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Stand;

/// <summary>Real bikes as entries of a log.</summary>
sealed class Bikes
{
    static readonly DateTimeOffset Day = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    readonly Topic _topic;

    public Bikes(Topic topic) => _topic = topic;

    public BenchNotebook Notebook { get; private set; } = BenchNotebook.Empty;

    public Bikes Add(bool routine, BikeTruth truth, IReadOnlyList<Finding>? findings = null, IReadOnlyList<HeldBelief>? held = null, string from = "own")
    {
        var number = Notebook.NextBike;
        Put(new LogEntry.BikePut(number, "Sam", "blue", null, routine, Channel.Bench, ToolLevel.All));
        Put(new LogEntry.BikeAsked(number, _topic.Id, _topic.Version, _topic.Wants[0].Id, from));
        foreach (var finding in findings ?? []) Put(new LogEntry.BikeFound(number, _topic.Id, finding, ""));
        Put(new LogEntry.BikeConfirmed(number, _topic.Id, _topic.Version, truth, held ?? []));
        return this;
    }

    /// <summary>Twelve puzzling bikes of the sample, most from a second-hand lot: on five the older bar was swapped; seven are of the standard line, five of the basic one.</summary>
    public static Bikes Puzzling()
    {
        var bikes = new Bikes(Corpus.Sample);
        for (var n = 0; n < 12; n++) bikes.Add(routine: false, n < 5 ? Truth("newer", ["bar-to-newer"]) : Truth("older", [], n < 7 ? "standard" : "basic"), from: n < 8 ? "lot" : "own");
        return bikes;
    }

    public void Put(LogEntry entry) => Notebook = Notebook.With(new Logged(Day, entry));

    public static BikeTruth Truth(string bar, IReadOnlyList<string> events, string? line = "standard", Month? built = null) => new([new TruePart("bar", bar)], events, line, built);
}
