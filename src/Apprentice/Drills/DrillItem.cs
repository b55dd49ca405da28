using Apprentice.Drawing;
using Apprentice.Drawing.Plates;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Drills;

/// <summary>One item of a drill: what is asked, and how an answer is judged.</summary>
abstract record DrillItem
{
    DrillItem()
    {
    }

    /// <summary>What is asked, in a sentence; may be empty on a scale, which asks by itself.</summary>
    public required string Prompt { get; init; }

    /// <summary>A sentence of help that stands beside the item until three answers in a row were right; may be empty.</summary>
    public string Beside { get; init; } = "";

    /// <summary>The same item without help, as it is asked once three answers in a row were right.</summary>
    public virtual DrillItem Alone => this with { Beside = "" };

    /// <summary>A scale to be read: first from where to where, when there are several datums.</summary>
    public sealed record OnScale : DrillItem
    {
        /// <summary>The scale.</summary>
        public required Scale Scale { get; init; }

        /// <summary>The tool as it is named.</summary>
        public required string Tool { get; init; }

        /// <summary>From where to where: the right datum first, then the slips.</summary>
        public required IReadOnlyList<string> Datums { get; init; }

        /// <summary>What truly lies between the edges for a datum, mm, without a zero error.</summary>
        public required Func<int, double> ExactFor { get; init; }

        /// <summary>How fine the tool is read, mm.</summary>
        public required double Step { get; init; }

        /// <summary>Lowest and highest reading of the tool here, mm.</summary>
        public required (double Low, double High) Range { get; init; }

        /// <summary>Fixes the order in which the datums are shown.</summary>
        public required ulong Seed { get; init; }

        /// <summary>Judges what was read.</summary>
        public required Func<OwnReading, DrillVerdict> Judge { get; init; }

        /// <summary>The part with its points, where the topic draws it; null to choose by words alone.</summary>
        public DrawnDatums? Drawn { get; init; }
    }

    /// <summary>A drawn plate: which writing is the one to go by, then what it says.</summary>
    public sealed record OnPlate : DrillItem
    {
        /// <summary>The clue that is read off it.</summary>
        public required Clue Clue { get; init; }

        /// <summary>The plate.</summary>
        public required PlateView View { get; init; }

        /// <summary>Judges what was taken.</summary>
        public required Func<OwnLook, DrillVerdict> Judge { get; init; }
    }

    /// <summary>A thread and the leaves of a pitch gauge: which one fits.</summary>
    public sealed record OnGauge : DrillItem
    {
        /// <summary>The leaves, and at the end what says that none fits.</summary>
        public required IReadOnlyList<TableFinding> Leaves { get; init; }

        /// <summary>Pitch of the thread, mm.</summary>
        public required double Pitch { get; init; }

        /// <summary>The leaf that lies on the thread first: an index into the leaves, by size.</summary>
        public required int First { get; init; }

        /// <summary>Where the leaf is laid.</summary>
        public required string FromTo { get; init; }

        /// <summary>Judges the finding that was taken, by its short name.</summary>
        public required Func<string, DrillVerdict> Judge { get; init; }
    }

    /// <summary>Lines to choose from.</summary>
    public sealed record Pick : DrillItem
    {
        /// <summary>The lines.</summary>
        public required IReadOnlyList<string> Options { get; init; }

        /// <summary>Index of the right line.</summary>
        public required int Right { get; init; }

        /// <summary>What is right and how one sees it, in a sentence.</summary>
        public required string Why { get; init; }

        /// <summary>A picture above the lines with its words, or null.</summary>
        public DrillPicture? Picture { get; init; }

        /// <summary>A picture that shows after the answer what is right, or null.</summary>
        public DrillPicture? After { get; init; }

        /// <summary>The item as it is asked without help, or null when only the sentence beside it goes.</summary>
        public Pick? Harder { get; init; }

        /// <inheritdoc/>
        public override DrillItem Alone => Harder ?? base.Alone;
    }

    /// <summary>A length or a plain number to be typed.</summary>
    public sealed record Type : DrillItem
    {
        /// <summary>An answer as it may be typed.</summary>
        public required string Example { get; init; }

        /// <summary>Reads what was typed; null when it cannot be read.</summary>
        public required Func<string, double?> Parse { get; init; }

        /// <summary>The right value, in the unit of <see cref="Parse"/>.</summary>
        public required double Right { get; init; }

        /// <summary>How far from it is still right.</summary>
        public required double Tolerance { get; init; }

        /// <summary>What is right and how one gets there, in a sentence.</summary>
        public required string Why { get; init; }
    }
}

/// <summary>A picture of an item, and the same in words.</summary>
/// <param name="Draw">Draws to a width and a number of rows.</param>
/// <param name="Words">The picture in sentences; before the answer they do not give it away.</param>
sealed record DrillPicture(Func<PageSize, IReadOnlyList<string>> Draw, IReadOnlyList<string> Words);

/// <summary>How an answer was judged.</summary>
/// <param name="Right">True when it was right.</param>
/// <param name="Why">What is right and how, in a sentence.</param>
sealed record DrillVerdict(bool Right, string Why)
{
    /// <summary>A picture of what is right, or null.</summary>
    public DrillPicture? Shown { get; init; }
}
