using System.Net;
using System.Text;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Sheets;

/// <summary>A sheet for the workshop's wall: what to ask, from where to where, the kinds, stop signs, the shortest way to each kind. HTML for print.</summary>
/// <param name="topic">The topic.</param>
/// <param name="trees">The shortest ways, one tree a part that is asked about.</param>
/// <param name="pictures">Drawings: caption and SVG.</param>
public sealed class WallSheet(Topic topic, IReadOnlyList<CheckTree> trees, IReadOnlyList<(string Caption, string Svg)> pictures)
{
    const string VersionMark = "apprentice-topic";
    const int LongTable = 20;

    // More pictures than that stand two in a row, or the sheet would not be one sheet of A3.
    const int ManyPictures = 9;
    readonly StringBuilder _html = new();
    readonly TopicWords _words = new(topic);

    /// <summary>The page.</summary>
    /// <param name="paper">"A4" or "A3".</param>
    /// <param name="date">Day of the print.</param>
    public string Html(string paper, DateOnly date)
    {
        _html.Clear();
        _ = _html.Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append($"<meta name=\"{VersionMark}\" content=\"{topic.Id} {topic.Version}\">\n<title>{Safe(topic.Title)}</title>\n<style>\n{Style(paper)}</style>\n</head>\n<body>\n");
        Line("h1", topic.Title);
        Line("p", Words.Of("sheet.question", ("question", Spoken.Capital(topic.Question))), "lead");
        _ = _html.Append("<div class=\"columns\">\n");
        Stops();
        Asks();
        Kinds();
        Ways();
        Pictures();
        Checks();
        _ = _html.Append("</div>\n");
        Line("p", Words.Of("sheet.foot", ("topic", topic.Id), ("version", topic.Version), ("date", date.ToString("d MMM yyyy")), ("state", State)), "foot");
        _ = _html.Append("</body>\n</html>\n");
        return _html.ToString();
    }

    /// <summary>The topic and version that a printed page names, or null when it is no sheet.</summary>
    public static (string Topic, string Version)? VersionOf(string html)
    {
        var mark = $"<meta name=\"{VersionMark}\" content=\"";
        var at = html.IndexOf(mark, StringComparison.Ordinal);
        if (at < 0) return null;
        var rest = html[(at + mark.Length)..];
        var parts = rest[..Math.Max(0, rest.IndexOf('"', StringComparison.Ordinal))].Split(' ');
        return parts.Length == 2 ? (parts[0], parts[1]) : null;
    }

    string State => topic.State switch
    {
        TopicState.Draft => Words.Of("sheet.state-draft"),
        TopicState.Checked => Words.Of("sheet.state-checked", ("by", topic.CheckedBy)),
        _ => Words.Of("sheet.state-in-use", ("by", topic.CheckedBy)),
    };

    static string Style(string paper) => $$"""
        @page { size: {{paper}} portrait; margin: 7mm; }
        body { font-family: sans-serif; font-size: {{(paper == "A3" ? 7.9 : 7.7)}}pt; line-height: 1.16; color: #000; background: #fff; margin: 0; }
        h1 { font-size: 1.9em; margin: 0 0 1mm; border-bottom: 1mm solid #000; }
        h2 { font-size: 1.15em; margin: 1.8mm 0 .6mm; border-bottom: .3mm solid #000; break-after: avoid; }
        .lead { font-size: 1.1em; margin: 1mm 0 2mm; }
        .columns { columns: {{(paper == "A3" ? 4 : 3)}}; column-gap: 4.5mm; }
        .wide { column-span: all; }
        table { border-collapse: collapse; width: 100%; }
        tr { break-inside: avoid; }
        .short { break-inside: avoid; }
        td, th { border: .2mm solid #555; padding: .2mm .8mm; text-align: left; vertical-align: top; }
        ul { margin: 0; padding-left: 3.5mm; }
        li p, li ul { margin-top: 0; margin-bottom: 0; }
        li p { display: inline; }
        .columns > p { margin: .6mm 0; break-after: avoid; }
        .note { font-style: italic; }
        li:not(:has(ul)) { break-inside: avoid; }
        .stop { border: 1mm solid #000; padding: 1.5mm 2.5mm; break-inside: avoid; }
        .stop h2 { margin-top: 0; }
        figure { margin: 1mm 0 2mm; break-inside: avoid; }
        .two { display: inline-block; width: 47%; margin-right: 2%; vertical-align: top; }
        figcaption { font-size: .9em; }
        svg { width: 100%; height: auto; max-height: {{(paper == "A3" ? 26 : 17)}}mm; }
        .two svg { max-height: 16mm; }
        .foot { font-size: .85em; border-top: .2mm solid #555; margin: 1.5mm 0 0; padding-top: .5mm; }

        """;

