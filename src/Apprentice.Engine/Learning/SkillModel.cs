using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Learning;

/// <summary>The model of a skill: chance = g + (1 − g)·σ(θ − d + c·2^(−Δt/H)), one θ a person, one d a skill, one c a person and skill.</summary>
/// <remarks>
/// After an answer y with error e = y − chance: θ += U·e, d −= U·e with U = a/(1 + b·n), and c becomes its decayed value + K·e + G. Family: Elo, The Rating of Chessplayers, 1978;
/// Pavlik, Cen, Koedinger, Performance factors analysis, 2009; with memory that halves in H days. The parameters come from a simulation of learners, not from field data.
/// </remarks>
public static class SkillModel
{
    /// <summary>Step of the first answer, a.</summary>
    public const double FirstStep = 0.3;

    /// <summary>How fast steps shrink, b.</summary>
    public const double Shrink = 0.05;

    /// <summary>What an error moves the memory of one skill, K.</summary>
    public const double PairStep = 0.4;

    /// <summary>What each answer adds to that memory, G.</summary>
    public const double Gain = 0.5;

    /// <summary>Days in which that memory halves, H.</summary>
    public const double HalfLife = 60;

    /// <summary>Where every skill begins, d. The same for all: a check that tells much need not be hard to follow, and the first answers of all people together move it soon.</summary>
    public const double FirstDifficulty = 0.5;

    /// <summary>Chance at which a skill is due again.</summary>
    public const double DueAt = 0.7;

    /// <summary>Step of the n-th answer, from 0.</summary>
    public static double Step(int n) => FirstStep / (1 + (Shrink * n));

    /// <summary>What is left of the memory of a skill some days later, as a share of it: from 1 down to 0.</summary>
    /// <param name="days">Days since, at least 0.</param>
    public static double Left(double days) => Real.Exp(-days / HalfLife * 0.69314718055994530942);

    /// <summary>Chance of a right answer.</summary>
    /// <param name="z">θ − d + faded c.</param>
    /// <param name="guess">Chance of guessing it.</param>
    public static double Chance(double z, double guess) => guess + ((1 - guess) * Odds.Chance(z));

    /// <summary>Days from the last answer until the chance has fallen to <see cref="DueAt"/>: 0 when it is below already, null when it never falls so low.</summary>
    /// <param name="ability">θ.</param>
    /// <param name="difficulty">d.</param>
    /// <param name="memory">c right after the last answer.</param>
    public static double? DaysUntilDue(double ability, double difficulty, double memory)
    {
        var needed = Odds.Log(DueAt) - ability + difficulty;
        if (memory <= needed) return 0;
        return needed <= 0 ? null : HalfLife * Real.Log2(memory / needed);
    }
}
