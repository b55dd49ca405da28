using System.Text;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Histories;

/// <summary>All that depends on the build month of a line: two months with the same facts are one segment.</summary>
/// <param name="Builds">Per package, the builds possible, with share and whether it is off the told date.</param>
/// <param name="DateKinds">Per part, the kind of a date part in this month, or −1.</param>
/// <param name="EventsPossible">Events that can happen to such a bike, as bits.</param>
/// <param name="KeptOld">True when the line's own pitfall counts.</param>
/// <param name="Codes">Per clue, shares of its findings when it is a code, else null.</param>
public sealed record MonthFacts(
    IReadOnlyList<IReadOnlyList<BuildChance>> Builds, IReadOnlyList<int> DateKinds, ulong EventsPossible, bool KeptOld,
    IReadOnlyList<double[]?> Codes)
{
    /// <summary>The facts of a line in a month.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="line">The line.</param>
    /// <param name="month">The month, or null for a topic without dates.</param>
    public static MonthFacts Of(Topic topic, Line line, Month? month) => new(
        [.. topic.Packages.Select(package => BuildsOf(package, line, month))],
        [.. topic.Parts.Select(p => DateKind(p, month))],
        Possible(topic, line, month),
        line.Pitfall is not null && (line.PitfallFrom is null || month >= line.PitfallFrom),
        [.. topic.Clues.Select(c => c.Shows is Shows.Code code && month is { } m ? CodeShares.Of(code, m) : null)]);

    /// <summary>Equal for equal facts, and only then.</summary>
    public string Key()
    {
        var key = new StringBuilder();
        foreach (var builds in Builds)
        {
            foreach (var b in builds) key.Append(b.Build).Append(':').Append(b.Share.ToString("R")).Append(b.OffDate ? '!' : ';');
            key.Append('|');
        }

        key.AppendJoin(',', DateKinds).Append('|').Append(EventsPossible).Append(KeptOld);
        foreach (var shares in Codes)
        {
            if (shares is not null) key.Append('|').AppendJoin(',', shares.Select(s => s.ToString("R")));
        }

        return key.ToString();
    }

    static int DateKind(Part part, Month? month)
    {
        if (!part.IsDate || month is not { } m) return -1;
        for (var k = 0; k < part.Kinds.Count; k++)
        {
            if (m >= part.Kinds[k].From && m <= part.Kinds[k].To) return k;
        }

        return part.Kinds.Count;
    }

    static ulong Possible(Topic topic, Line line, Month? month)
    {
        var bits = 0UL;
        for (var e = 0; e < topic.Events.Count; e++)
        {
            var it = topic.Events[e];
            var line_ = it.Lines.Count == 0 || it.Lines.Contains(line.Id);
            if (line_ && !(month < it.BuiltFrom) && !(month > it.BuiltTo)) bits |= 1UL << e;
        }

        return bits;
    }

    static List<BuildChance> BuildsOf(Package package, Line line, Month? month)
    {
        var named = package.Builds.Any(b => b.Lines.Contains(line.Id));
        var mine = Enumerable.Range(0, package.Builds.Count)
            .Where(i => named ? package.Builds[i].Lines.Contains(line.Id) : package.Builds[i].Lines.Count == 0);
        var chances = new List<BuildChance>();
        foreach (var version in mine.GroupBy(i => package.Builds[i].From).OrderBy(g => g.Key?.Opens.Index ?? int.MinValue))
        {
            var fresh = ShareOfNew(version.Key, month);
            var early = month < version.Key?.Told;
            var late = month >= version.Key?.Told;
            chances = [.. chances.Select(c => c with { Share = c.Share * (1 - fresh), OffDate = c.OffDate || late }).Where(c => c.Share > 0)];
            if (fresh > 0) chances.AddRange(version.Select(i => new BuildChance(i, package.Builds[i].Share * fresh, early)));
        }

        return chances;
    }

    static double ShareOfNew(Window? window, Month? month)
    {
        if (window is null || month is not { } m) return 1;
        if (window.Opens.Index >= window.Closes.Index) return m >= window.Opens ? 1 : 0;
        var share = (m.Index + 0.5 - window.Opens.Index) / (window.Closes.Index - window.Opens.Index);
        return Math.Clamp(share, 0, 1);
    }
}

/// <summary>A build that a bike of a line and month can have.</summary>
/// <param name="Build">Index of the build in its package.</param>
/// <param name="Share">Probability.</param>
/// <param name="OffDate">True when it left the factory on the other side of the date that people tell.</param>
public sealed record BuildChance(int Build, double Share, bool OffDate);
