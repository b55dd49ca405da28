using System.Globalization;
using System.Text.RegularExpressions;
using Apprentice.Content.Lessons;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Where a figure comes from, as it is written beside it: keys of sources, judgement, common practice, or the workshop's own bikes.</summary>
public static partial class SourceMark
{
    /// <summary>A figure that is judged.</summary>
    public const string Judgement = "judgement";

    /// <summary>A figure of the trade without a source.</summary>
    public const string CommonPractice = "common practice, no source";

    /// <summary>The mark of a figure learned from the workshop's bikes: "from 12 of the workshop's routine bikes, 2026-11-25".</summary>
    /// <param name="bikes">How many, at least 1.</param>
    /// <param name="routine">True for routine bikes, false for puzzling ones.</param>
    /// <param name="day">The day on which the lead let it count.</param>
    public static string OfBikes(int bikes, bool routine, DateOnly day) =>
        string.Create(CultureInfo.InvariantCulture, $"from {bikes} of the workshop's {(routine ? "routine" : "puzzling")} bikes, {day:yyyy-MM-dd}");

    /// <summary>True for the mark of a figure learned from the workshop's bikes.</summary>
    public static bool IsOfBikes(string mark) => mark.StartsWith("from ", StringComparison.Ordinal) && Bikes().IsMatch(mark);

    /// <summary>The published sources that a mark names: neither judgement, common practice, somebody's memory nor the workshop's bikes.</summary>
    /// <param name="topic">The topic, whose sources are known.</param>
    /// <param name="mark">The mark.</param>
    public static IReadOnlyList<Source> Published(Topic topic, string mark) => IsOfBikes(mark) ? [] :
    [
        .. mark.Split(',', StringSplitOptions.TrimEntries).SelectMany(key => topic.Sources.Where(s => string.Equals(s.Key, key, StringComparison.Ordinal) && !FigureCount.IsMemory(s))),
    ];

    [GeneratedRegex(@"^from [1-9][0-9]* of the workshop's (routine|puzzling) bikes, [0-9]{4}-[0-9]{2}-[0-9]{2}\z", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Bikes();
}
