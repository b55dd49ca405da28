using System.Globalization;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Marks;

/// <summary>The mark of a job of a paper in sentences: in short, the bike, what was looked at, what was answered, how the mark comes about. What the topic no longer has is called by its short name.</summary>
/// <param name="topics">Topics at hand.</param>
public sealed class RecordTelling(IReadOnlyList<Topic> topics)
{
    // Shares below are told together.
    const double Least = 0.01;
    const double MostSaid = 0.9995;

    readonly SortNames _sorts = new(topics);

    /// <summary>The sort of job.</summary>
    public string Sort(JobMark mark) => mark.Record is { } record ? _sorts.Of(record.Family) : _sorts.Of(mark.Family);

    /// <summary>The topic that all jobs are about, or null when there are several.</summary>
    public string? OneTopic(IReadOnlyList<JobMark> marks) =>
        marks.Select(m => FamilyOf(m)?.Topic ?? m.Family).Distinct(StringComparer.Ordinal).ToList() is [var topic] ? _sorts.Topic(topic) : null;

    /// <summary>The sort of job where its topic stands elsewhere.</summary>
    public string SortWithin(JobMark mark) => FamilyOf(mark) is { } family ? _sorts.Within(family) : Sort(mark);

    static JobFamily? FamilyOf(JobMark mark) => mark.Record?.Family ?? SortNames.FamilyOf(mark.Family);

    /// <summary>The rule of the mark, one sentence.</summary>
    public static string Rule(JobMark mark) => Words.Of(mark.Rule, mark.Values.ToDictionary(v => v.Key, v => (object)Hundredths(v.Value), StringComparer.Ordinal));

    /// <summary>One sentence for a job that is not sound: what was said, and what the checks say.</summary>
    public string InShort(JobMark mark)
    {
        if (mark.Record is not { Judged: { } judged } record) return Rule(mark);
        if (mark.Sound) return Words.Of(mark.Rule == "paper.rule.argued" ? "record.short.argued" : "record.short.sound");
        var names = NamesOf(record);
        return mark.Rule switch
        {
            "paper.rule.safety" => Safety(judged, names),
            "paper.rule.early" => Early(judged, names),
            "paper.rule.part" => Part(judged.Parts.MinBy(p => p.Mark), names),
            "paper.rule.order" => Order(judged.Orders.MinBy(o => o.Mark), names),
            _ => Rule(mark),
        };
    }

    /// <summary>What the bike was, and what had happened to it.</summary>
    public string Bike(JobRecord record)
    {
        var names = NamesOf(record);
        var was = string.Join("; ", record.Was.Select(w => $"{Spoken.Capital(names.Part(w.Part))}: {names.Kind(w.Part, w.Kind)}"));
        var story = record.Story.Count == 0 ? Words.Of("story.nothing") : Spoken.List([.. record.Story.Select(names.Tag).Distinct(StringComparer.Ordinal)]);
        return Words.Of("record.bike", ("was", was), ("story", story));
    }

    /// <summary>What was told first: check and finding.</summary>
    public IReadOnlyList<(string Check, string Seen)> Told(JobRecord record) => [.. record.Told.Select(f => (NamesOf(record).Clue(f.Clue), NamesOf(record).Seen(f)))];

    /// <summary>What was looked at: check, what there was to be read, and what was read.</summary>
    public IReadOnlyList<(string Check, string Shown, string Read)> Looks(JobRecord record) =>
        [.. record.Looks.Select(l => (NamesOf(record).Clue(l.Look.Clue), NamesOf(record).Seen(l.Shown), NamesOf(record).Read(l)))];

    /// <summary>What was not looked at: check and finding.</summary>
    public IReadOnlyList<(string Check, string Seen)> Unused(JobRecord record) => [.. record.Unused.Select(f => (NamesOf(record).Clue(f.Clue), NamesOf(record).Seen(f)))];

