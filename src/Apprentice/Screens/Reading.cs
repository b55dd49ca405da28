using Apprentice.Content;
using Apprentice.Content.Values;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Readings as people type them.</summary>
static class Reading
{
    /// <summary>Reads a length in mm or inches, as a whole number of the tool's steps.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="measured">The clue's tool.</param>
    /// <param name="millimetres">The reading.</param>
    /// <param name="wrong">What is wrong with it and what would do, else empty.</param>
    public static bool TryParse(string text, Shows.Measured measured, out double millimetres, out string wrong)
    {
        millimetres = 0;
        wrong = "";
        if (text.Length == 0) wrong = Words.Of("reading.empty");
        else if (!LengthText.TryParseTyped(text, out millimetres)) wrong = Words.Of("reading.number", ("text", text));
        else if (millimetres < measured.Low || millimetres > measured.High)
            wrong = Words.Of("reading.range", ("mm", millimetres.ToString("0.##")), ("low", measured.Low), ("high", measured.High));
        millimetres = Math.Round(millimetres / measured.Step, MidpointRounding.AwayFromZero) * measured.Step;
        return wrong.Length == 0;
    }
}
