using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>The second person's way: file, code, the job with all that its mark rests on, decision, name, reason.</summary>
static class AppealDesk
{
    static readonly AppealDecision[] Decisions = [AppealDecision.CountedSound, AppealDecision.Stays, AppealDecision.NewJob];

    /// <summary>The first screen for a file of a questioned job, or null when it is none.</summary>
    public static Screen? Of(byte[] file, Screen below) => AppealFile.Is(file) ? AskCode(file, below, below) : null;

    /// <summary>Asks for a file.</summary>
    /// <param name="below">The screen to go back to.</param>
    /// <param name="ask">Key of the words that ask.</param>
    /// <param name="then">What follows, given its bytes and the screen before.</param>
    public static SignOffAskScreen AskFile(Screen below, string ask, Func<byte[], Screen, Screen> then) => new(
        Words.Of("appeals.title"), "", [Words.Of(ask)], Words.Of("collect.field"), (_, asked, path) => Turn.To(asked) with { Errand = (_, _) => Read(path, asked, then) }, below)
    {
        Works = true,
    };

    /// <summary>Asks for the code of a questioned job.</summary>
    public static SignOffAskScreen AskCode(byte[] file, Screen before, Screen home) => new(
        Words.Of("appeals.open"), "", [Words.Of("appeals.code-ask")], Words.Of("kit.code-field"), (_, asked, code) =>
        {
            try
            {
                return Turn.To(new AppealReadScreen(AppealFile.Open(file, code), code, home));
            }
            catch (SealException e)
            {
                return asked.Again(e.Message);
            }
        }, before)
    {
        Works = true,
    };

    /// <summary>Decision, name and reason of the second person.</summary>
    public static Turn Decide(AppealReadScreen job) => Turn.To(new SignOffChooseScreen(
        Words.Of("appeals.decide"), "", [Words.Of("appeals.decide-how")], [.. Decisions.Select(d => Words.Of($"appeals.may.{d}"))],
        (_, what, line) => Turn.To(new SignOffAskScreen(Words.Of("appeals.decide"), "", [Words.Of("appeals.who", ("lead", job.Papers.Lead), ("candidate", job.Papers.Candidate))], Words.Of("bike.name"),
            (here, who, by) => Appeal.DecisionFault(here.History.Called.OfTyped(by), here.History.Called.Of(job.Papers.Lead), here.History.Called.Of(job.Papers.Candidate), "-") is { } fault ? who.Again(Spoken.Capital(fault) + ".")
                : Turn.To(new SignOffAskScreen(Words.Of("appeals.decide"), by, [Words.Of("appeals.why")], Words.Of("takeback.field"),
                    (world, _, reason) => Kept(world, job, new AppealVerdict(job.Papers.Paper, job.Papers.Mark.Place, by, Decisions[line], reason)), who)), what)), job));

    /// <summary>Why a decision cannot be taken in here, as a sentence, or null when it can.</summary>
    public static string? Fault(World world, AppealVerdict verdict)
    {
        var all = world.History.Assessments;
        if (all.Appeals.FirstOrDefault(a => a.Paper == verdict.Paper && a.Place == verdict.Place) is not { } appeal) return Words.Of("appeals.foreign", ("paper", verdict.Paper), ("job", verdict.Place));
        if (appeal.Decided is not null) return Words.Of("appeals.again", ("paper", verdict.Paper), ("job", verdict.Place));
        return Appeal.DecisionFault(world.History.Called.OfTyped(verdict.By), SignOffBike.Lead(world), all.Result(verdict.Paper)?.Candidate ?? "", verdict.Reason) is { } fault ? Spoken.Capital(fault) + "." : null;
    }

    /// <summary>The entry of a decision.</summary>
    public static LogEntry.AppealDecided Entry(AppealVerdict verdict) => new(verdict.Paper, verdict.Place, verdict.By, verdict.Decision, verdict.Reason);

    // Where the questioned job is in this log it is decided here; elsewhere the decision goes back as a file.
    static Turn Kept(World world, AppealReadScreen job, AppealVerdict verdict) => Fault(world, verdict) is null
        ? Turn.To(job with { Note = Words.Of("appeals.decided-here"), Decided = true }, Entry(verdict))
        : Turn.To(job) with { Errand = (_, folder) => Written(folder, job, verdict) };

    static Turn Written(PaperFolder folder, AppealReadScreen job, AppealVerdict verdict)
    {
        try
        {
            var path = folder.Write(Words.Of("appeals.decision-name", ("paper", verdict.Paper), ("job", verdict.Place)), AppealFile.Sealed(verdict, job.Code));
            return Turn.To(job with { Note = Words.Of("appeals.decided", ("file", path), ("lead", job.Papers.Lead)), Decided = true });
        }
        catch (SealException e)
        {
            return Turn.To(job with { Note = e.Message });
        }
    }

    static Turn Read(string path, SignOffAskScreen asked, Func<byte[], Screen, Screen> then)
    {
        try
        {
            return Turn.To(then(PaperFolder.Read(path), asked));
        }
        catch (SealException e)
        {
            return asked.Again(e.Message);
        }
    }
}
