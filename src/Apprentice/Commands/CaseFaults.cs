using Apprentice.Content.Changes;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>Cases of another workshop held against the topics here: what a case names has to be there, else it could never be asked about. Provenance, line and events are left: a workshop may have its own.</summary>
/// <param name="file">Path of the file, for the sentences.</param>
/// <param name="copy">The topics.</param>
sealed class CaseFaults(string file, WorkshopCopy copy)
{
    // The first line is the head of the file.
    const int FirstLine = 2;

    /// <summary>Sees that all cases are known.</summary>
    /// <param name="cases">Cases in the order of the file.</param>
    /// <exception cref="Complaint">One is not; file, line and field are named.</exception>
    public void Check(IReadOnlyList<RealCase> cases)
    {
        for (var i = 0; i < cases.Count; i++) One(cases[i], FirstLine + i);
    }

    void One(RealCase it, int line)
    {
        Known(line, "topic", "topic", it.Topic, copy.TopicIds);
        var topic = copy.Topic(it.Topic) ?? throw Fault(line, "topic", $"The topic {it.Topic} has faults here; 'apprentice check' tells them.");
        Known(line, "want", "want", it.Want, topic.Wants.Select(w => w.Id));
        for (var n = 0; n < it.Findings.Count; n++) One(topic, it.Findings[n], line, $"findings[{n}]");
        for (var n = 0; n < it.Truth.Parts.Count; n++) One(topic, it.Truth.Parts[n], line, $"truth.parts[{n}]");
    }

    void One(Topic topic, Finding finding, int line, string place)
    {
        Known(line, $"{place}.clue", "clue", finding.Clue, topic.Clues.Select(c => c.Id));
        if (finding.Seen is Seen.Named named && topic.Clues.First(c => c.Id == finding.Clue) is var clue && StandView.TextOf(clue, finding) is null)
            throw Fault(line, $"{place}.finding", $"The clue {clue.Id} has no finding '{named.Id}' in the topic {topic.Id} here.");
    }

    void One(Topic topic, TruePart truth, int line, string place)
    {
        Known(line, $"{place}.part", "part", truth.Part, topic.Parts.Select(p => p.Id));
        Known(line, $"{place}.kind", "kind", truth.Kind, topic.Parts.First(p => p.Id == truth.Part).Kinds.Select(k => k.Id).Append(Kind.NoneId));
    }

    void Known(int line, string field, string what, string name, IEnumerable<string> names)
    {
        var all = names.ToList();
        if (!all.Contains(name, StringComparer.Ordinal)) throw Fault(line, field, Choose.Unknown(what, name, all));
    }

    Complaint Fault(int line, string field, string sentence) => new($"{file}:{line}: {field}: {sentence} Nothing was taken in.", ExitCode.Fault);
}
