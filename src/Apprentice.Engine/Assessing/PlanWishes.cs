using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Assessing;

/// <summary>How the first twelve jobs of a plan are mixed and seen, where the topics give such jobs. Only MODEL 5's means: what is told and how a job is seen, never what is true.</summary>
/// <param name="Suggests">Jobs whose opening suggests that something was changed, 0 to 5.</param>
/// <param name="LeavesOpen">Jobs whose opening leaves two kinds open, 0 to 2.</param>
/// <param name="Phone">Jobs by phone, 0 to 6.</param>
/// <param name="Photo">Jobs by photo, 0 to 3.</param>
public sealed record PlanWishes(int Suggests, int LeavesOpen, int Phone, int Photo)
{
    // Places among the twelve, spread so that no sort stands together.
    static readonly int[] SuggestsAt = [3, 8, 11, 4, 9];
    static readonly int[] OpenAt = [6, 1];
    static readonly int[] PhoneAt = [2, 5, 7, 11, 8, 1];
    static readonly int[] PhotoAt = [4, 9, 6];

    /// <summary>Eight as they come, three that suggest a change, one that leaves two open; six on the bench, four by phone, two by photo. Judgement.</summary>
    public static PlanWishes Usual { get; } = new(3, 1, 4, 2);

    /// <summary>What the opening looks like at a slot from 0.</summary>
    public Selection SelectAt(int slot) => SuggestsAt.Take(Suggests).Contains(slot) ? Selection.SuggestsChange
        : OpenAt.Take(LeavesOpen).Contains(slot) ? Selection.LeavesTwoOpen
        : Selection.AsTheyCome;

    /// <summary>How the job at a slot from 0 is seen.</summary>
    public Channel OfferAt(int slot) => PhoneAt.Take(Phone).Contains(slot) ? Channel.Phone : PhotoAt.Take(Photo).Contains(slot) ? Channel.Photo : Channel.Bench;
}
