using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Marks;

/// <summary>Sorts of jobs and topics in words; what is not here any more is called by its short name.</summary>
/// <param name="topics">Topics at hand.</param>
public sealed class SortNames(IReadOnlyList<Topic> topics)
{
    /// <summary>The topic of a short name, or null.</summary>
    public Topic? Find(string topic) => topics.FirstOrDefault(t => Same(t.Id, topic));

    /// <summary>The title of a topic.</summary>
    public string Topic(string topic) => Find(topic)?.Title ?? topic;

    /// <summary>A sort of job: topic, what is wanted, where the bike comes from, how it is seen.</summary>
    public string Of(JobFamily family) => Words.Of("sort.name", ("topic", Topic(family.Topic)), ("sort", Within(family)));

    /// <summary>A sort of job where the topic stands elsewhere: what is wanted, where the bike comes from, how it is seen.</summary>
    public string Within(JobFamily family)
    {
        var topic = Find(family.Topic);
        return Words.Of(
            "sort.within",
            ("want", topic?.Wants.FirstOrDefault(w => Same(w.Id, family.Want))?.Name ?? family.Want),
            ("from", topic?.Provenances.FirstOrDefault(p => Same(p.Id, family.Provenance))?.Name ?? family.Provenance),
            ("seen", Words.Of($"sort.seen.{family.Offer}")),
            ("first", First(topic, family)));
    }

    /// <summary>A sort of job by its key, as marks and statistics keep it.</summary>
    public string Of(string key) => FamilyOf(key) is { } family ? Of(family) : key;

    /// <summary>The sort of a key, or null when it is none.</summary>
    public static JobFamily? FamilyOf(string key) => key.Split('/') is [var topic, var provenance, var want, var opening, var select, var offer]
        && Enum.TryParse<Selection>(select, out var chosen) && Enum.TryParse<Channel>(offer, out var seen)
        ? new JobFamily(topic, provenance, want, opening is "-" ? null : opening, chosen, seen, Safety: false)
        : null;

    // What is told first, and what it has to look like: two sorts must not read alike.
    static string First(Topic? topic, JobFamily family) => family.Opening is not { } id
        ? Words.Of("sort.first.none")
        : Words.Of($"sort.first.{family.Select}", ("told", topic?.Openings.FirstOrDefault(o => Same(o.Id, id))?.Name ?? id));

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
