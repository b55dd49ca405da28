using System.Net;
using System.Text;
using Apprentice.Content;

namespace Apprentice.Reports;

/// <summary>A page for print, put together from headings, sentences, tables and lines to write on. Black on white, one file, nothing from elsewhere.</summary>
sealed class AssessHtml
{
    const string Style = """
        @page { size: A4 portrait; margin: 14mm; }
        body { font-family: sans-serif; font-size: 10.5pt; line-height: 1.35; color: #000; background: #fff; margin: 0 auto; max-width: 182mm; }
        h1 { font-size: 1.6em; margin: 0 0 2mm; border-bottom: .8mm solid #000; }
        h2 { font-size: 1.15em; margin: 5mm 0 1mm; border-bottom: .3mm solid #000; break-after: avoid; }
        h3 { font-size: 1em; margin: 3mm 0 1mm; break-after: avoid; }
        p { margin: 0 0 1.5mm; }
        table { border-collapse: collapse; width: 100%; margin: 1mm 0 3mm; }
        td, th { border: .2mm solid #555; padding: .6mm 1.4mm; text-align: left; vertical-align: top; }
        th { border-bottom: .5mm solid #000; }
        tr, figure { break-inside: avoid; }
        .new { break-before: page; }
        .job { break-inside: avoid; }
        .options { margin: 0 0 2mm 5mm; }
        .options span { display: inline-block; margin-right: 7mm; }
        .note { font-size: .9em; }
        .small { font-size: .85em; }
        .box { border: .6mm solid #000; padding: 2mm 3mm; break-inside: avoid; margin: 2mm 0; }
        .field { display: flex; align-items: flex-end; gap: 3mm; margin: 3mm 0; }
        .field span { flex: 1; border-bottom: .2mm solid #000; min-height: 6mm; }
        figure { margin: 1mm 4mm 2mm 0; display: inline-block; width: 48mm; vertical-align: top; }
        figcaption { font-size: .85em; }
        svg { width: 100%; height: auto; max-height: 34mm; }
        .foot { font-size: .8em; border-top: .2mm solid #555; margin-top: 5mm; padding-top: 1mm; }

        """;

    readonly StringBuilder _html = new();

    /// <summary>A page with its title.</summary>
    public AssessHtml(string title) => _html
        .Append("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>").Append(Safe(title)).Append("</title>\n<style>\n").Append(Style)
        .Append("</style>\n</head>\n<body>\n<h1>").Append(Safe(title)).Append("</h1>\n");

    /// <summary>A part; on a new sheet of paper when asked for.</summary>
    public AssessHtml Part(string title, bool onNewSheet = false) => Line(onNewSheet ? "h2 class=\"new\"" : "h2", "h2", title);

    /// <summary>A smaller part.</summary>
    public AssessHtml Small(string title) => Line("h3", "h3", title);

    /// <summary>A sentence or several.</summary>
    public AssessHtml Text(string text, string kind = "") => Line(kind.Length > 0 ? $"p class=\"{kind}\"" : "p", "p", text);

    /// <summary>A table; left out without rows.</summary>
    public AssessHtml Table(IReadOnlyList<string> header, IReadOnlyList<IReadOnlyList<string>> rows)
    {
        if (rows.Count == 0) return this;
        _ = _html.Append("<table>\n");
        if (header.Any(h => h.Length > 0)) _ = _html.Append("<tr>").AppendJoin("", header.Select(h => $"<th>{Safe(h)}</th>")).Append("</tr>\n");
        foreach (var row in rows) _ = _html.Append("<tr>").AppendJoin("", row.Select(c => $"<td>{Safe(c)}</td>")).Append("</tr>\n");
        _ = _html.Append("</table>\n");
        return this;
    }

    /// <summary>A list.</summary>
    public AssessHtml List(IReadOnlyList<string> items)
    {
        _ = _html.Append("<ul>\n").AppendJoin("", items.Select(i => $"<li>{Safe(i)}</li>\n")).Append("</ul>\n");
        return this;
    }

    /// <summary>Lines to choose from by number, side by side; none of them is broken.</summary>
    public AssessHtml Options(IReadOnlyList<string> options)
    {
        _ = _html.Append("<p class=\"options\">").AppendJoin("\n", options.Select((o, i) => $"<span><b>{i + 1}</b> {Safe(o)}</span>")).Append("</p>\n");
        return this;
    }

    /// <summary>A line to write on.</summary>
    public AssessHtml Field(string label)
    {
        _ = _html.Append("<div class=\"field\">").Append(Safe(label)).Append("<span></span></div>\n");
        return this;
    }

    /// <summary>A drawing with its caption.</summary>
    /// <param name="svg">The SVG element.</param>
    /// <param name="caption">What it shows.</param>
    public AssessHtml Picture(string svg, string caption)
    {
        _ = _html.Append("<figure>").Append(svg).Append("<figcaption>").Append(Safe(caption)).Append("</figcaption></figure>\n");
        return this;
    }

    /// <summary>Something that is kept on one sheet of paper, or set in a frame.</summary>
    /// <param name="kind">"job" or "box".</param>
    /// <param name="inside">What stands in it.</param>
    public AssessHtml Group(string kind, Action<AssessHtml> inside)
    {
        _ = _html.Append("<div class=\"").Append(kind).Append("\">\n");
        inside(this);
        _ = _html.Append("</div>\n");
        return this;
    }

    /// <summary>The whole page, with a line at its foot.</summary>
    public string Done(DateTimeOffset at) => Text(Words.Of("print.foot", ("day", AssessWords.Day(at))), "foot").End();

    string End() => _html + "</body>\n</html>\n";

    AssessHtml Line(string tag, string end, string text)
    {
        _ = _html.Append('<').Append(tag).Append('>').Append(Safe(text)).Append("</").Append(end).Append(">\n");
        return this;
    }

    static string Safe(string text) => WebUtility.HtmlEncode(text);
}
