using Apprentice.Engine.Evidence;
using Apprentice.Engine.Quantities;

namespace Apprentice.Engine.Cases;

/// <summary>A made bike: what is seen of it, and apart from that what is true.</summary>
/// <param name="Job">What a learner may see.</param>
/// <param name="Truth">What is true; never on a screen before the answer.</param>
/// <param name="Shows">What each clue would show, look by look, by short name of the clue.</param>
/// <param name="Errors">Per measured clue and look, the error of a reading that the learner takes, in standard uncertainties.</param>
public sealed record Case(
    Job Job, Truth Truth, IReadOnlyDictionary<string, IReadOnlyList<Finding>> Shows, IReadOnlyDictionary<string, IReadOnlyList<double>> Errors)
{
    /// <summary>Per clue that is read as a code: per writing (the true number, then the decoys in their order) what it shows, look by look. A clue that cannot be seen has none.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<IReadOnlyList<string>>> Writings { get; init; } = new Dictionary<string, IReadOnlyList<IReadOnlyList<string>>>();

    /// <summary>How often one clue can be looked at.</summary>
    public const int LooksPerClue = 4;

    /// <summary>What a look shows.</summary>
    /// <param name="clue">A clue on offer or in the opening.</param>
    /// <param name="nth">0 for the first look; past the last one the last is shown again.</param>
    public Finding Look(string clue, int nth) => Shows[clue][Math.Min(nth, LooksPerClue - 1)];

    /// <summary>What a writing shows: the finding, or null when the writing is none that the clue knows of and so tells nothing.</summary>
    /// <param name="clue">A clue on offer that is not measured.</param>
    /// <param name="nth">0 for the first look.</param>
    /// <param name="writing">0 for the true number, n for the n-th decoy.</param>
    public string? Written(string clue, int nth, int writing)
    {
        if (!Writings.TryGetValue(clue, out var writings)) return writing == 0 && Look(clue, nth).Seen is Seen.Named named ? named.Id : null;
        return writing < writings.Count ? writings[writing][Math.Min(nth, LooksPerClue - 1)] : null;
    }

    /// <summary>Where the edge lies on the scale, in mm, when the learner takes a reading from a datum: between the marks, as real parts do.</summary>
    /// <param name="clue">A measured clue on offer.</param>
    /// <param name="nth">0 for the first look.</param>
    /// <param name="way">The way of reading that the datum chosen makes.</param>
    /// <param name="size">True size, mm.</param>
    public double Edge(string clue, int nth, Way way, double size) =>
        (way.Slope * size) + way.Intercept + (way.Uncertainty * Errors[clue][Math.Min(nth, LooksPerClue - 1)]);
}

/// <summary>A job as a learner meets it: no hidden history in it.</summary>
/// <param name="Topic">Short name of the topic.</param>
/// <param name="Version">Version of the topic.</param>
/// <param name="Seed">Seed: same version, request and seed, same case.</param>
/// <param name="Request">The request.</param>
/// <param name="Told">Opening findings; their clues can be looked at again if on offer.</param>
/// <param name="Bench">Clues on offer, in the topic's order, safety looks last.</param>
public sealed record Job(string Topic, string Version, ulong Seed, CaseRequest Request, IReadOnlyList<Finding> Told, IReadOnlyList<string> Bench);

/// <summary>The true history of a made bike.</summary>
/// <param name="Line">Its line.</param>
/// <param name="Built">Month of build, or null for a topic without dates.</param>
/// <param name="AsBuilt">Kind per part as it left the maker, in the topic's order of parts.</param>
/// <param name="Kinds">Kind per part today, "none" for none of these.</param>
/// <param name="Events">Events that happened, in order.</param>
/// <param name="Story">All tags of the story: events, line, running changes, other families.</param>
/// <param name="Sizes">True size per dimension in mm, in the topic's order.</param>
public sealed record Truth(
    string Line, Month? Built, IReadOnlyList<string> AsBuilt, IReadOnlyList<string> Kinds, IReadOnlyList<string> Events,
    IReadOnlyList<string> Story, IReadOnlyList<double> Sizes);
