using Apprentice.Content;
using Apprentice.Drawing.Plates;

namespace Apprentice.Screens;

/// <summary>What does it say, or what do you see? The findings of a clue to choose from.</summary>
/// <param name="Task">What is looked at.</param>
/// <param name="Taken">The writing that was chosen on a plate, or null where nothing is read.</param>
sealed record LookScreen(LookTask Task, Marking? Taken) : ChoiceScreen
{
    /// <summary>True when the picture is said in words.</summary>
    public bool InWords { get; init; }

    /// <inheritdoc/>
    public override int? Job => Task.Job;

    bool HasPicture => Taken is not null || Task.Draw is not null;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Task.Title,
        world.Who,
        [
            .. Seen(InWords || world.Plain),
            new Block.Gap(Drop: true),
            new Block.Text(Words.Of(Taken is null ? "look.see" : "look.says")),
            new Block.Table([new("")], Rows(Task.Findings.Select(f => (string[])[f.Text]))),
        ],
        [
            Digits(world), Words.Of("key.enter-take"), HasPicture && !world.Plain ? Words.Of(InWords ? "scale.key-picture" : "scale.key-words") : "",
            Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help"),
        ])
    {
        Foot = Taken is null ? [] : [new Block.Text(Words.Of("look.taken", ("signs", InWords || world.Plain ? PlateWords.Spelled(Taken) : Taken.Text)))],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Task.Findings.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var finding = Task.Findings[line].Id;
        if (Taken is null) return Task.Done(world, new OwnLook(finding));
        return Task.Asked.Length == 0 ? Task.Done(world, new OwnLook(finding, Taken.Writing)) : Turn.To(new TellsScreen(Task, Taken, finding));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Taken is null ? Task.Below : new PlateScreen(Task));

    /// <inheritdoc/>
    protected override Turn? Other(World world, Input key) => key.Letter is 'W' && HasPicture ? Turn.To(this with { InWords = !InWords }) : null;

    IEnumerable<Block> Seen(bool inWords)
    {
        yield return new Block.Text(ClueWhere.Of(Task.Clue));
        if (Task.Draw is { } draw && !inWords) yield return new Block.Picture(draw);
        else if (Task.Told.Count > 0) yield return new Block.Gap(Drop: true);
        if (Task.Draw is not null && !inWords) yield break;
        foreach (var told in Task.Told) yield return new Block.Text(told, 2);
    }
}
