using Apprentice.Engine.Topics;

namespace Apprentice.Content;

/// <summary>Figures as they are spoken: of 10, of 20, of 100 bikes, and never above 99 of 100.</summary>
public static class Spoken
{
    /// <summary>"about 17 of 20", "about 98 of 100" (rounded down: nothing is said to be surer than it is), "fewer than 1 of 20".</summary>
    /// <param name="share">0 to 1.</param>
    public static string Twentieths(double share) => share switch
    {
        >= 0.975 => Words.Of("spoken.of-hundred", ("n", Math.Min(99, (int)Math.Floor((100 * share) + 1e-9)))),
        < 0.025 => Words.Of("spoken.fewer"),
        _ => Words.Of("spoken.of-twenty", ("n", Whole(20 * share))),
    };

    /// <summary>"6 of 10", at least 1 and at most 9.</summary>
    /// <param name="share">0 to 1.</param>
    public static string Tenths(double share) => Words.Of("spoken.of-ten", ("n", Math.Clamp(Whole(10 * share), 1, 9)));

    /// <summary>"about 6 of 10", to stand beside a figure in tenths: "fewer than 1 of 10" below 0.05, "more than 9 of 10" from 0.95.</summary>
    /// <param name="share">0 to 1.</param>
    public static string AboutTenths(double share) => share switch
    {
        >= 0.95 => Words.Of("spoken.more-tenths"),
        < 0.05 => Words.Of("spoken.fewer-tenths"),
        _ => Words.Of("spoken.about-ten", ("n", Whole(10 * share))),
    };

    /// <summary>"1 of 12", from a share above 0.</summary>
    /// <param name="share">0 to 1.</param>
    public static string OneOf(double share) => Words.Of("spoken.one-of", ("n", Math.Clamp(Whole(1 / Math.Max(share, 0.01)), 2, 99)));

    /// <summary>How much a finding says: little, some, strong, very strong.</summary>
    /// <param name="decibans">Weight of evidence, either sign.</param>
    public static string Strength(double decibans) => Words.Of(Math.Abs(decibans) switch
    {
        < 3 => "strength.little",
        < 7 => "strength.some",
        < 13 => "strength.strong",
        <= 60 => "strength.very-strong",
        _ => "strength.rules-out",
    });

    /// <summary>A bar for a weight: one sign for two decibans, at most 9.</summary>
    public static string Bar(double decibans) => new('#', Math.Clamp(Whole(Math.Abs(decibans) / 2), 0, 9));

    /// <summary>Minutes without needless decimals.</summary>
    public static string Minutes(double minutes) => minutes.ToString("0.#");

    /// <summary>Money with two decimals.</summary>
    public static string Money(double money) => money.ToString("0.00");

    /// <summary>A reading in mm, with the decimals of the tool's step.</summary>
    public static string Millimetres(double millimetres, Shows.Measured measured) =>
        Words.Of("spoken.mm", ("n", millimetres.ToString(measured.Step >= 1 && measured.Step % 1 == 0 ? "0" : "0.0##")));

    /// <summary>A length as finely as a tool is divided: to 0.1 mm, to 0.01 mm with a vernier, in inches to the nearest 32nd.</summary>
    /// <param name="millimetres">The length, mm.</param>
    /// <param name="division">Smallest division of the tool, mm.</param>
    /// <param name="inches">True for a scale in inches.</param>
    public static string Length(double millimetres, double division, bool inches) => inches
        ? Inches(millimetres)
        : Words.Of("spoken.mm", ("n", millimetres.ToString(division < 0.1 ? "0.0#" : "0.#")));

    /// <summary>"12 1/16 in", to the nearest 32nd, in lowest terms.</summary>
    /// <param name="millimetres">The length, mm.</param>
    public static string Inches(double millimetres)
    {
        var parts = (long)Math.Round(Math.Abs(millimetres) / Instrument.Inch * 32, MidpointRounding.AwayFromZero);
        var (whole, top, bottom) = (parts / 32, parts % 32, 32);
        while (top > 0 && top % 2 == 0) (top, bottom) = (top / 2, bottom / 2);
        var minus = millimetres < 0 && parts > 0 ? "-" : "";
        var number = top == 0 ? $"{whole}" : whole == 0 ? $"{top}/{bottom}" : $"{whole} {top}/{bottom}";
        return Words.Of("spoken.inches", ("n", minus + number));
    }

    /// <summary>A list in a sentence: "a", "a and b", "a, b and c".</summary>
    public static string List(IReadOnlyList<string> items) => items.Count switch
    {
        0 => Words.Of("spoken.none"),
        1 => items[0],
        _ => $"{string.Join(", ", items.Take(items.Count - 1))} {Words.Of("spoken.and")} {items[^1]}",
    };

    /// <summary>A text that begins with a capital letter.</summary>
    public static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A text with a small first letter, to stand inside a line.</summary>
    public static string Lower(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..];

    static int Whole(double value) => (int)Math.Round(value, MidpointRounding.AwayFromZero);
}
