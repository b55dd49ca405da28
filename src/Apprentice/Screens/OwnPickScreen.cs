using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Own bike: a question with a list of answers; 0 when it cannot be seen.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="ClueId">The clue asked about.</param>
/// <param name="SoFar">How far it is, or empty.</param>
/// <param name="Below">The screen from which the walk started.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record OwnPickScreen(OwnBike Bike, string ClueId, string SoFar, Screen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("own.title"),
        Bike.Topic.Title,
        [
            .. OwnQuestion.Of(Bike, Bike.Clue(ClueId), SoFar),
            new Block.Table([new("")], [.. Rows(Answers().Select(a => (string[])[a.Text])), new Row("0", Marked: false, [Words.Of("own.cannot")])]),
        ],
        [Digits(world), Words.Of("own.keys-cannot"), Words.Of("key.enter-take"), Words.Of("key.esc-back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 && Cursor.Marked < 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Answers().Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => OwnQuestion.Found(world, Bike, ClueId, new Seen.Named(Answers()[line].Id), Below);

    /// <inheritdoc/>
    protected override Turn Back(World world) => OwnQuestion.Back(world, Bike, Below);

    /// <summary>0 is "cannot see it" here and Esc goes back.</summary>
    public override Turn Press(World world, Input key) => key switch
    {
        { Digit: 0 } when Cursor.Pending == 0 => OwnQuestion.Found(world, Bike, ClueId, new Seen.Hidden(), Below),
        { Press: Screens.Press.Enter } when Cursor.Marked < 0 => Turn.To(this with { Note = Words.Of("answer.none-marked") }),
        _ => base.Press(world, key),
    };

    List<(string Id, string Text)> Answers() => Bike.Clue(ClueId).Shows switch
    {
        Shows.Table table => [.. table.Findings.Select(f => (f.Id, f.Text))],
        Shows.Code code => [.. code.Findings.Select(f => (f.Id, f.Text))],
        _ => [],
    };
}
