using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>What stands above the answers of a question about a real bike.</summary>
static class OwnQuestion
{
    const double Enough = 0.95;

    /// <summary>The blocks: how far it is, the question, from where to where, caution.</summary>
    public static IEnumerable<Block> Of(OwnBike bike, Clue clue, string soFar)
    {
        if (soFar.Length > 0)
        {
            yield return new Block.Text(soFar);
            yield return new Block.Rule();
        }
        var again = bike.Times(clue.Id) > 0;
        yield return new Block.Text($"{Words.Of(clue.Safety ? "own.stop-first" : "own.check", ("n", bike.Number))}.  {(clue.Ask.Length > 0 ? clue.Ask : clue.Name)}");
        if (again) yield return new Block.Text(Words.Of("own.again"));
        yield return new Block.Text(ClueWhere.Of(clue), 2);
        if (clue.Access is { } id && bike.Topic.Accesses.First(a => string.Equals(a.Id, id, StringComparison.Ordinal)) is var access)
            yield return new Block.Text(Words.Of("bench.comes-off", ("access", access.Name), ("minutes", Spoken.Minutes(access.Minutes))), 2);
        if (clue.Caution.Length > 0) yield return new Block.Text(Words.Of("bench.caution", ("caution", clue.Caution.TrimEnd('.'))), 2);
        yield return new Block.Gap();
    }

    /// <summary>On from a question that was answered. The answer is kept at once, so that a window that closes loses none.</summary>
    public static Turn Found(World world, OwnBike bike, string clue, Seen seen, Screen below) =>
        Turn.To(bike.Found(clue, seen).Screen(below), new LogEntry.WalkFound(world.Person, OwnBike.FindingOf(clue, seen)));

    /// <summary>Back from a question: to the question before, or to where the walk started.</summary>
    public static Turn Back(World world, OwnBike bike, Screen below) =>
        bike.Before is { } before ? Turn.To(before.Screen(below), new LogEntry.WalkStruck(world.Person)) : Turn.To(below);

    /// <summary>How far it is, or empty before the first check.</summary>
    public static string SoFar(OwnBike bike, Reasoning reasoning)
    {
        if (!bike.TellsMore) return "";
        var part = reasoning.Parts[0];
        var leading = part.Classes[part.Leading];
        return Words.Of(
            !part.Settled && leading.Belief >= Enough ? "own.so-far-hurts" : "own.so-far", ("kind", new TopicWords(bike.Topic).Class(part.Part, leading.Kinds)), ("tenths", Spoken.Twentieths(leading.Belief)));
    }
}
