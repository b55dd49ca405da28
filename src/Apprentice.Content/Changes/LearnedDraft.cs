using System.Globalization;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Changes;

/// <summary>Learned figures as changes of a topic file.</summary>
public static class LearnedDraft
{
    /// <summary>The change that puts a learned figure in; shares of lines go in together, since they add up to 1. Null when the file has no such cell.</summary>
    /// <param name="drafts">Makes the change.</param>
    /// <param name="topic">The topic.</param>
    /// <param name="learned">The figure.</param>
    /// <param name="all">All figures learned for the topic.</param>
    /// <param name="title">What the change is about.</param>
    public static Change? Of(Drafts drafts, Topic topic, Learned learned, IReadOnlyList<Learned> all, string title) => learned.Sort switch
    {
        LearnedSort.EventRate => drafts.Cells(title, Drafts.Events, [new CellEdit(Row(("id", learned.Of)), learned.In, Share(learned.Now))]),
        LearnedSort.Spread => drafts.Cells(title, Drafts.Sizes, [new CellEdit(Row(("size", learned.Of), ("kind", learned.In)), "spread", $"{Number(learned.Now, "0.###")} mm")]),
        LearnedSort.LineShare => drafts.Cells(title, Drafts.LinesHeading, Lines([.. all.Where(l => l.Sort == LearnedSort.LineShare && l.In == learned.In)])),
        _ => Window(drafts, topic, learned, title),
    };

    // The largest takes what is left, so that rounding does no harm.
    static CellEdit[] Lines(IReadOnlyList<Learned> shares)
    {
        var largest = shares.MaxBy(s => s.Now);
        return [.. shares.Select(s => new CellEdit(Row(("id", s.Of)), s.In, ReferenceEquals(s, largest) ? "rest" : Share(s.Now)))];
    }

    // A cell that also names the month that people tell is left to a hand.
    static Change? Window(Drafts drafts, Topic topic, Learned learned, string title)
    {
        var build = topic.Packages.First(p => p.Id == learned.Of).Builds[int.Parse(learned.In, CultureInfo.InvariantCulture)];
        if (build.From is not { } window || window.Told.CompareTo(window.Closes) != 0) return null;
        var months = (int)Math.Round(learned.Now, MidpointRounding.AwayFromZero);
        string Text(int shift)
        {
            var (opens, closes) = (window.Opens.Plus(shift), window.Closes.Plus(shift));
            return opens.CompareTo(closes) == 0 ? Month(opens) : $"{Month(opens)} to {Month(closes)}";
        }

        return drafts.Cells(title, Drafts.AsBuilt, [new CellEdit(Row(("package", learned.Of), ("from", Text(0))), "from", Text(months))]);
    }

    static string Month(Engine.Quantities.Month month) => $"{month.Year:0000}-{month.OfYear:00}";

    static string Share(double share) => Number(share, "0.####");

    static string Number(double number, string form) => number.ToString(form, CultureInfo.InvariantCulture);

    static Dictionary<string, string> Row(params (string Column, string Value)[] cells) => cells.ToDictionary(c => c.Column, c => c.Value, StringComparer.Ordinal);
}
