using System.CommandLine;
using Apprentice.Drawing;
using Apprentice.Drawing.Figures;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary><c>picture TOPIC DRAWING</c>: a part as it is drawn, for those who write topics; <c>picture figure NAME</c>: a figure with its usual values.</summary>
static class PictureCommand
{
    const string AnyFigure = "figure";
    const int LeastColumns = 20;
    const int LeastRows = 6;
    const int Most = 400;

    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var topic = new Argument<string>("TOPIC") { Description = "A topic, or the word figure for any figure with its usual values" };
        var drawing = new Argument<string>("DRAWING") { Description = "One of its drawings, or the name of a figure" };
        var kind = new Option<string?>("--kind") { Description = "Which kind of the part; else the first", HelpName = "KIND" };
        var finding = new Option<string?>("--finding") { Description = "Exactly what this finding says", HelpName = "FINDING" };
        var other = new Option<string?>("--with") { Description = "Another kind beside it, at one scale", HelpName = "KIND" };
        var size = new Option<string?>("--size") { Description = "Columns x rows, else 78x18", HelpName = "80x24" };
        var words = new Option<bool>("--words") { Description = "The picture in words" };
        var seed = new Option<string?>("--seed") { Description = "One in three looks like the shop", HelpName = "N" };
        var points = new Option<bool>("--points") { Description = "Letters at the named points" };
        var command = new Command("picture", "Draws a part as a topic describes it") { topic, drawing, kind, finding, other, size, words, seed, points, sources.Shipped };
        command.SetAction(parsed =>
        {
            var (columns, rows) = SizeOf(parsed.GetValue(size));
            var wanted = new Wanted(parsed.GetValue(kind), parsed.GetValue(finding), parsed.GetValue(other), SeedOf(parsed.GetValue(seed)));
            var id = parsed.GetRequiredValue(topic);
            var (draw, said, named) = id == AnyFigure ? Usual(parsed.GetRequiredValue(drawing)) : Of(Topic(desk, sources.Taught(parsed), id), parsed.GetRequiredValue(drawing), wanted);
            var marks = parsed.GetValue(points) ? named.Select((name, i) => (name, $"{(char)('A' + (i % 26))}")).ToList() : [];
            foreach (var line in parsed.GetValue(words) ? said : draw(columns, rows, marks)) desk.Out.WriteLine(line.TrimEnd());
            foreach (var (name, letter) in marks) desk.Out.WriteLine($"{letter}  {name}: {PointWords.Name(name)}");
            return ExitCode.Done;
        });
        return command;
    }

    static Topic Topic(Desk desk, Taught taught, string id)
    {
        var topic = taught.Topic(id);
        taught.Tell(desk.Error, topic);
        return topic;
    }

    static Drawn Usual(string figure)
    {
        var known = Choose.One("figure", figure, FigureShelf.Ids.Order(StringComparer.Ordinal));
        return Alone(DrawnPart.Usual(FigureCatalogue.Of(known) ?? throw new Complaint($"There is no figure '{known}'.", ExitCode.Usage)));
    }

    static Drawn Of(Topic topic, string drawing, Wanted wanted)
    {
        var plan = Choose.One("drawing", drawing, topic.Drawings, d => d.Id);
        if (wanted.Finding is { } finding) return Alone(DrawnPart.Of(topic, plan.Id, DrawnChoice.Finding(LookOf("finding", finding, plan.Findings)), sizes: null, wanted.Seed));
        if (plan.Kinds.Count == 0) throw new Complaint($"The drawing {plan.Id} shows findings: add --finding {string.Join(" or ", plan.Findings.Select(l => l.Of))}.", ExitCode.Usage);
        var first = DrawnChoice.Kind(wanted.Kind is { } kind ? LookOf("kind", kind, plan.Kinds) : plan.Kinds[0].Of);
        if (wanted.With is not { } second) return Alone(DrawnPart.Of(topic, plan.Id, first, sizes: null, wanted.Seed));
        if (plan.Figure == Figure.PlainArt) throw new Complaint($"The drawing {plan.Id} is text art: it has no scale, so leave --with out.", ExitCode.Usage);
        var pair = DrawnPair.Of(topic, plan.Id, first, DrawnChoice.Kind(LookOf("kind", second, plan.Kinds)));
        return new Drawn((columns, rows, _) => pair.Rows(columns, rows), pair.Words, []);
    }

    static Drawn Alone(DrawnPart part) => new(part.Rows, part.Words, part.Points.Keys);

    static string LookOf(string what, string id, IReadOnlyList<DrawnLook> looks) => Choose.One(what, id, looks.Select(l => l.Of));

    static (int Columns, int Rows) SizeOf(string? text)
    {
        if (text is null) return (78, 18);
        var parts = text.Split('x');
        return parts.Length == 2 && int.TryParse(parts[0], out var columns) && int.TryParse(parts[1], out var rows) && columns is >= LeastColumns and <= Most && rows is >= LeastRows and <= Most
            ? (columns, rows)
            : throw new Complaint($"--size '{text}' is no size; write columns x rows, from {LeastColumns}x{LeastRows} to {Most}x{Most}, for example 80x24.", ExitCode.Usage);
    }

    static ulong? SeedOf(string? text) => text is null ? null : ulong.TryParse(text, out var seed) ? seed : throw new Complaint($"--seed '{text}' is no seed; write a whole number from 0 to {ulong.MaxValue}.", ExitCode.Usage);

    sealed record Wanted(string? Kind, string? Finding, string? With, ulong? Seed);

    sealed record Drawn(Func<int, int, IReadOnlyList<(string Point, string Text)>, IReadOnlyList<string>> Rows, IReadOnlyList<string> Words, IEnumerable<string> Points);
}
