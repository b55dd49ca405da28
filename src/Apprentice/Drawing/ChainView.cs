namespace Apprentice.Drawing;

/// <summary>One end of a drop-in gauge at a roller of a chain, true to scale: the geometry in mm.</summary>
/// <param name="Stretch">How much longer the chain is than new, of 100.</param>
/// <param name="End">What the end of the gauge is made for, of 100.</param>
/// <remarks>The far end lies at the left, eight links away. Source: link 12.7 mm ISO 9633 (facts T7); the gauge's length and the tooth are judgement; roller about 7.75 mm, from memory.</remarks>
sealed record ChainView(double Stretch, double End)
{
    /// <summary>Radius of a roller, mm.</summary>
    public const double Radius = 3.875;

    /// <summary>A link, mm.</summary>
    public const double Link = 12.7;

    /// <summary>Length of the tooth under the bar, mm: it reaches below the middle of the rollers.</summary>
    public const double Tooth = 6;

    /// <summary>Thickness of the tooth, mm.</summary>
    public const double Thick = 4;

    const double Length = 8 * Link;

    /// <summary>From the tooth's right side to the roller's left side, mm; below 0 when the roller is in the way.</summary>
    public double Play => (Stretch - End) / 100 * Length;

    /// <summary>True when the end drops between the rollers.</summary>
    public bool DropsIn => Play >= 0;

    /// <summary>The underside of the bar over the middle of the rollers, mm: on the rollers when the end drops in, higher when its tooth stands on one.</summary>
    public double Bar => DropsIn ? Radius : Tooth + Math.Sqrt((Radius * Radius) - ((Radius + Play) * (Radius + Play)));
}
