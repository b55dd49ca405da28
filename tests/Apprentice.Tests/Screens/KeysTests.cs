using System.Text.RegularExpressions;
using Apprentice.Content;
using Apprentice.Screens;
using Apprentice.Screens.Assess;

namespace Apprentice.Tests.Screens;

/// <summary>Keys that stand on every page mean one thing everywhere, and help is there on every page.</summary>
public sealed partial class KeysTests
{
    // Words of the bottom line, in files of words under "key" or "keys": a letter, perhaps its digit, then what it does.
    static IEnumerable<(string Letter, string Does)> All => Words.Keys.Where(k => Bottom().IsMatch(k))
        .Select(k => Letter().Match(Words.Raw(k))).Where(m => m.Success).Select(m => (m.Groups["letter"].Value, m.Groups["does"].Value));

    [Theory]
    [InlineData("P", "pause")]
    [InlineData("Q", "leave")]
    [InlineData("D", "print")]
    [InlineData("A", "answer", "decide")]
    [InlineData("W", "why", "all jobs, why", "in words", "picture")]
    [InlineData("X", "this is wrong", "question a job", "question this job")]
    public void A_letter_means_one_thing_everywhere(string letter, params string[] does) =>
        Assert.Equal(does.Order(StringComparer.Ordinal), All.Where(k => k.Letter == letter).Select(k => k.Does).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));

    [Fact]
    public void P_pauses_on_the_plan_too_and_D_prints_it()
    {
        var talk = Marks.Sat.Talk();
        talk.At(new PlanScreen(PlanDraft.Of(talk.World, Marks.Sat.Permission, [Marks.Sat.Topic.Id]), new HomeScreen()));
        Assert.Contains("apprentice-plan", Assert.Single(talk.Keys("D").Sheets).Name, StringComparison.Ordinal);
        Assert.IsType<PauseScreen>(talk.Keys("P").Screen);
    }

    [Fact]
    public void F1_helps_in_a_field_and_goes_back_to_what_was_typed()
    {
        var talk = new Talk([Corpus.Sample]).At(new WorkshopNameScreen(new HomeScreen())).Keys("Yar{Help}");
        Assert.Contains("Say what the workshop is called", talk.Text, StringComparison.Ordinal);
        Assert.Contains("Name:  Yar_", talk.Keys("{Help}{Enter}").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void No_page_of_the_lead_has_the_help_of_those_who_practise()
    {
        var pages = typeof(WorkshopScreen).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Screen)) && !t.IsAbstract && t.Namespace == typeof(DeskScreen).Namespace)
            .Where(t => t.GetProperty(nameof(Screen.HelpParts))?.DeclaringType == typeof(Screen) && !LeadHelp.Pages.ContainsKey(t));
        Assert.Equal(OfTheCandidate.Order(StringComparer.Ordinal), pages.Select(t => t.Name).Order(StringComparer.Ordinal));
    }

    static readonly string[] OfTheCandidate =
        ["SitAgainScreen", "SitBreakScreen", "SitEndScreen", "SitHandInScreen", "SitListScreen", "SitMenuScreen", "SitNoScreen", "SitRealScreen", "SitResumeScreen", "SitRulesScreen"];

    [GeneratedRegex(@"[.-]keys?(-[a-z-]+)?$|^key\.", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Bottom();

    [GeneratedRegex(@"^(?<letter>[A-Z])( [0-9])? (?<does>[a-z].*)$", RegexOptions.NonBacktracking | RegexOptions.ExplicitCapture)]
    private static partial Regex Letter();
}
