using Apprentice.Engine.Evidence;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests;

/// <summary>Pieces of topics for tests, with everything that does not matter filled in. All bikes, parts and figures are made up.</summary>
static class Some
{
    public const string Provenance = "own";

    /// <summary>A topic of one provenance with nothing in it but what is given.</summary>
    public static Topic Topic(IReadOnlyList<Line> lines, IReadOnlyList<Part> parts, IReadOnlyList<Package> packages, params Clue[] clues) => new()
    {
        Id = "some",
        Title = "Some topic",
        Question = "which one is it?",
        Version = "0",
        Provenances = [new Provenance(Provenance, "own customer", "one of our own")],
        Lines = lines,
        Years = [],
        Parts = parts,
        Packages = packages,
        Events = [],
        FitRules = [],
        Dimensions = [],
        Accesses = [],
        Clues = clues,
        Openings = [],
        Wants = [],
        Spares = [],
        Pitfalls = [],
        Sources = [],
        Costs = new Costs(0.1, 4, 5),
    };

    public static Line Line(string id, double share) => new(id, id, [share], null, null, null, null);

    public static Part Part(string id, params string[] kinds) => new()
    {
        Id = id,
        Name = id,
        Question = $"Which {id} is it?",
        Asked = true,
        Kinds = [.. kinds.Select(k => new Kind(k, k, null, null, null))],
        NonePrior = 0,
    };

    /// <summary>A package of one part: for each line the shares of its kinds.</summary>
    public static Package Built(Part part, params (string Line, double[] Shares)[] lines) => new(
        part.Id, [part.Id],
        [.. lines.SelectMany(l => l.Shares.Select((share, k) => new Build(l.Line.Length == 0 ? [] : [l.Line], null, [part.Kinds[k].Id], share)).Where(b => b.Share > 0))]);

    public static BikeEvent Event(string id, double rate, params Effect[] effects) => new()
    {
        Id = id,
        Story = $"{id} happened",
        Pitfall = id,
        Rates = [rate],
        RateSource = "judgement",
        Effects = effects,
    };

    /// <summary>A clue of the findings f0, f1, … with a row of shares per value of its node, read without error.</summary>
    public static Clue Table(string id, Node node, params double[][] rows) => Clue(id, node, new Shows.Table
    {
        Findings = [.. rows[0].Select((_, f) => new TableFinding($"f{f}", $"f{f}"))],
        Rows = rows,
        Misread = 0,
    });

    public static Clue Clue(string id, Node node, Shows shows) => new()
    {
        Id = id,
        Name = id,
        FromTo = "as drawn",
        Tool = "eyes",
        Minutes = 1,
        Channels = [new ClueChannel(Channel.Bench, 0, 0)],
        Family = ClueFamily.ShapeSeen,
        Node = node,
        Shows = shows,
    };

    /// <summary>A size measured with the given step, uncertainty and range.</summary>
    public static Shows.Measured Measured(double step, double uncertainty, double low, double high, params Slip[] slips) => new()
    {
        Dimension = "size",
        Step = step,
        Uncertainty = uncertainty,
        Low = low,
        High = high,
        Slips = slips,
    };

    public static Scene Scene(Topic topic) => new(HistoryTable.Of(topic, 0));

    public static Finding Saw(string clue, int finding) => new(clue, Channel.Bench, new Seen.Named($"f{finding}"));

    public static Finding Saw(string clue, string finding, Channel channel = Channel.Bench) => new(clue, channel, new Seen.Named(finding));

    public static Finding Read(string clue, double mm, Channel channel = Channel.Bench, int? datum = null) =>
        new(clue, channel, new Seen.Reading(mm), datum);

    public static Enquiry Enquiry(IReadOnlyList<string> asks, params string[] onOffer) => new(Provenance, asks, null, Channel.Bench, onOffer);

    /// <summary>A finding that reads the spine of a model without parts.</summary>
    public static Likelihood Rows(params double[] rows) => Likelihood.OfRows(rows, 0);

    public static Month Month(int year, int month) => Engine.Quantities.Month.Of(year, month);
}