    void Stops()
    {
        var stops = topic.Clues.Select(c => c.Shows).OfType<Shows.Table>().SelectMany(t => t.Findings).Select(f => f.Stop).Where(s => s.Length > 0).Distinct(StringComparer.Ordinal).ToList();
        _ = _html.Append("<div class=\"stop\">\n");
        Line("h2", Words.Of("sheet.stops"));
        List([.. stops, .. topic.Clues.Select(c => c.Caution).Where(c => c.Length > 0).Distinct(StringComparer.Ordinal), Words.Of("card.safety")]);
        _ = _html.Append("</div>\n");
    }

    void Asks()
    {
        var asked = topic.Clues.Where(c => c.Ask.Length > 0 && c.Channels.Any(x => x.Channel == Channel.Phone)).Select(c => c.Ask).ToList();
        if (asked.Count == 0) return;
        Line("h2", Words.Of("sheet.ask"));
        List(asked);
    }

    void Kinds()
    {
        foreach (var part in topic.Parts.Where(p => p.Asked))
        {
            Line("h2", part.Question);
            var sizes = topic.Dimensions.Where(d => d.Part == part.Id).ToList();
            Table([Words.Of("sheet.kind"), .. sizes.Select(d => d.Name)], [.. part.Kinds.Select((k, i) => (IReadOnlyList<string>)[k.Name, .. sizes.Select(d => d.Nominals[i] is { } mm ? Words.Of("spoken.mm", ("n", mm.ToString("0.##"))) : "")])]);
        }
    }

    void Ways()
    {
        foreach (var tree in trees)
        {
            Line("h2", Words.Of("sheet.way", ("part", _words.Part(tree.Part))));
            if (tree == trees[0]) Line("p", Words.Of("sheet.ways-note", ("from", topic.Provenances[0].Name)), "note");
            Branch(tree);
        }
    }

    // Findings that lead to the same end stand in one line.
    void Branch(CheckTree node)
    {
        if (node.Clue is not { } clue) return;
        Line("p", Words.Of("sheet.check", ("clue", _words.Clue(clue)), ("minutes", Spoken.Minutes(topic.Clues.First(c => c.Id == clue).Minutes))));
        _ = _html.Append("<ul>\n");
        foreach (var group in node.Branches.GroupBy(b => b.Then.Clue is null ? $"{string.Join('/', b.Then.Kinds)} {b.Then.Settled}" : _words.Seen(b.Finding), StringComparer.Ordinal))
        {
            var then = group.First().Then;
            _ = _html.Append($"<li><b>{Safe(string.Join("; ", group.Select(b => _words.Seen(b.Finding))))}:</b> ");
            if (then.Clue is null) _ = _html.Append(Safe(Words.Of(then.Settled ? "sheet.end" : "sheet.open", ("kind", _words.Class(then.Part, then.Kinds)), ("share", Spoken.Twentieths(then.Belief)))));
            else Branch(then);
            _ = _html.Append("</li>\n");
        }

        _ = _html.Append("</ul>\n");
    }

    void Checks()
    {
        _ = _html.Append("<div class=\"wide\">\n");
        Line("h2", Words.Of("sheet.checks"));
        Table(
            [Words.Of("bench.check"), Words.Of("sheet.from-to"), Words.Of("bench.with"), Words.Of("bench.min"), Words.Of("sheet.lies")],
            [.. topic.Clues.Where(c => !c.Safety).Select(c => (IReadOnlyList<string>)[c.Name, c.FromTo, c.Tool, Spoken.Minutes(c.Minutes), c.Lies])]);
        _ = _html.Append("</div>\n");
    }

    void Pictures()
    {
        var figure = pictures.Count > ManyPictures ? "<figure class=\"two\">" : "<figure>";
        foreach (var (caption, svg) in pictures) _ = _html.Append($"{figure}{svg}<figcaption>{Safe(caption)}</figcaption></figure>\n");
    }

    void Line(string tag, string text, string? kind = null) => _ = _html.Append($"<{tag}{(kind is null ? "" : $" class=\"{kind}\"")}>{Safe(text)}</{tag}>\n");

    void List(IReadOnlyList<string> items) => _ = _html.Append("<ul>\n").AppendJoin("", items.Select(i => $"<li>{Safe(i)}</li>\n")).Append("</ul>\n");

    // A short table stays in one column; a long one may go on in the next, with its header.
    void Table(IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        _ = _html.Append(rows.Count > LongTable ? "<table>\n<thead><tr>" : "<table class=\"short\">\n<thead><tr>").AppendJoin("", header.Select(h => $"<th>{Safe(h)}</th>")).Append("</tr></thead>\n");
        foreach (var row in rows) _ = _html.Append("<tr>").AppendJoin("", row.Select(c => $"<td>{Safe(c)}</td>")).Append("</tr>\n");
        _ = _html.Append("</table>\n");
    }

    static string Safe(string text) => WebUtility.HtmlEncode(text);
}
