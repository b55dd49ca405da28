using Apprentice.Engine.Topics;

namespace Apprentice.Content.Lessons;

/// <summary>A link of a lesson that leads to a figure: of the topic's data, of a source, or worked out.</summary>
static class FigureLink
{
    static readonly string[] Kinds =
        ["size", "spread", "reading", "slip", "slip-reading", "often", "minutes", "off", "step", "rate", "share", "price", "days", "published", "source", "sum"];

    static readonly string[] Unsourced = ["common-practice", "memory", "judgement"];

    /// <summary>True when a link leads to a figure.</summary>
    public static bool IsFigure(string link) => link.IndexOf(':') is > 0 and var at && Kinds.Contains(link[..at], StringComparer.Ordinal);

    /// <summary>What is wrong with a figure and its link, or null.</summary>
    /// <param name="span">The link.</param>
    /// <param name="topic">The lesson's topic.</param>
    /// <param name="sources">Keys of all sources.</param>
    public static string? Fault(LessonSpan span, Topic topic, IReadOnlySet<string> sources)
    {
        var link = span.Link ?? "";
        var (kind, rest) = (link[..link.IndexOf(':')], link[(link.IndexOf(':') + 1)..]);
        if (kind == "source")
            return sources.Contains(rest) || Unsourced.Contains(rest, StringComparer.Ordinal) ? null : $"There is no source '{rest}': use {Nearest.Or([.. Nearest.Of(rest, sources.Concat(Unsourced), 3)])}.";
        var path = rest.Split('/');
        if (Value(topic, kind, kind == "sum" ? [rest] : path) is not { } value) return $"The link '{link}' leads to no figure of the topic {topic.Id}: {Hint(kind)}.";
        if (Figure.In(span.Text) is not { } shown) return $"The link '{link}' stands on \"{span.Text}\", which has no figure.";
        return shown.Agrees(value) ? null : $"\"{span.Text}\" does not agree with the topic: '{link}' is {value:0.####}.";
    }

    // Lengths in mm, shares 0 to 1, minutes, money, days.
    static double? Value(Topic topic, string kind, string[] path) => (kind, path) switch
    {
        ("size", [var size, var of]) => Size(topic, size, of) is { } d ? d.Size.Nominals[d.Kind] : null,
        ("spread", [var size, var of]) => Size(topic, size, of) is { } d ? d.Size.Spreads[d.Kind] : null,
        ("reading", [var clue, var of]) => Reading(topic, clue, of, null),
        ("slip-reading", [var clue, var n, var of]) => SlipOf(topic, clue, n) is { } slip ? Reading(topic, clue, of, slip) : null,
        ("slip", [var clue, var n]) => SlipOf(topic, clue, n) is { } slip ? Math.Abs(slip.Offset) : null,
        ("often", [var clue, var n]) => SlipOf(topic, clue, n)?.Share ?? DecoyOf(topic, clue, n),
        ("minutes", [var clue]) => ClueOf(topic, clue)?.Minutes,
        ("off", [var access]) => topic.Accesses.FirstOrDefault(a => Same(a.Id, access))?.Minutes,
        ("step", [var clue]) => MeasuredOf(topic, clue)?.Step,
        ("rate", [var id, var provenance]) => Rate(topic, id, provenance),
        ("share", [var clue, var finding, var of]) => Share(topic, clue, finding, of),
        ("price", [var spare]) => topic.Spares.FirstOrDefault(s => Same(s.Id, spare))?.Price,
        ("days", [var spare]) => topic.Spares.FirstOrDefault(s => Same(s.Id, spare))?.DelayDays,
        ("published", _) when topic.Published.FirstOrDefault(p => Same(p.Name, Uri.UnescapeDataString(string.Join('/', path)))) is { } published => published.Unit == "in" ? published.Value * 25.4 : published.Value,
        ("sum", [var sum]) => Sum.Of(sum),
        _ => null,
    };

    static (Dimension Size, int Kind)? Size(Topic topic, string size, string kind)
    {
        if (topic.Dimensions.FirstOrDefault(d => Same(d.Id, size)) is not { } dimension) return null;
        var at = topic.Parts.First(p => Same(p.Id, dimension.Part)).Kinds.ToList().FindIndex(k => Same(k.Id, kind));
        return at < 0 ? null : (dimension, at);
    }

    static double? Reading(Topic topic, string clue, string kind, Slip? slip)
    {
        if (MeasuredOf(topic, clue) is not { } measured || Size(topic, measured.Dimension, kind) is not { } size || size.Size.Nominals[size.Kind] is not { } nominal) return null;
        var right = (measured.Scale * nominal) + measured.Offset;
        return slip is null ? right : (right * slip.Factor) + slip.Offset;
    }

    static double? Rate(Topic topic, string id, string provenance)
    {
        var at = topic.Provenances.ToList().FindIndex(p => Same(p.Id, provenance));
        return at < 0 ? null : topic.Events.FirstOrDefault(e => Same(e.Id, id))?.Rates[at] ?? topic.Lines.FirstOrDefault(l => Same(l.Id, id))?.Shares[at];
    }

    static double? Share(Topic topic, string clue, string finding, string of)
    {
        if (ClueOf(topic, clue) is not { Shows: Shows.Table table } it) return null;
        var column = table.Findings.ToList().FindIndex(f => Same(f.Id, finding));
        if (column < 0) return null;
        if (of == "none" && table.NoneRow is { } none) return none[column];
        IReadOnlyList<string> rows = it.Node switch
        {
            Node.OfPart part => [.. topic.Parts.First(p => Same(p.Id, part.Part)).Kinds.Select(k => k.Id)],
            Node.OfLine => [.. topic.Lines.Select(l => l.Id)],
            _ => ["no", "yes"],
        };
        var row = rows.ToList().IndexOf(of);
        return row < 0 ? null : table.Rows[row][column];
    }

    static Slip? SlipOf(Topic topic, string clue, string number) =>
        MeasuredOf(topic, clue) is { } measured && int.TryParse(number, out var n) && n >= 1 && n <= measured.Slips.Count ? measured.Slips[n - 1] : null;

    static double? DecoyOf(Topic topic, string clue, string number) =>
        ClueOf(topic, clue)?.Shows is Shows.Code code && int.TryParse(number, out var n) && n >= 1 && n <= code.Decoys.Count ? code.Decoys[n - 1].Share : null;

    static Shows.Measured? MeasuredOf(Topic topic, string clue) => ClueOf(topic, clue)?.Shows as Shows.Measured;

    static Clue? ClueOf(Topic topic, string clue) => topic.Clues.FirstOrDefault(c => Same(c.Id, clue));

    static string Hint(string kind) => kind switch
    {
        "size" or "spread" => $"write {kind}:SIZE/KIND",
        "reading" => "write reading:CLUE/KIND, for a measured clue",
        "slip-reading" => "write slip-reading:CLUE/NUMBER/KIND",
        "slip" or "often" => $"write {kind}:CLUE/NUMBER, counted from 1",
        "minutes" or "step" => $"write {kind}:CLUE",
        "off" => "write off: and what comes off",
        "rate" => "write rate:EVENT/PROVENANCE",
        "share" => "write share:CLUE/FINDING/KIND",
        "published" => "write published: and a name of its published sizes",
        "sum" => "write sum: and figures with + - * / ( ) pi sin( sqrt(",
        _ => $"write {kind}:SPARE",
    };

    static bool Same(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);
}
