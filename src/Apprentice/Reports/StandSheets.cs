using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Notebook;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>What stands on the sheets to take along.</summary>
static class StandSheets
{
    /// <summary>What to measure and to photograph before the shop is rung, in the order in which it helps.</summary>
    /// <param name="topics">The topics.</param>
    /// <param name="views">The questions of a bike, whose next checks go first; none for a sheet without a bike.</param>
    public static SheetPage Before(IReadOnlyList<Topic> topics, IReadOnlyList<StandView> views) => new(
        Words.Of("stand.before-title"),
        [
            new SheetSection(Words.Of("stand.before-first"), [.. topics.SelectMany(t => t.Clues).Where(c => c.Safety).Select(c => Asked(c)).Distinct(StringComparer.Ordinal), Words.Of("stand.before-stop")]),
            .. topics.Select(t => new SheetSection(Words.Of(views.Count > 0 ? "stand.before-ask" : "stand.before-ask-all", ("topic", t.Title)), [.. Order(t, views).Where(c => !c.Safety && On(c, Channel.Phone)).Select(Asked)])),
            .. topics.Select(t => new SheetSection(Words.Of("stand.before-photo", ("topic", t.Title)), [.. Order(t, views).Where(c => !c.Safety && On(c, Channel.Photo)).Select(c => $"{c.Name}: {c.FromTo}")])),
            new SheetSection(Words.Of("stand.before-say"), [Words.Of("stand.before-changed"), Words.Of("stand.before-from"), Words.Of("stand.before-twice"), Words.Of("stand.before-bring")]),
        ]);

    /// <summary>The job card: readings, decision, what is open, and three sentences for the customer.</summary>
    /// <param name="notebook">The notebook.</param>
    /// <param name="bike">The bike.</param>
    /// <param name="views">Its questions.</param>
    /// <param name="now">The time.</param>
    public static SheetPage Card(BenchNotebook notebook, Bike bike, IReadOnlyList<StandView> views, DateTimeOffset now) => new(
        Words.Of("stand.card-title", ("bike", StandWords.Title(bike)), ("day", StandWords.Day(now))),
        [
            new SheetSection(Words.Of("stand.card-stop"), [.. views.SelectMany(StandWords.Stops)]),
            new SheetSection(Words.Of("stand.card-found"), [.. views.SelectMany(Found)]),
            new SheetSection(Words.Of("stand.card-means"), Means(views)),
            new SheetSection(Words.Of("stand.card-order"), [.. views.SelectMany(v => Decided(notebook, v))]),
            new SheetSection(Words.Of("stand.card-open"), [.. views.Select(Open).Where(l => l.Length > 0)]),
            new SheetSection(Words.Of("stand.customer"), Customer(views)),
            new SheetSection(Words.Of("stand.card-note"), [Words.Of("own.list-only"), .. views.Any(Hurts) ? [Words.Of("own.hurt")] : Array.Empty<string>()]),
        ]);

    /// <summary>Three sentences for the customer: what it is, what happens now, and what if it does not fit. With several questions the first two for each.</summary>
    /// <param name="views">The questions.</param>
    public static IReadOnlyList<string> Customer(IReadOnlyList<StandView> views)
    {
        if (views.Any(v => v.Reasoning.Stops.Count > 0)) return [Words.Of("stand.tell-stop"), Words.Of("stand.tell-look"), Words.Of("stand.tell-call")];
        return
        [
            .. views.Count > 1
                ? views.Select(v => Words.Of("stand.tell-each", ("want", v.Want.Name), ("what", What(v)), ("happens", Happens(v))))
                : [.. views.Select(What), .. views.Select(Happens)],
            Words.Of(views.SelectMany(Choices).Any(c => c is Choice.Order) ? "stand.tell-back" : "stand.tell-metal"),
        ];
    }

