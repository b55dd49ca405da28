using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Assessing;

/// <summary>How hard a case is for a modelled candidate. It orders draws and compares papers; no mark and no choice of a single case hangs on it.</summary>
public static class Difficulty
{
    /// <summary>The chance that the modelled candidate names each part asked for rightly: half the time by what was told alone, half the time after all checks on offer, when they also see what cannot be settled.</summary>
    /// <remarks>A stand-in for a real candidate, worked out fast: it is high where what is told agrees with the checks and low where it misleads. The halves are judgement.</remarks>
    /// <returns>0 to 1.</returns>
    public static double ChanceOfSound(Workbench bench, Case made)
    {
        var reasoner = new Reasoner(bench.SceneOf(made.Job.Request.Provenance));
        var asks = bench.EnquiryOf(made.Job).Asks;
        var all = reasoner.Settle(asks, [.. made.Job.Told, .. made.Job.Bench.Select(c => made.Look(c, 0))]);
        var told = reasoner.Settle(asks, made.Job.Told);
        if (all is null || told is null) return 0;
        var (hasty, careful) = (1.0, 1.0);
        for (var p = 0; p < all.Count; p++)
        {
            hasty = Math.Min(hasty, all[p].Classes[told[p].Leading].Belief);
            careful = Math.Min(careful, all[p].Settled ? all[p].Highest : 1);
        }

        return (hasty + careful) / 2;
    }
}
