using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Xml;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>Results as statements of the experience interface, IEEE 9274.1.1 (data of xAPI 1.0.3, part two): one a paper, one a job, as a JSON array in a file. Nothing is sent.</summary>
/// <param name="home">Address that names the workshop; accounts, activities and extensions are called after it.</param>
sealed class AssessXapi(Uri home)
{
    const string Verbs = "http://adlnet.gov/expapi/verbs/";
    const string Types = "http://adlnet.gov/expapi/activities/";
    const string Language = "en";

    static readonly JsonSerializerOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n", WriteIndented = true };

    /// <summary>The address that is used when the workshop names none: ".invalid" belongs to nobody. Source: RFC 2606, 2.</summary>
    public static Uri Nobody { get; } = new("https://workshop.invalid/");

    /// <summary>The statements of all results that were told, or of one person's.</summary>
    /// <param name="history">The history.</param>
    /// <param name="topics">Topics at hand.</param>
    /// <param name="person">Whose, or null for all.</param>
    public string Text(History history, IReadOnlyList<Topic> topics, string? person)
    {
        var telling = new RecordTelling(topics);
        var all = history.Assessments;
        var results = all.Results.Where(r => (person is null || r.Candidate == person) && all.PublishedAt(r.Paper) is not null);
        return JsonSerializer.Serialize(results.SelectMany(r => Of(all, r, telling)), Options) + "\n";
    }

    IEnumerable<Dictionary<string, object>> Of(Assessments all, PaperResult result, RecordTelling telling)
    {
        var at = all.SittingOf(result.Paper)?.Ended ?? all.PublishedAt(result.Paper) ?? default;
        yield return Statement($"paper {result.Paper}", result, result.Outcome == Outcome.Passed ? "passed" : "completed", PaperOf(result), OfPaper(all, result), at, []);
        foreach (var mark in result.AllJobs)
            yield return Statement($"paper {result.Paper} job {mark.Place}", result, "answered", JobOf(result, mark, telling), OfJob(mark), at, [PaperOf(result)]);
    }

    Dictionary<string, object> Statement(
        string name, PaperResult result, string verb, Dictionary<string, object> activity, Dictionary<string, object> outcome, DateTimeOffset at, IReadOnlyList<object> parents)
    {
        var context = new Dictionary<string, object>(StringComparer.Ordinal)
        {
            ["registration"] = Id($"registration {result.Paper}"),
            ["language"] = Language,
            ["platform"] = "apprentice",
        };
        var related = new Dictionary<string, object>(StringComparer.Ordinal) { ["grouping"] = new[] { Activity($"permission/{Uri.EscapeDataString(result.Permission)}", result.Permission, "objective") } };
        if (parents.Count > 0) related["parent"] = parents;
        context["contextActivities"] = related;
        return new(StringComparer.Ordinal)
        {
            ["id"] = Id(name),
            ["actor"] = new Dictionary<string, object>(StringComparer.Ordinal)
            {
                ["objectType"] = "Agent",
                ["name"] = result.Candidate,
                ["account"] = new Dictionary<string, object>(StringComparer.Ordinal) { ["homePage"] = home.AbsoluteUri, ["name"] = result.Candidate },
            },
            ["verb"] = new Dictionary<string, object>(StringComparer.Ordinal) { ["id"] = Verbs + verb, ["display"] = Said(verb) },
            ["object"] = activity,
            ["result"] = outcome,
            ["context"] = context,
            ["timestamp"] = at.ToString("yyyy-MM-dd'T'HH:mm:ss.fffzzz", CultureInfo.InvariantCulture),
        };
    }

    Dictionary<string, object> OfPaper(Assessments all, PaperResult result)
    {
        var outcome = new Dictionary<string, object>(StringComparer.Ordinal)
        {
            ["score"] = new Dictionary<string, object>(StringComparer.Ordinal)
            {
                ["scaled"] = Math.Round((double)result.Sound / Math.Max(1, result.Jobs.Count), 4),
                ["raw"] = result.Sound,
                ["min"] = 0,
                ["max"] = Math.Max(1, result.Jobs.Count),
            },
            ["completion"] = result.Outcome is Outcome.Passed or Outcome.NotYet,
            ["extensions"] = new Dictionary<string, object>(StringComparer.Ordinal)
            {
                [Extension("outcome")] = result.Outcome.ToString(),
                [Extension("safety-errors")] = result.SafetyErrors,
                [Extension("readings")] = result.Reading.Of,
                [Extension("readings-right")] = result.Reading.Right,
                [Extension("again-flat")] = Math.Round(result.SecondPaper(Prior.Flat), 4),
                [Extension("again-favourable")] = Math.Round(result.SecondPaper(Prior.Favourable), 4),
            },
        };
        if (result.Outcome is Outcome.Passed or Outcome.NotYet) outcome["success"] = result.Outcome == Outcome.Passed;
        if (all.SittingOf(result.Paper) is { } sitting) outcome["duration"] = XmlConvert.ToString(TimeSpan.FromSeconds(Math.Round(sitting.Used.TotalSeconds)));
        return outcome;
    }

    Dictionary<string, object> OfJob(JobMark mark) => new(StringComparer.Ordinal)
    {
        ["success"] = mark.CountsSound,
        ["completion"] = mark.Record?.Given is not null || mark.Rule != "paper.rule.unanswered",
        ["extensions"] = new Dictionary<string, object>(StringComparer.Ordinal)
        {
            [Extension("sound")] = mark.Sound,
            [Extension("standing")] = mark.Standing.ToString(),
            [Extension("safety-error")] = mark.SafetyError,
            [Extension("rule")] = mark.Rule,
            [Extension("sort")] = mark.Family,
            [Extension("topic-version")] = mark.Version,
        },
    };

    Dictionary<string, object> PaperOf(PaperResult result) => Activity($"paper/{result.Paper}", $"Jobs test {result.Paper}", "assessment");

    Dictionary<string, object> JobOf(PaperResult result, JobMark mark, RecordTelling telling) => Activity($"paper/{result.Paper}/job/{mark.Place}", $"Job {mark.Place}: {telling.Sort(mark)}", "question");

    Dictionary<string, object> Activity(string path, string name, string type) => new(StringComparer.Ordinal)
    {
        ["objectType"] = "Activity",
        ["id"] = new Uri(home, path).AbsoluteUri,
        ["definition"] = new Dictionary<string, object>(StringComparer.Ordinal) { ["type"] = Types + type, ["name"] = Said(name) },
    };

    string Extension(string name) => new Uri(home, $"xapi/{name}").AbsoluteUri;

    static Dictionary<string, object> Said(string text) => new(StringComparer.Ordinal) { [Language] = text };

    // The same statement has the same number, so that a file taken in twice counts once. Source of the form: RFC 9562, 5.8 and appendix B.2 (a hash as version 8).
    string Id(string name)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes($"{home.AbsoluteUri} {name}"))[..16];
        hash[6] = (byte)((hash[6] & 0x0F) | 0x80);
        hash[8] = (byte)((hash[8] & 0x3F) | 0x80);
        return new Guid(hash, bigEndian: true).ToString();
    }
}
