using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>The end of a walk round a real bike: what to order, what is open, and a sheet to take along.</summary>
/// <param name="Bike">The bike.</param>
/// <param name="Paragraphs">What stands on the sheet.</param>
/// <param name="Open">True when one more check could still tell something.</param>
/// <param name="Below">The screen from which the walk started.</param>
/// <param name="Note">Where the sheet lies, or why not, or empty.</param>
sealed record OwnEndScreen(OwnBike Bike, IReadOnlyList<string> Paragraphs, bool Open, Screen Below, string Note = "") : Screen
{
    const int SheetWidth = 76;

    /// <inheritdoc/>
    public override bool Slow => Open;

    /// <inheritdoc/>
    public override IReadOnlyList<string> HelpParts => HelpScreen.RealBike;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of(Bike.Stops.Count > 0 ? "own.stop-title" : "own.end"),
        Bike.Topic.Title,
        [.. Paragraphs.Select(t => t.Length == 0 ? (Block)new Block.Gap() : new Block.Text(t.TrimStart(), t.Length - t.TrimStart().Length))],
        [
            Words.Of("own.keys-print"), Words.Of("own.keys-more"), .. Open ? [Words.Of("own.keys-further")] : Array.Empty<string>(),
            Words.Of("own.keys-keep"), Words.Of("own.keys-home"), Words.Of("key.back"), Words.Of("key.help"),
        ])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => key switch
    {
        { Letter: 'D' or '1' } => new Turn(this, [], Sheet: new Sheet(Words.Of("own.file"), Text(), note => this with { Note = note })),
        { Digit: 2 } => Turn.To(OwnGoOnScreen.Of(world, this)),
        { Digit: 3 } when Open => Turn.To(Bike.Screen(Below, further: true)),
        { Digit: 4 } => Keep(world),
        { Press: Screens.Press.Enter } => Bike.Findings.Count == 0 ? LetGo(world) : Turn.To(new OwnLeaveScreen(this)),
        { IsBack: true } => OwnQuestion.Back(world, Bike, Below),
        _ => Turn.To(this),
    };

    /// <summary>Puts the bike into the notebook and goes to its page there.</summary>
    public Turn Keep(World world) =>
        Turn.To(new BikeScreen(world.History.Notebook.NextBike, new StandScreen(Start.Home(world)), Words.Of("own.kept")), Bike.Kept(world));

    /// <summary>Goes to the start page and keeps nothing.</summary>
    public static Turn LetGo(World world) => Turn.To(Start.Home(world), new LogEntry.WalkEnded(world.Person));

    string Text()
    {
        var title = Words.Of("own.sheet", ("topic", Bike.Topic.Title));
        var lines = Paragraphs.Prepend("").Prepend(title).SelectMany(t => Layout.Wrap(t, SheetWidth));
        return string.Join('\n', lines) + "\n";
    }
}
