using Apprentice.Content.Values;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Drawing.Plates;

/// <summary>What stands on a plate: its writings, labelled 1, 2, 3 … in the order in which they are seen.</summary>
/// <param name="Surface">What they stand on.</param>
/// <param name="Markings">The writings that are there, in the order of their labels.</param>
/// <param name="IsDirty">True for one plate in three: dirt between the writings, and scratches where nothing depends on it.</param>
/// <param name="Seed">Fixes where everything stands.</param>
sealed record PlateView(Surface Surface, IReadOnlyList<Marking> Markings, bool IsDirty, ulong Seed)
{
    const double WornBeside = 0.4;
    const double Scratched = 0.2;

    /// <summary>What a finding looks like: its characters, or the words for worn and not there.</summary>
    /// <param name="clue">A clue with a plate.</param>
    public static IReadOnlyList<(string Id, string Looks)> Looks(Clue clue) => clue.Shows switch
    {
        Shows.Table table => [.. table.Findings.Select(f => (f.Id, f.LooksLike))],
        Shows.Code code => [.. code.Findings.Select(f => (f.Id, f.LooksLike))],
        _ => [],
    };

    /// <summary>The marks of wear on this plate, each once, in the order of <see cref="Wear.All"/>.</summary>
    public IReadOnlyList<Wear> Marks => [.. Wear.All.Where(w => Markings.Any(m => m.Signs.Any(s => s.Drawn == w.Drawn)))];

    /// <summary>The plate of a clue.</summary>
    /// <param name="clue">The clue.</param>
    /// <param name="plate">Its plate.</param>
    /// <param name="written">What the writings show: the finding of the n-th, or null for one that shows none.</param>
    /// <param name="seed">Fixes places, digits at random, wear and dirt.</param>
    public static PlateView Of(Clue clue, Plate plate, Func<int, string?> written, ulong seed)
    {
        // Neighbouring seeds of the generator are not independent in their first numbers: spread them (odd multiplier of SplitMix64) and skip some.
        var rng = new Rng(unchecked(seed * 0x9E3779B97F4A7C15UL), stream: 5);
        for (var i = 0; i < 8; i++) rng.Next();
        var dirty = rng.Below(3) == 0;
        var markings = new List<Marking>();
        for (var w = 0; w < plate.Writings.Count; w++)
        {
            if (Characters(clue, plate.Writings[w].Pattern, written(w), dirty, rng) is { } signs) markings.Add(new Marking(w, signs, plate.Writings[w].Where));
        }

        return new PlateView(plate.Surface, [.. Shuffled(markings, rng)], dirty, unchecked(seed + 1));
    }

    // The characters as they are to be seen and as they once were; null for a writing that is not there.
    static List<Worn>? Characters(Clue clue, string pattern, string? finding, bool dirty, Rng rng)
    {
        var looks = Looks(clue);
        var text = looks.Where(f => string.Equals(f.Id, finding, StringComparison.Ordinal)).Select(f => f.Looks).FirstOrDefault("");
        if (text is Plate.Nothing) return null;
        var worn = text is Plate.Worn;
        var readable = looks.Where(f => f.Looks is not (Plate.Worn or Plate.Nothing)).ToList();
        var signs = PatternText.Write(pattern, worn ? readable[rng.Below(readable.Count)].Looks : text, rng);
        return [.. signs.Select(s => new Worn(s.Character, s.OfText, Wears(s, worn, dirty, rng) ? Wear.Of(s, rng) : s.Character))];
    }

    // What a finding hangs on is worn when it cannot be read, and then wholly; the rest wears as it comes.
    static bool Wears(Sign sign, bool worn, bool dirty, Rng rng)
    {
        var luck = rng.Unit();
        return sign.Character != ' ' && (sign.OfText ? worn : luck < (worn ? WornBeside : dirty ? Scratched : 0));
    }

    static List<Marking> Shuffled(List<Marking> markings, Rng rng)
    {
        for (var i = markings.Count - 1; i > 0; i--)
        {
            var j = rng.Below(i + 1);
            (markings[i], markings[j]) = (markings[j], markings[i]);
        }

        return markings;
    }
}

/// <summary>A writing on a plate as it is to be seen.</summary>
/// <param name="Writing">Which of the plate's writings: 0 for the true one.</param>
/// <param name="Signs">Its characters.</param>
/// <param name="Where">Where it stands, in words; may be empty.</param>
sealed record Marking(int Writing, IReadOnlyList<Worn> Signs, string Where)
{
    /// <summary>The characters as they are drawn.</summary>
    public string Text => string.Concat(Signs.Select(s => s.Drawn));
}

/// <summary>A way in which a character is worn.</summary>
/// <param name="Drawn">What is drawn of it.</param>
/// <param name="Once">The characters that it may have been; empty when it may have been any.</param>
/// <param name="Key">Key of its words.</param>
/// <remarks>Half of a digit is evidence, and the engine's model knows only read, misread and unreadable. So what a finding hangs on is never half worn; what stands beside it is.</remarks>
sealed record Wear(char Drawn, string Once, string Key)
{
    static readonly Wear Gone = new('\u00b7', "", "look.worn-gone");
    static readonly Wear Scratched = new('~', "", "look.worn-scratched");

    /// <summary>All ways.</summary>
    public static IReadOnlyList<Wear> All { get; } =
        [Gone, Scratched, new(')', "38", "look.worn-38"), new('(', "06", "look.worn-06"), new('|', "17", "look.worn-17"), new('[', "EF", "look.worn-ef")];

    /// <summary>The way of wear that a drawn character stands for, or null for one that can be read.</summary>
    public static Wear? By(char drawn) => All.FirstOrDefault(w => w.Drawn == drawn);

    /// <summary>How a character wears.</summary>
    /// <param name="sign">As it was made.</param>
    /// <param name="rng">Luck.</param>
    public static char Of(Sign sign, Rng rng)
    {
        var luck = rng.Below(3);
        var half = sign.OfText ? null : All.FirstOrDefault(w => w.Once.Contains(sign.Character, StringComparison.Ordinal));
        return luck == 0 ? Scratched.Drawn : half?.Drawn ?? Gone.Drawn;
    }
}

/// <summary>A character of a writing.</summary>
/// <param name="Once">As it was made.</param>
/// <param name="OfText">True when what the writing says hangs on it.</param>
/// <param name="Drawn">As it is drawn: itself, or some strokes.</param>
sealed record Worn(char Once, bool OfText, char Drawn);
