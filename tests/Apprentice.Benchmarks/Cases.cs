using Apprentice.Content.Topics;
using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;
using BenchmarkDotNet.Attributes;

namespace Apprentice.Benchmarks;

/// <summary>Cases made and proved for a conflicting opening; goal 2,000 a second on one core.</summary>
[MemoryDiagnoser]
public class Cases
{
    Workbench _bench = new(TopicOf("older-newer-bar"));
    CaseRequest _request = RequestOf("older-newer-bar");
    ulong _seed;
    Case? _made;

    /// <summary>The topic.</summary>
    [Params("older-newer-bar", "folding-bar")]
    public string Topic { get; set; } = "older-newer-bar";

    /// <summary>Reads the topic and makes what is worked out once.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        (_bench, _request, _seed) = (new Workbench(TopicOf(Topic)), RequestOf(Topic), 0);
        for (var i = 0; i < 50; i++) MakeAndProve();
    }

    /// <summary>Makes a case.</summary>
    [Benchmark]
    public bool Make() => (_made = _bench.Make(_request, _seed++)) is not null;

    /// <summary>Makes a case and proves it in full: settled or not, by which deciding set, weights, and the best decision.</summary>
    [Benchmark]
    public bool MakeAndProve() => Make() && _made is { } made && _bench.Prove(made).Parts[0].Settled;

    static Topic TopicOf(string id)
    {
        var file = Path.Combine(AppContext.BaseDirectory, "Data", id + ".md");
        var reading = TopicReader.Read(file, File.ReadAllText(file));
        return reading.Topic ?? throw new InvalidDataException(reading.Faults[0].ToString());
    }

    static CaseRequest RequestOf(string topic) =>
        new("lot", "grips", topic == "folding-bar" ? "number-grip" : "both", Selection.Conflicting, Channel.Bench);
}
