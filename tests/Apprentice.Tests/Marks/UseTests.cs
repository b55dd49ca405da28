using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Marks;

/// <summary>Sorts of jobs after use.</summary>
public sealed class UseTests
{
    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];

    [Theory]
    [InlineData("use", 0, "")]
    [InlineData("use-many", 60, "")]
    [InlineData("use-one", 60, "1")]
    [InlineData("use-touched", 0, "122Lee{Enter}the plate was drawn upside down{Enter}")]
    public void The_page_is_as_it_was_looked_at(string name, int people, string keys)
    {
        var talk = Many(people).At(new UseScreen(Sat.Permission, new HomeScreen())).Keys(keys);
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    // Below its number each figure is one sentence that names the number. Source of 10, 50, 20 and 100: the requirement.
    [Theory]
    [InlineData(7, "too few to say more (from 10)", "told from 20 people on")]
    [InlineData(8, "in the long run", "told from 20 people on")]
    [InlineData(18, "in the long run", "of 100 (")]
    public void A_figure_waits_for_its_number(int more, string share, string reliability)
    {
        var world = Many(more).World;
        var use = AssessUse.Of(world.History, Sat.Permission);
        Assert.Equal(more + 2, use.People);
        Assert.Contains(share, AssessUse.Share(use.Families[0]), StringComparison.Ordinal);
        Assert.Contains(reliability, AssessUse.Reliability(use), StringComparison.Ordinal);
        Assert.Contains("from 50 answers on", AssessUse.Parts(use.Families[0]), StringComparison.Ordinal);
        Assert.Contains("from 100 people on", AssessUse.Rasch(use), StringComparison.Ordinal);
    }

    [Fact]
    public void An_unfair_sort_is_mended_for_all_who_met_it_and_all_are_listed()
    {
        var before = Sat.Talk().World.History.Assessments;
        var sort = AssessUse.Of(Sat.Talk().World.History, Sat.Permission).Families[0].Family;
        var touched = before.TouchedBy(sort, Sat.Topic.Version);
        Assert.Equal(2, touched.Count);
        var talk = Sat.Talk().At(new UseScreen(Sat.Permission, new HomeScreen())).Keys("121Lee{Enter}the plate was drawn upside down{Enter}");
        Assert.Equal(new LogEntry.FamilyUnfair(sort, Sat.Topic.Version, Standing.CountedSound, "Lee", "the plate was drawn upside down"), talk.Entries[^1].What);
        foreach (var (paper, candidate) in touched)
        {
            Assert.Contains($"{candidate} (paper {paper})", talk.TextAt(new PageSize(120, 40)), StringComparison.Ordinal);
            var now = talk.World.History.Assessments.Result(paper);
            Assert.All((now?.Jobs ?? []).Where(j => j.Family == sort), j => Assert.True(j.CountsSound));
            Assert.True(now?.Sound >= before.Result(paper)?.Sound);
        }
    }

    static Talk Many(int people) => Sat.Talk([.. Enumerable.Range(0, people).Select(p => (LogEntry)new LogEntry.PaperMarked(
        Sat.Result(Sat.Passed) with { Paper = $"P{p:00000}", Candidate = $"person {p}", Published = null, Jobs = [.. Sat.Result(Sat.Passed).Jobs.Select(j => j with { Sound = ((p * 7) + (j.Place * 3)) % 10 >= p % 5 + 1, Record = null })] }, Published: true))]);
}
