using Apprentice.Engine.Cases;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>The person who leads a workshop, several people at one machine, and jobs by phone.</summary>
public sealed class WorkshopTests
{
    const string SetUp = "3Back yard{Enter}Jo{Enter}";

    [Theory]
    [InlineData("workshop-name", "3")]
    [InlineData("workshop-lead", "3Back yard{Enter}")]
    [InlineData("workshop-topics", SetUp)]
    [InlineData("workshop-home", SetUp + "20")]
    [InlineData("workshop-page", SetUp + "2")]
    [InlineData("workshop-people", SetUp + "21")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = new Talk([Corpus.Sample]).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void The_set_up_is_kept_in_the_log()
    {
        var workshop = new Talk([Corpus.Sample]).Keys(SetUp + "2").World.History.Workshop;
        Assert.Equal(("Back yard", "Jo"), (workshop?.Name, workshop?.Lead));
        Assert.Equal([Corpus.Sample.Id], workshop?.Topics);
    }

    [Fact]
    public void The_set_up_ends_on_the_page_of_the_lead()
    {
        var talk = new Talk([Corpus.Sample]).Keys(SetUp + "2");
        Assert.IsType<WorkshopScreen>(talk.Screen);
        Assert.Contains("0 goes to the start page", talk.Text, StringComparison.Ordinal);
        Assert.IsType<HomeScreen>(talk.Keys("0").Screen);
    }

    [Fact]
    public void A_workshop_without_a_name_or_a_topic_is_told_so()
    {
        Assert.Contains("A name is needed", new Talk([Corpus.Sample]).Keys("3{Enter}").Text, StringComparison.Ordinal);
        Assert.Contains("At least one topic is needed.", new Talk([Corpus.Sample]).Keys(SetUp + "12").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_workshop_that_is_set_up_is_changed_from_the_page_behind_0() =>
        Assert.IsType<WorkshopNameScreen>(new Talk([Corpus.Sample]).Keys(SetUp + "2005").Screen);

    [Fact]
    public void The_start_page_says_what_the_lead_sees() =>
        Assert.Contains("sees the table \"What you can do\"", new Talk([Corpus.Sample]).Keys(SetUp + "20").Text, StringComparison.Ordinal);

    [Fact]
    public void The_lead_sees_lines_but_no_answers()
    {
        var talk = new Talk([Corpus.Sample], new LogEntry.WorkshopSet("Back yard", "Jo", [Corpus.Sample.Id]), new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"));
        talk.Keys("1123A292{Enter}Xthe tape was mine{Enter}0061");
        Assert.Contains("job 1: the tape was mine", talk.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("newer bar", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_that_is_here_already_is_told() =>
        Assert.Contains("That name is already here.", TwoPeople().Keys("3sam{Enter}").Text, StringComparison.Ordinal);

    [Fact]
    public void Two_people_are_asked_who_it_is() => Assert.IsType<WhoScreen>(TwoPeople().Screen);

    [Fact]
    public void Each_person_sees_their_own_jobs_only()
    {
        var talk = TwoPeople().Keys("1").Keys("1123A292{Enter}0");
        Assert.Contains("In short", talk.Keys("81").Text, StringComparison.Ordinal);
        Assert.Contains("No job is done yet", talk.Keys("00").Keys("9").Keys("2").Keys("8").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_example_keeps_nothing() => Assert.Single(new Talk([Corpus.Sample]).Keys("4{Enter}").Entries);

    [Fact]
    public void A_phone_job_ends_its_questions()
    {
        var job = Phone();
        Screen screen = BenchScreen.Of(job);
        var world = new Talk([Corpus.Sample]).World;
        foreach (var line in Enumerable.Range(1, job.OnOffer.Count)) screen = screen.Press(world, Input.Typed((char)('0' + line))).Next;
        var bench = Assert.IsType<BenchScreen>(screen);
        Assert.Equal(2, bench.On.Looks.Count);
        Assert.Equal("No question is left. Give your answer.", bench.Note);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20)])
            Golden.Same($"phone-{size.Columns}x{size.Rows}", string.Join('\n', Layout.Of(bench.Show(world), size).Select(l => l.Text.TrimEnd())) + "\n");
    }

    [Fact]
    public void A_right_not_settled_is_told_so_and_that_asking_does_not_follow()
    {
        var world = new Talk([Corpus.Sample]).World;
        var job = Phone(questions: 1, seed: 19).Looking("grip-length") with { Step = 3 };
        var form = AnswerScreen.Of(job, BenchScreen.Of(job)).Form
            .With("which:bar", "open").With("sure:bar", "6").With("do:grips", "ask").With("settled", "none").With("aside", "none").With("story", "none");
        var grade = Assert.IsType<GradeScreen>(GradeScreen.HandIn(form).Next);
        Assert.Equal("grade.short.order-open", grade.Grade.InShortRemark.Key);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)])
            Golden.Same($"grade-not-settled-{size.Columns}x{size.Rows}", string.Join('\n', Layout.Of(grade.Show(world), size).Select(l => l.Text.TrimEnd())) + "\n");
    }

    [Fact]
    public void A_changed_topic_leaves_the_marks_readable()
    {
        var before = new Talk([Corpus.Sample]).Keys("1123A151{Enter}{Enter}Sam{Enter}");
        var after = new Talk([Corpus.Sample with { Version = "another" }], [.. before.Entries.Skip(1).Select(e => e.What)]);
        Assert.Contains("The topic was changed since", after.Keys("81").Text, StringComparison.Ordinal);
        Assert.Contains("Which one  not yet", after.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_of_a_changed_topic_is_not_gone_on_with()
    {
        var before = new Talk([Corpus.Sample]).Keys("11");
        var after = new Talk([Corpus.Sample with { Version = "another" }], [.. before.Entries.Skip(1).Select(e => e.What)]);
        Assert.Contains("its topic was changed since", after.Text, StringComparison.Ordinal);
        Assert.Empty(Assert.IsType<BenchScreen>(after.Keys("1").Screen).On.Looks);
    }

    [Fact]
    public void No_topics_at_all_is_told() => Assert.Contains("No topics were found", new Talk([]).Keys("1").Text, StringComparison.Ordinal);

    static Talk TwoPeople() => new([Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.PersonAdded("Kim"));

    static BenchJob Phone(int questions = 2, ulong seed = 9)
    {
        var bench = new Engine.Workbench(Corpus.Sample);
        var request = new CaseRequest(bench.Topic.Provenances[0].Id, "grips", bench.Topic.Openings[0].Id, Selection.AsTheyCome, Channel.Phone, Questions: questions);
        return new BenchJob(1, bench, bench.Make(request, seed) ?? throw new InvalidOperationException(), Guided: false, 1, []);
    }
}
