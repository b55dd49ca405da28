using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Choosing the topic of the next job.</summary>
sealed record TopicsScreen : ChoiceScreen
{
    /// <summary>The title of a topic, or its short name when it is not here.</summary>
    public static string Title(World world, string topic) => world.Bench(topic)?.Topic.Title ?? topic;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("topics.title"),
        world.Who,
        [
            new Block.Text(Words.Of("topics.ask")),
            new Block.Gap(),
            new Block.Table(
                [new(""), new(Words.Of("topics.jobs"), Right: true), new("", Drop: true)],
                Rows(world.Practised.Select(b => (string[])
                [
                    b.Topic.Title,
                    world.History.Done(world.Person, b.Topic.Id).ToString(),
                    RealTopics.Note(b),
                ]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Practised.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Start.Job(world, world.Practised[line].Topic.Id);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new HomeScreen());
}
