using System.Diagnostics;
using Apprentice.Benchmarks;
using BenchmarkDotNet.Running;

if (args.Contains("--learners"))
{
    Learners.Print();
    return;
}

if (args is ["--pages", var file])
{
    FirstPages.Open(file);
    return;
}

if (args.Contains("--pages"))
{
    var topics = FirstPages.Topics();
    Log.Print(topics);
    FirstPages.Print(topics);
    return;
}

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
    Frame($"a {tool} at 200 x 60", () => scales.Frame());
}

var leaf = new Scales();
Frame("leaves on a thread at 200 x 60", () => leaf.Leaf());
var slowest = Pictures.Figures.MaxBy(figure => Milliseconds(new Pictures { Of = figure }.Frame)) ?? "";
Frame($"{slowest}, the slowest figure, at 200 x 60", new Pictures { Of = slowest }.Frame);

// Milliseconds of processor time a frame, and what share of the goal that is.
static void Frame(string what, Func<int> once)
{
    const double Goal = 8;
    var milliseconds = Milliseconds(once);
    Console.WriteLine($"{milliseconds,10:0.00} ms a frame  {what} (goal under {Goal} ms; {milliseconds / Goal:0.00} of it)");
}

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
