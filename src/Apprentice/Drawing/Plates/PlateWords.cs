using System.Text;
using Apprentice.Content;
using Apprentice.Engine.Topics;

namespace Apprentice.Drawing.Plates;

/// <summary>A plate in words: each writing sign by sign, as exact as the drawing.</summary>
static class PlateWords
{
    /// <summary>A sentence for the surface, then one a writing.</summary>
    public static IReadOnlyList<string> Of(PlateView view) =>
    [
        Words.Of("look.words", ("surface", Name(view.Surface)), ("count", view.Markings.Count)),
        .. view.Markings.Select((m, i) => Words.Of(
            m.Where.Length == 0 ? "look.words-writing" : "look.words-where", ("n", i + 1), ("signs", Spelled(m)), ("where", m.Where.TrimEnd('.')))),
        .. view.IsDirty ? [Words.Of("look.words-dirty")] : Array.Empty<string>(),
    ];

    /// <summary>A surface in words.</summary>
    public static string Name(Surface surface) => Words.Of(surface switch
    {
        Surface.NumberPlate => "look.on-number-plate",
        Surface.TyreWall => "look.on-tyre-wall",
        Surface.CupFace => "look.on-cup-face",
        Surface.Hub => "look.on-hub",
        Surface.CrankEnd => "look.on-crank-end",
        Surface.Stem => "look.on-stem",
        Surface.Post => "look.on-post",
        Surface.Tube => "look.on-tube",
        _ => "look.on-rim",
    });

    /// <summary>A writing sign by sign: "0 6 (2 worn) - 5".</summary>
    public static string Spelled(Marking marking)
    {
        var said = new StringBuilder();
        var worn = 0;
        foreach (var sign in marking.Signs.Select(s => s.Drawn).Append('\0'))
        {
            if (PlateView.IsStroke(sign))
            {
                worn++;
                continue;
            }
            if (worn > 0) said.Append(Words.Of("look.words-worn", ("n", worn))).Append(' ');
            worn = 0;
            if (sign is not ('\0' or ' ')) said.Append(sign).Append(' ');
            if (sign is ' ') said.Append(", ");
        }
        return said.ToString().TrimEnd().Replace(" ,", ",", StringComparison.Ordinal);
    }
}
