using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>The rule behind each mark.</summary>
/// <param name="Below">The grade.</param>
sealed record WhyScreen(GradeScreen Below) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var telling = new Telling(Below.On.Topic, Below.On.Made.Job.Bench);
        return new Page(
            Words.Of("why.title", ("job", Below.On.Number)),
            world.Who,
            [
                new Block.Text(Words.Of("why.intro")),
                new Block.Gap(),
                .. Below.Grade.Parts.SelectMany(p => new Block[]
                {
                    new Block.Text($"{Words.Of($"aspect.{p.Aspect}")}: {Words.Of($"mark.{p.Word}")}"), new Block.Text(telling.Of(p.Rule), 2), new Block.Gap(),
                }),
            ],
            [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);
}
