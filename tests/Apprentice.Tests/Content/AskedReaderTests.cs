using Apprentice.Content.Topics;

namespace Apprentice.Tests.Content;

/// <summary>The section of bikes that were asked about, and the months of a running change with their mark, as a topic file writes them.</summary>
public sealed class AskedReaderTests
{
    const string Section = """
        ## Bikes we asked about

        | id | name | on the job card | like | figures from |
        |---|---|---|---|---|
        | asked | bike we asked about | it puzzles us | lot | from 12 of the workshop's puzzling bikes, 2026-11-25 |

        | line | share |
        |---|---|
        | standard | rest |
        | basic | 0.3 |
        | electric | 0.1 |

        | event | rate |
        |---|---|
        | bar-to-newer | 1 in 4 |

        ## Parts
        """;

    const string Months = "2016-05 to 2017-07   | bar: newer";

    /// <summary>What is written, what is written instead, the message.</summary>
    public static TheoryData<string, string, string> Faults { get; } = new()
    {
        { "| lot | from 12", "| shop | from 12", "There is no provenance \"shop\": use lot or own." },
        { "| asked | bike", "| lot | bike", "The provenance \"lot\" stands twice: also on line 15." },
        { "| asked | bike", "| Asked | bike", "\"Asked\" is no short name of a provenance: use lower-case letters, digits and hyphens." },
        { "from 12 of the workshop's puzzling bikes, 2026-11-25 |", "hearsay |", "There is no source \"hearsay\": use \"judgement\", or \"common practice, no source\"." },
        { "| electric | 0.1 |", "| electrics | 0.1 |", "There is no line \"electrics\": use electric, basic or standard." },
        { "| electric | 0.1 |", "| basic | 0.1 |", "The line \"basic\" stands twice." },
        { "| bar-to-newer | 1 in 4 |", "| bar-to-new | 1 in 4 |", "There is no event \"bar-to-new\": use bar-to-newer, bar-to-older or stem-to-newer." },
        { "| bar-to-newer | 1 in 4 |", "| bar-to-newer | 1 |", "\"bar-to-newer\" always happens: a rate is less than 1." },
        { "| event | rate |", "| what | rate |", "This table is read by nobody: the tables of bikes that were asked about have a column like, line or event." },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_of_the_section_is_told_with_its_line(string was, string now, string message)
    {
        var faulty = Section.Replace(was, now, StringComparison.Ordinal);
        Assert.NotEqual(Section, faulty);
        var text = Sample.Text(Sample.Bar).Replace("## Parts", faulty, StringComparison.Ordinal);
        var line = text[..text.IndexOf(now, StringComparison.Ordinal)].Count(c => c == '\n') + 1;
        Assert.Contains((line, message), TopicReader.Read(Sample.Bar, text).Faults.Select(f => (f.Line, f.Message)));
    }

    [Fact]
    public void The_group_has_its_own_figures_and_the_others_of_the_one_it_is_like()
    {
        var topic = TopicReader.Read(Sample.Bar, Sample.Text(Sample.Bar).Replace("## Parts", Section, StringComparison.Ordinal)).Topic ?? throw new InvalidDataException();
        Assert.Equal(["own", "lot", "asked"], topic.Provenances.Select(p => p.Id));
        Assert.Equal([0.6, 0.3, 0.1], topic.Lines.Select(l => Math.Round(l.Shares[2], 12)));
        Assert.Equal([0.25, 0.125], topic.Events.Take(2).Select(e => e.Rates[2]));
        Assert.All(topic.Years, y => Assert.Equal(y.Shares[1], y.Shares[2]));
    }

    [Theory]
    [InlineData("2016-05 to 2017-07, told 2017-01, source judgement | bar: newer", "judgement")]
    [InlineData("2016-05 to 2017-07, source common practice, no source | bar: newer", "common practice, no source")]
    [InlineData("2016-05 to 2017-07, source from 9 of the workshop's routine bikes, 2026-11-25 | bar: newer", "from 9 of the workshop's routine bikes, 2026-11-25")]
    [InlineData(Months, "")]
    public void Months_say_where_they_come_from(string now, string mark)
    {
        var reading = TopicReader.Read(Sample.Bar, Sample.Text(Sample.Bar).Replace(Months, now, StringComparison.Ordinal));
        Assert.Empty(reading.Faults);
        Assert.Equal(mark, reading.Topic?.Packages[0].Builds[1].MonthsFrom);
    }

    [Theory]
    [InlineData("2016-05 to 2017-07, source hearsay | bar: newer", "There is no source \"hearsay\": use \"judgement\", or \"common practice, no source\".")]
    [InlineData("2016-05 to 2017-07, source from 0 of the workshop's routine bikes | bar: newer", "There is no source \"from 0 of the workshop's routine bikes\": use \"judgement\", or \"common practice, no source\".")]
    [InlineData("2016-05 to 2017-07, said 2017-01 | bar: newer", "\"said 2017-01\" is not understood: write 2013-11 to 2015-01, told 2014-06, source judgement.")]
    public void A_fault_of_the_months_is_told_with_its_line(string now, string message) => Faulty.IsTold(Sample.Bar, Months, now, message, null);
}
