using Apprentice.Engine.Evidence;

namespace Apprentice.Engine.Learning;

/// <summary>Plain facts of an answer: how sure and right, minutes, whether what was ordered fits.</summary>
static class FactRules
{
    public static IEnumerable<Observed> Of(Watched job)
    {
        for (var p = 0; p < job.Parts.Count; p++)
        {
            if (job.Named(p) is { } named) yield return new Observed.Sure(job.Parts[p].Part, job.Answer.Parts[p].Tenths, named == job.TrueClass(p));
        }

        yield return new Observed.Bench(job.Grade.Minutes, job.Grade.PathMinutes);
        var orders = job.Answer.Orders.Where(o => o is Choice.Order or Choice.OrderTwo).ToList();
        if (orders.Count > 0) yield return new Observed.Ordered(orders.Any(o => !Fits(job, o)));
    }

    static bool Fits(Watched job, Choice choice) => choice switch
    {
        Choice.Order order => Fits(job, order.Spare),
        Choice.OrderTwo two => Fits(job, two.First) || Fits(job, two.Second),
        _ => true,
    };

    static bool Fits(Watched job, string spare) => job.Topic.Spares.First(s => s.Id == spare).Fits
        .All(f => f.Kinds.Contains(job.Made.Truth.Kinds[job.Scene.Table.Names.Part(f.Part)]));
}
