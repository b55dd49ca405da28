using Apprentice.Content;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>The job card: who wants what, where the bike comes from, what was told.</summary>
static class JobCardBlocks
{
    /// <summary>The blocks of a job's card.</summary>
    public static IEnumerable<Block> Of(BenchJob on)
    {
        var request = on.Made.Job.Request;
        var provenance = on.Topic.Provenances.First(p => string.Equals(p.Id, request.Provenance, StringComparison.Ordinal));
        var says = on.Want.Says.Count == 0 ? on.Want.Name : on.Want.Says[(int)(on.Made.Job.Seed % (ulong)on.Want.Says.Count)];
        yield return new Block.Text(Words.Of(
            on.Offer switch { Channel.Phone => "job.caller", Channel.Photo => "job.photo", _ => "job.customer" }, ("says", says.Trim('"'))));
        yield return new Block.Text(Words.Of(
            "job.bike", ("card", provenance.Card), ("needed", Spoken.List([.. on.Want.OrderLines.Select(l => l.Name)]))));
        if (request.Questions is { } questions) yield return new Block.Text(Words.Of("job.budget", ("n", questions)));
        var words = new TopicWords(on.Topic);
        foreach (var told in on.Made.Job.Told.Where(f => !on.Made.Job.Bench.Contains(f.Clue, StringComparer.Ordinal)))
            yield return new Block.Text(Words.Of("job.told", ("clue", words.Clue(told.Clue)), ("seen", words.Seen(told))));
    }
}
