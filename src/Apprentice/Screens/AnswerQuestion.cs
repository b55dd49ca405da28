namespace Apprentice.Screens;

/// <summary>One question of an answer.</summary>
/// <param name="Key">Its key: "which:bar", "sure:bar", "do:grips", …</param>
/// <param name="Line">What it is called in the list of the whole answer.</param>
/// <param name="Prompt">The question.</param>
/// <param name="Help">A line below it, or empty.</param>
/// <param name="Options">What can be chosen: a value and its words.</param>
/// <param name="Scale">True for 1 to 9 and "as good as certain", on one line.</param>
sealed record AnswerQuestion(string Key, string Line, string Prompt, string Help, IReadOnlyList<(string Value, string Text)> Options, bool Scale = false);
