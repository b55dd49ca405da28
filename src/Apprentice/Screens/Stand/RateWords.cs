using Apprentice.Content;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Learned figures in words.</summary>
static class RateWords
{
    /// <summary>What it is the figure of.</summary>
    public static string Name(Topic topic, Learned learned) => learned.Sort switch
    {
        LearnedSort.EventRate when learned.In == AskedBikes.Id => topic.Events.First(e => e.Id == learned.Of).Story,
        LearnedSort.LineShare when learned.In == AskedBikes.Id => Words.Of("stand.rates-line-alone", ("what", topic.Lines.First(l => l.Id == learned.Of).Name)),
        LearnedSort.EventRate => Words.Of("stand.rates-event", ("what", topic.Events.First(e => e.Id == learned.Of).Story), ("where", Provenance(topic, learned.In))),
        LearnedSort.LineShare => Words.Of("stand.rates-line", ("what", topic.Lines.First(l => l.Id == learned.Of).Name), ("where", Provenance(topic, learned.In))),
        LearnedSort.Spread => Words.Of("stand.rates-spread", ("what", topic.Dimensions.First(d => d.Id == learned.Of).Name), ("where", topic.Parts.First(p => p.Id == topic.Dimensions.First(d => d.Id == learned.Of).Part).Kinds.First(k => k.Id == learned.In).Name)),
        _ => Words.Of("stand.rates-window", ("what", Spoken.List([.. topic.Packages.First(p => p.Id == learned.Of).Parts.Select(new TopicWords(topic).Part)]))),
    };

    /// <summary>The figure: bikes of 100, mm, or months.</summary>
    public static string Figure(Learned learned, double value) => learned.Sort switch
    {
        LearnedSort.Spread => Words.Of("spoken.mm", ("n", value.ToString("0.0#"))),
        LearnedSort.Window => value.ToString("0.0"),
        _ => (100 * value).ToString("0.#"),
    };

    /// <summary>What was seen.</summary>
    public static string Seen(Learned learned) => learned.Sort is LearnedSort.Spread
        ? Words.Of("stand.rates-bikes", ("bikes", learned.Bikes))
        : Words.Of("stand.rates-seen-cell", ("hits", learned.Hits), ("bikes", learned.Bikes));

    /// <summary>Months as they are said: "September 2012 to July 2013, told for May 2013".</summary>
    public static string Months(Window window) => Words.Of(
        window.Opens == window.Closes ? "stand.months-one" : window.Told == window.Closes ? "stand.months" : "stand.months-told",
        ("opens", Month(window.Opens)), ("closes", Month(window.Closes)), ("told", Month(window.Told)));

    /// <summary>The columns of a table of figures: figure, before, seen, now, between.</summary>
    public static IReadOnlyList<Column> Columns =>
    [
        new(Words.Of("stand.rates-figure")), new(Words.Of("stand.rates-before"), Right: true), new(Words.Of("stand.rates-seen"), Right: true),
        new(Words.Of("stand.rates-now"), Right: true), new(Words.Of("stand.rates-between"), Right: true, Drop: true),
    ];

    /// <summary>A figure as the cells of its row.</summary>
    public static string[] Cells(Topic topic, Learned learned) =>
        [Name(topic, learned), Figure(learned, learned.Before), Seen(learned), Figure(learned, learned.Now), $"{Figure(learned, learned.Low)} - {Figure(learned, learned.High)}"];

    static string Month(Month month) => new DateTime(month.Year, month.OfYear, 1).ToString("MMMM yyyy");

    static string Provenance(Topic topic, string id) => topic.Provenances.First(p => p.Id == id).Name;
}
