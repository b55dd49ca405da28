using System.Net;
using System.Text;

namespace Apprentice.Reports;

/// <summary>A sheet to take along.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Sections">Headings with their lines.</param>
sealed record SheetPage(string Title, IReadOnlyList<SheetSection> Sections)
{
    const int Width = 76;

    const string Style = "@page { size: A4 portrait; margin: 14mm; } body { font-family: sans-serif; font-size: 11pt; color: #000; background: #fff; } "
        + "h1 { font-size: 1.5em; border-bottom: 1mm solid #000; } h2 { font-size: 1.1em; margin: 4mm 0 1mm; } ul { margin: 0; padding-left: 6mm; } li { margin: 1mm 0; }";

    /// <summary>As plain text, at most 76 cells wide.</summary>
    public string Text()
    {
        var lines = new List<string> { Title, new('=', Math.Min(Cells.Width(Title), Width)) };
        foreach (var section in Sections.Where(s => s.Lines.Count > 0))
        {
            lines.AddRange(["", section.Heading]);
            foreach (var line in section.Lines) lines.AddRange(Wrapped(line));
        }

        return string.Join('\n', lines) + "\n";
    }

    /// <summary>As one HTML page to print, in black and white.</summary>
    public string Html()
    {
        var html = new StringBuilder("<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>").Append(WebUtility.HtmlEncode(Title))
            .Append("</title>\n<style>").Append(Style).Append("</style>\n</head>\n<body>\n<h1>").Append(WebUtility.HtmlEncode(Title)).Append("</h1>\n");
        foreach (var section in Sections.Where(s => s.Lines.Count > 0))
        {
            _ = html.Append("<h2>").Append(WebUtility.HtmlEncode(section.Heading)).Append("</h2>\n<ul>\n")
                .AppendJoin("", section.Lines.Select(l => $"<li>{WebUtility.HtmlEncode(l.Trim())}</li>\n")).Append("</ul>\n");
        }

        return html.Append("</body>\n</html>\n").ToString();
    }

    static IEnumerable<string> Wrapped(string text)
    {
        var indent = text.Length - text.TrimStart().Length;
        var line = "- ";
        foreach (var word in text.Trim().Split(' '))
        {
            if (line.Trim().Length > 1 && Cells.Width(line) + indent + Cells.Width(word) + 1 > Width)
            {
                yield return new string(' ', indent) + line.TrimEnd();
                line = "  ";
            }

            line += word + " ";
        }

        yield return new string(' ', indent) + line.TrimEnd();
    }
}

/// <summary>A part of a sheet.</summary>
/// <param name="Heading">Its heading.</param>
/// <param name="Lines">Its lines.</param>
sealed record SheetSection(string Heading, IReadOnlyList<string> Lines);
