using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;

namespace Apprentice.Screens.Assess;

/// <summary>Plans that are there, and what else can be a permission: a topic that is not a draft, or a name of one's own.</summary>
/// <param name="Desk">The desk to go back to.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record PlansScreen(DeskScreen Desk, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.plans"),
        Words.Of("lead.right", ("lead", world.History.Workshop?.Lead ?? "")),
        [
            new Block.Text(Words.Of(PlanDraft.Ready(world).Count == 0 ? "testplan.none" : "testplan.pick")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(Lines(world).Select(l => (string[])[l.Name, l.Note]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Lines(world)[line].Go();

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Desk);

    /// <summary>The permission that is suggested for a topic.</summary>
    public static string Suggested(Engine.Topics.Topic topic) => Words.Of("testplan.may", ("topic", char.ToLowerInvariant(topic.Title[0]) + topic.Title[1..]));

    List<(string Name, string Note, Func<Turn> Go)> Lines(World world)
    {
        var plans = world.History.Assessments.Plans;
        return
        [
            .. plans.Select(p => (p.Permission, Words.Of("testplan.saved"), (Func<Turn>)(() => Opened(world, p)))),
            .. PlanDraft.Ready(world).Where(b => plans.All(p => p.Permission != Suggested(b.Topic))).Select(b => (
                Suggested(b.Topic), Words.Of("testplan.fills"), (Func<Turn>)(() => Turn.To(new PlanScreen(PlanDraft.Of(world, Suggested(b.Topic), [b.Topic.Id]), this))))),
            .. PlanDraft.Ready(world).Count == 0 ? [] : new[] { (Words.Of("testplan.own"), "", (Func<Turn>)(() => Turn.To(new PlanNameScreen(null, this)))) },
        ];
    }

    Turn Opened(World world, TestPlan plan)
    {
        if (PlanDraft.Saved(world, plan) is { } draft) return Turn.To(new PlanScreen(draft, this));
        var ready = PlanDraft.Ready(world).Select(b => b.Topic.Id).ToList();
        string[] topics = [.. plan.Topics.Select(t => t.Id).Where(ready.Contains)];
        if (topics.Length == 0) return Turn.To(this with { Note = Words.Of("testplan.gone", ("permission", plan.Permission)) });
        var anew = PlanDraft.Of(world, plan.Permission, topics);
        return Turn.To(new PlanScreen(anew with { Plan = anew.Plan with { Rule = plan.Rule, MinutesPerJob = plan.MinutesPerJob, RealBikes = plan.RealBikes } }, this) { Note = Words.Of("testplan.changed") });
    }
}

/// <summary>The name of a permission.</summary>
/// <param name="Plan">The plan that gets it, or null for a new one: then its topics follow.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record PlanNameScreen(PlanScreen? Plan, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    protected override int Longest => 60;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.title"),
        "",
        [new Block.Text(Words.Of("testplan.name")), new Block.Gap(), .. Field(Words.Of("testplan.name-field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        if (text.Length == 0) return Turn.To(this with { Wrong = Words.Of("testplan.name-none") });
        if (Plan is { } plan) return Turn.To(plan.With(plan.Draft with { Plan = plan.Draft.Plan with { Permission = text } }));
        return PlanDraft.Ready(world) is [var first, ..]
            ? Turn.To(new PlanTopicsScreen(new PlanScreen(PlanDraft.Of(world, text, [first.Topic.Id]), Below), [first.Topic.Id]))
            : Turn.To(Below);
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>The topics of a plan: none in draft.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Chosen">Topics switched on.</param>
/// <param name="Wrong">What is wrong, or empty.</param>
sealed record PlanTopicsScreen(PlanScreen Plan, IReadOnlyList<string> Chosen, string Wrong = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("testplan.title"),
        Plan.Draft.Plan.Permission,
        [
            new Block.Text(Words.Of("testplan.topics-ask")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(
            [
                .. PlanDraft.Ready(world).Select(b => (string[])[PlanText.Topic(b.Topic, b.Topic.Id), Words.Of(Chosen.Contains(b.Topic.Id, StringComparer.Ordinal) ? "workshop.on" : "workshop.off")]),
                [Words.Of("workshop.done"), ""],
            ])),
            .. Wrong.Length > 0 ? [new Block.Gap(), new Block.Text(Wrong)] : Array.Empty<Block>(),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => PlanDraft.Ready(world).Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var ready = PlanDraft.Ready(world);
        if (line < ready.Count)
        {
            var topic = ready[line].Topic.Id;
            return Turn.To(this with { Wrong = "", Chosen = Chosen.Contains(topic, StringComparer.Ordinal) ? [.. Chosen.Where(t => t != topic)] : [.. Chosen, topic] });
        }

        return Chosen.Count == 0
            ? Turn.To(this with { Wrong = Words.Of("workshop.one") })
            : Turn.To(Plan.With(Plan.Draft.Anew(world, Chosen, Plan.Draft.Wishes)));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Plan);
}
