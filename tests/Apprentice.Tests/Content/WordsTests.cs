using System.Text.RegularExpressions;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Screens;

namespace Apprentice.Tests.Content;

/// <summary>Holds all words to what may stand on a learner's screen.</summary>
public sealed partial class WordsTests
{
    static readonly string[] CodeWords =
    [
        "belief", "likelihood", "prior", "posterior", "deciban", "entropy", "regret", "probability", "calibration", "mastery", "misconception", "provenance",
        "conflict", "deciding set", "shapley", "bayes",
    ];

    [Fact]
    public void No_text_holds_a_word_of_the_code() =>
        Assert.All(Words.Keys, key => Assert.DoesNotContain(CodeWords, w => HasWord(Words.Raw(key), w)));

    [Fact]
    public void No_text_shouts_or_counts_in_percent() => Assert.All(Words.Keys, key => Assert.DoesNotMatch("[!%]", Words.Raw(key)));

    [Fact]
    public void No_text_holds_a_certainty_with_decimals() => Assert.All(Words.Keys, key => Assert.DoesNotMatch(@"\b0[.,][0-9]", Words.Raw(key)));

    [Fact]
    public void No_remark_of_a_grade_has_more_than_twenty_words() =>
        Assert.All(Words.Keys.Where(IsRemark), key => Assert.InRange(Words.Raw(key).Split(' ').Length, 1, 20));

    [Fact]
    public void The_forbidden_words_would_be_found() =>
        Assert.Contains(CodeWords, w => HasWord("Your beliefs are strong", w));

    [Fact]
    public void Every_key_in_the_source_has_its_words()
    {
        var subjects = Words.Keys.Select(k => k.Split('.')[0]).ToHashSet(StringComparer.Ordinal);
        var missing = Sources().SelectMany(s => Literal().Matches(s).Select(m => m.Groups["key"].Value)).Distinct(StringComparer.Ordinal)
            .Where(k => subjects.Contains(k.Split('.')[0]) && !IsFile(k) && !Words.Keys.Contains(k, StringComparer.Ordinal));
        Assert.Empty(missing);
    }

    [Fact]
    public void Every_text_is_used()
    {
        var source = string.Join('\n', Sources());
        var unused = Words.Keys.Where(k => !source.Contains($"\"{k}\"", StringComparison.Ordinal) && !Built(k)).Order(StringComparer.Ordinal);
        Assert.Empty(unused);
    }

    [Fact]
    public void Every_word_of_the_grade_is_there()
    {
        Assert.All(Enum.GetNames<Aspect>(), a => Words.Raw($"aspect.{a}"));
        Assert.All(Enum.GetNames<MarkWord>(), m => Words.Raw($"mark.{m}"));
        Assert.All(Enum.GetNames<InShort>(), s => Words.Raw($"short.{s}"));
    }

    [Fact]
    public void An_unknown_key_is_refused() => Assert.Throws<ArgumentException>(() => Words.Of("no.such"));

    [Fact]
    public void A_name_without_a_value_is_refused() => Assert.Throws<ArgumentException>(() => Words.Of("home.go-on"));

    static bool IsRemark(string key) =>
        key.StartsWith("grade.", StringComparison.Ordinal) && key.Count(c => c == '.') == 2 && !key.StartsWith("grade.rule.", StringComparison.Ordinal);

    static bool HasWord(string text, string word) => Regex.IsMatch(text, $@"\b{word}", RegexOptions.IgnoreCase | RegexOptions.NonBacktracking);

    /// <summary>Keys that the source puts together from an enumeration or a list of its own.</summary>
    static bool Built(string key) => key.Split('.')[0] is "aspect" or "mark" or "short" or "help" or "first" or "pause" or "own" or "leave" && Parts().Any(p => Built(key, p))
        || Learnt().Contains(key, StringComparer.Ordinal)
        || Assessed().Contains(key, StringComparer.Ordinal)
        || Helped().Contains(key, StringComparer.Ordinal)
        || (key.StartsWith("figure.", StringComparison.Ordinal) && Drawn().Contains(key, StringComparer.Ordinal))
        || (key.EndsWith("-long", StringComparison.Ordinal) && Words.Keys.Contains(key[..^"-long".Length], StringComparer.Ordinal));

