using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>All skills of the person at the machine.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record SkillsScreen(Screen Below) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var all = SkillList.Of(world, world.Person);
        return new Page(
            Words.Of("skills.title"),
            world.Who,
            [
                all.Count == 0 ? new Block.Text(Words.Of("home.table-empty")) : SkillList.Table(world, all),
                new Block.Gap(),
                new Block.Text(Words.Of("skills.words")),
            ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);
}
