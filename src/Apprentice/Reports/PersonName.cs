using Apprentice.Content;
using Apprentice.Engine.Learning;

namespace Apprentice.Reports;

/// <summary>What a person may be called.</summary>
static class PersonName
{
    /// <summary>The longest name, in signs.</summary>
    public const int Longest = 24;

    /// <summary>Why somebody new cannot take a name, or null when they can. The lead, or a candidate who never practised here, takes the name that they have.</summary>
    public static string? FaultOfNew(History history, string name) =>
        history.People.Contains(name, StringComparer.OrdinalIgnoreCase) ? Words.Of("name.taken")
        : history.Called.Former.Contains(name, StringComparer.OrdinalIgnoreCase) ? Words.Of("rename.former", ("name", name), ("owner", history.Called.OfTyped(name)))
        : null;

    /// <summary>Why a name cannot be corrected so, or null when it can.</summary>
    /// <param name="history">The history.</param>
    /// <param name="person">The name until now.</param>
    /// <param name="name">The name from now on.</param>
    public static string? Fault(History history, string person, string name) =>
        name.Length == 0 ? Words.Of("rename.none")
        : name.Length > Longest ? Words.Of("rename.long", ("n", Longest))
        : !name.All(Cells.IsPlain) ? Words.Of("rename.signs")
        : name == person ? Words.Of("rename.same", ("name", name))
        : history.OwnerOf(name) is not { } owner || owner == person ? null
        : string.Equals(owner, name, StringComparison.OrdinalIgnoreCase) ? Words.Of("rename.taken", ("name", owner))
        : Words.Of("rename.former", ("name", name), ("owner", owner));
}