    /// <summary>Keys made of a habit, a reason, a class of pitfalls or a word for a skill, and those that the pages of learning say.</summary>
    static IEnumerable<string> Learnt() =>
    [
        .. Enum.GetValues<Habit>().Select(AimedSets.KeyOf).SelectMany(h => (string[])[h + ".name", h + ".sentence", h + ".look", h + ".card.1", h + ".card.2", h + ".card.3", h + ".card.4"]),
        .. Enum.GetNames<PlanReason>().Select(r => "plan.why." + r.ToLowerInvariant()),
        .. Enum.GetNames<PitfallClass>().Append("other").Select(c => "skills.pitfall." + c.ToLowerInvariant()),
        .. Enum.GetNames<SkillWord>().Select(w => "skills.word." + w),
        .. Enum.GetNames<SureWord>().Select(w => "sure.word." + w),
        .. Enum.GetNames<TrustWord>().Select(w => "trust.word." + w),
        .. Enum.GetNames<ClueFamily>().Select(f => "trust.family." + f),
        .. ((string[])["open", "sat", "not-yet", "passed"]).Select(t => "permission.test." + t),
        .. new[] { Missing.TwoDays, Missing.OddBike, Missing.Whys }.Select(m => "permission.missing." + m),
        .. new[] { PermissionState.TakenBack, PermissionState.Expired, PermissionState.LookAgain }.Select(s => "permission.state." + s),
        .. Enumerable.Range(1, 4).Select(i => $"example.person-{i}"),
        .. Enumerable.Range(1, Register.Bikes).Select(i => $"example.bike-{i}"),
        "sure.sentence", "sure.few", "trust.linked",
    ];

    /// <summary>Keys made of an outcome, a standing, a level, a decision and the like, and the rules of marks.</summary>
    static IEnumerable<string> Assessed() =>
    [
        .. Enum.GetNames<Outcome>().SelectMany(o => (string[])["outcome." + o, "outcome.short." + o]),
        .. Enum.GetValues<Standing>().Where(s => s != Standing.Counted).Select(s => "standing." + s),
        .. Enum.GetNames<PermissionLevel>().Select(l => "level." + l),
        .. Enum.GetNames<Missing>().Select(m => "missing." + m),
        .. Enum.GetNames<PermissionState>().Select(s => "state." + s),
        .. Enum.GetNames<AppealDecision>().SelectMany(d => (string[])["appeals." + d, "appeals.may." + d, "appeal.said." + d]),
        .. Enum.GetNames<Channel>().Select(c => "sort.seen." + c),
        .. Enum.GetNames<Selection>().Select(s => "sort.first." + s),
        .. Enum.GetNames<PitfallClass>().Select(c => "whyask." + c),
        .. new[] { Prior.Flat, Prior.Favourable }.Select(p => "firm.view." + p.Name),
        .. ((string[])["use", "kits", "candidate", "group", "csv", "xapi"]).SelectMany(r => (string[])["reports." + r, $"reports.{r}-note"]),
    ];

    /// <summary>Keys of help on the pages of whoever leads.</summary>
    static IEnumerable<string> Helped() => LeadHelp.Pages.Values.Select(k => $"help.lead.{k}");

    [Fact]
    public void Every_page_of_the_lead_has_its_help() => Assert.Empty(Helped().Except(Words.Keys, StringComparer.Ordinal));

    [Fact]
    public void Every_outcome_standing_and_state_has_its_words() => Assert.Empty(Assessed().Except(Words.Keys, StringComparer.Ordinal));

    [Fact]
    public void Every_habit_reason_and_skill_has_its_words() => Assert.Empty(Learnt().Except(Words.Keys, StringComparer.Ordinal));

    /// <summary>Keys made of a figure and one of its words, with or without the parameter, and of its points.</summary>
    static IEnumerable<string> Drawn() => FigureCatalogue.All.SelectMany(f => (string[])
    [
        .. f.Points.Select(p => $"figure.at.{p}"),
        .. f.Parameters.SelectMany(p => p.Words.SelectMany(w => (string[])[$"figure.{f.Id}.{w}", $"figure.{f.Id}.{p.Name}-{w}"])),
    ]);

    static bool Built(string key, string part) =>
        key.EndsWith($".{part}", StringComparison.Ordinal) || key.EndsWith($".{part}-note", StringComparison.Ordinal);

    static IEnumerable<string> Parts() =>
    [
        .. Enum.GetNames<Aspect>(), .. Enum.GetNames<MarkWord>(), .. Enum.GetNames<InShort>(),
        "what", "fair", "not-settled", "first", "keys", "plain", "data", "part", "real", "real-first", "real-hidden", "real-open", "try", "own", "workshop", "example", "go-on", "who", "eyes", "rule", "caliper",
        "stay", "help", "pause", "quit",
    ];

    static bool IsFile(string text) => text.EndsWith(".md", StringComparison.Ordinal) || text.EndsWith(".html", StringComparison.Ordinal) || text.EndsWith(".json", StringComparison.Ordinal);

    static IEnumerable<string> Sources() => Directory.GetFiles(Path.Combine(Corpus.Root, "src"), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)).Select(File.ReadAllText);

    [GeneratedRegex("\"(?<key>[a-z]+(\\.[a-z][a-z-]*)+)\"", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Literal();
}
