using Apprentice.Engine.Learning;
using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>A newcomer's way: from the first start to the grade, in the windows people have.</summary>
public sealed class PracticeTests
{
    const string ToAnswer = "1123A";
    const string ToGrade = ToAnswer + "2921{Enter}";

    [Theory]
    [InlineData("first-start", "")]
    [InlineData("first-job", "1")]
    [InlineData("bench", "1123")]
    [InlineData("answer-which", ToAnswer)]
    [InlineData("answer-sure", ToAnswer + "2")]
    [InlineData("answer-order", ToAnswer + "29")]
    [InlineData("answer-whole", ToAnswer + "292")]
    [InlineData("grade-right", ToAnswer + "292{Enter}")]
    [InlineData("grade-wrong", ToAnswer + "151{Enter}")]
    [InlineData("why", ToAnswer + "151{Enter}W")]
    [InlineData("unused", ToAnswer + "292{Enter}U24")]
    [InlineData("card", "1L")]
    [InlineData("wrong-line", ToAnswer + "292{Enter}Xthe tape was mine")]
    [InlineData("name", ToAnswer + "292{Enter}{Enter}Sam")]
    [InlineData("home", ToAnswer + "292{Enter}{Enter}Sam{Enter}")]
    [InlineData("past", ToAnswer + "292{Enter}{Enter}Sam{Enter}8")]
    [InlineData("pause", "1P")]
    [InlineData("help", "?")]
    [InlineData("leave", "100")]
    public void The_screen_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = new Talk([Corpus.Sample]).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void The_first_job_is_there_after_one_key() => Assert.IsType<BenchScreen>(new Talk([Corpus.Sample]).Keys("1").Screen);

    [Fact]
    public void The_first_job_counts_for_nothing_and_is_the_person_s_all_the_same()
    {
        var history = new Talk([Corpus.Sample]).Keys(ToAnswer + "292{Enter}{Enter}Sam{Enter}").World.History;
        Assert.Equal(0, history.Done("Sam", Corpus.Sample.Id));
        Assert.Single(history.JobsOf("Sam"));
    }

