using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Notebook;
using Apprentice.Screens;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Stand;

/// <summary>Bikes we asked about, as the lead lets them count and as others meet them.</summary>
public sealed class AskedScreensTests
{
    // Two routine bikes, then puzzling ones; the last line of the figures leads to those.
    const string ToAsked = Yard.ToRates + "6";
    const string Let = ToAsked + "1";

    [Theory]
    [InlineData("few", 3, ToAsked)]
    [InlineData("ready", 12, ToAsked)]
    [InlineData("let", 12, Let)]
    [InlineData("again", 12, Let + "6")]
    [InlineData("change", 12, Let + "62")]
    public void The_screen_is_as_it_was_looked_at(string name, int puzzling, string keys)
    {
        var talk = Yard.Talk(Known(puzzling)).Keys(keys);
        foreach (var size in (PageSize[])[new(80, 24), new(60, 20), new(120, 40)]) Golden.Same($"asked-{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void They_count_only_once_the_lead_lets_them_and_the_log_tells_each_figure()
    {
        var talk = Yard.Talk(Known(12)).Keys(ToAsked);
        Assert.DoesNotContain(talk.World.Topics[0].Provenances, p => p.IsPuzzling);
        talk.Keys("1");
        Assert.Equal("it puzzles us, like other bikes we asked about", talk.World.Topics[0].Provenances[^1].Card);
        Assert.Contains(("event bar-to-newer asked", 1), talk.World.History.Notebook.Approved.Select(a => (a.What, a.Change)));
        Assert.Equal(talk.World.History.Notebook.Approved.Count, AskedBikes.Of(Corpus.Sample, talk.World.History.Notebook).Figures.Count);
    }

    [Fact]
    public void Taken_back_by_keys_the_topic_is_the_shipped_one()
    {
        var talk = Yard.Talk(Known(12)).Keys(Let + "621");
        Assert.Equal(Yard.Text, talk.World.Copy.Text(Yard.Path));
        Assert.Equal(Corpus.Sample.Version, talk.World.Topics[0].Version);
    }

    [Fact]
    public void With_too_few_there_is_no_way_to_let_them_count()
    {
        var talk = Yard.Talk(Known(9)).Keys(ToAsked + "1");
        Assert.IsType<RatesScreen>(talk.Screen);
        Assert.Empty(talk.World.Copy.Changes);
    }

    [Fact]
    public void Practice_draws_them_and_says_so_on_the_job()
    {
        var topic = Yard.Talk(Known(12)).Keys(Let).World.Topics[0];
        // Half of the jobs come from the first provenance, half from one of three: 1 in 6 of 600, standard deviation 9.1, four of them allowed.
        var asked = Enumerable.Range(1, 600).Select(job => Mix.Of(topic, job, Talk.Luck)).Where(d => d.Request.Provenance == AskedBikes.Id).ToList();
        Assert.InRange(asked.Count, 63, 137);
        var made = new Engine.Workbench(topic).Make(asked[0].Request with { Select = Engine.Cases.Selection.AsTheyCome }, asked[0].Seed) ?? throw new InvalidOperationException();
        Assert.Contains("it puzzles us, like other bikes we asked about", JobCard.Of(topic, made.Job).Origin, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>Real bikes, a new one: a puzzling one may come from there, one that the rule takes in may not.</summary>
    [Theory]
    [InlineData("", true)]
    [InlineData("20", false)]
    public void A_new_bike_can_come_from_there_unless_it_is_routine(string card, bool offered)
    {
        var talk = Yard.Talk(Known(12)).Keys(Let + "00000" + "41{Enter}red folder{Enter}" + card + "{Enter}" + "1" + "1");
        Golden.Same($"asked-new-{(offered ? "puzzling" : "routine")}", talk.Text);
        Assert.Equal(offered, talk.Text.Contains("It puzzles us", StringComparison.Ordinal));
        talk.Keys("3");
        Assert.Equal(offered ? [AskedBikes.Id] : [], talk.World.History.Notebook.Bikes.Skip(14).Select(b => b.Asked[0].Provenance));
    }

    [Fact]
    public void A_bike_from_there_is_still_told_after_the_change_is_taken_back()
    {
        var talk = Yard.Talk([.. Known(12), .. Yard.Bike(15, routine: false, Bikes.Truth("older", []), AskedBikes.Id)]);
        var view = StandView.Of(talk.World.History.Notebook.Bikes[^1], talk.World.Stand)[0];
        Assert.Equal(Corpus.Sample.Provenances[0].Id, StandView.ProvenanceIn(view.Topic, view.Asked.Provenance));
        Assert.NotEmpty(view.Reasoning.Parts);
    }

    [Fact]
    public void The_same_by_lines_and_by_keys_leaves_the_same_record()
    {
        var lines = Yard.Talk(Known(12), plain: true);
        var said = lines.Say("0", "6", "6", "5", "1", "6", "1");
        var keys = Yard.Talk(Known(12)).Keys(Let);
        Assert.Equal(keys.Entries.Select(e => e.What.ToString()), lines.Entries.Select(e => e.What.ToString()));
        Assert.Equal(keys.World.Copy.Text(Yard.Path), lines.World.Copy.Text(Yard.Path));
        Golden.Same("asked-lines", said);
    }

    static IEnumerable<LogEntry> Known(int puzzling)
    {
        foreach (var entry in Yard.Bike(1, routine: true, Bikes.Truth("older", [])).Concat(Yard.Bike(2, routine: true, Bikes.Truth("newer", [])))) yield return entry;
        for (var n = 0; n < puzzling; n++)
        {
            foreach (var entry in Yard.Bike(n + 3, routine: false, n < 5 ? Bikes.Truth("newer", ["bar-to-newer"]) : Bikes.Truth("older", [], n < 7 ? "standard" : "basic"), n < 8 ? "lot" : "own")) yield return entry;
        }
    }
}
