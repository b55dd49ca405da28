using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>From a grade to the lessons: first the paragraphs that explain its marks, then every check of the topic.</summary>
/// <param name="Below">The grade.</param>
sealed record CardsScreen(GradeScreen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override int? Job => Below.Job;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("card.title"),
        world.Who,
        [
            new Block.Text(Words.Of("card.list")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new("")], Rows([.. Places(world).Select(p => (string[])[p.Why, p.What]), .. Below.On.Topic.Clues.Select(c => (string[])[c.Name, ""])])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Places(world).Count + Below.On.Topic.Clues.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var places = Places(world);
        return line < places.Count
            ? LessonScreen.Open(world, places[line].Lesson, places[line].Section, this)
            : CardScreen.Open(world, this, Below.On.Topic, Below.On.Topic.Clues[line - places.Count].Id);
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<GradeLesson> Places(World world) => GradeLesson.Of(world, Below);
}
