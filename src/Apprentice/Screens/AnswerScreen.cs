using System.Collections.Immutable;
using Apprentice.Content;
using Apprentice.Screens.Assess;

namespace Apprentice.Screens;

/// <summary>The answer, one question a screen, and at the end the whole of it before it is handed in.</summary>
/// <param name="Form">What was answered so far.</param>
/// <param name="Bench">The bench to go back to.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record AnswerScreen(AnswerForm Form, BenchScreen Bench, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => Form.On.Logged;

    /// <inheritdoc/>
    public override bool Slow => Form.Next is null;

    AnswerQuestion? Question => Form.Next;

    /// <summary>An empty answer.</summary>
    public static AnswerScreen Of(BenchJob on, BenchScreen bench) =>
        new AnswerScreen(new AnswerForm(on, ImmutableDictionary<string, string>.Empty.WithComparers(StringComparer.Ordinal)), bench) with { Cursor = Cursor.None };

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var done = Form.Questions.Where(q => Form.Values.ContainsKey(q.Key)).ToList();
        return new Page(
            Words.Of("answer.title", ("job", Form.On.Number)),
            JobCardBlocks.Right(Form.On, world.Who),
            [.. Question is { } question ? [.. Done(done), .. Ask(question, world.Plain)] : Review(done), .. Found(world)],
            [
                Question is null ? Words.Of("answer.key-hand-in") : Question.Scale ? Words.Of("answer.key-sure") : Digits(world),
                .. Question is null ? Array.Empty<string>() : [Words.Of("key.enter-take")],
                Words.Of("answer.key-found"), Words.Of("answer.key-bench"), Words.Of("key.pause"), Words.Of("key.help"),
            ])
        {
            Foot = Note.Length > 0 && Cursor.Marked < 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Question?.Options.Count ?? Form.Questions.Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (Question is { } question) return Turn.To(At(Form.With(question.Key, question.Options[line].Value)));
        return line == Form.Questions.Count ? HandIn(world) : Turn.To(At(Form.Without(Form.Questions[line].Key)));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world)
    {
        var last = Form.Questions.TakeWhile(q => Question is null || !string.Equals(q.Key, Question.Key, StringComparison.Ordinal))
            .LastOrDefault(q => Form.Values.ContainsKey(q.Key));
        return Turn.To(Question is null || last is null ? Bench : At(Form.Without(last.Key)));
    }

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter switch
    {
        _ when key.Press == Screens.Press.Enter && Cursor.Marked < 0 => Turn.To(this with { Note = Words.Of("answer.none-marked") }),
        'B' => Turn.To(Bench),
        'F' or '*' => Turn.To(new NotedScreen(this with { Note = "" })),
        'H' when Question is null => HandIn(world),
        '+' when Question is { Scale: true } => Take(world, 9),
        _ when Question is { Scale: true } && key.Digit is { } digit and > 0 => Take(world, digit - 1),
        _ => null,
    };

    AnswerScreen At(AnswerForm form)
    {
        var next = new AnswerScreen(form, Bench);
        return next with { Cursor = form.Next is null ? new Cursor(form.Questions.Count) : Cursor.None };
    }

    Turn HandIn(World world) => Form.Hazards.Count > 0 ? Turn.To(new ConfirmScreen(this)) : HandedIn(world);

    /// <summary>Hands the answer in: in practice it is graded, in a sitting the next job follows.</summary>
    public Turn HandedIn(World world) => Form.On.Sat is null ? GradeScreen.HandIn(Form) : Sit.HandIn(world, Form);

    IEnumerable<Block> Done(List<AnswerQuestion> done) =>
        done.Count == 0 ? [] : [new Block.Table([new(""), new("")], [.. done.Select(q => new Row("", Marked: false, Cells(q)))]), new Block.Rule()];

    IEnumerable<Block> Ask(AnswerQuestion question, bool plain) =>
    [
        new Block.Text(question.Prompt),
        .. question.Help.Length > 0 ? [new Block.Text(question.Help)] : Array.Empty<Block>(),
        new Block.Gap(),
        question.Scale && plain ? new Block.Gap() : question.Scale ? Scale(question) : new Block.Table([new("")], Rows(question.Options.Select(o => (string[])[o.Text]))),
    ];

    Block.Table Scale(AnswerQuestion question) => new(
        [new("")],
        [new Row(" ", Cursor.Marked >= 0, [string.Concat(question.Options.Select((_, i) => Mark(i) + (i == 9 ? "+" : (i + 1).ToString()) + " ")) + "   " + (Cursor.Marked < 0 ? "" : question.Options[Cursor.Marked].Text)])]);

    string Mark(int option) => option == Cursor.Marked ? "  >" : "   ";

    // In plain lines, and where not all of it fits, it is read when it is asked for.
    IEnumerable<Block> Found(World world) =>
        world.Plain || Noted.Of(Form.On) is not { } found ? [] : [new Block.Gap(Drop: true), new Block.Rule(Drop: true), found with { Drop = true }];

    List<Block> Review(List<AnswerQuestion> done) =>
    [
        new Block.Text(Words.Of("answer.review")),
        new Block.Gap(),
        new Block.Table([new(""), new("")], Rows([.. done.Select(Cells), [Words.Of("answer.hand-in"), ""]])),
    ];

    string[] Cells(AnswerQuestion question) =>
        [question.Line, question.Options.First(o => string.Equals(o.Value, Form.Values[question.Key], StringComparison.Ordinal)).Text];
}
