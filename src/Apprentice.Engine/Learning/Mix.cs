using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>Which bike comes next in practice: six ordinary to four odd, from everywhere, one in five by phone, one in ten by photo.</summary>
/// <remarks>The shares are judgement. Each job is drawn for itself, so that nobody can count which one must come.</remarks>
public static class Mix
{
    /// <summary>How many bikes of ten are ordinary.</summary>
    public const int OrdinaryOfTen = 6;

    /// <summary>Questions that may be asked on the phone.</summary>
    public const int PhoneQuestions = 3;

    /// <summary>The next job of a topic.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="history">What was done so far; the number of the next job decides.</param>
    /// <param name="luck">The number drawn at the first start.</param>
    public static Draw Next(Topic topic, History history, long luck) => Of(topic, history.NextJob, luck);

    /// <summary>The n-th job of a topic.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="job">Number of the job.</param>
    /// <param name="luck">The number drawn at the first start.</param>
    public static Draw Of(Topic topic, int job, long luck)
    {
        var dice = new Dice(luck, job);
        var odd = dice.Below(10) >= OrdinaryOfTen;
        var offer = Offer(topic, dice.Below(10));
        var provenance = topic.Provenances[dice.Below(2) == 0 ? 0 : dice.Below(topic.Provenances.Count)];
        var want = topic.Wants[dice.Below(topic.Wants.Count)];
        var openings = topic.Openings.Where(o => offer == Channel.Bench || o.Clues.All(c => c.Channel != Channel.Bench)).ToList();
        var opening = openings.Count == 0 ? null : openings[dice.Below(openings.Count)].Id;
        var select = odd && opening is not null ? (Selection)(1 + dice.Below(3)) : Selection.AsTheyCome;
        return new Draw(
            new CaseRequest(provenance.Id, want.Id, opening, select, offer, Questions: offer == Channel.Phone ? PhoneQuestions : null), dice.Seed());
    }

    /// <summary>A person's first job: an ordinary bike on the stand, one thing asked, something told at the counter.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="job">Number of the job.</param>
    /// <param name="luck">The number drawn at the first start.</param>
    public static Draw First(Topic topic, int job, long luck)
    {
        var want = topic.Wants.OrderBy(w => w.Asks.Count).ThenBy(w => w.OrderLines.Count).First();
        var opening = topic.Openings.Count == 0 ? null : topic.Openings[0].Id;
        return new Draw(new CaseRequest(topic.Provenances[0].Id, want.Id, opening, Selection.AsTheyCome, Channel.Bench), new Dice(luck, -job).Seed());
    }

    /// <summary>The same job with nothing asked of its opening: for a request that is met too rarely.</summary>
    public static Draw Plain(Draw draw) => draw with { Request = draw.Request with { Select = Selection.AsTheyCome } };

    /// <summary>Which of several topics the n-th job is from, from 0.</summary>
    /// <param name="topics">Number of topics, at least 1.</param>
    /// <param name="job">Number of the job.</param>
    /// <param name="luck">The number drawn at the first start.</param>
    public static int Topic(int topics, int job, long luck) => new Dice(~luck, job).Below(topics);

    static Channel Offer(Topic topic, int tenth)
    {
        var wished = tenth switch { 0 or 1 => Channel.Phone, 2 => Channel.Photo, _ => Channel.Bench };
        return topic.Clues.Count(c => c.Channels.Any(k => k.Channel == wished)) >= 3 ? wished : Channel.Bench;
    }
}

/// <summary>A request and a seed: together they make one case.</summary>
/// <param name="Request">The request.</param>
/// <param name="Seed">The seed.</param>
public sealed record Draw(CaseRequest Request, ulong Seed);
