using System.Globalization;
using Apprentice.Engine.Notebook;

namespace Apprentice.Content.Changes;

/// <summary>Learned figures as changes of a topic file.</summary>
static class LearnedDraft
{
    /// <summary>The change that puts a rate, share or spread in; shares of lines go in together, since they add up to 1. Null when the file has no such cell.</summary>
    /// <param name="drafts">Makes the change.</param>
    /// <param name="learned">The figure.</param>
    /// <param name="all">All figures learned for the topic.</param>
    public static Change? Of(Drafts drafts, Learned learned, IReadOnlyList<Learned> all) => learned.Sort switch
    {
        LearnedSort.EventRate => drafts.Cells(learned.Key, Drafts.Events, [new CellEdit(Row(("id", learned.Of)), learned.In, Share(learned.Now))]),
        LearnedSort.Spread => drafts.Cells(learned.Key, Drafts.Sizes, [new CellEdit(Row(("size", learned.Of), ("kind", learned.In)), "spread", $"{Number(learned.Now, "0.###")} mm")]),
        _ => drafts.Cells(learned.Key, Drafts.LinesHeading, [.. Shares([.. all.Where(l => l.Sort == LearnedSort.LineShare && l.In == learned.In)]).Select(s => new CellEdit(Row(("id", s.Line)), learned.In, s.Share))]),
    };

    /// <summary>Shares of lines as they are written: the largest takes what is left, so that rounding does no harm.</summary>
    /// <param name="shares">The shares of all lines of one population.</param>
    public static IEnumerable<(string Line, string Share)> Shares(IReadOnlyList<Learned> shares)
    {
        var largest = shares.MaxBy(s => s.Now);
        return shares.Select(s => (s.Of, ReferenceEquals(s, largest) ? "rest" : Share(s.Now)));
    }

    /// <summary>A share as it is written.</summary>
    public static string Share(double share) => Number(share, "0.####");

    /// <summary>A row by its cells.</summary>
    public static IReadOnlyDictionary<string, string> Row(params (string Column, string Value)[] cells) => cells.ToDictionary(c => c.Column, c => c.Value, StringComparer.Ordinal);

    static string Number(double number, string form) => number.ToString(form, CultureInfo.InvariantCulture);
}
