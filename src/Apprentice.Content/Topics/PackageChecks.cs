using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Checks of what was fitted as built, part by part and line by line.</summary>
static class PackageChecks
{
    const double Tolerance = 1e-9;

    /// <summary>Notes parts without a package and lines of which a package says nothing, or too much.</summary>
    public static void Check(Draft draft, Topic topic)
    {
        foreach (var part in topic.Parts) Check(draft, topic, part);
        foreach (var package in topic.Packages)
        {
            foreach (var line in topic.Lines) Check(draft, package, line);
        }
    }

    static void Check(Draft draft, Topic topic, Part part)
    {
        var packages = topic.Packages.Where(package => package.Parts.Contains(part.Id)).Select(package => $"\"{package.Id}\"").ToArray();
        if (part.IsDate && packages.Length > 0)
            draft.Faults.Add(draft.LineOf(part), $"\"{part.Id}\" is a build date and comes of itself: take it out of the package {packages[0]}.");
        else if (!part.IsDate && packages.Length == 0)
            draft.Faults.Add(draft.LineOf(part), $"The part \"{part.Id}\" is in no package: say in \"{Headings.AsBuilt}\" what was fitted.");
        else if (packages.Length > 1)
            draft.Faults.Add(draft.LineOf(part), $"The part \"{part.Id}\" is in {packages.Length} packages, {string.Join(" and ", packages)}: one is enough.");
    }

    static void Check(Draft draft, Package package, Line line)
    {
        var named = package.Builds.Where(build => build.Lines.Contains(line.Id)).ToArray();
        Build[] builds = named.Length > 0 ? named : [.. package.Builds.Where(build => build.Lines.Count == 0)];
        var where = $"The package \"{package.Id}\" of the line \"{line.Id}\"";
        if (!builds.Any(build => build.From is null))
        {
            var at = builds.Length > 0 ? draft.LineOf(builds[0]) : draft.LineOf(package);
            draft.Faults.Add(at, $"{where} has no row from the start: add one with \"from\" left blank.");
        }

        foreach (var together in builds.GroupBy(build => $"{build.From?.Opens} {build.From?.Closes}", StringComparer.Ordinal))
        {
            var (first, sum) = (together.First(), 0.0);
            foreach (var build in together) sum += build.Share;
            if (Math.Abs(sum - 1) > Tolerance)
                draft.Faults.Add(draft.LineOf(first), $"{where} has shares that add up to {sum:0.####}, not 1, in the rows with the same \"from\".");
            if (!together.All(build => build.From?.Told == first.From?.Told && build.From?.Pitfall == first.From?.Pitfall && build.MonthsFrom == first.MonthsFrom))
                draft.Faults.Add(draft.LineOf(together.Last()), $"{where} has rows with the same \"from\": \"told\", the source and the pitfall must be the same too.");
        }

        Build[] changes = [.. builds.Where(build => build.From is not null)];
        if (changes.Length > 1) InTurn(draft, where, [.. changes.OrderBy(build => build.From?.Opens.Index)]);
    }

    static void InTurn(Draft draft, string where, Build[] changes)
    {
        for (var at = 1; at < changes.Length; at++)
        {
            var (earlier, later) = (changes[at - 1], changes[at]);
            var same = earlier.From?.Opens == later.From?.Opens && earlier.From?.Closes == later.From?.Closes;
            if (!same && (earlier.From?.Closes > later.From?.Opens || earlier.From?.Opens == later.From?.Opens))
                draft.Faults.Add(draft.LineOf(later), $"{where} changes from {later.From?.Opens} on before the change until {earlier.From?.Closes} is over.");
        }
    }
}
