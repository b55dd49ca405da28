using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Grading;

/// <summary>A made-up job of one part, two kinds and two spares, with whatever a test wants to change.</summary>
static class JobTopic
{
    /// <summary>Spares that can hurt cost less to send back than a question costs.</summary>
    public static Topic Of(bool hazard, params Clue[] clues)
    {
        var part = Some.Part("fork", "left", "right") with { SettleAt = hazard ? 0.99 : 0.95 };
        return Some.Topic([Some.Line("any", 1)], [part], [Some.Built(part, ("", [0.5, 0.5]))], clues) with
        {
            Wants = [new Want("want", "want", ["A fork, please."], ["fork"], [new OrderLine("forks", "forks")], "")],
            Spares = [Spare("left", hazard), Spare("right", hazard)],
            Dimensions = [new Dimension("size", "fork", "length", [310, 335], [2, 2], 270, 380, "judgement")],
        };
    }

    /// <summary>A case that shows what the test says, look by look.</summary>
    public static Case Made(Topic topic, Channel offer, int? questions, IReadOnlyList<Finding> told, params (string Clue, Seen Seen)[] shows) => new(
        new Job(topic.Id, topic.Version, 1, new CaseRequest(Some.Provenance, "want", null, Selection.AsTheyCome, offer, null, questions), told, [.. shows.Select(s => s.Clue)]),
        new Truth("any", null, Right(topic), Right(topic), [], [], [335]),
        shows.ToDictionary(s => s.Clue, s => (IReadOnlyList<Finding>)[.. Enumerable.Repeat(new Finding(s.Clue, offer, s.Seen), Case.LooksPerClue)], StringComparer.Ordinal),
        shows.ToDictionary(s => s.Clue, _ => (IReadOnlyList<double>)new double[Case.LooksPerClue], StringComparer.Ordinal));

    public static Answer Answer(string? kind, Choice order, params Look[] looks) =>
        new() { Looks = looks, Parts = [new PartAnswer("fork", kind, 9)], Orders = [order] };

    public static double Mark(Grade grade, Aspect aspect) => grade.Parts.Single(p => p.Aspect == aspect).Mark;

    static string[] Right(Topic topic) => [.. topic.Parts.Select(_ => "right")];

    static Spare Spare(string kind, bool hazard) => new()
    {
        Id = kind,
        OrderLine = "forks",
        Name = kind,
        Fits = [("fork", [kind])],
        Price = 20,
        ReturnCost = 2,
        DelayDays = 3,
        Hazard = hazard,
        HazardText = hazard ? "The wrong one can come off." : "",
    };
}
