using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>Which paper is sat at this machine: those of the desk's folder without a result, or a file from elsewhere.</summary>
/// <param name="Desk">The desk to go back to.</param>
/// <param name="Files">Papers in the folder: file, number, candidate, permission.</param>
sealed record SitPickScreen(DeskScreen Desk, IReadOnlyList<(string File, string Paper, string Candidate, string Permission)> Files) : ChoiceScreen
{
    /// <summary>The screen with the papers that lie in the folder now.</summary>
    public static Turn Open(DeskScreen desk) => Turn.To(desk) with { Errand = (_, folder) => Turn.To(new SitPickScreen(desk, In(folder))) };

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.pick"),
        Words.Of("lead.right", ("lead", world.History.Workshop?.Lead ?? "")),
        [
            new Block.Text(Words.Of("sit.pick-text")),
            new Block.Gap(),
            new Block.Table(
                [new(Words.Of("sit.pick-who")), new(Words.Of("sit.pick-paper")), new(Words.Of("sit.pick-for")), new(Words.Of("sit.pick-state"))],
                Rows([.. Left(world).Select(f => (string[])[world.History.Called.Of(f.Candidate), f.Paper, f.Permission, State(world, f.Paper)]), [Words.Of("sit.pick-other"), "", "", ""]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Left(world).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Left(world) is var left && line < left.Count ? Sit.Open(left[line].File, this) : Turn.To(new SitPathScreen(this));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Desk);

    static string State(World world, string paper) => IsNewJobDue(world, paper) ? Words.Of("sit.state-new-job") : IsAgainDue(world, paper) ? Words.Of("sit.state-again") : world.History.Assessments.SittingOf(paper) switch
    {
        null => Words.Of("sit.state-new"),
        { End: null } => Words.Of("sit.state-begun"),
        _ => Words.Of("sit.state-sat"),
    };

    List<(string File, string Paper, string Candidate, string Permission)> Left(World world) =>
        [.. Files.Where(f => world.History.Assessments.Result(f.Paper) is null || IsAgainDue(world, f.Paper) || IsNewJobDue(world, f.Paper))];

    static bool IsAgainDue(World world, string paper) => world.History.Assessments.Result(paper) is { SafetyErrors: 1, SafetyAgain.Count: 0 };

    static bool IsNewJobDue(World world, string paper) => world.History.Assessments.Result(paper)?.NewJobsDue.Count > 0;

    static List<(string File, string Paper, string Candidate, string Permission)> In(PaperFolder folder)
    {
        var found = new List<(string, string, string, string)>();
        foreach (var file in folder.Files(PaperFolder.PaperEnding))
        {
            try
            {
                var (paper, candidate, _, permission) = PaperFile.Outside(PaperFolder.Read(file));
                found.Add((file, paper, candidate, permission));
            }
            catch (SealException)
            {
                // A damaged file is not offered; whoever names it is told what is wrong.
            }
        }

        return found;
    }
}

/// <summary>Asks for the file of a paper.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record SitPathScreen(Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    protected override int Longest => 400;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.pick"),
        "",
        [new Block.Text(Words.Of("sit.path")), new Block.Gap(), .. Field(Words.Of("collect.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => text.Length == 0 ? Turn.To(this with { Wrong = Words.Of("collect.none") }) : Sit.Open(text, Below);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
