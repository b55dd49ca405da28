using Apprentice.Content.Changes;
using Apprentice.Content.Topics;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Stand;

/// <summary>A workshop with the sample topic, at the screens.</summary>
static class Yard
{
    /// <summary>From the start page to the lead's page of real bikes: 0 more, 6 the workshop's page; there the line of real bikes and inbox.</summary>
    public const string ToLead = "066";

    /// <summary>To the learned figures of the only topic.</summary>
    public const string ToRates = ToLead + "51";

    /// <summary>Path of the topic.</summary>
    public static string Path { get; } = WorkshopCopy.PathOf(Corpus.Sample.Id);

    /// <summary>Text of the topic.</summary>
    public static string Text { get; } = File.ReadAllText(System.IO.Path.Combine(Corpus.Root, "tests/Apprentice.Tests/Data/topics/older-newer-bar.md"));

    /// <summary>The shipped topic, or another text of it, and its lesson.</summary>
    public static WorkshopCopy Copy(string? text = null) => new(
        new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [Path] = text ?? Text,
            ["lessons/older-newer-bar/overview.md"] = "# Older or newer bar\n\n## Card\n\n- Look for: the bar.\n\nOn the bike, the part decides. Ask if it disagrees.\n",
        },
        [],
        Corpus.Sources);

    /// <summary>The screens.</summary>
    /// <param name="before">What was done before.</param>
    /// <param name="text">Text of the topic, or null for the shipped one.</param>
    /// <param name="plain">True for lines.</param>
    public static Talk Talk(IEnumerable<LogEntry> before, string? text = null, bool plain = false)
    {
        var copy = Copy(text);
        var topic = copy.Topic(Corpus.Sample.Id) ?? throw new InvalidDataException(string.Join('\n', TopicReader.Read(Path, text ?? Text, Corpus.Sources).Faults));
        return new Talk(plain, [topic], copy.Library([topic]), [new LogEntry.WorkshopSet("Back yard", "Jo", [topic.Id]), new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"), .. before], copy);
    }

    /// <summary>A bike whose end is known.</summary>
    public static LogEntry[] Bike(int number, bool routine, BikeTruth truth, string from = "own") =>
    [
        new LogEntry.BikePut(number, "Sam", $"bike {number}", routine ? 10 * number : null, routine, Channel.Bench, 3),
        new LogEntry.BikeAsked(number, Corpus.Sample.Id, Corpus.Sample.Version, "grips", from),
        new LogEntry.BikeConfirmed(number, Corpus.Sample.Id, Corpus.Sample.Version, truth, []),
    ];

    /// <summary>The sample with a text in place of another.</summary>
    public static string With(string was, string now) => Text.Contains(was, StringComparison.Ordinal) ? Text.Replace(was, now, StringComparison.Ordinal) : throw new InvalidOperationException(was);
}
