using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Screens.Assess;

namespace Apprentice.Screens;

/// <summary>The lead's page: what to do this week, who needs what, which fact nobody here has right, habits with their cards.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">Where a file lies, or empty.</param>
sealed record WorkshopScreen(Screen Below, string Note = "") : ChoiceScreen
{
    const int MostCards = 3;

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var view = WorkshopView.Of(world.History, world.Now);
        return new Page(
            world.History.Workshop?.Name ?? "",
            Words.Of("lead.right", ("lead", world.History.Workshop?.Lead ?? "")),
            [
                new Block.Text(Words.Of("lead.week")),
                .. Week(world, view).Select(w => new Block.Text(w, 2)),
                new Block.Rule(Drop: true),
                .. Needs(world, view),
                .. view.Nobody.Count == 0 ? Array.Empty<Block>() : [new Block.Rule(Drop: true), Nobody(world, view)],
                new Block.Rule(Drop: true),
                new Block.Table([new(""), new("")], Rows(Lines(world, view).Select(l => (string[])[l.Name, l.Note]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world, WorkshopView.Of(world.History, world.Now)).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Lines(world, WorkshopView.Of(world.History, world.Now))[line].Go();

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(string Name, string Note, Func<Turn> Go)> Lines(World world, WorkshopView view) =>
    [
        .. view.Accepted.Take(MostCards).Select(a => (
            Words.Of("lead.card", ("name", a.Person)), Words.Of($"{AimedSets.KeyOf(a.Habit.Habit)}.name"),
            (Func<Turn>)(() => Turn.To(new CoachScreen(a.Person, a.Habit.Habit, this))))),
        (Words.Of("lead.people"), Words.Of("lead.people-note"), () => Turn.To(new PeopleScreen(this with { Note = "" }))),
        (Words.Of("lead.month"), Month(world), () => Turn.To(new MonthScreen(world.History.MonthTopics, this))),
        (Words.Of("lead.print"), Words.Of("lead.print-note"), () => Print(world)),
        (Words.Of("lead.desk"), Words.Of("lead.desk-note"), () => Turn.To(new DeskScreen(this with { Note = "" }))),
        .. world.History.Workshop is { } workshop ? [(Words.Of("lead.pin"), Words.Of("lead.pin-note"), () => Turn.To(new PinSetScreen(workshop.Lead, this)))] : Array.Empty<(string, string, Func<Turn>)>(),
        (Words.Of("lead.bikes"), Waiting(world.History.Notebook.Reports.Count(r => r.IsOpen)), () => Turn.To(new LeadBikesScreen(this))),
    ];

    Turn Print(World world) => new(this, [], Sheet: new Sheet(
        Words.Of("lead.file"), ReportText.Of(WorkshopView.Report(world.History, world.Topics, world.Now), "html"), note => this with { Note = note }));

    static string Waiting(int lines) => Words.Of(lines switch { 0 => "lead.bikes-note-none", 1 => "lead.bikes-note-one", _ => "lead.bikes-note" }, ("n", lines));

    static string Month(World world) => world.History.MonthTopics.Count == 0
        ? Words.Of("lead.month-all")
        : Spoken.List([.. world.History.MonthTopics.Select(t => TopicsScreen.Title(world, t))]);

    static IEnumerable<string> Week(World world, WorkshopView view)
    {
        var any = false;
        foreach (var line in OfTests(world.History.Assessments))
        {
            any = true;
            yield return line;
        }

        foreach (var (person, habit) in view.Accepted.Take(1))
        {
            any = true;
            yield return Words.Of("lead.week-habit", ("name", person), ("habit", Words.Of($"{AimedSets.KeyOf(habit.Habit)}.name")));
        }

        foreach (var shared in view.Nobody.Take(1))
        {
            any = true;
            yield return Words.Of("lead.week-shared", ("skill", SkillList.Name(world, shared.Skill)));
        }

        foreach (var (person, _, _) in view.Needs.Where(n => n.Jobs == 0).Take(1))
        {
            any = true;
            yield return Words.Of("lead.week-first", ("name", person));
        }

        if (view.Needs.Count == 0) yield return Words.Of("lead.week-nobody");
        else if (!any) yield return Words.Of("lead.week-none");
    }

    // Safety first, then what has a day by which it ends.
    static IEnumerable<string> OfTests(Assessments all)
    {
        foreach (var result in all.Results.Where(r => r is { Outcome: Outcome.SafetyFirst, Talked: false })) yield return Words.Of("lead.week-talk", ("name", result.Candidate));
        if (Different(all.Results.Where(r => r is { Outcome: Outcome.SafetyFirst, Talked: true, SafetyAgain.Count: 0 }).Select(r => r.Candidate)) is { Count: > 0 } again) yield return Words.Of("lead.week-fresh", ("names", Spoken.List(again)));
        if (Different(all.Appeals.Where(a => a.Decided is null).Select(a => all.Result(a.Paper)?.Candidate)) is { Count: > 0 } asking) yield return Words.Of("lead.week-questioned", ("names", Spoken.List(asking)));
        if (Different(all.Results.Where(r => all.PublishedAt(r.Paper) is null).Select(r => r.Candidate)) is { Count: > 0 } waiting) yield return Words.Of("lead.week-tell", ("names", Spoken.List(waiting)));
    }

    static List<string> Different(IEnumerable<string?> people) => [.. people.OfType<string>().Distinct(StringComparer.Ordinal)];

    static IEnumerable<Block> Needs(World world, WorkshopView view)
    {
        if (view.Needs.Count == 0) return [new Block.Text(Words.Of("people.none"))];
        return
        [
            new Block.Table(
                [new(Words.Of("lead.needs")), new(Words.Of("people.jobs"), Right: true), new(Words.Of("lead.what"))],
                [.. view.Needs.Select(n => new Row("", Marked: false, [n.Person, n.Jobs.ToString(), n.Jobs == 0 ? Words.Of("lead.no-job") : Needed(world, n.Skills)]))]),
        ];
    }

    static string Needed(World world, IReadOnlyList<SkillState> skills) => skills.Count == 0
        ? Words.Of("lead.nothing")
        : string.Join("; ", skills.Select(s => Words.Of("lead.need", ("skill", SkillList.Name(world, s.Skill)), ("right", s.Right), ("asked", s.Asked))));

    static Block.Table Nobody(World world, WorkshopView view) => new(
        [new(Words.Of("lead.nobody")), new(Words.Of("skills.asked"), Right: true), new(Words.Of("skills.right"), Right: true)],
        [.. view.Nobody.Select(n => new Row("", Marked: false, [SkillList.Name(world, n.Skill), n.Asked.ToString(), n.Right.ToString()]))]);
}
