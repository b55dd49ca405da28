using Apprentice.Content;
using Apprentice.Content.Changes;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>A JSON file of real bikes: old job cards typed in elsewhere. README tells its form.</summary>
/// <param name="copy">The topics.</param>
/// <param name="notebook">The notebook that they come into.</param>
/// <param name="now">The time.</param>
sealed class BikeFile(WorkshopCopy copy, BenchNotebook notebook, DateTimeOffset now)
{
    const int MostCard = 999_999_999;
    readonly List<LogEntry> _entries = [];
    int _number = notebook.NextBike;

    /// <summary>The entries of all bikes of a file.</summary>
    /// <param name="file">Path of the file.</param>
    /// <exception cref="Complaint">A fault, told with file, line and field; nothing is taken in then.</exception>
    public IReadOnlyList<LogEntry> Read(string file)
    {
        var root = JsonPlace.Of(file).Only("schema", "bikes");
        _ = root.Needed("schema").Whole(Json.Schema, Json.Schema);
        foreach (var bike in root.Needed("bikes").Items()) One(bike.Only("name", "card", "topic", "want", "provenance", "findings", "truth"));
        return _entries;
    }

    /// <summary>How many bikes were read.</summary>
    public int Count => _number - notebook.NextBike;

    void One(JsonPlace bike)
    {
        var topic = copy.Topic(bike.Needed("topic").Name("topic", copy.TopicIds)) ?? throw bike.Wrong("The topic has faults; 'apprentice check' tells them.");
        var card = bike.Field("card")?.Whole(1, MostCard);
        var routine = notebook.IsRoutine(card, DateOnly.FromDateTime(now.DateTime));
        _entries.Add(new LogEntry.BikePut(_number, null, NameOf(bike.Needed("name")), card, routine, Channel.Bench, ToolLevel.All));
        _entries.Add(new LogEntry.BikeAsked(
            _number, topic.Id, topic.Version, bike.Needed("want").Name("want", topic.Wants.Select(w => w.Id)),
            bike.Field("provenance") is { } from ? Provenance(topic, from, routine) : topic.Provenances[0].Id));
        foreach (var item in bike.Field("findings")?.Items() ?? [])
        {
            var finding = Finding(topic, item);
            var clue = topic.Clues.First(c => c.Id == finding.Clue);
            _entries.Add(new LogEntry.BikeFound(_number, topic.Id, finding, StandView.Shared(clue, finding)));
        }

        if (bike.Field("truth") is { } truth) _entries.Add(new LogEntry.BikeConfirmed(_number, topic.Id, topic.Version, Truth(topic, truth.Only("parts", "events", "line", "built")), []));
        _number++;
    }

    static string Provenance(Topic topic, JsonPlace place, bool routine)
    {
        var id = place.Name("provenance", topic.Provenances.Select(p => p.Id));
        var fitting = StandView.ProvenancesFor(topic, routine).Select(p => p.Id).ToList();
        return fitting.Contains(id) ? id : throw place.Wrong($"This is a routine bike: the rule took it in, nobody asked about it. Its provenance would be {Nearest.Or(fitting)}.");
    }

    static Finding Finding(Topic topic, JsonPlace item)
    {
        var text = item.Text();
        try
        {
            return FindingText.ReadAll(topic, [text], Channel.Bench)[0];
        }
        catch (Complaint complaint)
        {
            throw item.Wrong(complaint.Message);
        }
    }

    static BikeTruth Truth(Topic topic, JsonPlace truth)
    {
        var parts = truth.Needed("parts").Items().Select(p => p.Only("part", "kind")).Select(p =>
        {
            var part = topic.Parts.First(x => x.Id == p.Needed("part").Name("part", topic.Parts.Select(y => y.Id)));
            return new TruePart(part.Id, p.Needed("kind").Name("kind", part.Kinds.Select(k => k.Id).Append(Kind.NoneId)));
        }).ToList();
        if (parts.Count == 0) throw truth.Needed("parts").Wrong("At least one part with its kind would do here; leave truth out where none is known.");
        if (parts.CountBy(p => p.Part, StringComparer.Ordinal).FirstOrDefault(p => p.Value > 1).Key is { } twice) throw truth.Needed("parts").Wrong($"The part {twice} stands here twice.");
        var events = truth.Field("events")?.Items().Select(e => e.Name("event", topic.Events.Select(x => x.Id))).Distinct(StringComparer.Ordinal).ToList() ?? [];
        var built = truth.Field("built") is { } month ? MonthOf(month) : (Month?)null;
        return new BikeTruth(parts, events, truth.Field("line")?.Name("line", topic.Lines.Select(l => l.Id)), built);
    }

    static string NameOf(JsonPlace place) => place.Text().Trim() is { Length: > 0 } name ? name : throw place.Wrong("A short name of the bike would do here, for example blue tourer.");

    static Month MonthOf(JsonPlace place) => Month.TryParse(place.Text(), out var month) ? month : throw place.Wrong("A month like 2014-06 would do here.");
}
