using System.Diagnostics;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Content;

/// <summary>Remarks that the engine has chosen, in words.</summary>
/// <param name="topic">The topic.</param>
/// <param name="bench">Short names of the checks on the bench, in order: they are called by their number.</param>
public sealed class Telling(Topic topic, IReadOnlyList<string> bench)
{
    readonly TopicWords _words = new(topic);

    /// <summary>The sentence of a remark.</summary>
    /// <exception cref="ArgumentException">The words file has no such sentence, or the remark lacks a value.</exception>
    public string Of(Remark remark) => Spoken.Capital(Words.Of(
        Key(remark), remark.Values.ToDictionary(v => v.Key, v => (object)Said(v.Value, IsSure(remark)), StringComparer.Ordinal)));

    /// <summary>A clue as it is called on the bench: number and name.</summary>
    public string Check(string clue)
    {
        var number = bench.ToList().IndexOf(clue) + 1;
        return number == 0 ? _words.Clue(clue) : Words.Of("spoken.check", ("n", number), ("name", _words.Clue(clue)));
    }

    /// <summary>The key of the words: another one where the engine's own would contradict itself when its figures are spoken.</summary>
    static string Key(Remark remark) => remark.Key switch
    {
        "grade.which.thin" when Chance(remark, "chance") is { } chance && Chance(remark, "level") is { } level && Same(chance, level) => "grade.which.just-under",
        "grade.order.better" when remark.Values.Any(v => v.Value is Value.OfChoice { Choice: Engine.Evidence.Choice.Wait }) => "grade.order.better-wait",
        var key => key,
    };

    static string? Chance(Remark remark, string name) =>
        remark.Values.Where(v => Same(v.Key, name)).Select(v => v.Value).OfType<Value.Chance>().Select(c => Spoken.Twentieths(c.Probability)).FirstOrDefault();

    /// <summary>True where a chance stands beside what the learner said, in tenths.</summary>
    static bool IsSure(Remark remark) => remark.Key.Split('.') is [_, "sure", ..] or [_, "rule", "sure"];

    static bool Same(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);

    string Said(Value value, bool tenths) => value switch
    {
        Value.Chance chance when tenths => Spoken.AboutTenths(chance.Probability),
        Value.OfClue clue => Check(clue.Id),
        Value.OfClues clues => Spoken.List([.. clues.Ids.Select(Check)]),
        Value.OfPart part => _words.Part(part.Id),
        Value.OfKind kind => _words.Kind(kind.Part, kind.Id),
        Value.OfClass kinds => _words.Class(kinds.Part, kinds.Kinds),
        Value.OfChoice choice => _words.Choice(choice.Choice),
        Value.OfTag tag => _words.Tag(tag.Id),
        Value.Chance chance => Spoken.Twentieths(chance.Probability),
        Value.OneOf rare => Spoken.OneOf(rare.Probability),
        Value.Tenths tenth => tenth.Count >= 10 ? Words.Of("grade.certain") : Words.Of("spoken.of-ten", ("n", tenth.Count)),
        Value.Minutes minutes => Words.Of("spoken.minutes", ("n", Spoken.Minutes(minutes.Count))),
        Value.Money money => Spoken.Money(money.Amount),
        Value.Days days => Math.Round(days.Count) is 1 ? Words.Of("spoken.day") : Words.Of("spoken.days", ("n", Spoken.Minutes(days.Count))),
        Value.Length length => Spoken.Length(length.Millimetres, length.Division, length.Inches),
        Value.Said said => Of(said.Remark),
        Value.Mark mark => Words.Of("spoken.mark", ("n", (int)Math.Round(100 * Math.Clamp(mark.Amount, 0, 1)))),
        Value.Text text => text.Words.TrimEnd('.'),
        _ => throw new UnreachableException(),
    };
}
