using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>Requests for planned jobs. Only where the bike comes from, what is told first, how it is seen and what the opening looks like are asked for (MODEL 5); never what is true.</summary>
/// <param name="topics">Topics at hand.</param>
/// <param name="luck">The number drawn at the first start.</param>
/// <param name="firstJob">Number of the session's first job.</param>
/// <param name="pitfalls">Jobs of the session that are for a pitfall, which need an odd bike.</param>
/// <param name="jobs">Jobs of the session.</param>
sealed class PlanRequests(IReadOnlyList<Topic> topics, long luck, int firstJob, int pitfalls, int jobs)
{
    const int OddOfTen = 10 - Mix.OrdinaryOfTen;
    const int Thousand = 1000;

    // So that on average four of ten are odd: what pitfalls take is taken off the others.
    readonly int _oddOfThousand = jobs == pitfalls ? 0 : Math.Max(0, ((OddOfTen * jobs) - (10 * pitfalls)) * (Thousand / 10) / (jobs - pitfalls));

    /// <summary>The job for a skill.</summary>
    /// <param name="topic">Its topic.</param>
    /// <param name="skill">The skill.</param>
    /// <param name="index">Index of the job in the session.</param>
    public Draw Of(Topic topic, SkillKey skill, int index)
    {
        var job = firstJob + index;
        var draw = Mix.Of(topic, job, luck);
        var dice = new Dice(unchecked(luck + topics.Count), -job);
        var request = draw.Request with { Select = Selection.AsTheyCome };
        request = skill.Sort switch
        {
            SkillSort.Pitfall => ForPitfall(topic, request, skill.Id),
            SkillSort.Clue or SkillSort.Reading => ForClue(topic, request, topic.Clues.First(c => c.Id == skill.Id), skill.Sort == SkillSort.Reading),
            _ => request,
        };
        if (skill.Sort == SkillSort.Pitfall || dice.Below(Thousand) < _oddOfThousand) request = Odd(request, dice);
        return draw with { Request = request };
    }

    /// <summary>A request whose opening looks odd, in one of three ways; as it was when nothing is told.</summary>
    static CaseRequest Odd(CaseRequest request, Dice dice) => request.Opening is null ? request : request with { Select = (Selection)(1 + dice.Below(3)) };

    // A clue is asked for where it is on offer, and by a want that depends on the part it reads.
    static CaseRequest ForClue(Topic topic, CaseRequest request, Clue clue, bool reading)
    {
        if (reading || clue.Channels.All(c => c.Channel != request.Offer))
            request = request with { Offer = clue.Channels.Any(c => c.Channel == Channel.Bench) ? Channel.Bench : clue.Channels[0].Channel, Questions = null };
        if (request.Offer == Channel.Phone) request = request with { Questions = Mix.PhoneQuestions };
        var want = clue.Node is Node.OfPart node ? topic.Wants.FirstOrDefault(w => w.Asks.Contains(node.Part)) : null;
        return want is null || topic.Wants.First(w => w.Id == request.Want).Asks.Any(want.Asks.Contains) ? request : request with { Want = want.Id };
    }

    /// <summary>The provenance in which a pitfall is commonest, and an opening that tells a clue which can fall into it.</summary>
    public static CaseRequest ForPitfall(Topic topic, CaseRequest request, string pitfall)
    {
        var rates = topic.Provenances.Select((p, i) => (p.Id, Rate: topic.Events.Where(e => e.Pitfall == pitfall).Sum(e => e.Rates[i]) + topic.Lines.Where(l => l.Pitfall == pitfall).Sum(l => l.Shares[i]))).ToList();
        if (rates.Max(r => r.Rate) > 0) request = request with { Provenance = rates.MaxBy(r => r.Rate).Id };
        var falls = topic.Clues.Where(c => c.Pitfalls.Contains(pitfall)).Select(c => c.Id).ToHashSet(StringComparer.Ordinal);
        var opening = topic.Openings.FirstOrDefault(o => o.Clues.Any(c => falls.Contains(c.Clue)) && (request.Offer == Channel.Bench || o.Clues.All(c => c.Channel != Channel.Bench)));
        return opening is null ? request : request with { Opening = opening.Id };
    }
}
