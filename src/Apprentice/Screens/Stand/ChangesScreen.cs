using Apprentice.Content;
using Apprentice.Content.Changes;

namespace Apprentice.Screens;

/// <summary>The workshop's changes over the shipped topics and lessons.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record ChangesScreen(Screen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.lead-changes"),
        "",
        All(world).Count == 0 ? [new Block.Text(Words.Of("stand.changes-none"))] :
        [
            new Block.Text(Words.Of("stand.changes-ask")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")], Rows([[Words.Of("stand.changes-save"), ""], .. All(world).Select(c => (string[])[$"{c.Number}: {c.Title}", State(world, c)])])),
            .. world.Copy.Faults.Select(f => new Block.Text(f.ToString())),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <summary>How a change stands.</summary>
    public static string State(World world, Change change) => Words.Of(
        world.Copy.InForce.All(c => c.Number != change.Number) ? "stand.change-back" : world.Copy.Unfit().Contains(change.Number) ? "stand.change-unfit" : "stand.change-force");

    /// <inheritdoc/>
    protected override int Count(World world) => All(world).Count == 0 ? 0 : All(world).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 0
        ? new Turn(this, [], Sheet: new Sheet(Words.Of("stand.changes-file"), ChangesFile.Write(world.Copy.Changes), note => this with { Note = note }))
        : Turn.To(new ChangeScreen(this with { Note = "" }, All(world)[line - 1].Number));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static List<Change> All(World world) => [.. world.Copy.Changes.Where(c => c.TakesBack is null).OrderByDescending(c => c.Number)];
}

/// <summary>One change as a difference; it can be taken back.</summary>
/// <param name="Below">The changes.</param>
/// <param name="Number">Number of the change.</param>
sealed record ChangeScreen(ChangesScreen Below, int Number) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    Change Of(World world) => world.Copy.Changes.First(c => c.Number == Number);

    bool IsInForce(World world) => world.Copy.InForce.Any(c => c.Number == Number);

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var change = Of(world);
        return new Page(
            Words.Of("stand.change-title", ("n", Number)),
            ChangesScreen.State(world, change),
            [
                new Block.Text(change.Title),
                new Block.Text(Words.Of("stand.change-where", ("file", change.File), ("day", change.Day.ToString("d MMMM yyyy")), ("by", change.By))),
                .. change.Because.Length > 0 ? [new Block.Text(Words.Of("stand.change-because", ("text", change.Because)))] : Array.Empty<Block>(),
                .. change.From.Length > 0 ? [new Block.Text(Words.Of("stand.change-from", ("name", change.From)))] : Array.Empty<Block>(),
                new Block.Gap(Drop: true),
                .. WorkshopCopy.Difference(change).Select(l => new Block.Text(l)),
                new Block.Gap(Drop: true),
                .. IsInForce(world) ? [new Block.Table([new("")], Rows([(string[])[Words.Of("stand.change-take-back")]]))] : Array.Empty<Block>(),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => IsInForce(world) ? 1 : 0;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => world.Copy.BuiltOn(Number) is [var other, ..]
        ? Turn.To(Below with { Note = Words.Of("stand.change-built-on", ("n", other.Number)) })
        : Turn.To(Below with { Note = Words.Of("stand.change-taken-back") }) with
        {
            Changes = [world.Copy.TakenBack(Number, DateOnly.FromDateTime(world.Now.DateTime), world.History.Workshop?.Lead ?? "")],
        };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
