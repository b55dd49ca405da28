using Apprentice.Engine.Assessing;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;

namespace Apprentice.Engine.Learning;

/// <content>What happens around papers and permissions. No entry holds a seed, a truth or a key of a paper.</content>
public abstract partial record LogEntry
{
    /// <summary>The lead's desk was set up, or its passphrase changed.</summary>
    /// <param name="Lead">Who leads.</param>
    /// <param name="Locked">The desk's key, locked with passphrase and recovery code, as text.</param>
    public sealed record DeskSet(string Lead, string Locked) : LogEntry;

    /// <summary>A passphrase or code was tried at the desk.</summary>
    /// <param name="Opened">True when it was right.</param>
    public sealed record DeskTried(bool Opened) : LogEntry;

    /// <summary>A test plan was saved.</summary>
    /// <param name="Plan">The plan; it replaces the last one of the same permission.</param>
    /// <param name="Reason">Why it was changed; empty for the first.</param>
    public sealed record PlanSaved(TestPlan Plan, string Reason) : LogEntry;

    /// <summary>A pass line was set.</summary>
    /// <param name="Permission">The permission.</param>
    /// <param name="Line">The ratings.</param>
    /// <param name="Reason">Why it was changed; empty for the first.</param>
    public sealed record PassLineSet(string Permission, PassLine Line, string Reason) : LogEntry;

    /// <summary>A paper was made and sealed.</summary>
    /// <param name="Paper">Its number.</param>
    /// <param name="Permission">The permission.</param>
    /// <param name="Candidate">For whom.</param>
    /// <param name="Number">The candidate's how-manieth paper of this permission.</param>
    public sealed record PaperMade(string Paper, string Permission, string Candidate, int Number) : LogEntry;

    /// <summary>A sitting began.</summary>
    /// <param name="Paper">Number of the paper.</param>
    /// <param name="Permission">The permission.</param>
    /// <param name="Candidate">Who sits.</param>
    /// <param name="Number">The candidate's how-manieth paper of this permission.</param>
    /// <param name="ConfirmedBy">Who confirmed that it is them.</param>
    /// <param name="Jobs">Jobs before the first check.</param>
    /// <param name="MinutesPerJob">Minutes a job, before the multiplier.</param>
    /// <param name="Multiplier">More time for those who need it; 1 for none.</param>
    /// <param name="Plain">True when it is sat in plain lines.</param>
    public sealed record SittingStarted(
        string Paper, string Permission, string Candidate, int Number, string ConfirmedBy, int Jobs, double MinutesPerJob, double Multiplier, bool Plain) : LogEntry;

    /// <summary>A job of the sitting came on the screen.</summary>
    public sealed record SittingOpened(string Paper, int Place) : LogEntry;

    /// <summary>The clock ran: noted at least every two seconds, so that a crash costs no more.</summary>
    public sealed record SittingTicked(string Paper) : LogEntry;

    /// <summary>A check was taken in a sitting.</summary>
    public sealed record SittingLooked(string Paper, int Place, Look Look, Finding Shown) : LogEntry;

    /// <summary>A job of the sitting was answered; a later answer to the same job replaces it.</summary>
    public sealed record SittingAnswered(string Paper, int Place, Given Given) : LogEntry;

    /// <summary>A job of the sitting was put off.</summary>
    public sealed record SittingSkipped(string Paper, int Place) : LogEntry;

    /// <summary>The lead stopped the clock.</summary>
    /// <param name="Paper">Number of the paper.</param>
    /// <param name="Place">The job on the screen, which a fresh one of its sort replaces; null for none.</param>
    /// <param name="Reason">Why.</param>
    public sealed record SittingStopped(string Paper, int? Place, string Reason) : LogEntry;

    /// <summary>The sitting went on after a stop, a break or a crash.</summary>
    public sealed record SittingResumed(string Paper) : LogEntry;

    /// <summary>It is close: more jobs.</summary>
    /// <param name="Paper">Number of the paper.</param>
    /// <param name="Jobs">Jobs before the next check.</param>
    public sealed record SittingWidened(string Paper, int Jobs) : LogEntry;

    /// <summary>The sitting ended.</summary>
    public sealed record SittingEnded(string Paper, SittingEnd Why) : LogEntry;

    /// <summary>A check of a real bike was opened, after the sitting ended.</summary>
    /// <param name="Paper">Number of the paper.</param>
    /// <param name="Place">Place among its real bikes.</param>
    /// <param name="Check">Index of the check among those that were taken on the bike.</param>
    public sealed record SittingRealLooked(string Paper, int Place, int Check) : LogEntry;

