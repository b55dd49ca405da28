using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine;
using Apprentice.Screens;

namespace Apprentice.Drills;

/// <summary>A vernier caliper 0.05 mm at a random size, with and without a zero error.</summary>
sealed record VernierDrill() : DrillSkill("vernier", "drill.vernier", "drill.vernier-note")
{
    const string Plain = "plain";
    const string Zero = "zero";
    const int Lines = Scale.Vernier.Lines;
    const int LinesAFigure = Lines / 10;
    const int LeastMm = 6;
    const int MostMm = 60;
    const int MostZero = 4;

    /// <inheritdoc/>
    public override IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches) => [Plain, Zero];

    /// <inheritdoc/>
    public override DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed)
    {
        var rng = Luck.Of(seed);
        var steps = (LeastMm * Lines) + rng.Below((MostMm - LeastMm) * Lines);
        var zero = family is Zero ? (1 + rng.Below(MostZero)) * (rng.Below(2) == 0 ? 1 : -1) : 0;
        var scale = new Scale.Vernier((double)zero / Lines);
        var exact = (double)steps / Lines;
        return new DrillItem.OnScale
        {
            Prompt = Words.Of(family is Zero ? "drill.vernier-zero-first" : "drill.vernier-no-zero"),
            Beside = Words.Of("drill.vernier-beside", ("step", Mm(1))),
            Scale = scale,
            Tool = Words.Of("real.caliper"),
            Datums = [Words.Of("drill.vernier-datum")],
            ExactFor = _ => exact,
            Step = 1.0 / Lines,
            Range = (1, 150),
            Seed = seed,
            Judge = own => Judge(own, steps, zero),
        };
    }

    // Reading = main scale before the vernier's zero + line × least count − zero error. Source: facts U7.1 (S112, S112b).
    static DrillVerdict Judge(OwnReading own, int steps, int zero)
    {
        var off = (own.Millimetres * Lines) - steps;
        var shown = steps + zero;
        var why = shown % Lines == 0
            ? Words.Of("drill.vernier-why-on", ("whole", shown / Lines), ("shown", Mm(shown)))
            : Words.Of("drill.vernier-why", ("whole", shown / Lines), ("at", At(shown % Lines)), ("line", shown % Lines), ("step", Mm(1)), ("shown", Mm(shown)));
        if (zero != 0) why += " " + Words.Of("drill.vernier-why-zero", ("zero", Mm(zero)), ("right", Mm(steps)));
        if (zero != 0 && Math.Abs(off - zero) < 0.5) why = Words.Of("drill.vernier-forgot") + " " + why;
        return new DrillVerdict(Math.Abs(off) < 0.5, why);
    }

    // The vernier's figures are tenths, and stand at every second line.
    static string At(int line) => Words.Of(line % LinesAFigure == 0 ? "drill.vernier-at" : "drill.vernier-after", ("figure", line / LinesAFigure));

    static string Mm(int steps) => ((double)steps / Lines).ToString("0.00");
}
