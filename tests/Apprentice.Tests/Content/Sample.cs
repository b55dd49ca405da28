using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Content;

/// <summary>Topic files beside the tests.</summary>
static class Sample
{
    public const string Bar = "older-newer-bar.md";
    public const string EveryField = "every-field.md";

    public static string Text(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", "topics", file)).ReplaceLineEndings("\n");

    /// <summary>The topic of a file; a fault of the file fails the test.</summary>
    public static Topic Topic(string file)
    {
        var reading = TopicReader.Read(file, Text(file));
        Assert.Empty(reading.Faults);
        return Assert.IsType<Topic>(reading.Topic);
    }
}