    /// <summary>It was said what a real bike is; a later answer replaces it.</summary>
    /// <param name="Paper">Number of the paper.</param>
    /// <param name="Place">Place among its real bikes.</param>
    /// <param name="Kind">The kind, or null for "not settled".</param>
    /// <param name="Tenths">How sure, of 10.</param>
    public sealed record SittingRealAnswered(string Paper, int Place, string? Kind, int Tenths) : LogEntry;

    /// <summary>The real bikes of a paper were handed in.</summary>
    public sealed record SittingRealEnded(string Paper) : LogEntry;

    /// <summary>The lead collected and marked a paper, or published a result.</summary>
    /// <param name="Result">The result.</param>
    /// <param name="Published">True when the candidate was told.</param>
    public sealed record PaperMarked(PaperResult Result, bool Published) : LogEntry;

    /// <summary>The candidate opened a result that was told.</summary>
    /// <param name="Paper">Number of the paper.</param>
    public sealed record ResultShown(string Paper) : LogEntry;

    /// <summary>The talk about safety was held.</summary>
    public sealed record SafetyTalked(string Paper, string By, string Text) : LogEntry;

    /// <summary>The six fresh safety jobs were marked.</summary>
    public sealed record SafetyAgainMarked(string Paper, IReadOnlyList<JobMark> Marks) : LogEntry;

    /// <summary>The candidate questioned a job.</summary>
    public sealed record PaperQuestioned(string Paper, int Place, string Text) : LogEntry;

    /// <summary>A second person decided about a questioned job.</summary>
    /// <param name="Paper">Number of the paper.</param>
    /// <param name="Place">The job.</param>
    /// <param name="By">The second person; not the lead.</param>
    /// <param name="Decision">The decision.</param>
    /// <param name="Reason">Why; kept.</param>
    public sealed record AppealDecided(string Paper, int Place, string By, AppealDecision Decision, string Reason) : LogEntry;

    /// <summary>The new job of an appeal was marked.</summary>
    /// <param name="Paper">Number of the paper.</param>
    /// <param name="Place">The job that was questioned.</param>
    /// <param name="Mark">The mark of the new job, at a place of its own.</param>
    public sealed record NewJobMarked(string Paper, int Place, JobMark Mark) : LogEntry;

    /// <summary>A sort of job was found unfair, for all who met it.</summary>
    /// <param name="Family">Key of the sort.</param>
    /// <param name="Version">Version of the topic.</param>
    /// <param name="Remedy">Counted as sound, or taken out.</param>
    /// <param name="By">Who decided.</param>
    /// <param name="Reason">Why; kept.</param>
    public sealed record FamilyUnfair(string Family, string Version, Standing Remedy, string By, string Reason) : LogEntry;

    /// <summary>A real bike was done on the bench.</summary>
    public sealed record BenchDone(string Person, string Permission, BenchForm Form) : LogEntry;

    /// <summary>A permission was signed.</summary>
    public sealed record PermissionSigned(Signature Signature) : LogEntry;

    /// <summary>A real order was countersigned.</summary>
    /// <param name="Person">Whose order.</param>
    /// <param name="Permission">The permission.</param>
    /// <param name="By">Who looked a second time.</param>
    /// <param name="Right">True when the order was right.</param>
    /// <param name="Note">What it was.</param>
    public sealed record OrderCountersigned(string Person, string Permission, string By, bool Right, string Note) : LogEntry;

    /// <summary>A permission was taken back.</summary>
    public sealed record PermissionTakenBack(string Person, string Permission, string By, string Reason) : LogEntry;

    /// <summary>A paper kit was made.</summary>
    /// <param name="Kit">Its number.</param>
    /// <param name="Permission">The permission.</param>
    /// <param name="Jobs">How many jobs it has.</param>
    /// <param name="Sealed">The kit with its key, sealed under the code that stands on the printed key.</param>
    public sealed record KitMade(string Kit, string Permission, int Jobs, string Sealed) : LogEntry;

    /// <summary>What somebody did with a paper kit was entered.</summary>
    /// <param name="Kit">Number of the kit.</param>
    /// <param name="Candidate">Who.</param>
    /// <param name="By">Who entered it.</param>
    /// <param name="Marks">The marks.</param>
    public sealed record KitEntered(string Kit, string Candidate, string By, IReadOnlyList<KitMark> Marks) : LogEntry;
}
