using Apprentice.Content;

namespace Apprentice.Screens;

/// <summary>Before a check, in the jobs in which it is asked: which kind is likeliest so far, and how sure.</summary>
/// <param name="Bench">The bench.</param>
/// <param name="Line">Line of the check that waits.</param>
/// <param name="Again">True when the check is taken once more.</param>
/// <param name="Of">Short name of the part.</param>
/// <param name="Kind">The kind that was chosen, or null while it is asked.</param>
sealed record OpinionScreen(BenchScreen Bench, int Line, bool Again, string Of, string? Kind = null) : ChoiceScreen
{
    const string None = "none";

    /// <inheritdoc/>
    public override int? Job => Bench.Job;

    /// <inheritdoc/>
    public override bool Slow => true;

    Engine.Topics.Part Part => Bench.On.Topic.Parts.First(p => string.Equals(p.Id, Of, StringComparison.Ordinal));

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("now.title", ("job", Bench.On.Number)),
        world.Who,
        Kind is { } kind
            ? [new Block.Text(SureNowScreen.Question(Bench.On, Part.Id, kind)), new Block.Gap(), new Block.Text(Words.Of("now.scale"))]
            :
            [
                new Block.Text(Words.Of(Bench.On.Opinion is null ? "now.why" : "now.other")),
                new Block.Gap(),
                new Block.Text(Words.Of("now.which", ("question", Part.Question))),
                new Block.Gap(),
                new Block.Table([new("")], Rows(Kinds().Select(k => (string[])[k.Name]))),
            ],
        [Kind is null ? Digits(world) : Words.Of("now.keys"), .. Kind is null ? [Words.Of("key.enter-take")] : Array.Empty<string>(), Words.Of("key.esc-back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        if (Kind is null || key.Press == Screens.Press.Esc) return base.Press(world, key);
        return SureNowScreen.TenthsOf(key) is { } tenths
            ? (Bench with { On = Bench.On with { Opinion = new Opinion(Part.Id, Kind, tenths) } }).Look(world, Line, Again)
            : Turn.To(this);
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Kinds().Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(this with { Kind = Kinds()[line].Id });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Kind is null ? Bench : this with { Kind = null, Cursor = Cursor.None });

    List<(string Id, string Name)> Kinds() => [.. Part.Kinds.Select(k => (k.Id, k.Name)), (None, Words.Of("answer.none"))];
}
