using Apprentice.Engine.Cases;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Learning;

public sealed class MixTests
{
    const long Luck = 20261125;
    const int Jobs = 2000;

    [Fact]
    public void Six_bikes_of_ten_are_ordinary() =>
        Assert.InRange(Draws().Count(d => d.Request.Select == Selection.AsTheyCome) / (double)Jobs, 0.56, 0.64);

    [Fact]
    public void The_three_sorts_of_odd_bikes_come_alike()
    {
        var odd = Draws().Where(d => d.Request.Select != Selection.AsTheyCome).GroupBy(d => d.Request.Select).Select(g => (double)g.Count()).ToList();
        Assert.Equal(3, odd.Count);
        Assert.All(odd, n => Assert.InRange(n / odd.Sum(), 0.27, 0.40));
    }

    [Fact]
    public void One_job_of_five_comes_by_phone_with_three_questions()
    {
        var phone = Draws().Where(d => d.Request.Offer == Channel.Phone).ToList();
        Assert.InRange(phone.Count / (double)Jobs, 0.16, 0.24);
        Assert.All(phone, d => Assert.Equal(3, d.Request.Questions));
    }

    [Fact]
    public void Odd_bikes_come_from_everywhere() =>
        Assert.Equal(
            Corpus.Topic("rim-size").Provenances.Select(p => p.Id).Order(StringComparer.Ordinal),
            Draws().Where(d => d.Request.Select != Selection.AsTheyCome).Select(d => d.Request.Provenance).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    [Fact]
    public void The_same_luck_gives_the_same_jobs() =>
        Assert.Equal(Draws().Select(d => d.Seed), Draws().Select(d => d.Seed));

    [Fact]
    public void Seeds_do_not_repeat() => Assert.Equal(Jobs, Draws().Select(d => d.Seed).Distinct().Count());

    [Fact]
    public void The_first_job_is_an_ordinary_bike_on_the_stand()
    {
        var first = Mix.First(Corpus.Topic("rim-size"), 1, Luck);
        Assert.Equal(Selection.AsTheyCome, first.Request.Select);
        Assert.Equal(Channel.Bench, first.Request.Offer);
    }

    static List<Draw> Draws()
    {
        var topic = Corpus.Topic("rim-size");
        return [.. Enumerable.Range(1, Jobs).Select(n => Mix.Of(topic, n, Luck))];
    }
}
