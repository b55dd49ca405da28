using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>Cases for the laws.</summary>
static class Some
{
    public static Case Case(Workbench bench, CaseRequest request, ulong seed) =>
        bench.Make(request, seed) ?? throw new InvalidOperationException($"refused: {request}");

    public static IReadOnlyList<Case> Cases(Workbench bench, CaseRequest request, int count) =>
        [.. Enumerable.Range(1, count).Select(i => Case(bench, request, (ulong)i))];

    /// <summary>Each want with one opening, each opening with one want: enough to meet all of both.</summary>
    public static IEnumerable<(Want Want, Opening Opening)> WantsAndOpenings(Topic topic) =>
        Enumerable.Range(0, Math.Max(topic.Wants.Count, topic.Openings.Count)).Select(i => (topic.Wants[i % topic.Wants.Count], topic.Openings[i % topic.Openings.Count]));
}
