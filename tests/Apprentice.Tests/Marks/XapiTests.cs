using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Apprentice.Reports;

namespace Apprentice.Tests.Marks;

/// <summary>Statements against the structural rules of the standard. Source: Experience API 1.0.3, part two (data), on whose text IEEE 9274.1.1-2023 rests; the section stands beside each check. The IEEE print itself was not at hand.</summary>
public sealed partial class XapiTests
{
    static readonly string[] Required = ["actor", "verb", "object"];
    static readonly string[] Properties = ["id", "actor", "verb", "object", "result", "context", "timestamp", "stored", "authority", "version", "attachments"];
    static readonly string[] Identifiers = ["mbox", "mbox_sha1sum", "openid", "account"];
    static readonly string[] ContextProperties = ["registration", "instructor", "team", "contextActivities", "revision", "platform", "language", "statement", "extensions"];
    static readonly string[] ResultProperties = ["score", "success", "completion", "response", "duration", "extensions"];
    static readonly string[] Relations = ["parent", "grouping", "category", "other"];

    [Fact]
    public void Every_statement_keeps_the_rules()
    {
        var statements = Statements();
        Assert.Equal(2 + 20 + 12, statements.Count);
        Assert.All(statements, s => Assert.Null(Fault(s)));
        Assert.Equal(statements.Count, statements.Select(s => s.GetProperty("id").GetString()).Distinct().Count());
    }

    // The check itself must be able to fail: each damage is found.
    [Theory]
    [InlineData("\"scaled\": 0.9", "\"scaled\": 1.1")]
    [InlineData("\"min\": 0", "\"min\": 30")]
    [InlineData("\"duration\": \"P", "\"duration\": \"50 minutes P")]
    [InlineData("\"homePage\": \"https://workshop.invalid/\"", "\"homePage\": \"workshop\"")]
    [InlineData("\"account\"", "\"accounts\"")]
    [InlineData("\"id\": \"http://adlnet.gov/expapi/verbs/passed\"", "\"id\": \"passed\"")]
    [InlineData("\"verb\"", "\"verbs\"")]
    [InlineData("\"timestamp\": \"2026", "\"timestamp\": \"25 November 2026")]
    [InlineData("\"parent\"", "\"mother\"")]
    [InlineData("\"success\": true", "\"success\": \"true\"")]
    [InlineData("\"en\":", "\"English language\":")]
    [InlineData("https://workshop.invalid/xapi/sort", "sort")]
    public void A_broken_rule_is_found(string right, string wrong)
    {
        var text = Text();
        Assert.Contains(right, text, StringComparison.Ordinal);
        using var broken = JsonDocument.Parse(text.Replace(right, wrong, StringComparison.Ordinal));
        Assert.Contains(broken.RootElement.EnumerateArray(), s => Fault(s) is not null);
    }

    [Fact]
    public void The_paper_s_statement_says_what_the_result_says()
    {
        var result = Sat.Result(Sat.Passed);
        var paper = Statements().First(s => s.GetProperty("object").GetProperty("id").GetString()?.EndsWith($"paper/{Sat.Passed}", StringComparison.Ordinal) == true);
        var score = paper.GetProperty("result").GetProperty("score");
        Assert.Equal((result.Sound, result.Jobs.Count), (score.GetProperty("raw").GetInt32(), score.GetProperty("max").GetInt32()));
        Assert.Equal((double)result.Sound / result.Jobs.Count, score.GetProperty("scaled").GetDouble(), 1e-4);
        Assert.True(paper.GetProperty("result").GetProperty("success").GetBoolean());
    }

    [Fact]
    public void What_was_not_told_is_not_written()
    {
        var log = Sat.Log();
        log.RemoveAll(e => e.What is Apprentice.Engine.Learning.LogEntry.PaperMarked);
        using var none = JsonDocument.Parse(new AssessXapi(AssessXapi.Nobody).Text(Apprentice.Engine.Learning.History.Of(log), [Sat.Topic], null));
        Assert.Equal(0, none.RootElement.GetArrayLength());
    }

    static string Text() => new AssessXapi(AssessXapi.Nobody).Text(Apprentice.Engine.Learning.History.Of(Sat.Log()), [Sat.Topic], null);

    static List<JsonElement> Statements() => [.. JsonDocument.Parse(Text()).RootElement.EnumerateArray()];

    static string? Fault(JsonElement s) => Whole(s) ?? Actor(s.GetProperty("actor")) ?? Verb(s.GetProperty("verb")) ?? Activity(s.GetProperty("object"))
        ?? (s.TryGetProperty("result", out var result) ? Result(result) : null) ?? (s.TryGetProperty("context", out var context) ? Context(context) : null);

    static string? Whole(JsonElement s)
    {
        // 2.4: actor, verb and object are required; 2.2: no other properties, none null.
        if (!Required.All(p => s.TryGetProperty(p, out _))) return "a required property is missing";
        if (s.EnumerateObject().Any(p => !Properties.Contains(p.Name, StringComparer.Ordinal))) return "a property that the standard does not know";
        if (HasNull(s)) return "2.2: null is not allowed outside of extensions";

        // 2.4.1: a UUID of RFC 4122, variant 2, in standard string form.
        if (s.TryGetProperty("id", out var id) && !IsId(id)) return "id";

        // 4.5: timestamps by ISO 8601 with a time zone, and not in the future (2.4.7).
        return s.TryGetProperty("timestamp", out var at) && !(Moment().IsMatch(at.GetString() ?? "") && DateTimeOffset.TryParse(at.GetString(), CultureInfo.InvariantCulture, out var when) && when <= Sat.Nine.AddDays(30)) ? "timestamp" : null;
    }

