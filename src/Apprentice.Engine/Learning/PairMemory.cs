using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Learning;

/// <summary>What the book keeps of one skill of one person: its memory c, and hits and misses that fade.</summary>
/// <remarks>Interval: the beta distribution with prior (1, 1) and counts that halve in 30 days, half as long as the memory.</remarks>
sealed class PairMemory
{
    const double Tail = 0.05;
    const int FewestForWord = 4;
    const int FewestForSafe = 8;
    const int DaysForSafe = 3;
    const double SafeAbove = 0.6;
    const double NearlyFrom = 0.65;
    const double LongestRest = SkillModel.HalfLife;

    double _memory;
    double _hits;
    double _misses;
    DateTimeOffset _last;
    bool _lastRight;
    int _asked;
    int _right;
    int _days;

    public int Asked => _asked;

    public int Right => _right;

    /// <summary>Takes an answer and gives its error y − chance.</summary>
    /// <param name="mark">The answer.</param>
    /// <param name="edge">θ − d.</param>
    /// <param name="at">When.</param>
    public double Take(Observed.Mark mark, double edge, DateTimeOffset at)
    {
        var left = LeftAt(at);
        var memory = _memory * left;
        var error = (mark.Right ? 1 : 0) - SkillModel.Chance(edge + memory, mark.Guess);
        _memory = memory + (SkillModel.PairStep * error) + SkillModel.Gain;
        var kept = left * left;
        (_hits, _misses) = ((_hits * kept) + (mark.Right ? 1 : 0), (_misses * kept) + (mark.Right ? 0 : 1));
        if (_asked == 0 || at.Date != _last.Date) _days++;
        _asked++;
        if (mark.Right) _right++;
        (_last, _lastRight) = (at, mark.Right);
        return error;
    }

    public double MemoryAt(DateTimeOffset at) => _memory * LeftAt(at);

    public PairMemory Copy() => (PairMemory)MemberwiseClone();

    /// <summary>The word for it at a time.</summary>
    public SkillWord WordAt(DateTimeOffset now)
    {
        var (a, b) = CountsAt(now);
        return _asked < FewestForWord ? SkillWord.TooFewYet
            : _asked >= FewestForSafe && _days >= DaysForSafe && IsSafe(a, b) ? SkillWord.Safe
            : a / (a + b) >= NearlyFrom ? SkillWord.Nearly : SkillWord.NeedsWork;
    }

    public SkillState State(SkillKey skill, double ability, double difficulty, DateTimeOffset now)
    {
        var (a, b) = CountsAt(now);
        var chance = SkillModel.Chance(ability - difficulty + MemoryAt(now), 0);
        return new SkillState(
            skill, _asked, _right, _days, chance, BetaShare.Quantile(Tail, a, b), BetaShare.Quantile(1 - Tail, a, b), WordAt(now), _last, _lastRight, Due(ability, difficulty));
    }

    // With a mean of .6 or less at least 1/e lies below .6, since the density is log-concave: then nothing needs to be worked out. Source: B. Grünbaum, Pacific Journal of Mathematics 10, 1960.
    static bool IsSafe(double a, double b) => a / (a + b) > SafeAbove && BetaShare.Below(SafeAbove, a, b) < Tail;

    (double A, double B) CountsAt(DateTimeOffset now)
    {
        var left = LeftAt(now);
        var kept = left * left;
        return (1 + (_hits * kept), 1 + (_misses * kept));
    }

    // After an error at once; else never before the next day, and at the latest after the time in which the memory halves.
    DateTimeOffset Due(double ability, double difficulty)
    {
        if (!_lastRight) return _last;
        var days = SkillModel.DaysUntilDue(ability, difficulty, _memory) ?? LongestRest;
        return _last.AddDays(Math.Clamp(days, 1, LongestRest));
    }

    // A clock that was set back lets nothing be forgotten, and nothing grow.
    double LeftAt(DateTimeOffset at) => _asked == 0 || at <= _last ? 1 : SkillModel.Left((at - _last).TotalDays);
}
