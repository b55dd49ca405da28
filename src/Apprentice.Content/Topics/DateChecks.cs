using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Checks of months: of lines, groups of build dates, codes, and topics that have none.</summary>
static class DateChecks
{
    /// <summary>Notes lines without months, groups of build dates with gaps, and dates in a topic without years.</summary>
    public static void Check(Draft draft, Topic topic)
    {
        if (topic.Years.Count == 0)
        {
            Undated(draft, topic);
            return;
        }

        foreach (var line in topic.Lines) Check(draft, topic, line);
        foreach (var part in topic.Parts.Where(part => part.IsDate)) Check(draft, topic, part);
    }

    /// <summary>Notes codes that leave out a month in which a bike can be built.</summary>
    public static void Codes(Draft draft, Topic topic)
    {
        foreach (var clue in topic.Clues)
        {
            if (clue.Shows is not Shows.Code code) continue;
            if (topic.Years.Count == 0) draft.Faults.Add(draft.LineOf(clue), $"The clue \"{clue.Id}\" reads the build date: add the section \"{Headings.Years}\".");
            if (First(Before(MonthsOf(topic), code.LagMonths), month => !code.Findings.Any(finding => finding.Months.Any(range => Within(month, range.From, range.To)))) is { } missing)
                draft.Faults.Add(draft.LineOf(clue), $"The clue \"{clue.Id}\" has no code for {missing}{Because(code)}: add one.");
        }
    }

    static string Because(Shows.Code code) => code.LagMonths > 0 ? $", {code.LagMonths} months or less before a bike is built" : ", when bikes are built";

    static void Undated(Draft draft, Topic topic)
    {
        const string Remedy = "add the section \"" + Headings.Years + "\" or take the months out";
        foreach (var line in topic.Lines.Where(line => line.From is not null || line.To is not null || line.PitfallFrom is not null))
            draft.Faults.Add(draft.LineOf(line), $"The line \"{line.Id}\" has months: {Remedy}.");
        foreach (var part in topic.Parts.Where(part => part.IsDate))
            draft.Faults.Add(draft.LineOf(part), $"The part \"{part.Id}\" is a build date: {Remedy}.");
        foreach (var build in topic.Packages.SelectMany(package => package.Builds).Where(build => build.From is not null))
            draft.Faults.Add(draft.LineOf(build), $"A running change needs months: {Remedy}.");
        foreach (var happened in topic.Events.Where(happened => happened.BuiltFrom is not null || happened.BuiltTo is not null))
            draft.Faults.Add(draft.LineOf(happened), $"The event \"{happened.Id}\" has months: {Remedy}.");
    }

    static void Check(Draft draft, Topic topic, Line line)
    {
        for (var p = 0; p < topic.Provenances.Count; p++)
        {
            if (line.Shares[p] > 0 && !MonthsOf(topic, line, p).Any())
                draft.Faults.Add(draft.LineOf(line), $"The line \"{line.Id}\" has no months for \"{topic.Provenances[p].Id}\": \"{Headings.Years}\" gives none in which it was made.");
        }
    }

    static void Check(Draft draft, Topic topic, Part part)
    {
        int Groups(Month month) => part.Kinds.Count(kind => Within(month, kind.From, kind.To));
        if (First(MonthsOf(topic), month => Groups(month) == 0) is { } gap)
            draft.Faults.Add(draft.LineOf(part), $"No group of \"{part.Id}\" holds {gap}, when bikes are built: close the gap.");
        if (First(MonthsOf(topic), month => Groups(month) > 1) is { } twice)
            draft.Faults.Add(draft.LineOf(part), $"Two groups of \"{part.Id}\" hold {twice}: end one before the other begins.");
    }

    static bool Within(Month month, Month? from, Month? to) => !(month < from) && !(month > to);

    static Month? First(IEnumerable<Month> months, Func<Month, bool> which)
    {
        Month? first = null;
        foreach (var month in months)
        {
            if (!(month > first) && which(month)) first = month;
        }

        return first;
    }

    /// <summary>The months, and those up to a lag before them.</summary>
    static HashSet<Month> Before(IEnumerable<Month> months, int lag)
    {
        var before = new HashSet<Month>();
        foreach (var month in months)
        {
            for (var back = 0; back <= lag; back++) _ = before.Add(month.Plus(-back));
        }

        return before;
    }

    /// <summary>The months in which bikes of the topic are built.</summary>
    static HashSet<Month> MonthsOf(Topic topic)
    {
        var months = new HashSet<Month>();
        foreach (var line in topic.Lines)
        {
            for (var p = 0; p < topic.Provenances.Count; p++)
            {
                if (line.Shares[p] > 0) months.UnionWith(MonthsOf(topic, line, p));
            }
        }

        return months;
    }

    static IEnumerable<Month> MonthsOf(Topic topic, Line line, int provenance)
    {
        foreach (var year in topic.Years.Where(year => year.Shares[provenance] > 0))
        {
            for (var number = 1; number <= 12; number++)
            {
                if (Month.Of(year.Year, number) is var month && Within(month, line.From, line.To)) yield return month;
            }
        }
    }
}
