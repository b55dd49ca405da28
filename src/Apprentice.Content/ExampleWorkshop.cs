using Bogus;

namespace Apprentice.Content;

/// <summary>Names of made-up people, for the example workshop.</summary>
public static class ExampleWorkshop
{
    /// <summary>Different first names; the same for the same seed.</summary>
    /// <param name="seed">Any number.</param>
    /// <param name="count">How many, from 0.</param>
    public static IReadOnlyList<string> Names(int seed, int count)
    {
        var faker = new Faker("en") { Random = new Randomizer(seed) };
        var names = new List<string>();
        while (names.Count < count)
        {
            var name = faker.Name.FirstName();
            if (!names.Contains(name, StringComparer.Ordinal)) names.Add(name);
        }

        return names;
    }
}
