using Apprentice.Content;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Content;

public sealed class JobCardTests
{
    readonly Topic _topic = Sample.Topic(Sample.Bar);

    [Fact]
    public void The_same_job_has_the_same_card()
    {
        for (var seed = 0UL; seed < 50; seed++) Assert.Equal(JobCard.Of(_topic, Job(seed)), JobCard.Of(_topic, Job(seed)));
    }

    [Fact]
    public void What_is_told_and_on_the_bench_does_not_change_the_card()
    {
        var told = new Finding("grip-fixing", Channel.Phone, new Seen.Named("bolted"));
        Assert.Equal(JobCard.Of(_topic, Job(7)), JobCard.Of(_topic, Job(7) with { Told = [told], Bench = ["motor"] }));
    }

    [Fact]
    public void Other_seeds_have_other_cards()
    {
        var cards = Enumerable.Range(0, 200).Select(seed => JobCard.Of(_topic, Job((ulong)seed))).ToArray();
        Assert.True(cards.Select(card => card.Ticket).Distinct().Count() > 190);
        Assert.True(cards.Select(card => card.Customer).Distinct().Count() > 100);
        Assert.Equal(10, cards.Select(card => card.Colour).Distinct().Count());
        Assert.Equal(_topic.Wants[0].Says, cards.Select(card => card.Says).Distinct().OrderBy(says => says[0] == 'I' ? 1 : 0));
    }

    [Fact]
    public void Want_origin_and_channel_stand_on_the_card()
    {
        var card = JobCard.Of(_topic, Job(3) with { Request = Request("lot", "cables", Channel.Phone) });
        Assert.Equal(("New gear cables", "from a lot bought second-hand"), (card.Want, card.Origin));
        Assert.Equal($"{card.Customer} is on the phone.", card.Arrival);
        Assert.Equal("has sent photos.", JobCard.Of(_topic, Job(3) with { Request = Request("lot", "cables", Channel.Photo) }).Arrival[(card.Customer.Length + 1)..]);
        Assert.Equal("stands at the counter.", JobCard.Of(_topic, Job(3)).Arrival[(card.Customer.Length + 1)..]);
    }

    [Theory]
    [InlineData(Sample.Bar)]
    [InlineData(Sample.EveryField)]
    public void No_card_contains_a_finding(string file)
    {
        var topic = Sample.Topic(file);
        string[] findings = [.. topic.Clues.SelectMany(Texts).Where(text => text.Length > 2)];
        for (var seed = 0UL; seed < 200; seed++)
        {
            var job = Job(seed) with { Request = Request(topic.Provenances[0].Id, topic.Wants[(int)(seed % (ulong)topic.Wants.Count)].Id, Channel.Bench) };
            var card = JobCard.Of(topic, job).ToString();
            Assert.DoesNotContain(findings, finding => card.Contains(finding, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void A_job_of_another_topic_is_refused() =>
        Assert.Throws<ArgumentException>(() => JobCard.Of(Sample.Topic(Sample.EveryField), Job(1)));

    static CaseRequest Request(string provenance, string want, Channel offer) => new(provenance, want, null, Selection.AsTheyCome, offer);

    static IEnumerable<string> Texts(Clue clue) => clue.Shows switch
    {
        Shows.Table table => table.Findings.Select(finding => finding.Text),
        Shows.Code code => code.Findings.Select(finding => finding.Text),
        _ => [],
    };

    Job Job(ulong seed) => new(_topic.Id, _topic.Version, seed, Request("own", "grips", Channel.Bench), [], []);
}
