namespace Apprentice.Engine.Quantities;

/// <summary>Chances as log odds, in nats.</summary>
public static class Odds
{
    /// <summary>The chance of log odds z.</summary>
    public static double Chance(double z) => z >= 0 ? 1 / (1 + Real.Exp(-z)) : 1 - (1 / (1 + Real.Exp(z)));

    /// <summary>The log odds of a chance between 0 and 1.</summary>
    public static double Log(double chance) => Real.Log(chance / (1 - chance));
}
