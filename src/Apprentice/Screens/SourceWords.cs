using Apprentice.Content;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Where a figure comes from, in words.</summary>
static class SourceWords
{
    /// <summary>The source of the figure that a link of a lesson leads to.</summary>
    public static string Of(World world, string topic, string link)
    {
        var (kind, rest) = (link[..link.IndexOf(':', StringComparison.Ordinal)], link[(link.IndexOf(':', StringComparison.Ordinal) + 1)..]);
        if (string.Equals(kind, "sum", StringComparison.Ordinal)) return Words.Of("source.worked-out");
        if (string.Equals(kind, "source", StringComparison.Ordinal)) return Named(world, topic, rest);
        if (world.Bench(topic)?.Topic is not { } it) return Words.Of("source.judgement");
        var first = rest.Split('/')[0];
        var mark = kind switch
        {
            "size" => it.SourceOf(first, rest.Split('/')[^1]),
            "reading" or "slip-reading" => it.Clues.FirstOrDefault(c => string.Equals(c.Id, first, StringComparison.Ordinal))?.Shows is Shows.Measured measured
                ? it.SourceOf(measured.Dimension, rest.Split('/')[^1])
                : null,
            "step" or "share" => it.Clues.FirstOrDefault(c => string.Equals(c.Id, first, StringComparison.Ordinal))?.Source,
            _ => null,
        };
        return mark is null ? Words.Of("source.judgement") : string.Join("; ", mark.Split(", ").Select(key => Named(world, topic, key)));
    }

    /// <summary>A source by its key, or what stands in for one.</summary>
    public static string Named(World world, string topic, string key) => key switch
    {
        "common-practice" or "common practice" or "common practice, no source" => Words.Of("source.common"),
        "memory" => Words.Of("source.memory"),
        "judgement" or "no source" => Words.Of("source.judgement"),
        _ => (world.Library.Sources.Concat(world.Bench(topic)?.Topic.Sources ?? []).FirstOrDefault(s => string.Equals(s.Key, key, StringComparison.Ordinal))?.Text ?? key).TrimEnd('.'),
    };
}
