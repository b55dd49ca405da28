using Apprentice.Engine.Histories;

namespace Apprentice.Engine.Evidence;

/// <summary>Findings as likelihoods, for any subset of them: findings of one group depend on each other given the history (readings of one true size), groups do not.</summary>
public sealed class FindingSet
{
    readonly int _parts;
    readonly IReadOnlyList<Group> _groups;

    /// <summary>A set of groups; together they hold each index from 0 to <paramref name="count"/> − 1 once.</summary>
    public FindingSet(int parts, int count, IReadOnlyList<Group> groups)
    {
        (_parts, Count, _groups) = (parts, count, groups);
        if (count > 60) throw new ArgumentOutOfRangeException(nameof(count), count, "at most 60 findings at once");
        All = Of(Everything);
    }

    /// <summary>Number of findings.</summary>
    public int Count { get; }

    /// <summary>All findings as bits.</summary>
    public ulong Everything => Count == 0 ? 0 : ulong.MaxValue >> (64 - Count);

    /// <summary>The likelihood of all findings.</summary>
    public Likelihood All { get; }

    /// <summary>Findings that read the spine, as bits.</summary>
    public ulong MembersReadingSpine => Reading(l => l.Rows is not null);

    /// <summary>Findings that read a part, as bits.</summary>
    public ulong MembersReading(int part) => Reading(l => l.Parts[part] is not null);

    /// <summary>Findings that are independent given the history.</summary>
    public static FindingSet Independent(int parts, IReadOnlyList<Likelihood> findings) =>
        new(parts, findings.Count, [.. findings.Select((f, i) => new Group(1UL << i, _ => f))]);

    /// <summary>The likelihood of a subset.</summary>
    /// <param name="subset">Findings as bits.</param>
    public Likelihood Of(ulong subset)
    {
        var product = Likelihood.None(_parts);
        foreach (var group in _groups)
        {
            var mine = subset & group.Members;
            if (mine != 0) product = product.And(group.Of(mine));
        }

        return product;
    }

    ulong Reading(Func<Likelihood, bool> reads)
    {
        var bits = 0UL;
        foreach (var group in _groups)
        {
            if (reads(group.Of(group.Members))) bits |= group.Members;
        }

        return bits;
    }

    /// <summary>Findings that depend on each other.</summary>
    public sealed class Group
    {
        readonly Func<ulong, Likelihood> _of;
        readonly Dictionary<ulong, Likelihood> _known = [];

        /// <summary>A group of findings.</summary>
        /// <param name="members">Its findings as bits.</param>
        /// <param name="of">The likelihood of any part of them that is not empty.</param>
        public Group(ulong members, Func<ulong, Likelihood> of) => (Members, _of) = (members, of);

        /// <summary>Its findings as bits.</summary>
        public ulong Members { get; }

        internal Likelihood Of(ulong subset)
        {
            if (_known.TryGetValue(subset, out var known)) return known;
            return _known[subset] = _of(subset);
        }
    }
}
