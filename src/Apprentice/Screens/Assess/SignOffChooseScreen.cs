using Apprentice.Content;

namespace Apprentice.Screens.Assess;

/// <summary>One choice of a form.</summary>
/// <param name="Title">Top line, left.</param>
/// <param name="Right">Top line, right.</param>
/// <param name="Said">Sentences above the lines.</param>
/// <param name="Choices">The lines.</param>
/// <param name="Then">What follows, given this screen and the line from 0.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SignOffChooseScreen(string Title, string Right, IReadOnlyList<string> Said, IReadOnlyList<string> Choices, Func<World, SignOffChooseScreen, int, Turn> Then, Screen Below) : ChoiceScreen
{
    /// <summary>Rows of a table above the lines, each with as many cells as the first.</summary>
    public IReadOnlyList<IReadOnlyList<string>> Table { get; init; } = [];

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Title,
        Right,
        [
            .. Said.Select(s => new Block.Text(s)),
            .. Table.Count == 0 ? Array.Empty<Block>() : [new Block.Gap(Drop: true), new Block.Table([.. Table[0].Select(c => new Column(c))], [.. Table.Skip(1).Select(r => new Row("", Marked: false, r))])],
            new Block.Gap(),
            new Block.Table([new("")], Rows(Choices.Select(c => (string[])[c]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Choices.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Then(world, this, line);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
