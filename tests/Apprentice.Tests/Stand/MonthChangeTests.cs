using Apprentice.Content.Changes;
using Apprentice.Content.Topics;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Stand;

/// <summary>A learned running change goes into the workshop's copy, with the month that is told and where it comes from.</summary>
public sealed class MonthChangeTests
{
    const string Row = "| bar      |          | 2016-05 to 2017-07   | bar: newer                    | running-change |";
    const string ToldRow = "| bar      |          | 2016-05 to 2017-07, told 2017-01 | bar: newer        | running-change |";
    const string SourcedRow = "| bar      |          | 2016-05 to 2017-07, told 2017-01, source list-17 | bar: newer | running-change |";
    const string Sources = "\n## Sources\n\n| key | source |\n|---|---|\n| list-17 | Invented parts list of 2017, page 4. |\n";

    // The figures: events, three lines, then the running change of the bar.
    const string ToWindow = Yard.ToRates + "6";
    static readonly DateOnly Day = new(2026, 11, 25);

    [Theory]
    [InlineData("plain", Row, ToWindow)]
    [InlineData("told", ToldRow, ToWindow)]
    [InlineData("done", ToldRow, ToWindow + "1")]
    [InlineData("published", SourcedRow, ToWindow + "1")]
    [InlineData("published-wrong", SourcedRow, ToWindow + "1yes{Enter}")]
    public void The_screen_is_as_it_was_looked_at(string name, string row, string keys)
    {
        var talk = Yard.Talk(Known(), Text(row)).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"month-{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    /// <summary>The mean of the shift by plain quadrature over a tenth of a month, Normal prior of 6 months, is 3.7 months (LearnedRatesTests checks the grid's coverage): all months move by 4.</summary>
    [Theory]
    [InlineData(Row, "")]
    [InlineData(ToldRow, ", told 2017-05")]
    public void The_months_move_together_and_carry_their_mark(string row, string told)
    {
        Assert.Equal(4, Math.Round(Quadrature()));
        var talk = Yard.Talk(Known(), Text(row)).Keys(ToWindow + "1");
        var change = Assert.Single(talk.World.Copy.InForce);
        Assert.Equal(["- " + row, $"+ | bar |  | 2016-09 to 2017-11{told}, source from 24 of the workshop's routine bikes, 2026-11-25 | bar: newer | running-change |"], WorkshopCopy.Difference(change));
        Assert.Equal("24 routine bikes", change.Because);
        var build = talk.World.Topics[0].Packages[0].Builds[1];
        Assert.Equal((Month.Of(2016, 9), Month.Of(2017, 11)), (build.From?.Opens, build.From?.Closes));
        Assert.Equal("from 24 of the workshop's routine bikes, 2026-11-25", build.MonthsFrom);
        Assert.Equal(Corpus.Sample.Packages[1].Builds[1].From, talk.World.Topics[0].Packages[1].Builds[1].From);
    }

    [Fact]
    public void Once_in_force_the_same_bikes_do_not_move_it_again()
    {
        var talk = Yard.Talk(Known(), Text(ToldRow)).Keys(ToWindow + "1" + "61");
        Assert.Contains("In whole months nothing changes.", talk.Text, StringComparison.Ordinal);
        Assert.Single(talk.World.Copy.Changes);
    }

    /// <summary>The same for a rate: 0 of 24 bikes under 1 in 20 with the weight of 20 make 1 in 44, however often the lead lets it count.</summary>
    [Fact]
    public void A_rate_let_count_twice_is_the_same_as_once()
    {
        LogEntry[] known = [.. Enumerable.Range(1, 24).SelectMany(n => Yard.Bike(n, routine: true, Bikes.Truth("older", [])))];
        var talk = Yard.Talk(known).Keys(Yard.ToRates + "11" + "11");
        Assert.Equal(1.0 / 44, talk.World.Topics[0].Events[0].Rates[0], 0.0001);
        Assert.Equal([0.05, 0.05], talk.World.History.Notebook.Approved.Select(a => a.Before));
    }

    [Fact]
    public void Published_months_are_replaced_only_once_the_word_is_typed()
    {
        var talk = Yard.Talk(Known(), Text(SourcedRow)).Keys(ToWindow + "1");
        Assert.IsType<MonthReplaceScreen>(talk.Screen);
        Assert.Contains("Invented parts list of 2017, page 4.", talk.Text, StringComparison.Ordinal);
        talk.Keys("yes{Enter}");
        Assert.Empty(talk.World.Copy.Changes);
        talk.Keys("{Enter}");
        Assert.IsType<RateScreen>(talk.Screen);
        Assert.Empty(talk.World.Copy.Changes);
        talk.Keys("166684{Enter}");
        Assert.Single(talk.World.Copy.Changes);
        Assert.Equal("from 24 of the workshop's routine bikes, 2026-11-25", talk.World.Topics[0].Packages[0].Builds[1].MonthsFrom);
    }

    [Fact]
    public void By_lines_the_word_is_typed_too()
    {
        var talk = Yard.Talk(Known(), Text(SourcedRow), plain: true);
        var said = talk.Say("0", "6", "6", "5", "1", "6", "1", "month");
        Assert.Single(talk.World.Copy.Changes);
        Golden.Same("month-lines", said);
    }

    [Fact]
    public void Taken_back_the_file_is_the_shipped_one_letter_by_letter()
    {
        var talk = Yard.Talk(Known(), Text(ToldRow)).Keys(ToWindow + "1" + "00" + "6" + "2" + "1");
        Assert.Empty(talk.World.Copy.InForce);
        Assert.Equal(Text(ToldRow), talk.World.Copy.Text(Yard.Path));
    }

    [Fact]
    public void A_shipped_update_that_no_longer_fits_is_told_with_file_and_line()
    {
        var changes = ChangesFile.Read("changes.md", ChangesFile.Write(Yard.Talk(Known(), Text(ToldRow)).Keys(ToWindow + "1").World.Copy.Changes)).Changes;
        var update = Text(ToldRow.Replace("told 2017-01", "told 2017-02", StringComparison.Ordinal));
        var updated = new WorkshopCopy(new Dictionary<string, string>(StringComparer.Ordinal) { [Yard.Path] = update }, changes, Corpus.Sources);
        var fault = Assert.Single(updated.Faults);
        Assert.Equal(("changes.md", 5), (fault.File, fault.Line));
        Assert.Contains($"does not fit: {Yard.Path}:", fault.Message, StringComparison.Ordinal);
        Assert.Equal(update, updated.Text(Yard.Path));
    }

    /// <summary>The second of two rows with the same months: rows that share a change move together, rows of another line stay.</summary>
    [Fact]
    public void Rows_that_share_a_change_move_together()
    {
        var text = Yard.With(Row, "| bar | | 2016-05 to 2017-07 | bar: newer | running-change |\n| bar | electric | 2016-05 to 2017-07 | bar: newer | running-change |")
            .Replace("| bar      | electric |                      | bar: newer", "| bar      | electric |                      | bar: older", StringComparison.Ordinal);
        var topic = Read(text);
        var copy = Yard.Copy(text);
        var learned = new Learned(LearnedSort.Window, "bar", "2", 0, 3, 9, 4.2, 1, 7);
        var change = Approval.Of(copy, topic, topic, learned, [learned], Day, "Jo").Change;
        Assert.NotNull(change);
        var builds = copy.With([change]).Topic(topic.Id)?.Packages[0].Builds ?? [];
        Assert.Equal(Month.Of(2016, 5), builds[1].From?.Opens);
        Assert.Equal(Month.Of(2016, 9), builds[2].From?.Opens);
    }

    [Fact]
    public void Months_that_run_into_another_change_are_refused_with_the_line()
    {
        var text = Text("| bar | | 2016-05 to 2017-07 | bar: newer | running-change |\n| bar | | 2017-09 to 2018-03 | bar: older | running-change |");
        var topic = Read(text);
        var learned = new Learned(LearnedSort.Window, "bar", "1", 0, 3, 9, 6, 1, 7);
        var approval = Approval.Of(Yard.Copy(text), topic, topic, learned, [learned], Day, "Jo");
        Assert.Null(approval.Change);
        Assert.Contains("could not be read, line ", approval.Fault, StringComparison.Ordinal);
        Assert.Contains("before the change until 2018-01 is over", approval.Fault, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("judgement", 0)]
    [InlineData("common practice, no source", 0)]
    [InlineData("from 3 of the workshop's routine bikes, 2026-11-25", 0)]
    [InlineData("list-17", 1)]
    public void Only_a_named_source_counts_as_published(string mark, int sources)
    {
        var topic = Read(Text(SourcedRow.Replace("list-17", mark, StringComparison.Ordinal)));
        Assert.Equal(mark, topic.Packages[0].Builds[1].MonthsFrom);
        Assert.Equal(sources, SourceMark.Published(topic, mark).Count);
    }

    static double Quadrature()
    {
        var (total, sum) = (0.0, 0.0);
        for (var shift = -30.0; shift <= 30; shift += 0.1)
        {
            var density = Math.Exp(-0.5 * shift * shift / 36);
            foreach (var (n, isNew) in Enumerable.Range(1, 24).Select(n => (n, IsNew(n))))
            {
                var share = Math.Clamp((n - 1 + 0.5 - shift) / 14, 0.002, 0.998);
                density *= isNew ? share : 1 - share;
            }

            total += density;
            sum += density * shift;
        }

        return sum / total;
    }

    static bool IsNew(int bike) => bike >= 14 || bike is 10 or 12;

    // Bikes of two years, a month each from May 2016, on which the newer bar came some months later than is told.
    static IEnumerable<LogEntry> Known() => Enumerable.Range(1, 24).SelectMany(n =>
    {
        var built = Month.Of(2016, 4).Plus(n);
        return Yard.Bike(n, routine: true, Bikes.Truth(IsNew(n) ? "newer" : "older", [], "standard", built));
    });

    static string Text(string row) => Yard.With(Row, row) + Sources;

    static Topic Read(string text)
    {
        var reading = TopicReader.Read(Yard.Path, text, Corpus.Sources);
        Assert.Empty(reading.Faults);
        return reading.Topic ?? throw new InvalidOperationException();
    }
}
