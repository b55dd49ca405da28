using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Evidence;

/// <summary>Order classes of a part: kinds that every spare of the topic fits alike count as one. "None of these" is a class of its own, and so is each kind of a part that no spare depends on.</summary>
/// <param name="ClassOfKind">Class per kind, "none of these" last.</param>
/// <param name="Members">Short names of the kinds per class.</param>
public sealed record OrderClasses(IReadOnlyList<int> ClassOfKind, IReadOnlyList<IReadOnlyList<string>> Members)
{
    /// <summary>Number of classes.</summary>
    public int Count => Members.Count;

    /// <summary>The classes of a part.</summary>
    public static OrderClasses Of(Topic topic, Part part)
    {
        var conditions = topic.Spares.SelectMany(s => s.Fits).Where(f => f.Part == part.Id).ToList();
        var classes = new List<List<string>>();
        var classOf = new List<int>();
        var ids = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var kind in part.Kinds)
        {
            var key = conditions.Count == 0 ? kind.Id : string.Concat(conditions.Select(c => c.Kinds.Contains(kind.Id) ? '1' : '0'));
            if (!ids.TryGetValue(key, out var id))
            {
                id = ids[key] = classes.Count;
                classes.Add([]);
            }

            classes[id].Add(kind.Id);
            classOf.Add(id);
        }

        classOf.Add(classes.Count);
        classes.Add([Kind.NoneId]);
        return new OrderClasses(classOf, classes);
    }

    /// <summary>The class of the part as a variable to ask the model about.</summary>
    public Query Query(int part, IReadOnlyList<PartState> states) =>
        new(part, Count, [.. states.Select(s => ClassOfKind[s.Kind])]);
}
