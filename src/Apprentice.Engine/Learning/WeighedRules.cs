namespace Apprentice.Engine.Learning;

/// <summary>Rules of observation.</summary>
static class WeighedRules
{
    public static IEnumerable<Observed> Of(Watched job, IReadOnlyList<LogEntry.Updated> updates) => [];
}
