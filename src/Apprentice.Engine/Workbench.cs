using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine;

/// <summary>One topic made ready to work with: the same engine makes its cases, judges answers and helps with a real bike.</summary>
public sealed class Workbench
{
    /// <summary>Makes a topic ready: enumerates and merges its histories, once per provenance.</summary>
    public Workbench(Topic topic) => Topic = topic;

    /// <summary>The topic.</summary>
    public Topic Topic { get; }

    /// <summary>What the findings amount to.</summary>
    public Reasoning Reason(Enquiry enquiry, IReadOnlyList<Finding> findings) => throw new NotSupportedException();

    /// <summary>The case of a request and a seed, or null when the request is met less than once in 5,000 draws.</summary>
    public Case? Make(CaseRequest request, ulong seed) => throw new NotSupportedException();

    /// <summary>What all clues on offer amount to: whether the case is settled, by which deciding set, and the best decision. Shown, never used to choose a case.</summary>
    public Reasoning Prove(Case made) => throw new NotSupportedException();

    /// <summary>The grade of an answer.</summary>
    public Grade Grade(Case made, Answer answer) => throw new NotSupportedException();
}
