using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>An answer in a file.</summary>
sealed class AnswerFile
{
    static readonly string[] Fields = ["schema", "looks", "parts", "orders", "settledBy", "setAside", "story", "forced"];
    static readonly (string Name, Bearing Bearing)[] Bearings =
        [("part", Bearing.Part), ("other-part", Bearing.OtherPart), ("date", Bearing.Date), ("nothing", Bearing.Nothing)];

    readonly Workbench _bench;
    readonly Case _made;
    readonly Want _want;

    AnswerFile(Workbench bench, Case made)
    {
        (_bench, _made) = (bench, made);
        _want = bench.Topic.Wants.First(w => w.Id == made.Job.Request.Want);
    }

    Topic Topic => _bench.Topic;

    /// <summary>The answer of a file to a case.</summary>
    /// <exception cref="Complaint">The file does not hold an answer to this case.</exception>
    public static Answer Read(string file, Workbench bench, Case made)
    {
        var place = JsonPlace.Of(file).Only(Fields);
        var answer = new AnswerFile(bench, made).Of(place);
        var faults = AnswerCheck.Faults(bench.Topic, made, answer);
        return faults.Count == 0 ? answer : throw place.Wrong(string.Join("\n", faults));
    }

    Answer Of(JsonPlace place)
    {
        var stories = _bench.SceneOf(_made.Job.Request.Provenance).Table.Tags.Select(t => t.Id).Append(Kind.NoneId).ToList();
        var clues = Topic.Clues.Select(c => c.Id).Append(Kind.NoneId).ToList();
        return new Answer
        {
            Looks = Looks(place.Field("looks")?.Items() ?? []),
            Parts = Parts(place.Needed("parts")),
            Orders = Orders(place),
            SettledBy = place.Field("settledBy")?.Name("clue", clues),
            SetAside = place.Field("setAside")?.Name("clue", clues),
            Story = place.Field("story")?.Name("story", stories),
            Forced = place.Field("forced")?.Truth() ?? false,
        };
    }

    // A look is a clue's short name, or an object with more to say; looking again is the next look at it.
    List<Look> Looks(IReadOnlyList<JsonPlace> places)
    {
        var looks = new List<Look>();
        foreach (var place in places)
        {
            var name = place.IsObject ? place.Only("clue", "nth", "ownReading", "datum", "ownFinding", "writing", "bearing").Needed("clue") : place;
            var clue = Topic.Clues.First(c => c.Id == name.Name("check on this bench", _made.Job.Bench));
            var nth = (place.IsObject ? place.Field("nth")?.Whole(0, Case.LooksPerClue - 1) : null) ?? looks.Count(l => l.Clue == clue.Id);
            looks.Add(place.IsObject ? LookOf(place, clue, nth) : new Look(clue.Id, nth));
        }

        return looks;
    }

    static Look LookOf(JsonPlace place, Clue clue, int nth) => new(
        clue.Id, nth, OwnReading(clue, place.Field("ownReading")), Datum(clue, place.Field("datum")), OwnFinding(clue, place.Field("ownFinding")),
        Writing(clue, place.Field("writing")), BearingOf(place.Field("bearing")));

    static string? OwnFinding(Clue clue, JsonPlace? place) => clue.Shows switch
    {
        _ when place is null => null,
        Shows.Table table => place.Name($"finding of {clue.Id}", table.Findings.Select(f => f.Id)),
        Shows.Code code => place.Name($"finding of {clue.Id}", code.Findings.Select(f => f.Id)),
        _ => throw place.Wrong($"{clue.Id} is measured, so it has a reading and no finding."),
    };

    static int? Writing(Clue clue, JsonPlace? place)
    {
        var count = clue.Plate?.Writings.Count ?? (clue.Shows is Shows.Code code ? code.Decoys.Count + 1 : 0);
        if (place is not null && count == 0) throw place.Wrong($"{clue.Id} is not read off a plate, so it has no writing.");
        return place?.Whole(0, count - 1);
    }

    static Bearing? BearingOf(JsonPlace? place) => place is null ? null : Bearings.First(b => b.Name == place.Name("thing that a marking tells", Bearings.Select(x => x.Name))).Bearing;

    static double? OwnReading(Clue clue, JsonPlace? place)
    {
        if (place is null) return null;
        if (clue.Shows is not Shows.Measured measured) throw place.Wrong($"{clue.Id} is not measured, so it has no reading.");
        try
        {
            return FindingText.Millimetres(clue.Id, measured, place.TextOrNumber());
        }
        catch (Complaint complaint) when (complaint.ExitCode == ExitCode.Usage)
        {
            throw place.Wrong(complaint.Message);
        }
    }

    static int? Datum(Clue clue, JsonPlace? place) => place?.Whole(0, clue.Shows is Shows.Measured measured ? measured.Slips.Count : 0);

    List<PartAnswer> Parts(JsonPlace place)
    {
        var answers = new List<PartAnswer>();
        foreach (var one in place.Items())
        {
            _ = one.Only("part", "kind", "tenths");
            var part = Topic.Parts.First(p => p.Id == one.Needed("part").Name("part that this job asks for", _want.Asks));
            var kind = one.Field("kind")?.Name($"kind of {part.Id}", part.Kinds.Select(k => k.Id).Append(Kind.NoneId));
            answers.Add(new PartAnswer(part.Id, kind, one.Needed("tenths").Whole(1, 10)));
        }

        return answers.Select(a => a.Part).SequenceEqual(_want.Asks, StringComparer.Ordinal)
            ? answers : throw place.Wrong($"One answer for each of these parts, in this order, would do here: {string.Join(", ", _want.Asks)}.");
    }

    List<Choice> Orders(JsonPlace place)
    {
        var orders = place.Field("orders")?.Items() ?? [];
        if (orders.Count != _want.OrderLines.Count)
            throw (place.Field("orders") ?? place).Wrong($"One choice for each of these order lines, in this order, would do here: {string.Join(", ", _want.OrderLines.Select(l => l.Id))}.");
        return [.. orders.Select((o, i) => ChoiceOf(o, _want.OrderLines[i].Id))];
    }

    Choice ChoiceOf(JsonPlace place, string line)
    {
        var spares = Topic.Spares.Where(s => s.OrderLine == line).Select(s => s.Id).ToList();
        var what = $"spare for {line}";
        switch (place.Only("do", "spare", "first", "second", "clue").Needed("do").Name("choice", ["order", "order-two", "wait", "ask"]))
        {
            case "order":
                return new Choice.Order(place.Needed("spare").Name(what, spares));
            case "order-two":
                var (first, second) = (place.Needed("first").Name(what, spares), place.Needed("second").Name(what, spares));
                if (first == second) throw place.Needed("second").Wrong("Two different spares would do here.");
                return spares.IndexOf(first) < spares.IndexOf(second) ? new Choice.OrderTwo(first, second) : new Choice.OrderTwo(second, first);
            case "wait":
                return new Choice.Wait(place.Needed("clue").Name("check on this bench", _made.Job.Bench));
            default:
                return new Choice.Ask();
        }
    }
}
