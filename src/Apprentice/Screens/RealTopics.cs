using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Topics for real bikes. Drafts are for practice only: they come in where nothing else is there, and are marked.</summary>
static class RealTopics
{
    /// <summary>Those of the topics that are no drafts; all where all are.</summary>
    public static IReadOnlyList<Workbench> Of(IReadOnlyList<Workbench> benches) => benches.Any(b => !IsDraft(b)) ? [.. benches.Where(b => !IsDraft(b))] : benches;

    /// <summary>What stands beside a topic in a list: that it is a draft, or nothing.</summary>
    public static string Note(Workbench bench) => IsDraft(bench) ? Words.Of("topics.draft") : "";

    static bool IsDraft(Workbench bench) => bench.Topic.State == TopicState.Draft;
}
