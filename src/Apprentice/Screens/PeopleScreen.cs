using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>What the lead of a workshop sees: jobs done and right, by person; a line corrects a name.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what was just done, or empty.</param>
sealed record PeopleScreen(Screen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("people.title", ("workshop", world.History.Workshop?.Name ?? "")),
        "",
        [
            .. world.History.People.Count == 0 ? [new Block.Text(Words.Of("people.none")), new Block.Gap(Drop: true)] : Array.Empty<Block>(),
            .. Count(world) == 0 ? Array.Empty<Block>() :
            [
                new Block.Table(
                    [
                        new(Words.Of("people.who")), new(Words.Of("people.jobs"), Right: true), new(Words.Of("people.right"), Right: true),
                        new(Words.Of("people.topics")),
                    ],
                    Rows(world.History.Names.Select(p => Cells(world, p)))),
            ],
            new Block.Gap(),
            new Block.Text(Words.Of("people.read")),
            .. Lines(world) is { Count: > 0 } lines ? [new Block.Gap(), new Block.Text(Words.Of("people.lines") + ":"), .. lines.Select(l => new Block.Text(l, 2))] : Array.Empty<Block>(),
        ],
        [Digits(world, "people.key"), Count(world) == 0 ? "" : Words.Of("people.key-enter"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => world.History.Names.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var here = this with { Note = "" };
        return Turn.To(new RenameScreen(world.History.Names[line], now => here with { Note = Words.Of("rename.done", ("name", now)) }, here));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static string[] Cells(World world, string person)
    {
        var jobs = world.History.JobsOf(person).Where(j => j.Counts).ToList();
        return
        [
            person, jobs.Count.ToString(), jobs.Count(j => j.Verdict is { Sound: true }).ToString(),
            string.Join(", ", jobs.Select(j => TopicsScreen.Title(world, j.Started.Topic)).Distinct(StringComparer.Ordinal)),
        ];
    }

    static List<string> Lines(World world) =>
        [.. world.History.Notebook.Reports.Select(r => r.What).OfType<LogEntry.Questioned>().OrderBy(q => q.Job).Select(q => Words.Of("people.line", ("job", q.Job), ("text", q.Text)))];
}