    // 2.4.2.1 and 2.4.2.3: exactly one inverse functional identifier; 2.4.2.4: an account has a homePage (IRL) and a name.
    static string? Actor(JsonElement actor)
    {
        if (actor.EnumerateObject().Count(p => Identifiers.Contains(p.Name, StringComparer.Ordinal)) != 1) return "identifier";
        if (actor.TryGetProperty("objectType", out var type) && type.GetString() is not ("Agent" or "Group")) return "objectType";
        return actor.TryGetProperty("account", out var account) && (!IsIri(account.GetProperty("homePage").GetString()) || account.GetProperty("name").GetString() is not { Length: > 0 }) ? "account" : null;
    }

    // 2.4.3: a verb has an id that is an IRI; its display is a language map.
    static string? Verb(JsonElement verb) => !verb.TryGetProperty("id", out var id) || !IsIri(id.GetString()) ? "verb" : verb.TryGetProperty("display", out var said) && !IsLanguageMap(said) ? "display" : null;

    // 2.4.4.1: an activity has an id that is an IRI; its type is an IRI; its name is a language map.
    static string? Activity(JsonElement activity)
    {
        if (activity.TryGetProperty("objectType", out var kind) && kind.GetString() != "Activity") return "objectType";
        if (!activity.TryGetProperty("id", out var id) || !IsIri(id.GetString())) return "activity";
        if (!activity.TryGetProperty("definition", out var definition)) return null;
        return definition.TryGetProperty("type", out var type) && !IsIri(type.GetString()) ? "type" : definition.TryGetProperty("name", out var name) && !IsLanguageMap(name) ? "name" : null;
    }

    // 2.4.5: success and completion are Boolean, a duration is one of ISO 8601; 2.4.5.1: scaled from -1 to 1, min below max, raw between them; 4.1: extension keys are IRIs.
    static string? Result(JsonElement result)
    {
        if (result.EnumerateObject().Any(p => !ResultProperties.Contains(p.Name, StringComparer.Ordinal))) return "result";
        if (result.EnumerateObject().Any(p => p.Name is "success" or "completion" && p.Value.ValueKind is not (JsonValueKind.True or JsonValueKind.False))) return "not Boolean";
        if (result.TryGetProperty("duration", out var duration) && !Lasts().IsMatch(duration.GetString() ?? "")) return "duration";
        if (result.TryGetProperty("extensions", out var extensions) && extensions.EnumerateObject().Any(p => !IsIri(p.Name))) return "extensions";
        if (!result.TryGetProperty("score", out var score)) return null;
        var (scaled, raw, min, max) = (score.GetProperty("scaled").GetDouble(), score.GetProperty("raw").GetDouble(), score.GetProperty("min").GetDouble(), score.GetProperty("max").GetDouble());
        return scaled is < -1 or > 1 || min >= max || raw < min || raw > max ? "score" : null;
    }

    // 2.4.6: registration is a UUID; 2.4.6.2: only four relations, each an activity or a list of activities.
    static string? Context(JsonElement context)
    {
        if (context.EnumerateObject().Any(p => !ContextProperties.Contains(p.Name, StringComparer.Ordinal))) return "context";
        if (context.TryGetProperty("registration", out var registration) && !IsId(registration)) return "registration";
        if (!context.TryGetProperty("contextActivities", out var related)) return null;
        if (related.EnumerateObject().Any(p => !Relations.Contains(p.Name, StringComparer.Ordinal))) return "relation";
        return related.EnumerateObject().SelectMany(p => p.Value.ValueKind == JsonValueKind.Array ? p.Value.EnumerateArray() : Enumerable.Repeat(p.Value, 1)).Select(Activity).FirstOrDefault(f => f is not null);
    }

    static bool HasNull(JsonElement e) => e.ValueKind switch
    {
        JsonValueKind.Null => true,
        JsonValueKind.Object => e.EnumerateObject().Any(p => p.Name != "extensions" && HasNull(p.Value)),
        JsonValueKind.Array => e.EnumerateArray().Any(HasNull),
        _ => false,
    };

    // RFC 3987: an IRI has a scheme.
    static bool IsIri(string? text) => text is not null && Scheme().IsMatch(text) && Uri.TryCreate(text, UriKind.Absolute, out _);

    static bool IsId(JsonElement id) => Number().IsMatch(id.GetString() ?? "");

    // 4.2: keys are language tags of RFC 5646, values strings.
    static bool IsLanguageMap(JsonElement map) => map.ValueKind == JsonValueKind.Object && map.EnumerateObject().All(p => Tag().IsMatch(p.Name) && p.Value.ValueKind == JsonValueKind.String);

    [GeneratedRegex("^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$", RegexOptions.NonBacktracking)]
    private static partial Regex Number();

    [GeneratedRegex(@"^[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\.[0-9]+)?(Z|[+-][0-9]{2}:[0-9]{2})$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Moment();

    [GeneratedRegex(@"^P(?:[0-9]+Y)?(?:[0-9]+M)?(?:[0-9]+W)?(?:[0-9]+D)?(?:T(?:[0-9]+H)?(?:[0-9]+M)?(?:[0-9]+(?:\.[0-9]+)?S)?)?$", RegexOptions.NonBacktracking)]
    private static partial Regex Lasts();

    [GeneratedRegex("^[A-Za-z][A-Za-z0-9+.-]*:", RegexOptions.NonBacktracking)]
    private static partial Regex Scheme();

    [GeneratedRegex("^[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Tag();
}
