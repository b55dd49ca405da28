using System.Globalization;
using Apprentice.Content.Lessons;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Trade;

/// <summary>A topic that says that it is checked says against what, and names every size that is not.</summary>
public sealed class TopicStateTests
{
    const int LeastPublished = 20;

    /// <summary>Short names of the checked topics.</summary>
    public static TheoryData<string> Checked() => [.. Corpus.Shipped.Where(id => Corpus.Topic(id).State != TopicState.Draft)];

    [Fact]
    public void Topics_of_invented_makers_are_drafts() =>
        Assert.Equal(["folding-bar", "serials"], Corpus.Shipped.Where(id => Corpus.Topic(id).State == TopicState.Draft));

    [Theory]
    [MemberData(nameof(Checked))]
    public void What_is_not_checked_is_named(string id)
    {
        var topic = Corpus.Topic(id);
        var cut = topic.CheckedBy.Split("; not checked: ");
        Assert.Equal(2, cut.Length);
        foreach (var size in topic.Dimensions)
        {
            for (var kind = 0; kind < size.Nominals.Count; kind++)
            {
                if (size.Nominals[kind] is not { } mm || !IsUnchecked(topic, size.SourceOf(kind))) continue;
                var figure = mm.ToString("0.###", CultureInfo.InvariantCulture);
                Assert.True(cut[1].Split(' ', ',').Contains(figure), $"{id}: {size.Id} {figure} has no source, and the state does not name it");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Checked))]
    public void Its_published_rows_are_mapped(string id)
    {
        var rows = Facts.Map.Where(m => m.Topic == id).Select(Facts.Of).Distinct().Count();
        Assert.True(rows >= LeastPublished, $"{rows}");
    }

    [Fact]
    public void A_source_of_one_kind_stands_before_that_of_the_size()
    {
        var brakes = Corpus.Topic("brakes");
        Assert.Equal("FLATMEM", brakes.SourceOf("fixing", "flat"));
        Assert.Equal("MOUNT, STUDS, REACH", brakes.SourceOf("fixing", "post"));
        Assert.Null(brakes.SourceOf("fixing", "none-such"));
        Assert.Null(brakes.SourceOf("none-such", "post"));
    }

    static bool IsUnchecked(Topic topic, string mark) =>
        mark.Split(", ").All(key => key is "judgement" or "memory" || topic.Sources.Any(s => s.Key == key && FigureCount.IsMemory(s)));
}
