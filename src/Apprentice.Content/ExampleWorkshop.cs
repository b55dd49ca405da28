using Bogus;

namespace Apprentice.Content;

/// <summary>A workshop of made-up people, to show what a lead sees.</summary>
public static class ExampleWorkshop
{
    const int Size = 6;

    /// <summary>Made-up people; the same for the same seed.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="topics">Titles of the topics that they practise.</param>
    public static IReadOnlyList<ExamplePerson> Of(int seed, IReadOnlyList<string> topics)
    {
        var faker = new Faker("en") { Random = new Randomizer(seed) };
        var people = new List<ExamplePerson>();
        while (people.Count < Size)
        {
            var name = faker.Name.FirstName();
            if (people.Any(p => string.Equals(p.Name, name, StringComparison.Ordinal))) continue;
            var jobs = faker.Random.Int(4, 40);
            var right = (int)Math.Round(jobs * faker.Random.Double(0.5, 0.95));
            people.Add(new ExamplePerson(name, jobs, right, [.. topics.Take(faker.Random.Int(1, Math.Max(1, topics.Count)))]));
        }
        return people;
    }
}

/// <summary>A line of the lead's table.</summary>
/// <param name="Name">Name.</param>
/// <param name="Jobs">Jobs done.</param>
/// <param name="Right">Jobs right.</param>
/// <param name="Topics">Titles of topics practised.</param>
public sealed record ExamplePerson(string Name, int Jobs, int Right, IReadOnlyList<string> Topics);
