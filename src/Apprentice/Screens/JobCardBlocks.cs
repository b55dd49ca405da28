using Apprentice.Content;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>The job card: who wants what, where the bike comes from, what was told.</summary>
static class JobCardBlocks
{
    /// <summary>The right end of the top line: who it is, and minutes or questions spent.</summary>
    public static string Right(BenchJob on, string who)
    {
        var spent = on.Made.Job.Request.Questions is { } of
            ? Words.Of("job.asked", ("asked", on.Looks.Count), ("of", of))
            : Words.Of("job.bench-time", ("minutes", Spoken.Minutes(on.Minutes)));
        return Words.Of("job.right", ("who", who), ("spent", spent)).Trim();
    }

    /// <summary>The blocks of a job's card.</summary>
    public static IEnumerable<Block> Of(BenchJob on)
    {
        var request = on.Made.Job.Request;
        var card = JobCard.Of(on.Topic, on.Made.Job);
        yield return new Block.Text(Words.Of(
            "job.customer", ("arrival", Words.Of(Arrival(request.Offer), ("name", card.Customer))), ("says", card.Says.Trim('"')),
            ("needed", Spoken.List([.. on.Want.OrderLines.Select(l => l.Name)]))));
        var bike = Words.Of("job.bike", ("colour", card.Colour), ("card", card.Origin));
        yield return new Block.Text(request.Questions is { } questions ? $"{bike} {Words.Of("job.budget", ("n", questions))}" : bike);
        var words = new TopicWords(on.Topic);
        foreach (var told in on.Made.Job.Told.Where(f => !on.Made.Job.Bench.Contains(f.Clue, StringComparer.Ordinal)))
            yield return new Block.Text(Words.Of("job.told", ("clue", words.Clue(told.Clue)), ("seen", words.Seen(told))));
    }

    static string Arrival(Channel offer) => offer switch
    {
        Channel.Phone => "job.on-phone",
        Channel.Photo => "job.by-photo",
        _ => "job.at-counter",
    };
}
