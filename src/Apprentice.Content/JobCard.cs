using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;
using Bogus;

namespace Apprentice.Content;

/// <summary>The wording of a job card: who comes, with what, wanting what. It knows the job only, so it cannot tell what the bike is.</summary>
/// <param name="Ticket">Ticket number, four digits, never one that could be read as a year.</param>
/// <param name="Customer">An invented first name.</param>
/// <param name="Arrival">How the customer gets in touch: "Maria is on the phone."</param>
/// <param name="Colour">Colour of the bike.</param>
/// <param name="Origin">Where the bike comes from, in the topic's words.</param>
/// <param name="Says">What the customer says.</param>
/// <param name="Want">What the customer wants, in a word or two.</param>
public sealed record JobCard(string Ticket, string Customer, string Arrival, string Colour, string Origin, string Says, string Want)
{
    const int FirstTicket = 3000;
    const int LastTicket = 9999;

    static readonly string[] Colours =
        ["black", "dark blue", "light blue", "dark green", "grey", "orange", "red", "dark red", "white", "yellow"];

    /// <summary>The card of a job: the same job has the same card.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="job">A job of that topic.</param>
    /// <exception cref="ArgumentException">The topic has no such want or provenance: the job is of another topic.</exception>
    public static JobCard Of(Topic topic, Job job)
    {
        var want = topic.Wants.FirstOrDefault(want => Same(want.Id, job.Request.Want))
            ?? throw new ArgumentException($"{topic.Id} has no want {job.Request.Want}", nameof(job));
        var provenance = topic.Provenances.FirstOrDefault(provenance => Same(provenance.Id, job.Request.Provenance))
            ?? throw new ArgumentException($"{topic.Id} has no provenance {job.Request.Provenance}", nameof(job));
        var faker = new Faker("en") { Random = new Randomizer(Mixed(job.Seed)) };
        var ticket = faker.Random.Int(FirstTicket, LastTicket).ToString();
        var customer = faker.Name.FirstName();
        var colour = faker.Random.ArrayElement(Colours);
        var says = want.Says[faker.Random.Int(0, want.Says.Count - 1)];
        return new JobCard(ticket, customer, $"{customer} {Arriving(job.Request.Offer)}.", colour, provenance.Card, says, want.Name);
    }

    static string Arriving(Channel offer) => offer switch
    {
        Channel.Phone => "is on the phone",
        Channel.Photo => "has sent photos",
        _ => "stands at the counter",
    };

    /// <summary>A seed of 64 bits as 32, neighbours far apart. Source: Steele, Lea, Flood, Fast Splittable Pseudorandom Number Generators, 2014, the mixing of SplitMix64.</summary>
    static int Mixed(ulong seed)
    {
        unchecked
        {
            var mixed = seed + 0x9E3779B97F4A7C15;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return (int)((mixed ^ (mixed >> 31)) >> 32);
        }
    }

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
