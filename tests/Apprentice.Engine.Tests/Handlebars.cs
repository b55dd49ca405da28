using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests;

/// <summary>A made-up topic with every sort of history: lines, dates, running changes, a set of parts, swaps, filing, lost plates, a host with fit rules.</summary>
static class Handlebars
{
    static readonly string[] Standard = ["standard"];
    static readonly double[][] Fixing = [[0.95, 0.03, 0.02], [0.05, 0.9, 0.05]];

    public static Topic Topic { get; } = Some.Topic(
        [
            new Line("standard", "standard line", [0.7], Some.Month(2010, 1), Some.Month(2013, 12), null, null),
            new Line("basic", "basic line", [0.2], Some.Month(2010, 1), Some.Month(2013, 12), "kept-old", Some.Month(2011, 9)),
            new Line("electric", "electric line", [0.1], Some.Month(2012, 4), Some.Month(2013, 12), null, null),
        ],
        Parts(), Packages(), [.. Clues()]) with
    {
        Years = [new YearShare(2011, [1.5]), new YearShare(2012, [0.5])],
        Events = Events(),
        FitRules = [new FitRule("grips", "bolted", "older"), new FitRule("grips", "glued", "newer")],
        Dimensions = [new Dimension("size", "stem", "stem length", [310, 335], [2, 2.5], 270, 360, "judgement")],
        Spares = [Spare("grips-short", "older", 6), Spare("grips-long", "newer", 7)],
        Wants = [new Want("grips", "grips", ["New grips, please."], ["bar"], [new OrderLine("grips", "grips, pair")], "")],
        Openings = [new Opening("number", "the number", [("plate", Channel.Phone)])],
    };

    static List<Part> Parts() =>
    [
        Some.Part("bar", "older", "newer") with { NonePrior = 0.02 },
        Some.Part("stem", "older", "newer") with { NonePrior = 0.03 },
        Some.Part("lever", "older", "newer") with { NonePrior = 0.02 },
        Some.Part("grips", "glued", "bolted", "foam") with { NonePrior = 0.02, Host = "bar", Asked = false },
        Some.Part("built", "before", "after") with
        {
            IsDate = true,
            Kinds = [new Kind("before", "before", null, Some.Month(2010, 1), Some.Month(2011, 6)), new Kind("after", "after", null, Some.Month(2011, 7), Some.Month(2013, 12))],
        },
    ];

    static List<Package> Packages()
    {
        var window = new Window(Some.Month(2011, 3), Some.Month(2011, 9), Some.Month(2011, 7), "running-change");
        var later = new Window(Some.Month(2012, 6), Some.Month(2012, 6), Some.Month(2012, 6), null);
        return
        [
            new Package("bar", ["bar"], [new Build([], null, ["older"], 1), new Build([], window, ["newer"], 1), new Build(["basic"], null, ["older"], 1)]),
            new Package("stem", ["stem"], [new Build([], null, ["older"], 0.9), new Build([], null, ["newer"], 0.1), new Build([], later, ["newer"], 1)]),
            new Package(
                "controls", ["lever", "grips"],
                [
                    new Build([], null, ["older", "glued"], 0.8), new Build([], null, ["older", "foam"], 0.2), new Build([], window, ["newer", "bolted"], 1),
                    new Build(["electric"], null, ["newer", "bolted"], 0.6), new Build(["electric"], null, ["newer", "foam"], 0.4),
                ]),
        ];
    }

    static List<BikeEvent> Events() =>
    [
        Some.Event("bar-to-newer", 0.1, new Effect.ChangeKind("bar", "older", [("newer", 1)])) with { BuiltTo = Some.Month(2012, 8) },
        Some.Event("stem-filed", 0.15, new Effect.Shift("size", -3, 1)),
        Some.Event("bar-to-older", 0.08, new Effect.ChangeKind("bar", "newer", [("older", 0.9), ("newer", 0.1)])) with { Lines = Standard },
        Some.Event("controls-changed", 0.2, new Effect.ChangeKind("lever", null, [("newer", 1)]), new Effect.ChangeKind("grips", null, [("bolted", 0.7), ("foam", 0.3)])),
        Some.Event("bar-painted", 0.12, new Effect.Overrule("marking", [0.1, 0.1, 0.8])) with { BuiltFrom = Some.Month(2011, 4) },
        Some.Event("plate-lost", 0.07, new Effect.Overrule("plate", [0, 0, 0, 0, 1])),
        Some.Event("scratched", 0.3),
        Some.Event("grips-worn-off", 0.25, new Effect.ChangeKind("grips", "foam", [("glued", 0.5), ("bolted", 0.5)])),
    ];

    static IEnumerable<Clue> Clues()
    {
        yield return Some.Clue("plate", new Node.OfDate(), Plate()) with { Channels = [new ClueChannel(Channel.Bench, 0, 0), new ClueChannel(Channel.Phone, 0, 0.05)] };
        yield return Some.Clue("stem-length", new Node.OfPart("stem"), Some.Measured(1, 1, 240, 400, new Slip("to the edge", 0.05, 1, -14, null)));
        yield return Table("marking", new Node.OfPart("bar"), 0.01, [0.8, 0.1, 0.1], [0.1, 0.7, 0.2]);
        yield return Table("grip-fixing", new Node.OfPart("grips"), 0.02, [.. Fixing, [0.3, 0.3, 0.4]]);
        yield return Table("lever-holes", new Node.OfPart("lever"), 0.002, [0.99, 0.01], [0.02, 0.98]);
        yield return Table("motor", new Node.OfLine(), 0.002, [0, 1], [0, 1], [1, 0]);
        yield return Table("scratch", new Node.OfEvent("scratched"), 0.002, [0.1, 0.9], [0.8, 0.2]);
        yield return Table("paint", new Node.OfEvent("bar-painted"), 0.01, [0.05, 0.95], [0.7, 0.3]);
    }

    static Shows.Code Plate() => new()
    {
        Findings =
        [
            new CodeFinding("10", "10", [(Some.Month(2010, 1), Some.Month(2010, 12))], 0),
            new CodeFinding("11", "11", [(Some.Month(2011, 1), Some.Month(2011, 12))], 0),
            new CodeFinding("12", "12 or early 11", [(Some.Month(2012, 1), Some.Month(2012, 12)), (Some.Month(2011, 1), Some.Month(2011, 3))], 0),
            new CodeFinding("13", "13", [(Some.Month(2013, 1), Some.Month(2013, 12))], 0),
            new CodeFinding("worn", "worn away", [], 0.1),
        ],
        LagMonths = 3,
        Decoys = [new Decoy("paint batch", 0.05, [0.25, 0.25, 0.25, 0.25, 0])],
        Misread = 0.01,
    };

    static Clue Table(string id, Node node, double misread, params double[][] rows)
    {
        var clue = Some.Table(id, node, rows);
        return clue with { Shows = (Shows.Table)clue.Shows with { Misread = misread } };
    }

    static Spare Spare(string id, string kind, double returnCost) => new()
    {
        Id = id,
        OrderLine = "grips",
        Name = id,
        Fits = [("bar", [kind])],
        Price = 14,
        ReturnCost = returnCost,
        DelayDays = 5,
        Hazard = false,
    };
}
