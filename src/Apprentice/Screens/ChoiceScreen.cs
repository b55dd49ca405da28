using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>A screen with lines to choose from: digits take (in a long list they mark), arrows mark, Enter takes the marked line, 0 and Esc go back.</summary>
abstract record ChoiceScreen : Screen
{
    /// <summary>The marked line.</summary>
    public Cursor Cursor { get; init; }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        if (IsLeaving(key)) return Back(world);
        if (Other(world, key) is { } other) return other;
        var (cursor, taken) = Cursor.After(key, Count(world));
        var here = this with { Cursor = cursor };
        return taken is { } line ? here.Take(world, line) : Turn.To(here);
    }

    /// <summary>True for Esc, and for 0 where it is not the second digit of a number.</summary>
    protected bool IsLeaving(Input key) => key.Press == Screens.Press.Esc || (Cursor.Pending == 0 && key.IsBack);

    /// <summary>Number of lines.</summary>
    protected abstract int Count(World world);

    /// <summary>What taking a line does.</summary>
    protected abstract Turn Take(World world, int line);

    /// <summary>What going back does.</summary>
    protected abstract Turn Back(World world);

    /// <summary>What other keys do, or null.</summary>
    protected virtual Turn? Other(World world, Input key) => null;

    /// <summary>What the digits do, in the bottom line: in a long list a number is typed and Enter takes it.</summary>
    /// <param name="world">What is known.</param>
    /// <param name="key">Key of the words; they name the number of lines.</param>
    protected string Digits(World world, string key = "key.choose") => (Cursor.Pending, Count(world)) switch
    {
        ( > 0, _) => Words.Of("key.pending", ("n", Cursor.Pending)),
        (_, 0) => "",
        (_, 1) => Words.Of("key.choose-one"),
        var (_, count) => Words.Of(Cursor.IsLong(count) && !world.Plain ? $"{key}-long" : key, ("n", count)),
    };

    /// <summary>Rows with their digits, the marked one marked.</summary>
    protected IReadOnlyList<Row> Rows(IEnumerable<IReadOnlyList<string>> cells) =>
        [.. cells.Select((c, i) => new Row((i + 1).ToString(), i == Cursor.Marked, c))];
}