    static string What(StandView view)
    {
        var words = new TopicWords(view.Topic);
        var kinds = view.Reasoning.Parts.Select(p => p.Settled
            ? Words.Of("stand.tell-is", ("part", words.Part(p.Part)), ("kind", words.Class(p.Part, p.Classes[p.Leading].Kinds)))
            : Words.Of("stand.tell-open", ("part", words.Part(p.Part)), ("kinds", string.Join($" {Words.Of("stand.tell-or")} ", p.Survivors.Take(3).Select(s => words.Class(p.Part, p.Classes[s].Kinds))))));
        return Words.Of("stand.tell-what", ("n", view.Findings.Count(f => f.Seen is not Seen.Hidden)), ("kinds", string.Join("; ", kinds.Select((k, i) => i == 0 ? k : Spoken.Lower(k)))));
    }

    static string Happens(StandView view)
    {
        var choice = Choices(view).FirstOrDefault();
        var words = new TopicWords(view.Topic);
        return choice switch
        {
            Choice.Order order => Words.Of("stand.tell-order", ("spare", words.Spare(order.Spare))),
            Choice.OrderTwo two => Words.Of("stand.tell-two", ("first", words.Spare(two.First)), ("second", words.Spare(two.Second))),
            Choice.Wait wait => Words.Of("stand.tell-wait", ("clue", words.Clue(wait.Clue))),
            _ => Words.Of("stand.tell-ask"),
        };
    }

    // What was decided; where nothing was, what would be advised.
    static IEnumerable<Choice> Choices(StandView view) =>
        OrderAdvice.Of(view.Topic, view.Want, view.Reasoning).Select(a => view.Bike.DecisionOf(view.Topic.Id, a.Line.Id)?.What.Choice ?? a.Best.Choice);

    static IReadOnlyList<string> Means(IReadOnlyList<StandView> views) => views.All(v => v.Reasoning.Stops.Count > 0)
        ? []
        : [.. views.SelectMany(v => StandWords.Standing(v).Concat(StandWords.Clash(v))), Words.Of("stand.not-listed")];

    static IEnumerable<string> Found(StandView view) =>
        view.Findings.Select(f => Words.Of("stand.found-line", ("clue", new TopicWords(view.Topic).Clue(f.Clue)), ("seen", StandWords.Finding(view.Topic, f))));

    static IEnumerable<string> Decided(BenchNotebook notebook, StandView view)
    {
        if (view.Reasoning.Stops.Count > 0) return StandWords.AfterStop();
        var lines = OrderAdvice.Of(view.Topic, view.Want, view.Reasoning).Select(a => Words.Of(
            "stand.line", ("line", a.Line.Name),
            ("choice", view.Bike.DecisionOf(view.Topic.Id, a.Line.Id) is { } decision ? StandOrder.Decided(notebook, view.Topic, decision) : Words.Of("stand.advised", ("choice", new TopicWords(view.Topic).Choice(a.Best.Choice))))));
        return [.. StandOrder.Cautions(view), .. lines, .. view.Want.AlsoChanges.Length > 0 ? [Words.Of("own.also", ("text", view.Want.AlsoChanges))] : Array.Empty<string>()];
    }

    static bool Hurts(StandView view) => view.Topic.Spares.Any(s => s.Hazard && view.Want.OrderLines.Any(l => string.Equals(l.Id, s.OrderLine, StringComparison.Ordinal)));

    static string Open(StandView view) => view.Next.Count == 0 && view.Reasoning.Parts.All(p => p.Settled) ? "" : StandWords.Next(view);

    static IEnumerable<Clue> Order(Topic topic, IReadOnlyList<StandView> views)
    {
        var next = views.Where(v => string.Equals(v.Topic.Id, topic.Id, StringComparison.Ordinal)).SelectMany(v => v.Next).ToList();
        return next.Concat(topic.Clues.Where(c => !next.Contains(c)));
    }

    static bool On(Clue clue, Channel channel) => clue.Channels.Any(c => c.Channel == channel);

    static string Asked(Clue clue) => Words.Of("stand.before-line", ("ask", clue.Ask.Length > 0 ? clue.Ask : clue.Name + "."), ("where", ClueWhere.Of(clue)), ("tool", clue.Tool));
}
