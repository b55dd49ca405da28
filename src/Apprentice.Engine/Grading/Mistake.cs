namespace Apprentice.Engine.Grading;

/// <summary>What went wrong with a reading. The first that explains it, in this order; a right reading is never anything else.</summary>
public enum Mistake
{
    /// <summary>Right within what the tool is good for.</summary>
    None,

    /// <summary>Taken from or to another point.</summary>
    Datum,

    /// <summary>The caliper's zero error was not taken off.</summary>
    ZeroForgotten,

    /// <summary>The caliper's zero error was put on in place of taken off.</summary>
    ZeroWrongWay,

    /// <summary>Inches read or written as millimetres.</summary>
    InchesAsMillimetres,

    /// <summary>Millimetres read or written as inches.</summary>
    MillimetresAsInches,

    /// <summary>Centimetres written as millimetres.</summary>
    CentimetresAsMillimetres,

    /// <summary>Ten times too large.</summary>
    TenTimes,

    /// <summary>The way round in place of the way across.</summary>
    RoundForAcross,

    /// <summary>The way across in place of the way round.</summary>
    AcrossForRound,

    /// <summary>The vernier's line taken for whole tenths: line 4 as 0.4.</summary>
    VernierTenths,

    /// <summary>The vernier was not read.</summary>
    VernierLeftOut,

    /// <summary>The vernier's part ten times too large, or ten times too small.</summary>
    VernierPlace,

    /// <summary>The main scale read at the far end of the vernier.</summary>
    VernierEnd,

    /// <summary>One division of the vernier too far or too short.</summary>
    VernierDivision,

    /// <summary>One mark of the main scale too far or too short.</summary>
    MainDivision,

    /// <summary>One figure of the main scale too far or too short: 10 mm, or an inch.</summary>
    Figure,

    /// <summary>None of these.</summary>
    Off,
}
