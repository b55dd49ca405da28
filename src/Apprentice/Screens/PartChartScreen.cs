using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>What each check said of one of several parts that were asked; one key goes on to the next part.</summary>
/// <param name="Below">The grade.</param>
/// <param name="Part">Index of the part.</param>
sealed record PartChartScreen(GradeScreen Below, int Part) : Screen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    int Parts => Below.Grade.Reasoning.Parts.Count;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("parts.title", ("job", Below.On.Number)),
        world.Who,
        [
            new Block.Text(Words.Of("parts.which", ("n", Part + 1), ("of", Parts))),
            new Block.Gap(),
            GradeChart.Of(Below.On, Below.Grade, Below.Grade.Reasoning.Parts[Part], new TopicWords(Below.On.Topic)),
        ],
        [Words.Of("grade.keys-chart"), Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(
        key.Letter is 'C' or '6' ? this with { Part = (Part + 1) % Parts }
        : key.IsBack || key.Press == Screens.Press.Enter ? Below
        : (Screen)this);
}
