using Apprentice.Content;

namespace Apprentice.Screens.Assess;

/// <summary>One line of a form: something typed, then the next line.</summary>
/// <param name="Title">Top line, left.</param>
/// <param name="Right">Top line, right.</param>
/// <param name="Said">Sentences above the field.</param>
/// <param name="Label">Before the field.</param>
/// <param name="Then">What follows, given this screen and the text.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SignOffAskScreen(string Title, string Right, IReadOnlyList<string> Said, string Label, Func<World, SignOffAskScreen, string, Turn> Then, Screen Below) : FieldScreen
{
    /// <summary>True when what is typed is not to be seen by the other person.</summary>
    public bool Hidden { get; init; }

    /// <summary>What an empty line stands for, or empty when something must be typed.</summary>
    public string Otherwise { get; init; } = "";

    /// <summary>True when Enter may need a moment of work.</summary>
    public bool Works { get; init; }

    /// <inheritdoc/>
    public override bool Slow => Works;

    /// <inheritdoc/>
    protected override int Longest => 200;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Title,
        Right,
        [
            .. Said.SelectMany(s => new Block[] { new Block.Text(s), new Block.Gap() }),
            .. (Hidden ? this with { Typed = new string('*', Typed.Length) } : this).Field(Label),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length > 0 ? Then(world, this, text)
        : Otherwise.Length > 0 ? Then(world, this, Otherwise)
        : Turn.To(this with { Wrong = Words.Of("signoff.empty") });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    /// <summary>This line again, empty, with what was wrong.</summary>
    public Turn Again(string wrong) => Turn.To(this with { Typed = "", Wrong = wrong });
}
