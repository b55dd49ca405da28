using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;

namespace Apprentice.Screens.Assess;

/// <summary>A sample job of a plan, for the lead: what the candidate gets, and on a key what it really is. It stands in no paper.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Nth">0 to 2.</param>
/// <param name="On">The job.</param>
/// <param name="Shown">True when it is shown what it really is.</param>
sealed record SampleScreen(PlanScreen Plan, int Nth, BenchJob On, bool Shown) : Screen
{
    const int Samples = 3;
    const ulong Seed = 6021;

    JobFamily Family => FamilyAt(Plan.Draft.Plan, Nth);

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <summary>The sample of a number; the plan itself when it cannot be made here.</summary>
    public static Screen Of(World world, PlanScreen plan, int nth)
    {
        var family = FamilyAt(plan.Draft.Plan, nth);
        return world.Bench(family.Topic) is { } bench && bench.Make(family.Request, Seed + (ulong)nth) is { } made
            ? new SampleScreen(plan, nth, new BenchJob(nth + 1, bench, made, Guided: false, 2, []), Shown: false)
            : plan;
    }

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var words = new TopicWords(On.Topic);
        return new Page(
            Words.Of("testplan.sample", ("n", Nth + 1), ("of", Samples)),
            Plan.Draft.Plan.Permission,
            [
                new Block.Text(FamilyName.Of(On.Topic, Family)),
                new Block.Rule(Drop: true),
                .. JobCardBlocks.Of(On),
                new Block.Text(Words.Of("testplan.sample-checks", ("checks", Spoken.List([.. On.OnOffer.Select(c => words.Clue(c.Id))])))),
                .. Shown ? [new Block.Rule(Drop: true), .. Truth(words)] : Array.Empty<Block>(),
            ],
            [Words.Of(Shown ? "testplan.key-next" : "testplan.key-truth"), Words.Of("key.back"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        if (key.IsBack) return Turn.To(Plan);
        if (key.Press != Screens.Press.Enter) return Turn.To(this);
        if (!Shown) return Turn.To(this with { Shown = true });
        return Turn.To(Nth + 1 < Samples ? Of(world, Plan, Nth + 1) : Plan);
    }

    static JobFamily FamilyAt(TestPlan plan, int nth) => plan.Families[nth * plan.Families.Count / Samples];

    IEnumerable<Block> Truth(TopicWords words)
    {
        var truth = On.Made.Truth;
        foreach (var part in On.Want.Asks)
        {
            var at = On.Topic.Parts.ToList().FindIndex(p => string.Equals(p.Id, part, StringComparison.Ordinal));
            yield return new Block.Text(Words.Of("testplan.sample-is", ("part", words.Part(part)), ("kind", words.Kind(part, truth.Kinds[at]))));
        }

        yield return new Block.Text(Words.Of("testplan.sample-story", ("story", truth.Story.Count == 0 ? Words.Of("story.nothing") : Spoken.List([.. truth.Story.Select(words.Tag)]))));
        var proof = On.Bench.Prove(On.Made);
        yield return new Block.Text(Words.Of(proof.Stops.Count == 0 && proof.Parts.All(p => p.Settled) ? "testplan.sample-settles" : "testplan.sample-open"));
    }
}
