using Apprentice.Engine.Notebook;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Stand;

/// <summary>What a safety look found, or could not see, stays beside the order and on the job card.</summary>
public sealed class CautionTests
{
    [Fact]
    public void Play_stands_beside_the_order_and_on_the_card() =>
        Assert.All(OrderAndCard(Kept("crank", "2")), t => Assert.Contains("Safety look: rock the cranks: both move: bearing play.", t, StringComparison.Ordinal));

    [Fact]
    public void A_look_that_cannot_be_seen_stands_beside_the_order_and_on_the_card() =>
        Assert.All(OrderAndCard(Kept("bar-sizes", "10")), t => Assert.Contains("Not looked at: Does the bar turn.", t, StringComparison.Ordinal));

    [Fact]
    public void What_is_sound_is_no_caution() =>
        Assert.All(OrderAndCard(Kept("bar-sizes", "11")), t => Assert.DoesNotContain("Not looked at", t, StringComparison.Ordinal));

    [Fact]
    public void With_two_questions_the_customer_hears_which_is_meant()
    {
        var talk = Kept("bar-sizes", "11").Keys("62");
        var said = StandSheets.Customer(Assert.IsType<BikeScreen>(talk.Screen).Views(talk.World));
        Assert.Collection(
            said,
            s => Assert.StartsWith("Grips or bar tape: ", s, StringComparison.Ordinal),
            s => Assert.StartsWith("Brake levers: ", s, StringComparison.Ordinal),
            s => Assert.Contains("the part decides", s, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("rim-size", "22", "Stop. The rim is worn hollow. Do not ride on it or pump it up. A qualified mechanic decides.")]
    [InlineData("bar-sizes", "212", "Stop. The bar creaks in the stem. Nobody rides it. A qualified mechanic finds out why before anything is ordered.")]
    public void A_stop_is_said_once(string topic, string keys, string sentence)
    {
        var talk = new Talk([Corpus.Topic(topic)]).Keys("2111" + keys + "4");
        Assert.Equal([sentence], Assert.IsType<BikeScreen>(talk.Screen).Views(talk.World).SelectMany(StandWords.Stops));
    }

    [Fact]
    public void After_a_stop_the_notebook_guesses_nothing_and_says_whom_to_ask()
    {
        var talk = Kept("rim-size", "1");
        Assert.Contains("not settled", talk.Text, StringComparison.Ordinal);
        var view = Assert.Single(Assert.IsType<BikeScreen>(talk.Screen).Views(talk.World));
        var safety = view.Topic.Clues.First(c => c.Safety);
        talk.Keys("2");
        var line = Assert.IsType<ChecksScreen>(talk.Screen).Show(talk.World).Body.OfType<Block.Table>().Single().Rows.ToList().FindIndex(r => r.Cells[0] == safety.Name) + 1;
        talk.Keys($"{line}{{Enter}}12");
        Assert.Contains("Nothing is ordered and nothing is fitted before that.", talk.Text, StringComparison.Ordinal);
        Assert.Contains("Ask a qualified mechanic", talk.Text, StringComparison.Ordinal);
        Assert.All((string[])["not settled", "Settled as far", "not on our list", "do not go together"], t => Assert.DoesNotContain(t, talk.Text, StringComparison.Ordinal));
        var card = StandSheets.Card(BenchNotebook.Empty, view.Bike, Assert.IsType<BikeScreen>(talk.Screen).Views(talk.World), talk.World.Now);
        Assert.DoesNotContain(card.Sections.SelectMany(s => s.Lines), l => l.Contains("not settled", StringComparison.Ordinal));
    }

    // From the first start to a real bike with a rule at hand; what is asked after the keys cannot be seen.
    static Talk Kept(string topic, string keys)
    {
        var talk = new Talk([Corpus.Topic(topic)]).Keys("2111" + "2" + keys);
        for (var n = 0; n < 30 && talk.Screen is not OwnEndScreen; n++) talk.Keys(talk.Screen is OwnReadScreen ? "0{Enter}" : "0");
        return talk.Keys("4");
    }

    static IReadOnlyList<string> OrderAndCard(Talk talk)
    {
        var views = Assert.IsType<BikeScreen>(talk.Screen).Views(talk.World);
        return
        [
            string.Join('\n', StandOrder.Of(BenchNotebook.Empty, views[0])),
            string.Join('\n', StandSheets.Card(BenchNotebook.Empty, views[0].Bike, views, talk.World.Now).Sections.SelectMany(s => s.Lines)),
        ];
    }
}
