using System.Globalization;
using Apprentice.Content.Topics;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Changes;

/// <summary>A learned running change: its months as they are in the topic, and as they would be.</summary>
/// <param name="Package">The package.</param>
/// <param name="Builds">Its builds that share the window, by their place among the builds of the package.</param>
/// <param name="Was">The months in force.</param>
/// <param name="Is">The months learned.</param>
/// <param name="Published">The published sources of the months in force; none when they are nobody's.</param>
public sealed record WindowDraft(string Package, IReadOnlyList<int> Builds, Window Was, Window Is, IReadOnlyList<Source> Published)
{
    /// <summary>True when the figure comes to other months than those in force.</summary>
    public bool Moves => Was != Is;

    /// <summary>The months of a learned figure. What is told moves with them, since it was told of this change.</summary>
    /// <param name="topic">The topic as it is in force.</param>
    /// <param name="prior">The topic with the months that the figure was learned from.</param>
    /// <param name="learned">The figure, of a running change.</param>
    /// <returns>Null when the topic in force has no such change.</returns>
    public static WindowDraft? Of(Topic topic, Topic prior, Learned learned)
    {
        var at = int.Parse(learned.In, CultureInfo.InvariantCulture);
        if (BuildOf(topic, learned.Of, at) is not { From: { } was } build || BuildOf(prior, learned.Of, at)?.From is not { } from) return null;
        var months = (int)Math.Round(learned.Now, MidpointRounding.AwayFromZero);
        var builds = topic.Packages.First(p => p.Id == learned.Of).Builds;
        return new WindowDraft(
            learned.Of,
            [.. Enumerable.Range(0, builds.Count).Where(i => builds[i].From == was && builds[i].Lines.SequenceEqual(build.Lines))],
            was,
            was with { Opens = from.Opens.Plus(months), Closes = from.Closes.Plus(months), Told = from.Told.Plus(months) },
            SourceMark.Published(topic, build.MonthsFrom));
    }

    /// <summary>The change that puts the months in with their mark; null when the file has no such rows.</summary>
    /// <param name="drafts">Makes the change.</param>
    /// <param name="title">What the change is about.</param>
    /// <param name="mark">Where the months come from.</param>
    public Change? Draft(Drafts drafts, string title, string mark) => drafts.Cells(
        title, Drafts.AsBuilt, [.. Builds.Select(n => new CellEdit(LearnedDraft.Row(("package", Package)), "from", $"{Text(Is)}, source {mark}") { Nth = n })]);

    /// <summary>The months as a topic file writes them: "2012-09 to 2013-07, told 2013-05".</summary>
    public static string Text(Window window)
    {
        var told = window.Told == window.Closes ? "" : $", told {window.Told}";
        return (window.Opens == window.Closes ? $"{window.Opens}" : $"{window.Opens} to {window.Closes}") + told;
    }

    static Build? BuildOf(Topic topic, string package, int at) => topic.Packages.FirstOrDefault(p => p.Id == package)?.Builds.ElementAtOrDefault(at);
}
