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
        Surface.BareMetal => "look.on-metal",
        _ => "look.on-rim",
    });

    /// <summary>What the marks of wear in the picture mean: ") is 3 or 8"; empty when nothing is worn.</summary>
    public static string Legend(PlateView view) => view.Marks.Count == 0
        ? ""
        : Words.Of("look.worn-signs", ("signs", string.Join(", ", view.Marks.Select(w => Words.Of("look.worn-sign", ("sign", w.Drawn), ("what", Words.Of(w.Key)))))));

    /// <summary>A writing sign by sign: "0 6 (2 worn away) - (3 or 8)".</summary>
    public static string Spelled(Marking marking)
    {
        var said = new StringBuilder();
        for (var at = 0; at < marking.Signs.Count; at++)
        {
            var drawn = marking.Signs[at].Drawn;
            if (Wear.By(drawn) is not { } wear)
            {
                said.Append(drawn is ' ' ? "," : drawn).Append(' ');
                continue;
            }
            var run = marking.Signs.Skip(at).TakeWhile(s => s.Drawn == drawn).Count();
            at += wear.Once.Length == 0 ? run - 1 : 0;
            said.Append('(').Append(wear.Once.Length == 0 ? $"{run} " : "").Append(Words.Of(wear.Key)).Append(") ");
        }
        return said.ToString().TrimEnd().Replace(" ,", ",", StringComparison.Ordinal);
    }
}