    /// <summary>The answer: what is asked, and what was said.</summary>
    public IReadOnlyList<(string Asked, string Said)> Answer(JobRecord record)
    {
        var names = NamesOf(record);
        if (record.Given is not { } given) return [(Words.Of("record.answer"), Words.Of("record.no-answer"))];
        return
        [
            .. given.Parts.Select(p => (Spoken.Capital(names.Part(p.Part)), $"{names.Kind(p.Part, p.Kind)}, {(p.Tenths >= 10 ? Words.Of("grade.certain") : Words.Of("grade.sure", ("tenths", p.Tenths)))}")),
            .. given.Orders.Select((o, i) => (names.Line(record.Family.Want, i), names.Choice(o))),
        ];
    }

    /// <summary>How the mark comes about: every figure that is needed to work it out again by hand.</summary>
    public IReadOnlyList<string> Figures(JobRecord record)
    {
        if (record.Judged is not { } judged) return [];
        var names = NamesOf(record);
        return
        [
            .. judged.Parts.SelectMany(p => PartFigures(p, names)),
            .. judged.Orders.SelectMany(o => OrderFigures(o, names)),
            judged.Safety == SafetyFault.None ? Words.Of("record.safe") : Safety(judged, names),
            .. NotLooked(record, names),
        ];
    }

    /// <summary>What all checks of the bench together say.</summary>
    public IReadOnlyList<string> Proof(JobRecord record)
    {
        var names = NamesOf(record);
        return [.. record.Proof.Select(p => Words.Of(
            !p.Settled ? "record.proof-open" : p.Leading.Belief > MostSaid ? "record.proof-over" : "record.proof", ("part", Spoken.Capital(names.Part(p.Part))), ("kind", names.Class(p.Part, p.Leading.Kinds)), ("share", OfHundred(p.Leading.Belief))))];
    }

    /// <summary>The command with which anybody works the figures out again, from what the job showed.</summary>
    public static string Command(JobRecord record)
    {
        var findings = record.Told.Concat(record.Looks.Select(l => l.Shown)).Select(Written);
        return $"apprentice identify {record.Family.Topic} {string.Join(' ', findings)} --want {record.Family.Want} --provenance {record.Family.Provenance} --channel {Dashed(record.Family.Offer)}";
    }

    /// <summary>A share as it is printed for working out: "97.3 of 100".</summary>
    /// <param name="share">0 to 1.</param>
    public static string OfHundred(double share) => Words.Of("spoken.mark", ("n", (100 * share).ToString("0.0", CultureInfo.InvariantCulture)));

    // An order without the safety look changes no mark, and is told once the marks are.
    static IEnumerable<string> NotLooked(JobRecord record, RecordNames names)
    {
        var left = record.Unused.Select(f => f.Clue).Where(c => names.IsSafety(c) && record.Told.All(t => !string.Equals(t.Clue, c, StringComparison.Ordinal))).ToList();
        if (left.Count > 0 && record.Given is { } given && given.With([]).Ordered) yield return Words.Of("record.not-looked", ("looks", Spoken.List([.. left.Select(names.Clue)])));
    }

    RecordNames NamesOf(JobRecord record) => new(_sorts.Find(record.Family.Topic));

    static IEnumerable<string> PartFigures(PartJudged p, RecordNames names)
    {
        var shown = p.Classes.Where(c => c.Belief >= Least || c == p.Leading || (p.Said is not null && c.Kinds.Contains(p.Said))).OrderByDescending(c => c.Belief).ToList();
        var rest = p.Classes.Except(shown).Sum(c => c.Belief);
        var classes = string.Join("; ", shown.Select(c => $"{names.Class(p.Part, c.Kinds)} {Share(c.Belief)}").Concat(shown.Count < p.Classes.Count ? [$"{Words.Of("record.others")} {Share(rest)}"] : Array.Empty<string>()));
        yield return Words.Of(p.Own ? "record.part-own" : "record.part", ("part", Spoken.Capital(names.Part(p.Part))), ("classes", classes), ("level", Share(p.Level)), ("said", names.Kind(p.Part, p.Said)));
        yield return p.By switch
        {
            JudgedBy.Accepted => Words.Of("record.by-accepted"),
            JudgedBy.StopSign => Words.Of("record.by-stop"),
            JudgedBy.TooEarly => Words.Of("record.by-early"),
            _ => Words.Of(
                "record.part-formula", ("top", Share(Math.Max(p.Leading.Belief, p.Level))), ("named", Share(p.Named)), ("level", Share(p.Level)), ("mark", OfHundred(p.Mark))),
        };
    }

