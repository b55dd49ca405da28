using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>Collects results: all that lie in the folder of papers, or those of another file or folder.</summary>
/// <param name="Desk">The desk to go back to.</param>
/// <param name="Folder">The folder of papers.</param>
/// <param name="Files">Results in it.</param>
sealed record CollectScreen(DeskScreen Desk, string Folder, IReadOnlyList<string> Files) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The screen with the results that lie in the folder now.</summary>
    public static Turn Open(DeskScreen desk) => Turn.To(desk) with
    {
        Errand = (_, folder) => Turn.To(new CollectScreen(desk, folder.Path, Collecting.In(folder.Path))),
    };

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("collect.title"),
        Words.Of("lead.right", ("lead", world.History.Workshop?.Lead ?? "")),
        [
            new Block.Text(Words.Of("collect.text")),
            new Block.Text(Folder, 2),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows([[Words.Of("collect.all"), Words.Of("collect.files", ("n", Files.Count))], [Words.Of("collect.other"), ""]])),
            new Block.Gap(),
            new Block.Text(Words.Of("collect.refused")),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 1 ? Turn.To(new CollectPathScreen(this)) : Collecting.From(world, this, Files);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Desk);
}

/// <summary>Asks for a file or a folder with results.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record CollectPathScreen(CollectScreen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    protected override int Longest => 400;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("collect.title"),
        "",
        [new Block.Text(Words.Of("collect.path")), new Block.Gap(), .. Field(Words.Of("collect.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0
        ? Turn.To(this with { Wrong = Words.Of("collect.none") })
        : Turn.To(this) with { Errand = (w, _) => Collecting.From(w, Below, Directory.Exists(text) ? Collecting.In(text) : [text]) };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>What became of each file: collected, or refused with a sentence.</summary>
/// <param name="Desk">The desk to go back to.</param>
/// <param name="Lines">A sentence a file.</param>
sealed record CollectedScreen(DeskScreen Desk, IReadOnlyList<(string File, string Sentence)> Lines) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("collect.title"),
        Words.Of("lead.right", ("lead", world.History.Workshop?.Lead ?? "")),
        [
            .. Lines.Count == 0 ? [new Block.Text(Words.Of("collect.nothing"))] : Array.Empty<Block>(),
            .. Lines.SelectMany(l => new Block[] { new Block.Text(Path.GetFileName(l.File)), new Block.Text(l.Sentence, 2) }),
            new Block.Gap(),
            new Block.Text(Words.Of("collect.next")),
        ],
        [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Desk : this);
}

/// <summary>Collecting, file by file.</summary>
static class Collecting
{
    /// <summary>Results in a folder; none when it cannot be read.</summary>
    public static IReadOnlyList<string> In(string folder)
    {
        try
        {
            return PaperFolder.Files(folder, PaperFolder.ResultEnding);
        }
        catch (SealException)
        {
            return [];
        }
    }

    /// <summary>Collects files with the desk's key: each one is marked, or refused with a sentence.</summary>
    public static Turn From(World world, CollectScreen below, IReadOnlyList<string> files) => DeskDoor.Through(world, below, opened => Turn.To(below) with
    {
        Errand = (w, folder) => Collected(opened.DeskKey ?? [], w, folder, below.Desk, files),
    });

    static Turn Collected(byte[] key, World world, PaperFolder folder, DeskScreen desk, IReadOnlyList<string> files)
    {
        var all = world.History.Assessments;
        var (entries, lines) = (new List<LogEntry>(), new List<(string, string)>());
        foreach (var file in files)
        {
            try
            {
                var collected = DeskWork.Collect(PaperFolder.Read(file), all, world.BenchesOf, key, folder);
                entries.Add(collected.Entry);
                all = all.With(new Logged(world.Now, collected.Entry));
                lines.Add((file, Said(collected.Sat)));
            }
            catch (SealException e)
            {
                lines.Add((file, e.Message));
            }
        }

        return Turn.To(new CollectedScreen(desk, lines), entries);
    }

    static string Said(SatPaper sat)
    {
        var said = Words.Of(sat.Places == 1 ? "collect.done-one" : "collect.done", ("candidate", sat.Candidate), ("paper", sat.Paper), ("jobs", sat.Places), ("minutes", (int)Math.Ceiling(sat.Used.TotalMinutes)), ("by", sat.ConfirmedBy));
        return sat.Stops.Count == 0 ? said : $"{said} {Words.Of("collect.stops", ("stops", string.Join("; ", sat.Stops)))}";
    }
}
