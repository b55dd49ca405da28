using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>After a check, in the jobs in which it is asked: how sure now. One key.</summary>
/// <param name="Bench">The bench after the check, with what the learner held for likeliest before it.</param>
sealed record SureNowScreen(BenchScreen Bench) : Screen
{
    const int Certain = 10;

    /// <inheritdoc/>
    public override int? Job => Bench.Job;

    /// <summary>The tenths that a key stands for: 0 none of ten, 1 to 9, + as good as certain; else null.</summary>
    public static int? TenthsOf(Input key) => key.Letter == '+' ? Certain : key.Digit;

    /// <summary>The question how many of ten such bikes are of a kind.</summary>
    public static string Question(BenchJob on, string part, string kind)
    {
        var words = new TopicWords(on.Topic);
        return Words.Of("now.sure", ("part", words.Part(part)), ("kind", words.Kind(part, kind)));
    }

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var words = new TopicWords(Bench.On.Topic);
        var seen = Bench.On.Findings[^1];
        return new Page(
            Words.Of("now.title", ("job", Bench.On.Number)),
            world.Who,
            [
                new Block.Text(Words.Of("now.seen", ("check", words.Clue(seen.Clue)), ("seen", words.Seen(seen)))),
                new Block.Gap(),
                .. Bench.On.Opinion is { } held
                    ? [new Block.Text(Question(Bench.On, held.Part, held.Kind)), new Block.Text(Words.Of("now.before", ("tenths", held.Tenths))), new Block.Gap()]
                    : Array.Empty<Block>(),
                new Block.Text(Words.Of("now.scale")),
            ],
            [Words.Of("now.keys"), Words.Of("now.key-skip"), Words.Of("key.pause"), Words.Of("key.help")]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        if (key.Press == Screens.Press.Esc || Bench.On.Opinion is not { } held) return Turn.To(Bench);
        if (TenthsOf(key) is not { } tenths) return Turn.To(this);
        var on = Bench.On;
        var update = new LogEntry.Updated(on.Number, on.Looks.Count - 1, held.Part, held.Kind, held.Tenths, tenths);
        var many = on.Topic.Parts.First(p => string.Equals(p.Id, held.Part, StringComparison.Ordinal)).Kinds.Count > 2;
        var now = tenths < Opinion.Unsure && many ? null : held with { Tenths = tenths };
        return Turn.To(Bench with { On = on with { Opinion = now, Updates = [.. on.Updates, update] } }, update);
    }
}
