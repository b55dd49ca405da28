using Apprentice.Content;
using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;

namespace Apprentice;

/// <summary>The topic files of a folder.</summary>
public static class QuestionBank
{
    /// <summary>The folder that is shipped with the program.</summary>
    public static string Shipped => Path.Combine(AppContext.BaseDirectory, "question-bank");

    /// <summary>Reads all topic files of a folder, in the order of their names.</summary>
    /// <param name="folder">The folder; one that is not there holds no topics.</param>
    public static (IReadOnlyList<Topic> Topics, IReadOnlyList<Fault> Faults) Read(string folder)
    {
        if (!Directory.Exists(folder)) return ([], []);
        var read = Directory.GetFiles(folder, "*.md").Order(StringComparer.Ordinal).Select(f => TopicReader.Read(f, File.ReadAllText(f))).ToList();
        return ([.. read.Select(r => r.Topic).OfType<Topic>()], [.. read.SelectMany(r => r.Faults)]);
    }
}