    [Fact]
    public void Everybody_s_first_job_is_with_help()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToAnswer + "292{Enter}{Enter}Sam{Enter}");
        Assert.False(Started(talk.Keys("1")).Guided);
        Assert.True(Started(talk.Keys("0").Keys("92Kim{Enter}1")).Guided);
    }

    static LogEntry.JobStarted Started(Talk talk) => talk.Entries.Select(e => e.What).OfType<LogEntry.JobStarted>().Last();

    [Fact]
    public void The_name_may_be_left_out()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToAnswer + "292{Enter}{Enter}{Enter}");
        Assert.IsType<HomeScreen>(talk.Screen);
        Assert.Empty(talk.World.History.People);
    }

    [Fact]
    public void The_number_pad_alone_leads_to_the_grade() => Assert.IsType<GradeScreen>(new Talk([Corpus.Sample]).Keys("1123829{Down}{Enter}{Enter}").Screen);

    [Fact]
    public void Enter_alone_never_answers_a_question()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToAnswer + "{Enter}{Enter}{Enter}");
        Assert.Empty(Assert.IsType<AnswerScreen>(talk.Screen).Form.Values);
        Assert.Contains("No line is marked yet.", talk.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("No line is marked yet.", talk.Keys("{Down}").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_number_pad_alone_leads_to_a_pause_to_help_and_out()
    {
        Assert.IsType<PauseScreen>(new Talk([Corpus.Sample]).Keys("1003").Screen);
        Assert.IsType<HelpScreen>(new Talk([Corpus.Sample]).Keys("1002").Screen);
        Assert.True(new Talk([Corpus.Sample]).Keys("1004").Ended);
    }

    [Fact]
    public void Backspace_in_an_empty_field_goes_back()
    {
        Assert.IsType<WorkshopNameScreen>(new Talk([Corpus.Sample]).Keys("3A{Backspace}").Screen);
        Assert.IsType<FirstStartScreen>(new Talk([Corpus.Sample]).Keys("3A{Backspace}{Backspace}").Screen);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_line_that_is_too_long_is_never_cut_without_a_word(bool plain)
    {
        var talk = new Talk(plain, [Corpus.Sample]).Keys("3" + new string('a', 41));
        Assert.Contains("Only 40 signs fit", talk.Text, StringComparison.Ordinal);
        Assert.Contains("Only 40 signs fit", Assert.IsType<WorkshopNameScreen>(talk.Keys("{Enter}").Screen).Wrong, StringComparison.Ordinal);
        Assert.IsNotType<WorkshopNameScreen>(talk.Keys("{Enter}").Screen);
        Assert.Equal("", Assert.IsType<WorkshopNameScreen>(new Talk(plain, [Corpus.Sample]).Keys("3" + new string('a', 41) + "{Backspace}").Screen).Wrong);
    }

    [Fact]
    public void The_arrows_open_and_shut_the_card_of_a_check()
    {
        var talk = new Talk([Corpus.Sample]).Keys("1{Right}");
        Assert.IsType<CardScreen>(talk.Screen);
        Assert.IsType<BenchScreen>(talk.Keys("{Left}").Screen);
    }

    [Fact]
    public void Everything_that_was_seen_is_in_the_log()
    {
        var talk = new Talk([Corpus.Sample]).Keys("1123R");
        Assert.Equal([("plate", 0), ("stem-length", 0), ("bar-height", 0), ("bar-height", 1)], talk.Entries.Select(e => e.What).OfType<LogEntry.Looked>().Select(l => (l.Look.Clue, l.Look.Nth)));
    }

    [Fact]
    public void A_job_left_in_the_middle_is_gone_on_with()
    {
        var talk = new Talk([Corpus.Sample]).Keys("1120");
        Assert.Contains("Go on with job 1", talk.Text, StringComparison.Ordinal);
        talk.Keys("1");
        Assert.Equal(["plate", "stem-length"], ((BenchScreen)talk.Screen).On.Looks.Select(l => l.Clue));
    }

    [Fact]
    public void A_digit_on_a_check_that_was_taken_does_not_take_it_again() =>
        Assert.Single(((BenchScreen)new Talk([Corpus.Sample]).Keys("111").Screen).On.Looks);

    [Fact]
    public void The_grade_opened_again_is_the_grade_that_was_given()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToAnswer + "151{Enter}");
        var given = talk.Text.Split('\n');
        Assert.Equal(given[1..], talk.Keys("{Enter}Sam{Enter}81").Text.Split('\n')[1..]);
    }

    [Fact]
    public void A_line_for_the_lead_is_kept_and_shown()
    {
        var talk = new Talk([Corpus.Sample]).Keys(ToAnswer + "292{Enter}Xthe tape was mine{Enter}");
        Assert.Equal("the tape was mine", talk.World.History.Jobs[0].Questions.Single());
        Assert.Contains("You questioned this grade.", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Three_minutes_without_a_key_hide_names_and_marks()
    {
        var talk = new Talk([Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam")).Keys("1{Tick}");
        Assert.DoesNotContain("Sam", talk.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Job", talk.Text.Replace("job is put aside", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.IsType<BenchScreen>(talk.Keys("1").Screen);
    }

    [Fact]
    public void A_letter_in_a_field_is_a_letter() => Assert.Contains("Name:  Pq?_", new Talk([Corpus.Sample]).Keys("3Pq?").Text, StringComparison.Ordinal);

    [Fact]
    public void Force_can_be_chosen_needs_the_word_too_and_is_kept_as_a_safety_error()
    {
        var talk = new Talk([Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"));
        var job = Lever(talk.World);
        var answer = AnswerScreen.Of(job, BenchScreen.Of(job));
        var form = answer.Form.With("which:lever", "older").With("sure:lever", "9");
        Assert.Contains(form.Next?.Options ?? [], o => o.Value == "force");
        form = form.With("do:lever", "force");
        Assert.Equal("force:lever", form.Next?.Key);
        Assert.False(form.Without("do:lever").Forced);
        form = form.With("force:lever", "lever-older");
        var screen = (answer with { Form = form, Cursor = new Cursor(4) }).Press(talk.World, new Input(Press.Enter)).Next;
        var confirm = Assert.IsType<ConfirmScreen>(screen).Show(talk.World);
        Assert.Contains(confirm.Body.OfType<Block.Text>(), t => t.Words.StartsWith("You would use more force", StringComparison.Ordinal));
        var answered = Assert.IsType<LogEntry.Answered>("6733".Aggregate(screen, (s, c) => s.Press(talk.World, Input.Typed(c)).Next).Press(talk.World, new Input(Press.Enter)).Entries.Single());
        Assert.True(answered.Given.Forced);
        Assert.True(answered.Verdict.SafetyError);
        Assert.Contains(new Observed.Pattern(Habit.Forces, Shown: true), answered.Observed);
    }

    [Fact]
    public void A_part_that_can_hurt_needs_a_word_typed()
    {
        var talk = new Talk([Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"));
        var job = Lever(talk.World);
        var answer = AnswerScreen.Of(job, BenchScreen.Of(job));
        Screen screen = answer with { Form = answer.Form.With("which:lever", "older").With("sure:lever", "9").With("do:lever", "=lever-older") };
        Assert.True(screen is AnswerScreen { Form.Next: null });
        screen = ((AnswerScreen)screen with { Cursor = new Cursor(3) }).Press(talk.World, new Input(Press.Enter)).Next;
        Assert.IsType<ConfirmScreen>(screen);
        foreach (var c in "ORDRE") screen = screen.Press(talk.World, Input.Typed(c)).Next;
        screen = screen.Press(talk.World, new Input(Press.Enter)).Next;
        Assert.Equal("That was not ORDER and not 6733. Nothing was ordered yet.", Assert.IsType<ConfirmScreen>(screen).Wrong);
        Assert.IsType<GradeScreen>("6733".Aggregate(screen, (s, c) => s.Press(talk.World, Input.Typed(c)).Next).Press(talk.World, new Input(Press.Enter)).Next);
        foreach (var c in "order") screen = screen.Press(talk.World, Input.Typed(c)).Next;
        var turn = screen.Press(talk.World, new Input(Press.Enter));
        Assert.True(Assert.IsType<LogEntry.Answered>(turn.Entries.Single()).Verdict.SafetyError);
    }

    [Fact]
    public void The_answer_grows_with_the_jobs_done()
    {
        Assert.Equal([1, 1, 1, 2, 2, 2, 2, 2, 2, 3, 3], Enumerable.Range(0, 11).Select(BenchJob.StepOf));
        var job = Lever(new Talk([Corpus.Sample]).World);
        Assert.Equal(["which:lever", "do:lever"], Keys(job));
        Assert.Equal(["which:lever", "do:lever", "settled"], Keys(job with { Step = 2 }));
        Assert.Equal(["which:lever", "do:lever", "settled", "aside", "story"], Keys(job with { Step = 3 }));
    }

    [Fact]
    public void None_comes_first_among_the_checks_set_aside()
    {
        var job = Lever(new Talk([Corpus.Sample]).World) with { Step = 3 };
        Assert.Equal("none", AnswerScreen.Of(job, BenchScreen.Of(job)).Form.Questions.First(q => q.Key is "aside").Options[0].Value);
    }

    static IEnumerable<string> Keys(BenchJob job) => AnswerScreen.Of(job, BenchScreen.Of(job)).Form.Questions.Select(q => q.Key);

    static BenchJob Lever(World world)
    {
        var bench = world.Benches[0];
        var draw = Mix.First(bench.Topic, 1, 3);
        var made = bench.Make(draw.Request with { Want = "lever" }, draw.Seed) ?? throw new InvalidOperationException();
        return new BenchJob(1, bench, made, Guided: false, 1, []);
    }
}
