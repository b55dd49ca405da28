using Apprentice.Content.Topics;

namespace Apprentice.Tests.Content;

public sealed class TopicReaderTests
{
    const string Sample = "Data/topics/older-newer-bar.md";

    [Fact]
    public void The_sample_topic_is_read_without_fault()
    {
        var reading = TopicReader.Read(Sample, File.ReadAllText(Path.Combine(AppContext.BaseDirectory, Sample)));
        Assert.Empty(reading.Faults);
        Assert.NotNull(reading.Topic);
    }
}
