using Apprentice.Content;
using Apprentice.Content.Lessons;
using Apprentice.Engine;
using Apprentice.Engine.Evidence;

namespace Apprentice.Screens;

/// <summary>A question inside a lesson: which one, how sure; then what the engine makes of the same findings.</summary>
/// <param name="Bench">The topic.</param>
/// <param name="Asked">The question.</param>
/// <param name="Below">The lesson.</param>
/// <param name="Kind">The kind chosen, or null before.</param>
/// <param name="Tenths">How sure, or null before; 0 for not settled, where it is not asked.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record LessonTryScreen(Workbench Bench, TryIt Asked, LessonScreen Below, string? Kind = null, int? Tenths = null, string Note = "") : ChoiceScreen
{
    const string Open = "open";

    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override bool Slow => true;

    Engine.Topics.Part Part => Bench.Topic.Parts.First(p => string.Equals(p.Id, Bench.Topic.Wants.First(w => string.Equals(w.Id, Asked.Want, StringComparison.Ordinal)).Asks[0], StringComparison.Ordinal));

    /// <summary>The question, nothing answered yet.</summary>
    public static LessonTryScreen Of(Workbench bench, TryIt asked, LessonScreen below) => new(bench, asked, below) { Cursor = Cursor.None };

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Below.Lesson.Title,
        Words.Of("try.title"),
        [.. Found(), new Block.Rule(Drop: true), .. Kind is null ? Which() : Tenths is null ? Sure() : Reply()],
        [
            .. Tenths is not null ? [Words.Of("lesson.key-back-to")] : (string[])[Kind is null ? Digits(world) : Words.Of("answer.key-sure"), Words.Of("key.enter-take")],
            Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help"),
        ])
    {
        Foot = Note.Length > 0 && Cursor.Marked < 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Kind is null ? Part.Kinds.Count + 1 : Tenths is null ? 10 : 0;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(Kind is null
        ? line < Part.Kinds.Count ? this with { Kind = Part.Kinds[line].Id, Cursor = Cursor.None, Note = "" } : this with { Kind = Open, Tenths = 0 }
        : this with { Tenths = line + 1 });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Tenths is not null || Kind is null ? Below : this with { Kind = null, Cursor = Cursor.None, Note = "" });

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key)
    {
        if (Tenths is not null && key.Press == Screens.Press.Enter) return Turn.To(Below);
        if (key.Press == Screens.Press.Enter && Cursor.Marked < 0) return Turn.To(this with { Note = Words.Of("answer.none-marked") });
        if (Kind is null || Tenths is not null) return null;
        return key.Letter == '+' ? Take(world, 9) : key.Digit is { } n and > 0 ? Take(world, n - 1) : null;
    }

    IEnumerable<Block> Found()
    {
        var words = new TopicWords(Bench.Topic);
        var provenance = Bench.Topic.Provenances.First(p => string.Equals(p.Id, Asked.Provenance, StringComparison.Ordinal));
        yield return new Block.Text(Words.Of("try.bike", ("card", provenance.Card)));
        yield return new Block.Table([new(""), new("")], [.. Asked.Found.Select(f => new Row("", Marked: false, [words.Clue(f.Clue), words.Seen(f)]))]);
    }

    IEnumerable<Block> Which() =>
        [new Block.Text(Asked.Question), new Block.Text(Part.Question), new Block.Table([new("")], Rows([.. Part.Kinds.Select(k => (string[])[k.Name]), [Words.Of("answer.not-settled")]]))];

    IEnumerable<Block> Sure() =>
        [new Block.Text(Words.Of("try.sure", ("kind", new TopicWords(Bench.Topic).Kind(Part.Id, Kind ?? "")))), new Block.Table([new("")], [.. Enumerable.Range(1, 9).Select(n => Tenth($"{n}", n, Words.Of("answer.tenths", ("n", n)))), Tenth("+", 10, Words.Of("answer.as-certain"))])];

    Row Tenth(string key, int n, string said) => new(key, Marked: n - 1 == Cursor.Marked, [said]);

    List<Block> Reply()
    {
        var words = new TopicWords(Bench.Topic);
        var want = Bench.Topic.Wants.First(w => string.Equals(w.Id, Asked.Want, StringComparison.Ordinal));
        var offer = Bench.Topic.Clues.Where(c => c.Channels.Any(x => x.Channel == Engine.Topics.Channel.Bench)).Select(c => c.Id).ToList();
        var reasoning = Bench.Reason(new Enquiry(Asked.Provenance, want.Asks, want.Id, Engine.Topics.Channel.Bench, offer), Asked.Found);
        var part = reasoning.Parts[0];
        var leading = words.Class(part.Part, part.Classes[part.Leading].Kinds);
        List<Block> blocks =
        [
            new Block.Text(Words.Of(part.Settled ? "try.settled" : "try.open", ("kind", leading), ("share", Spoken.Twentieths(part.Highest)))),
            new Block.Text(Yours(part)),
        ];
        if (reasoning.Conflict.Shown) blocks.Add(new Block.Text(Words.Of("try.conflict")));
        blocks.AddRange(reasoning.Decisions.Where(d => d.Options.Count > 0).Select(d => new Block.Text(Words.Of("try.do", ("choice", words.Choice(d.Options[0].Choice))))));
        if (!part.Settled && reasoning.Next.Count > 0) blocks.Add(new Block.Text(Words.Of("try.next", ("clue", words.Clue(reasoning.Next[0].Clue)))));
        return [.. blocks.SelectMany(b => new[] { b, new Block.Gap(Drop: true) })];
    }

    string Yours(PartBelief part)
    {
        if (string.Equals(Kind, Open, StringComparison.Ordinal)) return Words.Of(part.Settled ? "try.you-open-settled" : "try.you-open");
        var kind = Kind ?? "";
        var share = part.Classes[part.ClassOf(kind)].Belief;
        var said = (Tenths ?? 0) / 10.0;
        var key = part.ClassOf(kind) != part.Leading ? "try.you-other" : said > share + 0.15 ? "try.you-too-sure" : said < share - 0.25 ? "try.you-too-shy" : "try.you-good";
        return Words.Of(key, ("kind", new TopicWords(Bench.Topic).Kind(Part.Id, kind)), ("n", Tenths ?? 0), ("share", Spoken.Twentieths(share)));
    }
}
