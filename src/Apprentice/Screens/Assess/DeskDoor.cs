using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>The way to the desk's key: set up when the first paper is made, asked for when the desk is closed.</summary>
static class DeskDoor
{
    /// <summary>Goes on with an open desk.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="below">The screen to go back to.</param>
    /// <param name="then">What follows; the world it gets holds the key.</param>
    public static Turn Through(World world, Screen below, Func<World, Turn> then) =>
        world.DeskKey is not null ? then(world)
        : world.History.Assessments.Desk is null ? Turn.To(new DeskSetScreen(below, then))
        : Turn.To(new DeskOpenScreen(below, then));

    /// <summary>What follows in a world that holds the key.</summary>
    internal static Turn With(Turn turn, byte[] key, Func<World, Turn> then) => turn with { Keeps = w => w with { DeskKey = key }, Errand = (w, _) => then(w) };
}

/// <summary>Sets a passphrase: typed twice. With a key it is a new passphrase for a desk that is there.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Then">What follows.</param>
/// <param name="First">The passphrase as it was typed first, or null.</param>
sealed record DeskSetScreen(Screen Below, Func<World, Turn> Then, string? First = null) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => First is not null;

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    protected override int Longest => 100;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("desk.set-title"),
        world.History.Workshop?.Lead ?? "",
        [
            new Block.Text(Words.Of("desk.set-why")),
            new Block.Gap(),
            new Block.Text(Words.Of(First is null ? "desk.set-new" : "desk.set-again", ("least", Desk.ShortestPassphrase))),
            new Block.Gap(),
            .. (this with { Typed = new string('*', Math.Min(Typed.Length, 40)) }).Field(Words.Of("desk.field")),
            new Block.Text(Words.Of("desk.set-lost")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (First is null)
        {
            return Turn.To(text.Length < Desk.ShortestPassphrase
                ? this with { Typed = "", Wrong = Words.Of("desk.set-short", ("least", Desk.ShortestPassphrase)) }
                : new DeskSetScreen(Below, Then, text));
        }

        if (!string.Equals(First, text, StringComparison.Ordinal)) return Turn.To(new DeskSetScreen(Below, Then) { Wrong = Words.Of("desk.set-differs") });
        return Turn.To(this) with { Errand = (w, _) => SetUp(w, text) };
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(First is null ? Below : new DeskSetScreen(Below, Then));

    // A desk that is there keeps its key: with a fresh one no paper made before would open.
    Turn SetUp(World world, string passphrase)
    {
        if (world.History.Assessments.Desk is not null && world.DeskKey is null) return Turn.To(new DeskOpenScreen(Below, Then));
        var (locked, key, code) = Desk.SetUp(passphrase, world.DeskKey);
        return Turn.To(new DeskCodeScreen(code, Then), new LogEntry.DeskSet(world.History.Workshop?.Lead ?? world.Who, locked)) with { Keeps = w => w with { DeskKey = key } };
    }
}

/// <summary>The recovery code, shown once.</summary>
/// <param name="Code">The code.</param>
/// <param name="Then">What follows.</param>
/// <param name="Note">Where the print lies, or empty.</param>
sealed record DeskCodeScreen(string Code, Func<World, Turn> Then, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("desk.code-title"),
        world.History.Workshop?.Lead ?? "",
        [
            new Block.Text(Words.Of("desk.code-text")),
            new Block.Gap(),
            new Block.Text(Code, 4),
            new Block.Gap(),
            new Block.Text(Words.Of("desk.code-keep")),
            new Block.Gap(),
            new Block.Table([new("")], Rows([[Words.Of("desk.code-print")], [Words.Of("desk.code-done")]])),
        ],
        [Digits(world), Words.Of("key.enter-go")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 1
        ? Then(world)
        : new Turn(this, [], Sheet: new Sheet(Words.Of("desk.code-file"), ReportText.Of(DeskSheets.Recovery(world, Code), "html"), note => this with { Note = note }));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(this);
}

/// <summary>Asks for the passphrase, or for the recovery code. Wrong tries slow down.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Then">What follows.</param>
sealed record DeskOpenScreen(Screen Below, Func<World, Turn> Then) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    protected override int Longest => 100;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("desk.open-title"),
        world.History.Workshop?.Lead ?? "",
        [
            new Block.Text(Words.Of("desk.open-ask")),
            new Block.Gap(),
            .. (this with { Typed = new string('*', Math.Min(Typed.Length, 40)) }).Field(Words.Of("desk.field")),
            new Block.Text(Words.Of("desk.open-without")),
        ],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        var all = world.History.Assessments;
        if (all.Desk is not { } desk) return Turn.To(Below);
        var wait = all.WaitFrom(world.Now, Desk.Delay(all.WrongTries));
        if (wait > TimeSpan.Zero) return Wronged(Words.Of("desk.open-wait", ("seconds", (int)Math.Ceiling(wait.TotalSeconds))));
        try
        {
            return Desk.Open(desk.Locked, text) is { } key
                ? DeskDoor.With(Turn.To(this, new LogEntry.DeskTried(Opened: true)), key, Then)
                : Wronged(Words.Of("desk.open-other"), new LogEntry.DeskTried(Opened: false));
        }
        catch (SealException e)
        {
            return Wronged(e.Message);
        }
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    Turn Wronged(string why, params IReadOnlyList<LogEntry> entries) => Turn.To(this with { Typed = "", Wrong = why }, entries);
}
