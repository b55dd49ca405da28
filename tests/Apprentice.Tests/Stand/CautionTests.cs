using Apprentice.Engine.Notebook;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Stand;

/// <summary>What a safety look found, or could not see, stays beside the order and on the job card.</summary>
public sealed class CautionTests
{
    // From the first start to a bar with a rule at hand; the first look is sound.
    const string ToBar = "2111" + "2" + "1";

    [Fact]
    public void A_creak_stands_beside_the_order_and_on_the_card() =>
        Assert.All(OrderAndCard(Kept("2")), t => Assert.Contains("Does the bar turn: holds, but creaks.", t, StringComparison.Ordinal));

    [Fact]
    public void A_look_that_cannot_be_seen_stands_beside_the_order_and_on_the_card() =>
        Assert.All(OrderAndCard(Kept("0")), t => Assert.Contains("Not looked at: Does the bar turn.", t, StringComparison.Ordinal));

    [Fact]
    public void What_is_sound_is_no_caution() =>
        Assert.All(OrderAndCard(Kept("1")), t => Assert.DoesNotContain("Not looked at", t, StringComparison.Ordinal));

    [Fact]
    public void With_two_questions_the_customer_hears_which_is_meant()
    {
        var talk = Kept("1").Keys("62");
        var said = StandSheets.Customer(Assert.IsType<BikeScreen>(talk.Screen).Views(talk.World));
        Assert.Collection(
            said,
            s => Assert.StartsWith("Grips or bar tape: ", s, StringComparison.Ordinal),
            s => Assert.StartsWith("Brake levers: ", s, StringComparison.Ordinal),
            s => Assert.Contains("the part decides", s, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("rim-size", "22", "Stop. The rim is worn hollow. Do not ride on it or pump it up. A qualified mechanic decides.")]
    public void A_stop_is_said_once(string topic, string keys, string sentence)
    {
        var talk = new Talk([Corpus.Topic(topic)]).Keys("2111" + keys + "4");
        Assert.Equal([sentence], Assert.IsType<BikeScreen>(talk.Screen).Views(talk.World).SelectMany(StandWords.Stops));
    }

    static Talk Kept(string turn)
    {
        var talk = new Talk([Corpus.Topic("bar-sizes")]).Keys(ToBar + turn);
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
