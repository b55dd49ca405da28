using System.Runtime.InteropServices;
using Apprentice.Engine.Quantities;

namespace Apprentice.Content.Values;

/// <summary>Patterns of writings: {text} stands for the characters of a finding, {09} for a digit and {A} for a letter at random; all else as written.</summary>
public static class PatternText
{
    /// <summary>What may stand in braces, for people.</summary>
    public const string Forms = "{text}, {09} or {A}";

    const string Text = "text";
    const string Digits = "0123456789";

    // I and O are left out, as on many number plates: nobody tells them from 1 and 0.
    const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /// <summary>How often {text} stands in a pattern.</summary>
    public static int Texts(string pattern) => Pieces(pattern).Count(p => p.Hole && p.Text is Text);

    /// <summary>The first thing in braces that means nothing, or null.</summary>
    public static string? Unknown(string pattern) =>
        Pieces(pattern).Where(p => p.Hole && p.Text is not (Text or "09" or "A")).Select(p => $"{{{p.Text}}}").FirstOrDefault();

    /// <summary>Number of characters, those of {text} left out.</summary>
    public static int Length(string pattern) => Pieces(pattern).Sum(p => !p.Hole ? p.Text.Length : p.Text is Text ? 0 : 1);

    /// <summary>The characters of a pattern.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="text">Characters for {text}: a pattern without {text}.</param>
    /// <param name="rng">Luck for digits and letters.</param>
    public static IReadOnlyList<Sign> Write(string pattern, string text, Rng rng) =>
        [.. Pieces(pattern).SelectMany(p => p is { Hole: true, Text: Text } ? Write(text, "", rng).Select(s => s with { OfText = true }) : Signs(p, rng))];

    static IEnumerable<Sign> Signs(Piece piece, Rng rng) => piece switch
    {
        (true, "A") => [new Sign(Letters[rng.Below(Letters.Length)], OfText: false)],
        (true, _) => [new Sign(Digits[rng.Below(Digits.Length)], OfText: false)],
        _ => piece.Text.Select(c => new Sign(c, OfText: false)),
    };

    static List<Piece> Pieces(string pattern)
    {
        var pieces = new List<Piece>();
        for (var at = 0; at < pattern.Length;)
        {
            var open = pattern.IndexOf('{', at);
            var close = open < 0 ? -1 : pattern.IndexOf('}', open);
            if (close < 0) open = pattern.Length;
            if (open > at) pieces.Add(new Piece(false, pattern[at..open]));
            if (close > open) pieces.Add(new Piece(true, pattern[(open + 1)..close]));
            at = close > open ? close + 1 : pattern.Length;
        }
        return pieces;
    }

    sealed record Piece(bool Hole, string Text);
}

/// <summary>A character of a writing.</summary>
/// <param name="Character">The character.</param>
/// <param name="OfText">True when it belongs to the finding that the writing shows.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Sign(char Character, bool OfText);
