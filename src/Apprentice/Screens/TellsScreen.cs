using Apprentice.Content;
using Apprentice.Drawing.Plates;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>After a writing was read: what does it settle, what does it only bound?</summary>
/// <param name="Task">What was looked at.</param>
/// <param name="Taken">The writing.</param>
/// <param name="Finding">What it says, as the learner read it.</param>
sealed record TellsScreen(LookTask Task, Marking Taken, string Finding) : ChoiceScreen
{
    static readonly (Bearing Bearing, string Key)[] Options =
        [(Bearing.Part, "look.tells-part"), (Bearing.OtherPart, "look.tells-other"), (Bearing.Date, "look.tells-date"), (Bearing.Nothing, "look.tells-nothing")];

    /// <inheritdoc/>
    public override int? Job => Task.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Task.Title,
        world.Who,
        [
            new Block.Gap(), new Block.Text(Words.Of("look.read", ("signs", Taken.Text), ("text", Task.Findings.First(f => string.Equals(f.Id, Finding, StringComparison.Ordinal)).Text))),
            new Block.Gap(), new Block.Text(Words.Of("look.tells", ("asked", Task.Asked))), new Block.Gap(),
            new Block.Table([new("")], Rows(Options.Select(o => (string[])[Words.Of(o.Key, ("asked", Task.Asked))]))),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Options.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Task.Done(world, new OwnLook(Finding, Taken.Writing, Options[line].Bearing));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new LookScreen(Task, Taken));
}
