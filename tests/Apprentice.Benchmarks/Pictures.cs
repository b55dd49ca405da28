using Apprentice.Drawing;
using Apprentice.Engine.Topics;
using BenchmarkDotNet.Attributes;

namespace Apprentice.Benchmarks;

/// <summary>Figures drawn to a window of 200 x 60; goal under 8 ms a picture.</summary>
[MemoryDiagnoser]
public class Pictures
{
    /// <summary>The figure.</summary>
    [ParamsSource(nameof(Figures))]
    public string Of { get; set; } = "wheel-side";

    /// <summary>All figures that are drawn.</summary>
    public static IEnumerable<string> Figures => FigureCatalogue.All.Select(f => f.Id).Where(id => id != Figure.PlainArt);

    /// <summary>One frame, the geometry with it.</summary>
    [Benchmark]
    public int Frame() => DrawnPart.Usual(FigureCatalogue.Of(Of) ?? throw new InvalidOperationException(Of)).Rows(200, 60).Count;
}
