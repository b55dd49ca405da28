using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>A card for the lead: ten minutes with a learner about one habit.</summary>
/// <param name="Person">The learner.</param>
/// <param name="Habit">The habit.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record CoachScreen(string Person, Habit Habit, Screen Below) : Screen
{
    const int Lines = 4;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var key = AimedSets.KeyOf(Habit);
        return new Page(
            Words.Of("coach.title"),
            Person,
            [
                new Block.Text(Spoken.Capital(Words.Of($"{key}.name"))),
                new Block.Gap(),
                .. Enumerable.Range(1, Lines).SelectMany(n => new Block[] { new Block.Text(Words.Of($"{key}.card.{n}")), new Block.Gap() }),
                new Block.Text(Words.Of("coach.fair")),
            ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);
}
