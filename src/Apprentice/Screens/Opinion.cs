using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>What a learner holds for likeliest, and how sure.</summary>
/// <param name="Part">The part: of those asked the one of which the check at hand tells most.</param>
/// <param name="Kind">Its kind, "none" for none of these.</param>
/// <param name="Tenths">0 to 10 of ten.</param>
sealed record Opinion(string Part, string Kind, int Tenths)
{
    /// <summary>Below so many tenths another kind may be likelier: where there are more than two, the next check asks which.</summary>
    public const int Unsure = 5;

    /// <summary>So many jobs a newcomer has in peace before it is asked.</summary>
    const int InPeace = 3;

    /// <summary>The part about which it is asked at a check.</summary>
    public static string PartAt(BenchJob on, string clue) => on.Bench.PartToldMost(on.Bench.EnquiryOf(on.Made.Job), on.Findings, clue, on.Opinion?.Part);

    /// <summary>True when it is asked after each check of a job.</summary>
    public static bool IsAsked(World world, BenchJob on) =>
        !on.Guided && world.Person is { } person && world.History.JobsOf(person).Count(j => j.Counts) >= InPeace && TrustAsks.Asked(world.History, person, on.Number);
}
