using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Storage.Papers;

namespace Apprentice.Assess;

/// <summary>What the lead's desk does with papers and results; screens and commands both go through it.</summary>
static class DeskWork
{
    /// <summary>Makes and seals a paper for each candidate, in their order.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="benches">Topics at hand.</param>
    /// <param name="all">What the log says so far.</param>
    /// <param name="notebook">Real bikes that were taken in, and who met them.</param>
    /// <param name="candidates">For whom; each once.</param>
    /// <param name="key">The desk's key.</param>
    /// <param name="folder">Where the sealed files go.</param>
    /// <exception cref="ArgumentException">A topic is missing or changed, or a sort of job cannot be made.</exception>
    /// <exception cref="SealException">A file cannot be written.</exception>
    public static IReadOnlyList<MadePaper> Make(TestPlan plan, IReadOnlyList<Workbench> benches, Assessments all, BenchNotebook notebook, IReadOnlyList<string> candidates, byte[] key, PaperFolder folder)
    {
        var maker = new PaperMaker(plan, benches);
        var topics = benches.Select(b => b.Topic).Where(t => plan.Topics.Any(p => p.Id == t.Id)).ToList();
        var made = new List<MadePaper>();
        foreach (var candidate in candidates)
        {
            var real = RealOffer.Of(topics, notebook, all, candidate);
            var paper = maker.Make(NewNumber(all, made), candidate, all.NextNumber(candidate, plan.Permission), Seal.NewSeed(), real.Fresh);
            var (file, code) = PaperFile.Sealed(paper, key);
            var path = folder.Write(PaperFolder.NameOf(paper.Id, candidate, PaperFolder.PaperEnding), file);
            var (met, of) = all.MetBefore(candidate, plan);
            made.Add(new MadePaper(new LogEntry.PaperMade(paper.Id, plan.Permission, candidate, paper.Number), path, code, met, of)
            {
                Real = paper.Real.Count,
                RealWished = plan.RealBikes,
                RealMet = real.Met,
            });
        }

        return made;
    }

    /// <summary>Collects a result and marks it.</summary>
    /// <param name="file">The result's bytes.</param>
    /// <param name="all">What the log says so far.</param>
    /// <param name="benches">Topics in the versions of a paper.</param>
    /// <param name="key">The desk's key.</param>
    /// <param name="folder">Where the sealed papers lie.</param>
    /// <exception cref="SealException">The result is refused; the sentence says why.</exception>
    public static Collected Collect(byte[] file, Assessments all, Func<Paper, IReadOnlyList<Workbench>> benches, byte[] key, PaperFolder folder)
    {
        OpenedPaper? opened = null;
        var sat = ResultFile.Collect(file, all, paper =>
        {
            if (folder.Sealed(paper) is not { } made) return null;
            opened = PaperFile.OpenAtDesk(made.Bytes, key);
            return opened.SittingKey;
        });
        if (opened is null) throw new SealException($"The sealed file of paper {sat.Paper} is not there.");
        try
        {
            return sat.Paper == opened.Paper.Id
                ? new Collected(sat, new LogEntry.PaperMarked(sat.Mark(opened.Paper, benches(opened.Paper)), Published: false))
                : new Collected(sat, Paper.Named(sat.Paper).NewJobOf is { } place ? Anew(sat, opened.Paper, place, benches(opened.Paper)) : Again(sat, opened.Paper, benches(opened.Paper)));
        }
        catch (ArgumentException e)
        {
            throw new SealException($"The result of paper {sat.Paper}, {sat.Candidate}, cannot be marked here: {e.Message}.", e);
        }
    }

    // Fresh safety jobs have places of their own in the paper.
    static LogEntry.SafetyAgainMarked Again(SatPaper sat, Paper paper, IReadOnlyList<Workbench> benches)
    {
        var again = paper.Again ?? throw new ArgumentException("the paper has no fresh safety jobs", nameof(paper));
        return new LogEntry.SafetyAgainMarked(paper.Id, [.. sat.Mark(again, benches).Jobs.Select((m, i) => m with { Place = paper.SafetyAgain[i].Place })]);
    }

    // So has the new job of an appeal.
    static LogEntry.NewJobMarked Anew(SatPaper sat, Paper paper, int place, IReadOnlyList<Workbench> benches) =>
        new(paper.Id, place, sat.Mark(paper.NewJob(place), benches).Jobs[0] with { Place = Paper.NewJobPlaces + place });

    static string NewNumber(Assessments all, List<MadePaper> made)
    {
        while (true)
        {
            var number = Seal.NewPaperNumber();
            if (all.Papers.All(p => p.Paper != number) && made.All(m => m.Entry.Paper != number)) return number;
        }
    }
}

/// <summary>A paper that was made and sealed.</summary>
/// <param name="Entry">Its entry for the log.</param>
/// <param name="File">Where it lies.</param>
/// <param name="Code">The one-time code: shown once and kept nowhere.</param>
/// <param name="Met">Sorts of jobs of the plan that the candidate met in papers before.</param>
/// <param name="Of">Sorts of jobs of the plan.</param>
sealed record MadePaper(LogEntry.PaperMade Entry, string File, string Code, int Met, int Of)
{
    /// <summary>Real bikes at its end.</summary>
    public int Real { get; init; }

    /// <summary>Real bikes that the plan wants.</summary>
    public int RealWished { get; init; }

    /// <summary>Real bikes left out, because the candidate met them before.</summary>
    public int RealMet { get; init; }
}

/// <summary>A result that was collected and marked.</summary>
/// <param name="Sat">What was sat.</param>
/// <param name="Entry">Its entry for the log: the marks, not yet told to the candidate.</param>
sealed record Collected(SatPaper Sat, LogEntry Entry);
