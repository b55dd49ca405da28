using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>The confirming screen before a part is ordered that can hurt: a word typed, not a key.</summary>
/// <param name="Answer">The answer to go back to.</param>
sealed record ConfirmScreen(AnswerScreen Answer) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override int? Job => Answer.Job;

    /// <inheritdoc/>
    protected override int Longest => 12;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var words = new TopicWords(Answer.Form.On.Topic);
        var used = Answer.Form.On.Looks.Select(l => l.Clue).Distinct(StringComparer.Ordinal).Select(words.Clue).ToList();
        return new Page(
            Words.Of("confirm.title", ("job", Answer.Form.On.Number)),
            world.Who,
            [
                new Block.Gap(),
                .. Answer.Form.Hazards.SelectMany(s => new Block[]
                {
                    new Block.Text(Words.Of("confirm.part", ("spare", s.Name))), new Block.Text(Words.Of("confirm.what", ("text", s.HazardText)), 2),
                }),
                .. Answer.Form.Forced ? [new Block.Text(Words.Of("confirm.force"))] : Array.Empty<Block>(),
                new Block.Gap(),
                new Block.Text(used.Count == 0 ? Words.Of("confirm.nothing") : Words.Of("confirm.used", ("checks", Spoken.List(used)))),
                new Block.Gap(),
                new Block.Text(Words.Of("confirm.type")),
                new Block.Gap(),
                .. Field(Words.Of("confirm.field")),
            ],
            [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);
    }

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (text.Length == 0) return Back(world);
        return string.Equals(text, Words.Of("confirm.word"), StringComparison.OrdinalIgnoreCase) || string.Equals(text, Words.Of("confirm.number"), StringComparison.Ordinal)
            ? Answer.HandedIn(world)
            : Turn.To(this with { Typed = "", Wrong = Words.Of("confirm.wrong") });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Answer);
}
