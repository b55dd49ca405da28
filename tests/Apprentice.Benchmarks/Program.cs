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

var slowest = Pictures.Figures.Select(figure => (figure, Time: Milliseconds(new Pictures { Of = figure }.Frame))).MaxBy(f => f.Time);
Console.WriteLine($"{slowest.Time,10:0.00} ms a frame  {slowest.figure}, the slowest figure, at 200 x 60 (goal under 8 ms; {slowest.Time / 8:0.00} of it)");

// Milliseconds of processor time a frame.
static double Milliseconds(Func<int> once)
{
    for (var i = 0; i < 100; i++) once();
    const int Count = 200;
    var before = Environment.CpuUsage.TotalTime;
    for (var i = 0; i < Count; i++) once();
    return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds / Count;
}

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
