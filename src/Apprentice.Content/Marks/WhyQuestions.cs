using Apprentice.Engine.Topics;

namespace Apprentice.Content.Marks;

/// <summary>Spoken "why" questions at a real bike, with what a good answer contains: from the clues and pitfalls of the topics.</summary>
public static class WhyQuestions
{
    /// <summary>Questions at each bike.</summary>
    public const int Each = 3;

    /// <summary>The three questions for a bike: one about how a check misleads, one about from where to where, one about a pitfall. Other bikes get others, as far as the topics have them.</summary>
    /// <param name="topics">Topics of the permission.</param>
    /// <param name="bike">Number of the bike, from 0.</param>
    public static IReadOnlyList<WhyQuestion> For(IReadOnlyList<Topic> topics, int bike)
    {
        if (topics.Count == 0) return [];
        var topic = topics[bike % topics.Count];
        var turn = bike / topics.Count;
        return [.. new[] { Misleads(topic, turn), FromWhere(topic, turn), Pitfall(topic, turn) }.OfType<WhyQuestion>()];
    }

    static WhyQuestion? Misleads(Topic topic, int turn)
    {
        var clues = topic.Clues.Where(c => c.Lies.Length > 0 && !c.Safety).ToList();
        if (clues.Count == 0) return null;
        var clue = clues[turn * 2 % clues.Count];
        return new WhyQuestion(Words.Of("whyask.lies", ("check", Spoken.Lower(clue.Name))), clue.Lies);
    }

    static WhyQuestion? FromWhere(Topic topic, int turn)
    {
        // Measures with a known wrong way first, then all others.
        var clues = topic.Clues.Where(c => c.FromTo.Length > 0 && !c.Safety).OrderByDescending(c => c.Shows is Shows.Measured { Slips.Count: > 0 }).ThenByDescending(c => c.Shows is Shows.Measured).ToList();
        if (clues.Count == 0) return null;
        var clue = clues[turn % clues.Count];
        var slips = clue.Shows is Shows.Measured { Slips: { Count: > 0 } named } ? Words.Of("whyask.not", ("slips", Spoken.List([.. named.Select(s => s.Name)]))) : "";
        return new WhyQuestion(Words.Of("whyask.from", ("check", Spoken.Lower(clue.Name))), $"{clue.FromTo.TrimEnd('.')}. {slips}".Trim());
    }

    static WhyQuestion? Pitfall(Topic topic, int turn)
    {
        if (topic.Pitfalls.Count == 0) return null;
        var pitfall = topic.Pitfalls[turn % topic.Pitfalls.Count];
        return new WhyQuestion(Words.Of($"whyask.{pitfall.Class}"), pitfall.Text);
    }
}

/// <summary>A spoken question.</summary>
/// <param name="Question">The question.</param>
/// <param name="Good">What a good answer contains.</param>
public sealed record WhyQuestion(string Question, string Good);
