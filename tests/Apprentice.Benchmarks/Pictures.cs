using Apprentice.Drawing;
using Apprentice.Engine.Topics;
using BenchmarkDotNet.Attributes;

namespace Apprentice.Benchmarks;

/// <summary>Figures drawn to a window of 200 x 60; goal under 8 ms a picture.</summary>
[MemoryDiagnoser]
public class Pictures
{
    readonly DrawnPart _part;

    /// <summary>The figure that takes longest.</summary>
    public Pictures() => _part = DrawnPart.Usual(Named(FigureCatalogue.All.Where(f => f.Id != Figure.PlainArt).MaxBy(f => Ink(f.Id))?.Id ?? ""));

    /// <summary>One frame.</summary>
    [Benchmark]
    public int Largest() => _part.Rows(200, 60).Count;

    /// <summary>One frame, the geometry with it.</summary>
    public static int Frame(string figure) => DrawnPart.Usual(Named(figure)).Rows(200, 60).Count;

    static int Ink(string figure) => DrawnPart.Usual(Named(figure)).Sketch.Inks.Sum(i => i.Path.Count);

    static Figure Named(string id) => FigureCatalogue.Of(id) ?? throw new ArgumentException(id, nameof(id));
}
