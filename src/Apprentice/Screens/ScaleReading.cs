using Apprentice.Content;
using Apprentice.Content.Values;
using Apprentice.Drawing;

namespace Apprentice.Screens;

/// <summary>What people type for a scale that they read.</summary>
static class ScaleReading
{
    /// <summary>Reads a length. A bare number is in mm on a scale in mm; on a scale in inches, and with a fraction, the unit must be written.</summary>
    /// <param name="text">What was typed, without spaces around it.</param>
    /// <param name="task">What is read.</param>
    /// <param name="millimetres">The reading, mm.</param>
    /// <param name="wrong">What is wrong with it and what would do, else empty.</param>
    public static bool TryParse(string text, ReadingTask task, out double millimetres, out string wrong)
    {
        millimetres = 0;
        wrong = "";
        var inches = task.Scale is Scale.Ruled { Inches: true };
        var example = inches ? "12 3/8 in" : task.Scale is Scale.Vernier ? "31.15" : "310";
        if (text.Length == 0) wrong = Words.Of("scale.empty", ("example", example));
        else if (!LengthText.TryParseTyped(text, out millimetres)) wrong = Words.Of("scale.number", ("text", text), ("example", example));
        else if (IsBare(text) && (inches || text.Contains('/')))
            wrong = Words.Of("scale.unit", ("text", text), ("unit", Words.Of(inches ? "scale.unit-inches" : "scale.unit-mm")));
        else if (millimetres < task.Low || millimetres > task.High) wrong = inches ? OutsideInches(millimetres, task) : Outside(millimetres, task);
        return wrong.Length == 0;
    }

    static string Outside(double millimetres, ReadingTask task) =>
        Words.Of("scale.range", ("mm", millimetres.ToString("0.##")), ("low", task.Low), ("high", task.High));

    static string OutsideInches(double millimetres, ReadingTask task) =>
        Words.Of("scale.range-inches", ("read", Spoken.Inches(millimetres)), ("low", Spoken.Inches(task.Low)), ("high", Spoken.Inches(task.High)));

    static bool IsBare(string text) => char.IsAsciiDigit(text[^1]) || text[^1] is '.';
}
