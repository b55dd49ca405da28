namespace Apprentice.Tests.Screens;

public sealed class PracticeTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("2|1|2|2|1|3|1953{Enter}|1953{Enter}|1|1|1|1|1|1|1|1|1")]
    public void Probe(string keys)
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var talk = new Talk(Topics.Shipped);
        foreach (var k in keys.Split('|'))
        {
            clock.Restart();
            talk.Keys(k);
            output.WriteLine($"{k} {clock.ElapsedMilliseconds}");
            clock.Restart();
            output.WriteLine(talk.Text);
            output.WriteLine($"show {clock.ElapsedMilliseconds}");
        }
    }
}
