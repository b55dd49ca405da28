using Apprentice.Assess;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Commands;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Marks;

/// <summary>A questioned job on its way to a second person and back.</summary>
public sealed class AppealTests
{
    const string Text = "the number on the plate could not be read";

    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];
    static readonly AppealPapers Papers = new(Sat.Passed, "Sam", "Jo", Text, Sat.Result(Sat.Passed).Jobs[4]);

    [Theory]
    [InlineData("appeals")]
    [InlineData("appeal-one")]
    [InlineData("appeal-read")]
    [InlineData("appeal-decide")]
    [InlineData("appeal-why")]
    public void The_page_is_as_it_was_looked_at(string name)
    {
        var home = new HomeScreen();
        var read = new AppealReadScreen(Papers, "code", home);
        var talk = name switch
        {
            "appeals" => Questioned().At(new AppealListScreen(home)),
            "appeal-one" => Questioned().At(new AppealListScreen(home)).Keys("1"),
            "appeal-read" => Sat.Talk().At(read),
            "appeal-decide" => Sat.Talk().At(read).Keys("1"),
            _ => Sat.Talk().At(read).Keys("11Lee{Enter}"),
        };
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void A_job_that_was_printed_can_still_be_decided()
    {
        var talk = Sat.Talk().At(new AppealReadScreen(Papers, "code", new HomeScreen())).Keys("DA");
        Assert.Single(talk.Sheets);
        Assert.Contains("What do you decide?", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_candidate_questions_a_job_from_the_result()
    {
        var talk = Sat.Talk().At(new ResultScreen(Sat.Passed, IsLead: false, new HomeScreen())).Keys("X5{Enter}").Keys(Text + "{Enter}");
        Assert.Equal(new LogEntry.PaperQuestioned(Sat.Passed, 5, Text), talk.Entries[^1].What);
        Assert.Contains("Job 5 is questioned", talk.TextAt(new PageSize(120, 40)), StringComparison.Ordinal);
        Assert.Contains("questioned already", talk.Keys("X5{Enter}").Keys("again{Enter}").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void After_fourteen_days_no_job_can_be_questioned()
    {
        var log = Sat.Log();
        log.Add(new Logged(log[^1].At.AddDays(14).AddMinutes(2), new LogEntry.SatDown("Sam")));
        var talk = new Talk(log, [Sat.Topic]).At(new AppealAskScreen(Sat.Passed, 5, new HomeScreen())).Keys("why{Enter}");
        Assert.Contains("14 days", talk.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(talk.Entries, e => e.What is LogEntry.PaperQuestioned);
    }

    [Fact]
    public void A_questioned_job_opens_by_its_own_code_alone_and_shows_everything()
    {
        var (file, code) = AppealFile.Sealed(Papers);
        Assert.True(AppealFile.Is(file));
        Assert.Equivalent(Papers, AppealFile.Open(file, code.ToLowerInvariant()), strict: true);
        Assert.Contains("code", Assert.Throws<SealException>(() => AppealFile.Open(file, "2345-6789-ABCD")).Message, StringComparison.Ordinal);
        foreach (var at in new[] { 25, file.Length / 2, file.Length - 4 })
        {
            var changed = file.ToArray();
            changed[at] ^= 1;
            Assert.Throws<SealException>(() => AppealFile.Open(changed, code));
        }

        var text = Sat.Talk().At(new AppealReadScreen(Papers, code, new HomeScreen())).TextAt(new PageSize(120, 200));
        foreach (var part in new[] { Text, "It was", "You said", "told first", "not looked at", "The figures behind the mark", "all checks together say", "apprentice identify older-newer-bar" }) Assert.Contains(part, text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_decision_comes_back_under_the_same_code()
    {
        var (_, code) = AppealFile.Sealed(Papers);
        var verdict = new AppealVerdict(Sat.Passed, 5, "Lee", AppealDecision.CountedSound, "the drawing was unclear");
        Assert.Equal(verdict, AppealFile.OpenDecision(AppealFile.Sealed(verdict, code), code));
        Assert.Throws<SealException>(() => AppealFile.OpenDecision(AppealFile.Sealed(verdict, code), "2345-6789-ABCD"));
    }

    // The whole way: the lead's file, another machine without any log of it, the decision's file, the lead's log.
    [Fact]
    public void It_goes_to_another_machine_and_back()
    {
        using var folder = new TempFolder();
        var lead = Questioned(folder.Path).At(new AppealListScreen(new HomeScreen())).Keys("12");
        var shown = Flat(lead.TextAt(new PageSize(120, 40)));
        var file = Directory.GetFiles(folder.Path, "*.appeal").Single();
        var code = shown.Split("shown once: ")[1].Split(' ')[0];
        var second = new Talk([new(Sat.Nine, new LogEntry.Began(Talk.Luck))], [Sat.Topic], papers: folder.Path).At(AppealDesk.Of(PaperFolder.Read(file), new HomeScreen()) ?? throw new InvalidOperationException("no appeal")).Keys(code + "{Enter}");
        Assert.IsType<AppealReadScreen>(second.Screen);
        Assert.Contains("not the lead", second.Keys("11Jo{Enter}").Text, StringComparison.Ordinal);
        second.Keys("Lee{Enter}the drawing was unclear{Enter}");
        Assert.DoesNotContain(second.Entries, e => e.What is LogEntry.AppealDecided);
        var decision = Directory.GetFiles(folder.Path, "*.decision").Single();
        lead.Keys("1").Keys("3").Keys(decision + "{Enter}").Keys(code + "{Enter}");
        Assert.Equal(new LogEntry.AppealDecided(Sat.Passed, 5, "Lee", AppealDecision.CountedSound, "the drawing was unclear"), lead.Entries[^1].What);
        Assert.Equal(19, lead.World.History.Assessments.Result(Sat.Passed)?.Sound);
        Assert.Contains("met by Kim", Flat(lead.TextAt(new PageSize(120, 40))), StringComparison.Ordinal);
        lead.Keys("3").Keys(decision + "{Enter}").Keys(code + "{Enter}");
        Assert.Contains("decided before", Flat(lead.Text), StringComparison.Ordinal);
    }

    static Talk Questioned(string? papers = null) => new(Sat.With(Sat.Log(), new LogEntry.PaperQuestioned(Sat.Passed, 5, Text)), [Sat.Topic], papers: papers);

    static string Flat(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
