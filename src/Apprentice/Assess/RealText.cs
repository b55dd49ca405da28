using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Assess;

/// <summary>Real bikes of papers in words, for screens, print and scripts.</summary>
static class RealText
{
    /// <summary>How many stand at the end of a plan's papers.</summary>
    public static string Wish(TestPlan plan) => Wish(plan.RealBikes);

    /// <summary>A wish for so many.</summary>
    public static string Wish(int count) => Words.Of(count switch { 0 => "testplan.real-none", 1 => "testplan.real-one", _ => "testplan.real-many" }, ("n", count));

    /// <summary>How many there are for a plan's topics now.</summary>
    /// <param name="topics">All topics at hand.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="notebook">Bikes that were taken in.</param>
    public static string There(IEnumerable<Topic> topics, TestPlan plan, BenchNotebook notebook)
    {
        var there = RealOffer.There([.. topics.Where(t => plan.Topics.Any(p => p.Id == t.Id))], notebook).Count;
        return Words.Of(there switch { 0 => "testplan.real-there-none", 1 => "testplan.real-there-one", _ => "testplan.real-there" }, ("n", there));
    }

    /// <summary>What a paper carries and what was left out; null where none was wished for.</summary>
    public static string? Made(MadePaper made)
    {
        if (made.RealWished == 0) return null;
        var held = Words.Of(made.Real == 1 ? "papers.real-one" : "papers.real", ("name", made.Entry.Candidate), ("n", made.Real), ("of", made.RealWished));
        return made.RealMet == 0 ? held : $"{held} {Words.Of(made.RealMet == 1 ? "papers.real-met-one" : "papers.real-met", ("n", made.RealMet))}";
    }
}
