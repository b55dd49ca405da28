using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Cases;

/// <summary>What the workshop's caliper reads with its jaws closed: the same one through a whole job.</summary>
/// <remarks>One caliper in three has a zero error, of 1 to 4 divisions of 0.05 mm either way. Source of the share and sizes: judgement.</remarks>
static class ZeroError
{
    const ulong Stream = 11;
    const int OneIn = 3;
    const int Most = 4;
    const double Division = 0.05;

    /// <summary>The zero error of the caliper of a case, mm; 0 for two of three.</summary>
    /// <param name="seed">Seed of the case. A stream of its own: nothing else of the case depends on it.</param>
    public static double Of(ulong seed)
    {
        // Neighbouring seeds are spread by the odd multiplier of SplitMix64, and the first numbers skipped.
        var rng = new Rng(unchecked((seed + 1) * 0x9E3779B97F4A7C15UL), Stream);
        for (var i = 0; i < 8; i++) rng.Next();
        if (rng.Below(OneIn) > 0) return 0;
        var size = Division * (1 + rng.Below(Most));
        return rng.Below(2) == 0 ? size : -size;
    }
}
