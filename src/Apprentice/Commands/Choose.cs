using Apprentice.Content;

namespace Apprentice.Commands;

/// <summary>Looks names up; an unknown one is answered with the nearest valid ones.</summary>
static class Choose
{
    const int MostNamed = 3;
    const int LeastWithin = 3;

    /// <summary>The one of that name.</summary>
    /// <param name="what">What it is, for the sentence: "provenance".</param>
    /// <param name="name">The name written.</param>
    /// <param name="all">What there is.</param>
    /// <param name="nameOf">The name of one.</param>
    /// <exception cref="Complaint">There is none of that name.</exception>
    public static T One<T>(string what, string name, IEnumerable<T> all, Func<T, string> nameOf)
    {
        var them = all.ToList();
        var at = them.FindIndex(one => nameOf(one) == name);
        return at >= 0 ? them[at] : throw new Complaint(Unknown(what, name, them.Select(nameOf)), ExitCode.Usage);
    }

    /// <summary>The name itself, if it is one of them.</summary>
    /// <exception cref="Complaint">It is none of them.</exception>
    public static string One(string what, string name, IEnumerable<string> all) => One(what, name, all, n => n);

    /// <summary>The value of that name.</summary>
    /// <exception cref="Complaint">There is none of that name.</exception>
    public static T Value<T>(string what, string name)
        where T : struct, Enum => One(what, name, Enum.GetValues<T>(), value => Dashed(value));

    /// <summary>The pieces of a list with commas, each known, each once, in the order written.</summary>
    /// <exception cref="Complaint">One is not known, or none is written.</exception>
    public static IReadOnlyList<string> Several(string what, string list, IEnumerable<string> all)
    {
        var known = all.ToList();
        var names = list.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal);
        IReadOnlyList<string> several = [.. names.Select(name => One(what, name, known))];
        return several.Count > 0 ? several : throw new Complaint(Unknown(what, list, known), ExitCode.Usage);
    }

    /// <summary>The sentence for a name that there is not.</summary>
    public static string Unknown(string what, string name, IEnumerable<string> all)
    {
        var names = all.ToList();
        var within = names.Where(n => name.Length >= LeastWithin && n.Contains(name, StringComparison.OrdinalIgnoreCase));
        IReadOnlyList<string> nearest = [.. within.Concat(Nearest.Of(name, names, names.Count)).Distinct(StringComparer.Ordinal).Take(MostNamed)];
        return nearest.Count == 0 ? $"There is no {what} '{name}', and none to choose from."
            : names.Count <= MostNamed ? $"There is no {what} '{name}'; it can be {Nearest.Or(nearest)}."
            : $"There is no {what} '{name}'; the nearest are {Nearest.Or(nearest)}.";
    }

    /// <summary>A value's name in commands: LeavesTwoOpen is leaves-two-open.</summary>
    public static string Dashed(Enum value) =>
        string.Concat(value.ToString().Select((c, i) => char.IsUpper(c) ? $"{(i > 0 ? "-" : "")}{char.ToLowerInvariant(c)}" : $"{c}"));
}
