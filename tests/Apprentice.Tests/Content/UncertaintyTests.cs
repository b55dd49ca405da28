using Apprentice.Content.Topics;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Content;

/// <summary>Uncertainty of one careful reading as worked out in an uncertainty budget (JCGM 100:2008, 4.3.7 and 5.1.2): limits ±a as rectangular, a/√3, half a step likewise, root sum of squares.</summary>
public sealed class UncertaintyTests
{
    const string Sample = "Data/topics/older-newer-bar.md";
    const string Reading = "step 1 mm, uncertainty 1 mm, from 260 to 370 mm";

    [Theory]
    [InlineData("0.5", 0.2887)]
    [InlineData("0.7", 0.4041)]
    public void A_tape_is_as_uncertain_as_its_limit_where_the_step_is_nothing(string limit, double u) =>
        Assert.Equal(u, Read($"step 0.01 mm, limit {limit} mm, from 268 to 363 mm").Uncertainty, 1e-4);

    [Theory]
    [InlineData("0.05", "0.05", 0.05, 0.0433)]
    [InlineData("0.02", "0.01", 0.05, 0.0312)]
    [InlineData("0.07", "0.05", 0.05, 0.0517)]
    [InlineData("0.04", "0.01", 0.05, 0.0371)]
    [InlineData("0.15", "0.5", 0.3, 0.2415)]
    [InlineData("0.15", "1", 0.3, 0.3476)]
    public void Limit_step_and_what_the_part_adds_are_a_root_sum_of_squares(string limit, string step, double added, double u)
    {
        // Verniers and digital calipers outside and inside, with ±0.05 mm of roundness; rules with ±0.3 mm of alignment.
        var tool = Read($"step {step} mm, limit {limit} mm, from 268 to 363 mm");
        var way = new MeasuredModel(tool, new ClueChannel(Channel.Bench, added / Math.Sqrt(3), 0), 0).Ways[0];
        Assert.Equal(u, way.Uncertainty, 5e-5);
    }

    [Fact]
    public void A_stated_uncertainty_is_taken_as_it_stands() => Assert.Equal(1, Read(Reading).Uncertainty);

    static Shows.Measured Read(string reading)
    {
        var text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, Sample));
        Assert.Contains(Reading, text, StringComparison.Ordinal);
        var read = TopicReader.Read(Sample, text.Replace(Reading, reading, StringComparison.Ordinal));
        Assert.Empty(read.Faults);
        Assert.NotNull(read.Topic);
        return (Shows.Measured)read.Topic.Clues.Single(c => c.Id == "stem-length").Shows;
    }
}
