using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Papers of the example workshop. The jobs are cases of the engine, and it marks them; who answers them is made up.</summary>
/// <param name="bench">The topic that is tested.</param>
/// <param name="plan">Its plan.</param>
sealed class ExamplePapers(Workbench bench, TestPlan plan)
{
    const ulong Seed = 4417;
    const int FirstSlip = 4;

    /// <summary>The topic to test: a checked one, most of whose orders can hurt somebody; null when none is checked.</summary>
    public static Workbench? Tested(IReadOnlyList<Workbench> benches) => benches
        .Where(b => b.Topic is { State: not TopicState.Draft, Spares.Count: > 0 })
        .MaxBy(b => b.Topic.Spares.Count(s => s.Hazard) / (double)b.Topic.Spares.Count);

    /// <summary>A paper sat to its end: each job is worked with the engine's own next checks, but one of the jobs is answered in another way.</summary>
    /// <param name="paper">Its number.</param>
    /// <param name="candidate">Who sits it.</param>
    /// <param name="slip">The other way. It is taken at the first place, from the fourth on, at which it shows what it stands for.</param>
    public PaperResult Sat(string paper, string candidate, ExampleSlip slip)
    {
        var marks = new List<JobMark>();
        var slipped = false;
        while (marks.Count < plan.Rule.Most && plan.Rule.Decide(marks.Count, marks.Count(m => !m.Sound)) == StageDecision.GoOn)
        {
            var place = marks.Count + 1;
            var other = slipped || place < FirstSlip ? null : Marked(place, slip);
            slipped |= other is not null && Shows(other, slip);
            marks.Add(slipped && other is not null ? other : Marked(place, null));
        }

        return new PaperResult { Paper = paper, Permission = plan.Permission, Candidate = candidate, Number = 1, Rule = plan.Rule, Jobs = marks };
    }

    static bool Shows(JobMark mark, ExampleSlip slip) => !mark.Sound && mark.SafetyError == (slip == ExampleSlip.OrdersTooSoon);

    JobMark Marked(int place, ExampleSlip? slip)
    {
        var job = new PaperJob(place, plan.FamilyAt(place), bench.Topic.Version, Seed + (ulong)place);
        var made = bench.Make(job.Family.Request, job.Seed) ?? throw new InvalidOperationException($"the plan holds a sort of job that cannot be made: {job.Family.Key}");
        var (looks, amounts) = Worked(made, slip is not null);
        return Marker.Recorded(bench, made, job, new SittingJob(place) { Looks = looks, Given = Given(amounts, slip) });
    }

    (List<Look> Looks, Reasoning Amounts) Worked(Case made, bool atOnce)
    {
        var enquiry = bench.EnquiryOf(made.Job);
        var findings = made.Job.Told.ToList();
        var looks = new List<Look>();
        var amounts = bench.Reason(enquiry, findings);
        while (!atOnce && !amounts.Ripe && amounts.Next.Count > 0)
        {
            var clue = amounts.Next[0].Clue;
            looks.Add(new Look(clue, looks.Count(l => l.Clue == clue)));
            findings.Add(bench.Shown(made, looks[^1]));
            amounts = bench.Reason(enquiry, findings);
        }

        return (looks, amounts);
    }

    static Given Given(Reasoning amounts, ExampleSlip? slip) => new(
        [.. amounts.Parts.Select(p => new PartAnswer(p.Part, slip != ExampleSlip.StopsTooSoon && (slip is not null || p.Settled) ? p.Classes[p.Leading].Kinds[0] : null, Math.Clamp((int)(p.Highest * 10), 1, 9)))],
        [.. amounts.Decisions.Select(d => slip switch
        {
            ExampleSlip.StopsTooSoon => new Choice.Ask(),
            ExampleSlip.OrdersTooSoon => d.Options.Select(o => o.Choice).FirstOrDefault(c => c is Choice.Order) ?? d.Best.Choice,
            _ => d.Best.Choice,
        })],
        null, null, null, Forced: false);
}

/// <summary>What one job of an example paper shows.</summary>
enum ExampleSlip
{
    /// <summary>A part that can hurt is ordered from what was told.</summary>
    OrdersTooSoon,

    /// <summary>"Not settled", though a check was left.</summary>
    StopsTooSoon,
}
