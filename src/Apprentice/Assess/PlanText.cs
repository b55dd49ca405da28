using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Assess;

/// <summary>A test plan in words: the same sentences on the screen, in print and for scripts.</summary>
static class PlanText
{
    const int Twenty = 20;
    const int LongestBy = 40;

    /// <summary>Jobs: "12, then 4 more at a time while it is close, at most 36".</summary>
    public static string Jobs(TestPlan plan) => Words.Of("testplan.jobs-said", ("first", plan.Rule.First), ("most", plan.Rule.Most));

    /// <summary>Time: minutes a job, least and most, in sittings.</summary>
    public static string Time(TestPlan plan) => Words.Of(
        "testplan.time-said", ("minutes", Spoken.Minutes(plan.MinutesPerJob)), ("least", Spoken.Minutes(plan.Rule.First * plan.MinutesPerJob)), ("most", Spoken.Minutes(plan.Rule.Most * plan.MinutesPerJob)),
        ("longest", Spoken.Minutes(TestPlan.LongestSitting)), ("sittings", plan.Sittings(plan.Rule.Most)));

    /// <summary>The mix of the first jobs by what is told.</summary>
    public static string Mix(TestPlan plan) => Words.Of(
        "testplan.mix-said", ("plain", Told(plan, Selection.AsTheyCome)), ("changed", Told(plan, Selection.SuggestsChange)), ("open", Told(plan, Selection.LeavesTwoOpen)), ("safety", plan.SafetyJobs));

    /// <summary>What is to be expected of such jobs; nothing of it steers which case comes.</summary>
    public static string Expected(PlanForecast forecast) => Words.Of("testplan.expected", ("settled", Spoken.AboutTenths(forecast.Settled)), ("odd", Spoken.AboutTenths(forecast.Odd)));

    /// <summary>What the expected shares mean.</summary>
    public static string ExpectedOf(PlanForecast forecast) => Words.Of("testplan.expected-of", ("cases", forecast.Cases));

    /// <summary>How the first jobs are seen.</summary>
    public static string Seen(TestPlan plan) => Words.Of("testplan.seen-said", ("phone", plan.SeenBy(Channel.Phone)), ("photo", plan.SeenBy(Channel.Photo)), ("bench", plan.SeenBy(Channel.Bench)));

    /// <summary>The table of the rule.</summary>
    public static string Pass(TestPlan plan) => Words.Of("testplan.pass-said", ("table", string.Join(", ", plan.Rule.Checks.Select(c => Words.Of("testplan.pass-of", ("allowed", c.PassAt), ("jobs", c.Jobs))))));

    /// <summary>When it is "not yet".</summary>
    public static string NotYet(TestPlan plan) => Words.Of("testplan.not-yet", ("table", string.Join(", ", plan.Rule.Checks.Select(c => Words.Of("testplan.pass-of", ("allowed", c.NotYetAt), ("jobs", c.Jobs))))));

    /// <summary>Who set the line, what they say, and whether the table fits it.</summary>
    public static string Line(TestPlan plan, PassLine? line)
    {
        if (line is null) return Words.Of("testplan.line-none");
        var at = (line.Line * Twenty).ToString("0.#");
        var by = line.SetByOnePerson
            ? Words.Of("testplan.line-one", ("judge", line.Judges[0]), ("at", at))
            : Words.Of("testplan.line-many", ("n", line.Judges.Count), ("at", at), ("spread", ((line.Spread ?? 0) * Twenty).ToString("0.#")));
        return $"{by} {Words.Of(line.Fits(plan.Rule) ? "testplan.line-fits" : "testplan.line-not", ("table", (PassLine.LineOfRule(plan.Rule) * Twenty).ToString("0.#")))}";
    }

    /// <summary>Who passes how often, and how many jobs they sit: of 20 in the long run, of 100 papers, jobs.</summary>
    public static IReadOnlyList<(string Of20, string Passes, string Jobs)> Tells(TestPlan plan) =>
        [.. plan.Tells.Select(t => (Words.Of("testplan.right-on", ("n", (t.Share * Twenty).ToString("0"))), Of100(t.Prospect.Passed), t.Prospect.Jobs.ToString("0")))];

    /// <summary>What the plan cannot tell apart: the line and the next lower step of 1 of 20.</summary>
    public static string Apart(TestPlan plan)
    {
        var line = Math.Clamp((int)Math.Round(PassLine.LineOfRule(plan.Rule) * Twenty), 1, Twenty);
        return Words.Of("testplan.apart", ("line", line), ("below", line - 1), ("often", Of100(plan.Rule.For((double)line / Twenty).Passed)), ("less", Of100(plan.Rule.For((line - 1.0) / Twenty).Passed)));
    }

    /// <summary>A topic with its state.</summary>
    public static string Topic(Topic? topic, string id) => topic is null
        ? Words.Of("testplan.topic-gone", ("topic", id))
        : Words.Of(topic.State == TopicState.Draft ? "testplan.topic-draft" : "testplan.topic-checked", ("topic", topic.Title), ("by", Short(topic.CheckedBy)));

    // By whom and when; of a long sentence the day alone, which stands at its end. The print has all of it.
    static string Short(string by) => by.Length <= LongestBy ? by : by[(by.LastIndexOf(", ", StringComparison.Ordinal) + 2)..];

    static int Told(TestPlan plan, Selection select) => Enumerable.Range(1, plan.Rule.First).Count(p => plan.FamilyAt(p).Select == select);

    // Never 100 of 100, never 0: no paper is sure.
    static string Of100(double share) => share switch
    {
        >= 0.995 => Words.Of("testplan.above-99"),
        < 0.005 => Words.Of("testplan.below-1"),
        _ => Words.Of("testplan.of-100", ("n", (share * 100).ToString("0"))),
    };
}
