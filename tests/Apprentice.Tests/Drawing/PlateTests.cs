using Apprentice.Drawing.Plates;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Drawing;

/// <summary>Plates as they are drawn: what can be read can be read, what is worn cannot, whatever the seed.</summary>
public sealed class PlateTests
{
    const int Seeds = 400;

    static IEnumerable<Clue> Plated => Corpus.Shipped.Select(Corpus.Topic).SelectMany(t => t.Clues).Where(c => c.Plate is not null);

    public static TheoryData<string> Clues => [.. Plated.Select(c => c.Id).Distinct(StringComparer.Ordinal)];

    [Fact]
    public void Both_topics_have_plates() => Assert.True(Plated.Count() >= 6, $"{Plated.Count()}");

    [Theory]
    [MemberData(nameof(Clues))]
    public void A_readable_finding_stands_there_sign_by_sign_and_a_worn_one_does_not(string id)
    {
        var clue = Plated.First(c => string.Equals(c.Id, id, StringComparison.Ordinal));
        foreach (var (finding, looks) in PlateView.Looks(clue))
        {
            for (var seed = 0UL; seed < Seeds / 10; seed++)
            {
                var view = Of(clue, finding, seed);
                var marking = view.Markings.FirstOrDefault(m => m.Writing == 0);
                if (looks is Plate.Nothing) Assert.Null(marking);
                else if (looks is Plate.Worn) Assert.All(Text(marking), s => Assert.True(s.Once is ' ' || Wear.By(s.Drawn) is { Once: "" }, $"{seed}: {marking?.Text}"));
                else Assert.Equal(looks, string.Concat(Text(marking).Select(s => s.Drawn)));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Clues))]
    public void Every_writing_is_drawn_whole_with_its_label_in_every_window(string id)
    {
        var clue = Plated.First(c => string.Equals(c.Id, id, StringComparison.Ordinal));
        var findings = PlateView.Looks(clue);
        for (var seed = 0UL; seed < Seeds; seed++)
        {
            var view = Of(clue, findings[(int)(seed % (ulong)findings.Count)].Id, seed);
            var (columns, rows) = (58 + (int)(seed % 140), 3 + (int)(seed % 30));
            var drawn = PlateDrawing.Rows(view, columns, rows);
            Assert.All(drawn, r => Assert.InRange(r.Length, 1, columns));
            Assert.True(drawn.Count <= Math.Max(rows, ((view.Markings.Count + 1) / 2) + 2), $"{drawn.Count} rows in {rows}");
            for (var i = 0; i < view.Markings.Count; i++)
                Assert.Contains(drawn, r => r.Contains($" ({i + 1}) {view.Markings[i].Text} ", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void One_plate_in_three_is_dirty_and_the_true_number_stands_anywhere()
    {
        var clue = Plated.First(c => c.Id is "plate");
        var views = Enumerable.Range(0, 3000).Select(s => Of(clue, "2012", (ulong)s)).ToList();

        // 1,000 of 3,000 with a standard deviation of 26; a place of four: 750 with 24.
        Assert.InRange(views.Count(v => v.IsDirty), 1000 - 104, 1000 + 104);
        foreach (var place in Enumerable.Range(0, 4))
            Assert.InRange(views.Count(v => v.Markings[place].Writing == 0), 750 - 96, 750 + 96);
    }

    [Fact]
    public void The_same_seed_draws_the_same_plate()
    {
        var clue = Plated.First(c => c.Id is "plate");
        Assert.Equal(PlateDrawing.Rows(Of(clue, "2012", 5), 78, 12), PlateDrawing.Rows(Of(clue, "2012", 5), 78, 12));
        Assert.NotEqual(PlateDrawing.Rows(Of(clue, "2012", 5), 78, 12), PlateDrawing.Rows(Of(clue, "2012", 6), 78, 12));
    }

    [Theory]
    [MemberData(nameof(Clues))]
    public void The_words_hold_every_sign_and_no_more(string id)
    {
        var clue = Plated.First(c => string.Equals(c.Id, id, StringComparison.Ordinal));
        var findings = PlateView.Looks(clue);
        for (var seed = 0UL; seed < Seeds; seed++)
        {
            var view = Of(clue, findings[(int)(seed % (ulong)findings.Count)].Id, seed);
            var words = PlateWords.Of(view);
            Assert.Equal(view.Markings.Count + (view.IsDirty ? 2 : 1), words.Count);
            foreach (var marking in view.Markings) Assert.Equal(marking.Text.Replace(" ", "", StringComparison.Ordinal), Read(PlateWords.Spelled(marking)));
            Assert.DoesNotContain(words, w => clue.Plate?.Writings.Any(x => w.Contains(x.Is, StringComparison.Ordinal)) == true);
        }
    }

    [Theory]
    [MemberData(nameof(AllSurfaces))]
    public void Every_surface_has_an_outline_and_words(Surface surface)
    {
        var view = new PlateView(surface, [new Marking(0, [new Worn('5', OfText: true, '5')], "")], IsDirty: false, 1);
        Assert.Contains(PlateDrawing.Rows(view, 58, 8), r => r.Any(c => c is > '\u2800' and < '\u2900'));
        Assert.NotEqual("", PlateWords.Name(surface));
        if (surface is not Surface.Tube)
            Assert.NotEqual(PlateDrawing.Rows(view with { Surface = Surface.Tube }, 58, 8), PlateDrawing.Rows(view, 58, 8));
    }

    public static TheoryData<Surface> AllSurfaces => [.. Enum.GetValues<Surface>()];

    // Reads the words back: signs apart, "(3 worn away)" as three of that mark, "(3 or 8)" as the half of a digit.
    static string Read(string spelled)
    {
        var text = "";
        foreach (var piece in spelled.Replace(",", "", StringComparison.Ordinal).Split('(', StringSplitOptions.RemoveEmptyEntries))
        {
            var close = piece.IndexOf(')', StringComparison.Ordinal);
            if (close >= 0)
            {
                var wear = Wear.All.First(w => piece[..close].EndsWith(Apprentice.Content.Words.Of(w.Key), StringComparison.Ordinal));
                text += new string(wear.Drawn, wear.Once.Length == 0 ? int.Parse(piece[..piece.IndexOf(' ', StringComparison.Ordinal)]) : 1);
            }
            text += piece[(close + 1)..].Replace(" ", "", StringComparison.Ordinal);
        }
        return text;
    }

    [Fact]
    public void Wear_is_of_several_kinds_and_half_a_sign_is_never_what_a_finding_hangs_on()
    {
        var seen = new HashSet<char>();
        foreach (var clue in Plated)
        {
            var findings = PlateView.Looks(clue);
            for (var seed = 0UL; seed < Seeds; seed++)
            {
                var signs = Of(clue, findings[(int)(seed % (ulong)findings.Count)].Id, seed).Markings.SelectMany(m => m.Signs).ToList();
                foreach (var sign in signs.Where(s => s.Drawn != s.Once))
                {
                    var wear = Assert.IsType<Wear>(Wear.By(sign.Drawn));
                    Assert.True(wear.Once.Length == 0 || wear.Once.Contains(sign.Once, StringComparison.Ordinal), $"{sign}");
                    Assert.True(!sign.OfText || wear.Once.Length == 0, $"{sign}");
                    seen.Add(wear.Drawn);
                }
                Assert.DoesNotContain(signs, s => s.Drawn == s.Once && Wear.By(s.Drawn) is not null);
            }
        }
        Assert.Equal(Wear.All.Select(w => w.Drawn).Order(), seen.Order());
    }

    static IEnumerable<Worn> Text(Marking? marking) => (marking ?? throw new InvalidOperationException("no writing")).Signs.Where(s => s.OfText);

    // The decoys show findings drawn by the seed, as in a case.
    static PlateView Of(Clue clue, string finding, ulong seed)
    {
        var rng = new Rng(seed, 3);
        var decoys = clue.Shows is Shows.Code code ? code.Decoys : [];
        return PlateView.Of(
            clue, clue.Plate ?? throw new InvalidOperationException(clue.Id),
            w => w == 0 ? finding : w <= decoys.Count ? PlateView.Looks(clue)[rng.Pick(decoys[w - 1].Shares)].Id : null, seed);
    }
}
