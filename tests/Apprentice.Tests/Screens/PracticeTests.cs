namespace Apprentice.Tests.Screens;

public sealed class PracticeTests(ITestOutputHelper output)
{
    [Fact]
    public void Probe()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var talk = new Talk(Topics.Shipped);
        output.WriteLine($"read {clock.ElapsedMilliseconds}");
        output.WriteLine(talk.Text);
        foreach (var k in (string[])["1", "S", "1", "2", "A"])
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
