using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Storage.Papers;

namespace Apprentice.Assess;

/// <summary>A paper that is opened at this machine to be sat: in memory only, never stored.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="SittingKey">The key under which its result is sealed.</param>
/// <param name="File">The sealed file, against which the code is tried again.</param>
/// <param name="Folder">Where the result is written: beside the sealed file.</param>
public sealed record Seat(Paper Paper, byte[] SittingKey, byte[] File, string Folder)
{
    /// <summary>True for the code that opened the paper: whoever leads keeps it.</summary>
    public bool OpensBy(string code)
    {
        try
        {
            return PaperFile.OpenByCode(File, code).SittingKey.AsSpan().SequenceEqual(SittingKey);
        }
        catch (SealException)
        {
            return false;
        }
    }

    /// <summary>Why the paper cannot be sat with these topics, as a sentence, or null when it can.</summary>
    /// <param name="benches">Topics at hand.</param>
    public string? Fault(IReadOnlyList<Workbench> benches)
    {
        foreach (var job in Paper.Jobs.DistinctBy(j => j.Family.Topic))
        {
            if (benches.FirstOrDefault(b => b.Topic.Id == job.Family.Topic) is not { } bench)
                return $"This paper needs the topic {job.Family.Topic}, which is not on this machine. Use the program that made the paper.";
            if (bench.Topic.Version != job.Version)
                return $"This paper needs the topic {job.Family.Topic} in version {job.Version}; here it has version {bench.Topic.Version}. Use the program and the topics that made the paper.";
        }

        return null;
    }
}
