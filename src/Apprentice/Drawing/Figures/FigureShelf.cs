using System.Collections.Frozen;

namespace Apprentice.Drawing.Figures;

/// <summary>Which sketch is made for which figure of the catalogue.</summary>
static class FigureShelf
{
    static readonly FrozenDictionary<string, Func<Traits, Sketch>> All = new Dictionary<string, Func<Traits, Sketch>>(StringComparer.Ordinal)
    {
        ["bar-front"] = BarFront.Draw,
        ["bar-side"] = BarSide.Draw,
        ["bolt"] = BoltSide.Draw,
        ["bore"] = Bore.Draw,
        ["brake-mount"] = BrakeMount.Draw,
        ["cassette-back"] = SprocketBack.Cassette,
        ["chain-side"] = ChainSide.Draw,
        ["chain-top"] = ChainTop.Draw,
        ["chainring"] = Chainring.Draw,
        ["cups-in"] = CupsIn.Draw,
        ["freewheel-back"] = SprocketBack.Freewheel,
        ["grip-end"] = GripEnd.Draw,
        ["hanger"] = Hanger.Draw,
        ["headset"] = Headset.Draw,
        ["hole-cut"] = HoleCut.Draw,
        ["hole-row"] = HoleRow.Draw,
        ["hub-axle"] = HubAxle.Draw,
        ["lever"] = Lever.Draw,
        ["post"] = Post.Draw,
        ["rear-ends"] = RearEnds.Draw,
        ["rim-section"] = RimSection.Draw,
        ["round-part"] = RoundPart.Draw,
        ["shell"] = Shell.Draw,
        ["spindle-end"] = SpindleEnd.Draw,
        ["spoke"] = Spoke.Draw,
        ["sprocket-stack"] = SprocketStack.Draw,
        ["tooth-edge"] = ToothEdge.Draw,
        ["two-places"] = TwoPlaces.Draw,
        ["tyre-on-rim"] = TyreOnRim.Draw,
        ["valve"] = Valve.Draw,
        ["wheel-side"] = WheelSide.Draw,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Figures that can be drawn.</summary>
    public static IEnumerable<string> Ids => All.Keys;

    /// <summary>The sketch of a figure.</summary>
    /// <exception cref="ArgumentException">There is no such figure, or it is text art.</exception>
    public static Sketch Draw(Traits traits) =>
        All.TryGetValue(traits.Figure.Id, out var draw) ? draw(traits) : throw new ArgumentException($"The figure {traits.Figure.Id} cannot be drawn.", nameof(traits));
}
