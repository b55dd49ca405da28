using Apprentice.Engine.Topics;

namespace Apprentice.Drawing;

/// <summary>A tool with a scale that is read by eye.</summary>
abstract record Scale
{
    Scale()
    {
    }

    /// <summary>Distance of neighbouring marks of the main scale, mm.</summary>
    public double Pitch => this is Ruled { Inches: true } ? Instrument.Inch / 16 : 1;

    /// <summary>The smallest division that can be read by a mark, mm.</summary>
    public double Division => this is Vernier ? Pitch / Vernier.Lines : Pitch;

    /// <summary>Dots between neighbouring marks of the main scale, from far to near; the first one shows most.</summary>
    public IReadOnlyList<int> Zooms => this is Vernier ? [4, 10, 20] : [4, 6, 8, 12];

    /// <summary>The scale of a tool by its words in a topic; null when there is none to read.</summary>
    /// <param name="tool">The tool: "rule", "eyes, tape", "rule, inches", "caliper", "caliper, inside".</param>
    /// <param name="zeroError">What a caliper reads with its jaws closed, mm.</param>
    public static Scale? Of(string tool, double zeroError = 0) => Instrument.Of(tool) switch
    {
        { Sort: InstrumentSort.Caliper } caliper => new Vernier(zeroError) { Inside = caliper.Inside },
        { HasScale: true } ruled => new Ruled(ruled.Sort == InstrumentSort.Tape, ruled.Inches) { Pins = ruled.Pins },
        _ => null,
    };

    /// <summary>A steel rule or a tape. Millimetres: a long mark with its figure each 10, a middle one each 5. Inches: sixteenths, figures at whole inches.</summary>
    /// <param name="Tape">True for a tape, false for a steel rule.</param>
    /// <param name="Inches">True for inches.</param>
    /// <param name="Around">True when it is laid round the part, so that its own end is read.</param>
    public sealed record Ruled(bool Tape, bool Inches, bool Around = false) : Scale
    {
        /// <summary>True for a rule laid along a chain: the pins are seen, half an inch or a little more apart.</summary>
        public bool Pins { get; init; }

        /// <summary>True when a tape that is laid round does not lie quite even: its end stands aslant, and is read where it touches the marks.</summary>
        public bool Aslant { get; init; }

        /// <summary>The same rule laid round a part; one tape in three lies aslant, by the seed.</summary>
        public Ruled LaidRound(ulong seed) => this with { Around = true, Aslant = Figures.ShopLook.IsWorn(seed) };
    }

    /// <summary>A vernier caliper 0.05 mm: 20 divisions of the vernier on 19 mm of the main scale.</summary>
    /// <remarks>Least count = main division ÷ number of vernier divisions. Source: facts U7.1 (S112).</remarks>
    public sealed record Vernier : Scale
    {
        /// <summary>Divisions of the vernier.</summary>
        public const int Lines = Instrument.VernierLines;

        /// <summary>A caliper with a zero error of whole divisions.</summary>
        /// <param name="zeroError">What it reads with its jaws closed, mm; rounded to a division. Greater than 0: the vernier's zero stands right of the main zero.</param>
        public Vernier(double zeroError) => ZeroSteps = (int)Math.Floor((zeroError * Lines) + 0.5);

        /// <summary>True when the inside jaws stand in a bore.</summary>
        public bool Inside { get; init; }

        /// <summary>Zero error in divisions of 0.05 mm.</summary>
        public int ZeroSteps { get; }

        /// <summary>Where the vernier's zero line stands, in divisions from the main zero.</summary>
        /// <param name="millimetres">Distance of the jaws.</param>
        public int Steps(double millimetres) => (int)Math.Floor((millimetres * Lines) + 0.5) + ZeroSteps;
    }
}
