using Apprentice.Content;
using Apprentice.Content.Values;
using Apprentice.Engine;

namespace Apprentice.Drills;

/// <summary>Inch fractions, decimals and millimetres, and names of tyres in which a fraction and its decimal are two sizes.</summary>
sealed record FractionDrill() : DrillSkill("fractions", "drill.fractions", "drill.fractions-note")
{
    const double Inch = 25.4;
    const int MostSixteenths = 40;
    const string ToMm = "to-mm";
    const string ToInch = "to-inch";
    const string ToDecimal = "to-decimal";
    const string Names = "names";

    /// <summary>Names with their bead seat diameter, mm. Source: facts T1 (WP_ETRTO, DIMINFO, CHARTCOPY), the values of the rim sizes as published.</summary>
    public static IReadOnlyList<(string Name, int Seat)> Published { get; } =
    [
        ("26 x 1 1/2", 584), ("26 x 1.50", 559), ("26 x 1 3/4", 571), ("26 x 1.75", 559), ("28 x 1 1/2", 635), ("20 x 1 3/4", 419), ("20 x 1.75", 406),
        ("24 x 1.75", 507), ("16 x 1.75", 305), ("16 x 1 3/4", 317),
    ];

    /// <inheritdoc/>
    public override IReadOnlyList<string> Families(IReadOnlyList<Workbench> benches) => [ToMm, ToInch, ToDecimal, Names];

    /// <inheritdoc/>
    public override DrillItem Make(IReadOnlyList<Workbench> benches, string family, ulong seed)
    {
        var rng = Luck.Of(seed);
        var sixteenths = 1 + rng.Below(MostSixteenths);
        return family switch
        {
            ToMm => Millimetres(sixteenths),
            ToInch => Pick(rng, sixteenths, n => $"{Fraction(n)} in", Words.Of("drill.fractions-which", ("mm", Mm(sixteenths))), Words.Of("drill.fractions-inch", ("mm", Mm(sixteenths)), ("fraction", Fraction(sixteenths)), ("sixteenths", sixteenths))),
            ToDecimal => Pick(rng, sixteenths, n => $"{Decimal(n)} in", Words.Of("drill.fractions-decimal", ("fraction", Fraction(sixteenths))), Words.Of("drill.fractions-divide", ("fraction", Fraction(sixteenths)), ("sixteenths", sixteenths), ("decimal", Decimal(sixteenths)))),
            _ => Seat(rng),
        };
    }

    static DrillItem.Type Millimetres(int sixteenths) => new()
    {
        Prompt = Words.Of("drill.fractions-mm", ("fraction", Fraction(sixteenths))),
        Beside = Words.Of("drill.fractions-beside"),
        Example = "12.7",
        Parse = InMm,
        Right = sixteenths * Inch / 16,
        Tolerance = 0.25,
        Why = Words.Of("drill.fractions-times", ("fraction", Fraction(sixteenths)), ("sixteenths", sixteenths), ("mm", Mm(sixteenths))),
    };

    // Nobody answers with the question itself: inches are not taken.
    static double? InMm(string text) => !text.Any(c => c is '/' or 'i' or 'I' or '"' or '”' or '″') && LengthText.TryParseTyped(text, out var mm) ? mm : null;

    // Beside the right one stand its neighbours, and what comes of taking the top of the fraction for something else.
    static DrillItem.Pick Pick(Engine.Quantities.Rng rng, int sixteenths, Func<int, string> say, string prompt, string why)
    {
        var others = rng.Mixed(((int[])[sixteenths - 1, sixteenths + 1, sixteenths - 2, sixteenths + 2, sixteenths + 4, sixteenths - 4]).Where(n => n > 0)).Take(3);
        var order = rng.Mixed([.. others, sixteenths]);
        return new DrillItem.Pick
        {
            Prompt = prompt,
            Beside = Words.Of("drill.fractions-beside"),
            Options = [.. order.Select(say)],
            Right = order.ToList().IndexOf(sixteenths),
            Why = why,
        };
    }

    static DrillItem.Pick Seat(Engine.Quantities.Rng rng)
    {
        var (name, seat) = Published[rng.Below(Published.Count)];
        var others = rng.Mixed(Published.Select(p => p.Seat).Distinct().Where(s => s != seat).OrderBy(s => Math.Abs(s - seat)).Take(4)).Take(3);
        var order = rng.Mixed([.. others, seat]);
        return new DrillItem.Pick
        {
            Prompt = Words.Of("drill.fractions-name", ("name", name)),
            Beside = Words.Of("drill.fractions-name-beside"),
            Options = [.. order.Select(s => Words.Of("spoken.mm", ("n", s)))],
            Right = order.ToList().IndexOf(seat),
            Why = Words.Of("drill.fractions-name-why", ("name", name), ("seat", seat)),
        };
    }

    /// <summary>A number of sixteenths of an inch as a mixed fraction: 13/16, 1 1/2, 2.</summary>
    public static string Fraction(int sixteenths)
    {
        var (whole, top, bottom) = (sixteenths / 16, sixteenths % 16, 16);
        while (top > 0 && top % 2 == 0) (top, bottom) = (top / 2, bottom / 2);
        return top == 0 ? $"{whole}" : whole == 0 ? $"{top}/{bottom}" : $"{whole} {top}/{bottom}";
    }

    static string Decimal(int sixteenths) => (sixteenths / 16.0).ToString("0.####");

    static string Mm(int sixteenths) => (sixteenths * Inch / 16).ToString("0.0#");
}