    static IEnumerable<string> OrderFigures(OrderJudged o, RecordNames names)
    {
        var best = Words.Of("record.order", ("best", names.Choice(o.Best)), ("least", Spoken.Money(o.Least)), ("chosen", names.Choice(o.Chosen)), ("loss", o.Loss is { } l ? Spoken.Money(l) : Words.Of("record.no-loss")), ("asking", Spoken.Money(o.Asking)));
        yield return best;
        yield return o.By switch
        {
            JudgedBy.Accepted => Words.Of("record.by-accepted"),
            JudgedBy.TooEarly => Words.Of("record.by-early"),
            _ => Words.Of("record.order-formula", ("loss", Spoken.Money(o.Loss ?? o.Least)), ("least", Spoken.Money(o.Least)), ("asking", Spoken.Money(o.Asking)), ("mark", OfHundred(o.Mark))),
        };
    }

    static string Part(PartJudged? p, RecordNames names)
    {
        if (p is null) return "";
        var leading = names.Class(p.Part, p.Leading.Kinds);
        var chance = Spoken.Twentieths(p.Leading.Belief);
        var whose = Words.Of(p.Own ? "record.your-readings" : "record.your-checks");
        if (p.Said is null) return Words.Of("record.short.settled", ("whose", whose), ("leading", leading), ("chance", chance));
        return p.Leading.Kinds.Contains(p.Said)
            ? Words.Of("record.short.thin", ("leading", leading), ("chance", chance), ("level", Spoken.Twentieths(p.Level)))
            : Words.Of("record.short.other", ("said", names.Kind(p.Part, p.Said)), ("whose", whose), ("leading", leading), ("chance", chance));
    }

    static string Order(OrderJudged? o, RecordNames names) => o is null ? "" : Words.Of("record.short.order", ("chosen", names.Choice(o.Chosen)), ("best", names.Choice(o.Best)));

    static string Early(Judged judged, RecordNames names) => judged.Early is { } clue
        ? Words.Of("record.short.early", ("check", names.Clue(clue)), ("minutes", Words.Of("spoken.minutes", ("n", Spoken.Minutes(judged.EarlyMinutes)))))
        : Words.Of("record.short.early-any");

    static string Safety(Judged judged, RecordNames names) => judged.Safety switch
    {
        SafetyFault.Forced => Words.Of("record.short.forced"),
        SafetyFault.StopSign => Words.Of("record.short.stop", ("sign", judged.Stops.Count > 0 ? judged.Stops[0].TrimEnd('.') : "")),
        _ => Words.Of(
            "record.short.hurts", ("wrong", Spoken.Twentieths(judged.Thin?.Wrong ?? 0)), ("most", Words.Of("spoken.mark", ("n", Math.Round(100 * (1 - (judged.Thin?.Level ?? 1))))))),
    };

    static string Share(double share) => (100 * share).ToString("0.0", CultureInfo.InvariantCulture);

    static string Hundredths(string figure) => double.TryParse(figure, CultureInfo.InvariantCulture, out var mark) ? Words.Of("spoken.mark", ("n", Math.Round(100 * mark))) : figure;

    static string Written(Finding finding) => $"{finding.Clue}@{Dashed(finding.Channel)}={finding.Seen switch
    {
        Seen.Reading reading => $"{reading.Millimetres.ToString("0.###", CultureInfo.InvariantCulture)}mm",
        Seen.Named named => named.Id,
        _ => "cannot-be-seen",
    }}";

    static string Dashed(Channel channel) => channel.ToString().ToLowerInvariant();
}
