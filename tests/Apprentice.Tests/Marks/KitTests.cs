using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Commands;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Marks;

/// <summary>Paper kits: key, print, entry by number.</summary>
public sealed class KitTests
{
    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];
    static readonly KitMaker Maker = new(Sat.Plan, [Sat.Bench]);
    static readonly Kit Kit = Maker.Make("K7M2QX", 20, 11);

    [Fact]
    public void The_same_seed_makes_the_same_kit_and_each_question_can_be_answered()
    {
        Assert.Equivalent(Kit, Maker.Make("K7M2QX", 20, 11), strict: true);
        Assert.NotEqual(Kit.Jobs[0].Seed, Maker.Make("K7M2QX", 20, 12).Jobs[0].Seed);
        Assert.All(Kit.Jobs.SelectMany(j => j.Questions), q =>
        {
            Assert.InRange(q.Options.Count, 2, 9);
            Assert.Contains(q.Options, o => o.Right);
            Assert.DoesNotContain(q.Options, o => o is { Right: true, Hurts: true });
        });
        // Waiting and answering are both right somewhere, so that neither is a rule.
        Assert.Contains(Kit.Jobs, j => j.Questions[^1].Options[^1].Right);
        Assert.Contains(Kit.Jobs, j => !j.Questions[^1].Options[^1].Right);
    }

    // Oracle: the grader of the screens, on the same findings: what the key calls right is sound there too, where something is answered.
    [Fact]
    public void The_key_agrees_with_the_grade_of_the_screens()
    {
        var compared = 0;
        foreach (var job in Kit.Jobs.Where(j => j.Questions[^1].Options[^1].Right))
        {
            var made = Maker.CaseOf(job);
            var looks = job.Given.Skip(made.Job.Told.Count).ToList();
            var answer = new Answer
            {
                Looks = [.. looks.Select((f, i) => new Look(f.Clue, looks.Take(i).Count(x => x.Clue == f.Clue)))],
                Parts = [.. job.Questions.Where(q => q.Ask == KitAsk.Part).Select(q => new PartAnswer(q.Subject, q.Options.First(o => o.Right).Kinds?[0], 9))],
                Orders = [.. job.Questions.Where(q => q.Ask == KitAsk.Order).Select(q => q.Options.First(o => o is { Right: true, Choice: not null }).Choice ?? new Choice.Ask())],
            };
            Assert.True(Sat.Bench.Grade(made, answer).Sound, $"job {job.Place}");
            compared++;
        }

        Assert.True(compared >= 5, $"{compared}");
    }

    [Fact]
    public void Marks_follow_the_key()
    {
        foreach (var job in Kit.Jobs)
        {
            var right = string.Concat(job.Questions.Select(q => 1 + q.Options.ToList().FindIndex(o => o.Right)));
            Assert.Equal((true, false, true), Short(job.Mark(right)));
            Assert.Equal((false, false, false), Short(job.Mark(new string('0', job.Questions.Count))));
            Assert.Equal((true, false, false), Short(job.Mark(right[..^1] + '0')));
            var wrong = job.Questions[0].Options.ToList().FindIndex(o => !o.Right);
            if (wrong >= 0) Assert.False(job.Mark((wrong + 1) + right[1..]).Sound);
            Assert.Contains("digits", job.Fault(right + "1"), StringComparison.Ordinal);
            Assert.Contains("lines 1 to", job.Fault("x" + right[1..]), StringComparison.Ordinal);
        }

        var hurting = Kit.Jobs.First(j => j.Questions.Any(q => q.Options.Any(o => o.Hurts)));
        var digits = hurting.Questions.Select(q => 1 + q.Options.ToList().FindIndex(o => q.Options.Any(x => x.Hurts) ? o.Hurts : o.Right));
        Assert.True(hurting.Mark(string.Concat(digits)).SafetyError);
    }

    // Source of 1 in 10: judgement, printed with its exact chances. Binomial, n = 20, at most 2: .9245 at .95 and .6769 at .9 (any table of the binomial).
    [Fact]
    public void The_rule_s_chances_are_those_of_the_binomial()
    {
        Assert.Equal(0.9245, Kit.RuleOf(20).For(0.95).Passed, 5e-5);
        Assert.Equal(0.6769, Kit.RuleOf(20).For(0.9).Passed, 5e-5);
        Assert.Null(Kit.RuleOf(20).Fault);
    }

    [Fact]
    public void The_key_opens_by_its_code_and_cannot_be_read_without_it()
    {
        var (box, code) = KitFile.Sealed(Kit);
        Assert.Equivalent(Kit, KitFile.Open(box, code), strict: true);
        Assert.Throws<SealException>(() => KitFile.Open(box, "2345-6789-ABCD"));
        Assert.DoesNotContain(Kit.Jobs[0].Seed.ToString(), box, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheets_hold_no_key_and_the_drawings_no_truth()
    {
        var pages = new AssessKit(Kit, [Sat.Topic], Maker.CaseOf);
        var (sheets, key) = (pages.Sheets(Sat.Nine), pages.Key("2345-6789-ABCD", Sat.Nine));
        foreach (var job in Kit.Jobs) Assert.Contains($"Job {job.Place}<", sheets, StringComparison.Ordinal);
        Assert.DoesNotContain("2345-6789-ABCD", sheets, StringComparison.Ordinal);
        // Another key over the same jobs makes the same sheets: nothing of the key is in them.
        var other = Kit with { Jobs = [.. Kit.Jobs.Select(j => j with { Questions = [.. j.Questions.Select(q => q with { Options = [.. q.Options.Select(o => o with { Right = !o.Right, Hurts = !o.Hurts })] })] })] };
        Assert.Equal(sheets, new AssessKit(other, [Sat.Topic], Maker.CaseOf).Sheets(Sat.Nine));
        Assert.Contains("2345-6789-ABCD", key, StringComparison.Ordinal);
        Assert.Contains("never counted with papers", key, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheets_of_a_topic_with_drawings_show_what_was_found()
    {
        var topic = Corpus.Topic("rim-size") with { State = TopicState.Checked };
        var plan = Sat.Plan with { Topics = [new PlanTopic(topic.Id, topic.Version)], Families = [.. topic.Openings.Take(4).Select(o => new JobFamily(topic.Id, topic.Provenances[0].Id, topic.Wants[0].Id, o.Id, Selection.AsTheyCome, Channel.Bench, Safety: true))] };
        var maker = new KitMaker(plan, [new Workbench(topic)]);
        var kit = maker.Make("K7M2QX", 12, 3);
        var pages = new AssessKit(kit, [topic], maker.CaseOf);
        var sheets = pages.Sheets(Sat.Nine);
        Assert.Contains("<svg", sheets, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kits", "")]
    [InlineData("kit-who", "21")]
    [InlineData("kit-job", "21Sam{Enter}{Enter}CODE{Enter}")]
    [InlineData("kit-fault", "21Sam{Enter}{Enter}CODE{Enter}1{Enter}")]
    public void The_page_is_as_it_was_looked_at(string name, string keys)
    {
        var (box, code) = KitFile.Sealed(Kit);
        var talk = Entering(box).Keys(keys.Replace("CODE", code, StringComparison.Ordinal));
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void Answers_are_entered_by_number_once_and_stand_apart()
    {
        var right = Kit.Jobs.Select(j => string.Concat(j.Questions.Select(q => 1 + q.Options.ToList().FindIndex(o => o.Right)))).ToList();
        var (box, code) = KitFile.Sealed(Kit);
        var talk = Entering(box).Keys("21Sam{Enter}{Enter}" + code + "{Enter}");
        foreach (var digits in right) talk.Keys(digits + "{Enter}");
        talk.Keys("1");
        var entered = Assert.IsType<LogEntry.KitEntered>(talk.Entries[^1].What);
        Assert.Equal(("Sam", "Jo", 20), (entered.Candidate, entered.By, entered.Marks.Count(m => m.Sound)));
        var all = talk.World.History.Assessments;
        Assert.True(all.KitResults[0].Passed);
        Assert.Equal(Sat.Permission, all.KitResults[0].Permission);
        Assert.Equal(Sat.Talk().World.History.Assessments.RegisterOf("Sam", Sat.Permission).Results.Count, all.RegisterOf("Sam", Sat.Permission).Results.Count);
        Assert.Contains("entered before", talk.Keys("21sam{Enter}").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kit_is_made_from_the_plan_and_both_pages_are_written()
    {
        using var folder = new TempFolder();
        var talk = new Talk(Sat.Log(), [Sat.Topic], papers: folder.Path).At(new KitListScreen(new HomeScreen())).Keys("1");
        var made = Assert.IsType<LogEntry.KitMade>(talk.Entries[^1].What);
        var key = File.ReadAllText(Directory.GetFiles(folder.Path, $"kit-{made.Kit}-key.html").Single());
        Assert.Single(Directory.GetFiles(folder.Path, $"kit-{made.Kit}-sheets.html"));
        var code = key.Split("Code of this key: ")[1].Split('<')[0];
        Assert.Equal(20, KitFile.Open(made.Sealed, code).Jobs.Count);
    }

    static (bool, bool, bool) Short(KitMark mark) => (mark.Sound, mark.SafetyError, mark.NextRight);

    static Talk Entering(string? box = null) => Sat.Talk(new LogEntry.KitMade(Kit.Id, Sat.Permission, 20, box ?? "apprentice kit 1")).At(new KitListScreen(new HomeScreen()));
}
