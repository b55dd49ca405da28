namespace Apprentice.Engine.Learning;

/// <summary>Rules of observation.</summary>
static class FactRules
{
    public static IEnumerable<Observed> Of(Watched job) => job.Parts.Take(0).Select(_ => new Observed.Ordered(false));
}
