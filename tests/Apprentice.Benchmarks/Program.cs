using System.Diagnostics;
using Apprentice.Benchmarks;
using BenchmarkDotNet.Running;

if (!args.Contains("--quick"))
{
    BenchmarkSwitcher.FromAssembly(typeof(Beliefs).Assembly).Run(args);
    return;
}

var beliefs = new Beliefs();
Rate("belief and five marginals, benchnet", 25_000, () => beliefs.FiveMarginals());
Rate("belief alone, benchnet", null, () => beliefs.Total());
foreach (var topic in new[] { "older-newer-bar", "folding-bar" })
{
    var cases = new Cases { Topic = topic };
    cases.SetUp();
    Rate($"cases made, {topic}, conflicting", null, () => cases.Make());
    Rate($"cases made and proved, {topic}, conflicting", 2_000, () => cases.MakeAndProve());
}

foreach (var tool in new[] { "rule", "caliper" })
{
    var scales = new Scales { Tool = tool };
    Rate($"frames of a {tool} at 200x60 (8 ms each)", 125, () => scales.Frame());
}
var leaf = new Scales();
Rate("leaves on a thread at 200x60 (8 ms each)", 125, () => leaf.Leaf());

// By time on the processor, so that a busy machine does not count.
static void Rate<T>(string what, int? goal, Func<T> once)
{
    var warm = Stopwatch.StartNew();
    while (warm.Elapsed < TimeSpan.FromSeconds(0.7)) once();
    var count = 0;
    var before = Environment.CpuUsage.TotalTime;
    var watch = Stopwatch.StartNew();
    for (; watch.Elapsed < TimeSpan.FromSeconds(1.5); count++) once();
    var seconds = (Environment.CpuUsage.TotalTime - before).TotalSeconds;
    Console.WriteLine($"{count / seconds,10:0} a second  {what}{(goal is { } g ? $" (goal {g})" : "")}");
}
