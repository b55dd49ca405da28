namespace Apprentice.Tests.Screens;

public sealed class PracticeTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("1|1|2|3|4|A|1|5|1|{Enter}")]
    public void Probe(string keys)
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var talk = new Talk([Corpus.Sample]);
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
