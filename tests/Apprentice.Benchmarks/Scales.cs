using Apprentice.Content;
using Apprentice.Drawing;
using Apprentice.Engine.Learning;
using Apprentice.Screens;
using BenchmarkDotNet.Attributes;

namespace Apprentice.Benchmarks;

/// <summary>A frame with a scale at 200x60, laid out to lines; goal under 8 ms.</summary>
[MemoryDiagnoser]
public class Scales
{
    static readonly World Nobody = new([], History.Of([]));
    static readonly PageSize Large = new(200, 60);
    int _shift;

    /// <summary>The tool, by the words of a topic.</summary>
    [Params("rule", "tape, inches", "caliper", "caliper, inside")]
    public string Tool { get; set; } = "caliper";

    /// <summary>The scale's screen, moved a little with every frame as while an arrow is held down.</summary>
    [Benchmark]
    public int Frame()
    {
        _shift = (_shift + 1) % 40;
        var screen = new ScaleScreen(Task, 0) { Window = new ScaleWindow(0, _shift - 20) };
        return Layout.Of(screen.Show(Nobody), Large).Count;
    }

    /// <summary>A leaf of a pitch gauge on a thread.</summary>
    [Benchmark]
    public int Leaf() => GaugeDrawing.Thread(25.4 / 24, 1 + (0.001 * (_shift = (_shift + 1) % 40)), Words.Of("scale.label-part"), (Large.Columns, Large.Rows), 0).Count;

    ReadingTask Task => new("", Tool, ["", ""], _ => 87.35, 0.05)
    {
        Scale = Scale.Of(Tool, zeroError: 0.05) ?? throw new InvalidOperationException(Tool),
        Low = 0,
        High = 600,
        Seed = 1,
        Below = new HomeScreen(),
        Done = (_, _) => Turn.To(new HomeScreen()),
    };
}
