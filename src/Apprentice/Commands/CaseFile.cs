using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>A case in a file: topic, version, seed and request, from which it is made again; whatever else stands there is for the reader.</summary>
static class CaseFile
{
    static readonly string[] Fields = ["schema", "topic", "version", "seed", "request", "told", "bench", "solution"];
    static readonly string[] RequestFields = ["provenance", "want", "opening", "select", "offer", "tools", "questions"];

    /// <summary>The case of a file.</summary>
    /// <exception cref="Complaint">The file does not hold a case that this program can make again.</exception>
    public static (Workbench Bench, Case Made) Read(string file, Shelf shelf)
    {
        var place = JsonPlace.Of(file).Only(Fields);
        if (place.Needed("schema").Whole(0, int.MaxValue) != Json.Schema) throw place.Needed("schema").Wrong($"This program reads schema {Json.Schema}.");
        var topic = shelf.Topic(place.Needed("topic").Name("topic", shelf.Ids));
        var version = place.Needed("version");
        if (version.Text() != topic.Version)
            throw version.Wrong($"The case was made with version {version.Text()} of {topic.Id}, and this program has {topic.Version}: it would be another case. Make it again.");
        if (!ulong.TryParse(place.Needed("seed").TextOrNumber(), out var seed)) throw place.Needed("seed").Wrong("A whole number from 0 up would do here.");
        var bench = new Workbench(topic);
        var request = RequestOf(topic, place.Needed("request").Only(RequestFields));
        return (bench, bench.Make(request, seed) ?? throw place.Needed("request").Wrong("No bike fits this request."));
    }

    /// <summary>A made case as a file, with its solution if it is asked for.</summary>
    public static object Of(Workbench bench, Case made, bool solution) => new
    {
        Json.Schema,
        made.Job.Topic,
        made.Job.Version,
        made.Job.Seed,
        made.Job.Request,
        Told = made.Job.Told.Select(Json.Of),
        made.Job.Bench,
        Solution = solution ? SolutionOf(bench, made) : null,
    };

    static CaseRequest RequestOf(Topic topic, JsonPlace place)
    {
        var opening = place.Field("opening")?.Name("opening", topic.Openings.Select(o => o.Id));
        var select = Value<Selection>(place.Needed("select"), "selection");
        if (opening is null && select != Selection.AsTheyCome) throw place.Needed("select").Wrong("A selection looks at what is told first, so it needs an opening.");
        return new CaseRequest(
            place.Needed("provenance").Name("provenance", topic.Provenances.Select(p => p.Id)),
            place.Needed("want").Name("want", topic.Wants.Select(w => w.Id)),
            opening,
            select,
            Value<Channel>(place.Needed("offer"), "channel"),
            place.Field("tools")?.Items().Select(t => t.Name("tool", topic.Clues.Select(c => c.Tool).Distinct(StringComparer.Ordinal))).ToList(),
            place.Field("questions")?.Whole(0, 1000));
    }

    static T Value<T>(JsonPlace place, string what)
        where T : struct, Enum
    {
        var values = Enum.GetValues<T>();
        var name = place.Name(what, values.Select(v => Choose.Dashed(v)));
        return values.First(v => Choose.Dashed(v) == name);
    }

    static object SolutionOf(Workbench bench, Case made)
    {
        var topic = bench.Topic;
        var proof = bench.Prove(made);
        var truth = made.Truth;
        return new
        {
            truth.Line,
            Built = truth.Built?.ToString(),
            AsBuilt = ByPart(topic, truth.AsBuilt),
            Kinds = ByPart(topic, truth.Kinds),
            truth.Events,
            truth.Story,
            Sizes = topic.Dimensions.Select((d, i) => (d.Id, Size: truth.Sizes[i])).ToDictionary(d => d.Id, d => d.Size, StringComparer.Ordinal),
            Looks = made.Job.Bench.ToDictionary(c => c, c => made.Shows[c].Select(Json.Of), StringComparer.Ordinal),
            Proof = new
            {
                Parts = proof.Parts.Select(p => new { p.Part, p.Settled, Leading = p.Classes[p.Leading].Kinds, Belief = p.Highest, DecidingSet = p.DecidingSet.Select(i => ClueAt(made, i)) }),
                Orders = proof.Decisions.Select(d => new { d.OrderLine, Choice = Json.Of(d.Best.Choice), d.Best.Loss }),
                proof.Stops,
                Path = bench.PathOf(made).Skip(made.Job.Told.Count).Select(f => f.Clue),
            },
        };
    }

    static string ClueAt(Case made, int finding) =>
        finding < made.Job.Told.Count ? made.Job.Told[finding].Clue : made.Job.Bench[finding - made.Job.Told.Count];

    static Dictionary<string, string> ByPart(Topic topic, IReadOnlyList<string> kinds) =>
        topic.Parts.Select((p, i) => (p.Id, Kind: kinds[i])).ToDictionary(p => p.Id, p => p.Kind, StringComparer.Ordinal);
}
