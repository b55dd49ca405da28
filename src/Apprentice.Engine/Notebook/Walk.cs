using System.Collections.Immutable;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;

namespace Apprentice.Engine.Notebook;

/// <summary>A walk round an own bike that is not over.</summary>
/// <param name="Begun">How it began.</param>
/// <param name="Findings">The answers, in order; hidden: it cannot be seen.</param>
public sealed record Walk(LogEntry.WalkBegun Begun, ImmutableList<Finding> Findings)
{
    /// <summary>The walks that are open, by person ("" for nobody known), with one more entry.</summary>
    public static ImmutableDictionary<string, Walk> With(ImmutableDictionary<string, Walk> open, LogEntry entry) => entry switch
    {
        LogEntry.WalkBegun e => open.SetItem(Key(e.Person), new Walk(e, [])),
        LogEntry.WalkFound e => Changed(open, e.Person, w => w with { Findings = w.Findings.Add(e.Finding) }),
        LogEntry.WalkStruck e => Changed(open, e.Person, w => w with { Findings = w.Findings.IsEmpty ? w.Findings : w.Findings.RemoveAt(w.Findings.Count - 1) }),
        LogEntry.WalkEnded e => open.Remove(Key(e.Person)),
        _ => open,
    };

    /// <summary>Under which a person's walk is held.</summary>
    public static string Key(string? person) => person ?? "";

    static ImmutableDictionary<string, Walk> Changed(ImmutableDictionary<string, Walk> open, string? person, Func<Walk, Walk> change) =>
        open.TryGetValue(Key(person), out var walk) ? open.SetItem(Key(person), change(walk)) : open;
}
