namespace Apprentice.Engine.Grading;

/// <summary>A sentence of the words file with its values: the engine chooses what to say, the words file how.</summary>
/// <param name="Key">Key in the words file.</param>
/// <param name="Values">Values of its placeholders by name.</param>
public sealed record Remark(string Key, IReadOnlyDictionary<string, Value> Values)
{
    /// <summary>A remark with the given named values.</summary>
    public static Remark Of(string key, params (string Name, Value Value)[] values) =>
        new(key, values.ToDictionary(v => v.Name, v => v.Value, StringComparer.Ordinal));
}

/// <summary>A value that the words turn into the words of a topic, or into a figure as a mechanic would say it.</summary>
public abstract record Value
{
    Value()
    {
    }

    /// <summary>A clue, by short name: said as its number and name on the bench.</summary>
    public sealed record OfClue(string Id) : Value;

    /// <summary>Several clues, by short names: said like one, with commas and "and".</summary>
    public sealed record OfClues(IReadOnlyList<string> Ids) : Value;

    /// <summary>A part, by short name.</summary>
    public sealed record OfPart(string Id) : Value;

    /// <summary>A kind of a part, by short names; "none" for none of these.</summary>
    public sealed record OfKind(string Part, string Id) : Value;

    /// <summary>An order class, by the short names of its kinds.</summary>
    public sealed record OfClass(string Part, IReadOnlyList<string> Kinds) : Value;

    /// <summary>A choice of an order line.</summary>
    public sealed record OfChoice(Evidence.Choice Choice) : Value;

    /// <summary>A tag of a story, by its id.</summary>
    public sealed record OfTag(string Id) : Value;

    /// <summary>A probability, said as so many of 10, 20 or 100, never above 99 of 100.</summary>
    public sealed record Chance(double Probability) : Value;

    /// <summary>How rare: 1 of so many.</summary>
    public sealed record OneOf(double Probability) : Value;

    /// <summary>A number of tenths: "9 of 10".</summary>
    public sealed record Tenths(int Count) : Value;

    /// <summary>Minutes.</summary>
    public sealed record Minutes(double Count) : Value;

    /// <summary>Money, in the workshop's prices.</summary>
    public sealed record Money(double Amount) : Value;

    /// <summary>Days.</summary>
    public sealed record Days(double Count) : Value;

    /// <summary>A length in mm, told as finely as the tool that it is read with is divided: mm, or inches for a scale in inches.</summary>
    public sealed record Length(double Millimetres, double Division = 1, bool Inches = false) : Value;

    /// <summary>Another remark, as a sentence of its own.</summary>
    public sealed record Said(Remark Remark) : Value;

    /// <summary>A mark, for the rule behind a key.</summary>
    public sealed record Mark(double Amount) : Value;

    /// <summary>Words of the topic itself.</summary>
    public sealed record Text(string Words) : Value;
}
