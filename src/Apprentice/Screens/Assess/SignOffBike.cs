using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens.Assess;

/// <summary>A real bike on the bench: the lead's readings are typed beside the candidate's before either is shown, then part and order, then three spoken questions.</summary>
/// <param name="Person">The candidate.</param>
/// <param name="Permission">The permission.</param>
/// <param name="Below">The register.</param>
sealed record SignOffBike(string Person, string Permission, Screen Below)
{
    const int MostReadings = 4;

    /// <summary>The bike in a few words.</summary>
    public string Bike { get; init; } = "";

    /// <summary>True when it is the odd one.</summary>
    public bool Odd { get; init; }

    /// <summary>Who looks on.</summary>
    public string By { get; init; } = "";

    /// <summary>Readings of both so far; the last one is part and order.</summary>
    public IReadOnlyList<BenchReading> Readings { get; init; } = [];

    /// <summary>True when part and order agree.</summary>
    public bool Agreed { get; init; }

    /// <summary>The first line of the form.</summary>
    public static Turn Begin(string person, string permission, Screen below) => Turn.To(new SignOffBike(person, permission, below).AskBike());

    SignOffAskScreen AskBike() => new(Title, Person, [Words.Of("bike.form"), Words.Of("bike.which")], Words.Of("bike.bike"),
        (world, here, text) => Turn.To((this with { Bike = text }).AskBy(here, Lead(world))), Below);

    SignOffAskScreen AskBy(Screen before, string lead) => new(
        Title, Person, [lead.Length > 0 ? Words.Of("bike.who-or", ("lead", lead)) : Words.Of("bike.who")], Words.Of("bike.name"),
        (world, here, text) => IsSelf(world, text, Person) ? here.Again(Words.Of("bike.not-self")) : Turn.To((this with { By = text }).AskOdd(here)), before)
    {
        Otherwise = lead,
    };

    SignOffChooseScreen AskOdd(Screen before) => new(Title, Person, [Words.Of("bike.odd")], [Words.Of("bike.odd-no"), Words.Of("bike.odd-yes")],
        (world, here, line) => Turn.To((this with { Odd = line == 1 }).AskWhat(world, here)), before);

    SignOffChooseScreen AskWhat(World world, Screen before)
    {
        var clues = Topics(world).SelectMany(t => t.Clues).Where(c => !c.Safety && c.Shows is not Shows.Table { Findings.Count: 0 } && c.Channels.Any(x => x.Channel == Channel.Bench)).Select(c => c.Name).Distinct(StringComparer.Ordinal).ToList();
        var enough = Readings.Count > 0;
        return new SignOffChooseScreen(
            Title, Person, [Words.Of(enough ? "bike.what-more" : "bike.what", ("n", Readings.Count))], [.. enough ? [Words.Of("bike.no-more")] : Array.Empty<string>(), .. clues],
            (_, here, line) => enough && line == 0 ? Turn.To(AskLead(here, Words.Of("bike.part"))) : Turn.To(AskLead(here, clues[line - (enough ? 1 : 0)])), before);
    }

    // Both type before either is shown: the screen shows stars only.
    SignOffAskScreen AskLead(Screen before, string what) => new(Title, Person, [Words.Of("bike.lead", ("name", By), ("what", Spoken.Lower(what)), ("other", Person))], Words.Of("bike.reading"),
        (_, here, text) => Turn.To(AskCandidate(here, what, text)), before)
    {
        Hidden = true,
    };

    SignOffAskScreen AskCandidate(Screen before, string what, string lead) => new(Title, Person, [Words.Of("bike.lead", ("name", Person), ("what", Spoken.Lower(what)), ("other", By))], Words.Of("bike.reading"),
        (world, here, text) => (this with { Readings = [.. Readings, new BenchReading(what, lead, text)] }).Next(world, here, what), before)
    {
        Hidden = true,
    };

    Turn Next(World world, Screen here, string what)
    {
        if (Same(what, Words.Of("bike.part"))) return Turn.To(AskAgreed(here));
        return Turn.To(Readings.Count >= MostReadings ? AskLead(here, Words.Of("bike.part")) : AskWhat(world, here));
    }

    SignOffChooseScreen AskAgreed(Screen before) => new(Title, Person, [Words.Of("bike.both")], [Words.Of("bike.agree"), Words.Of("bike.differ")],
        (world, here, line) => Turn.To((this with { Agreed = line == 0 }).AskWhy(world, here, 0, 0)), before)
    {
        Table = [[Words.Of("bike.read-what"), By, Person], .. Readings.Select(r => (string[])[r.What, r.Lead, r.Candidate])],
    };

    SignOffChooseScreen AskWhy(World world, Screen before, int nth, int good)
    {
        var questions = WhyQuestions.For(Topics(world), world.History.Assessments.RegisterOf(Person, Permission).Bench.Count);
        return new SignOffChooseScreen(
            Title, Person, [Words.Of("bike.why", ("n", nth + 1), ("of", questions.Count), ("question", questions[nth].Question)), Words.Of("bike.good", ("text", questions[nth].Good))],
            [Words.Of("bike.why-good"), Words.Of("bike.why-not")],
            (then, here, line) => nth + 1 < questions.Count ? Turn.To(AskWhy(then, here, nth + 1, good + 1 - line)) : Done(then, good + 1 - line), before);
    }

    Turn Done(World world, int good) => Turn.To(
        Below is RegisterScreen register ? register with { Note = Words.Of(Agreed ? "bike.kept" : "bike.kept-differ") } : Below,
        new LogEntry.BenchDone(Person, Permission, new BenchForm(DateOnly.FromDateTime(world.Now.Date), Bike, Odd, By, Readings, Agreed, good)));

    IReadOnlyList<Topic> Topics(World world) => TopicsOf(world, Permission);

    /// <summary>Topics of a permission that are at hand; all when there is no plan for it.</summary>
    public static IReadOnlyList<Topic> TopicsOf(World world, string permission)
    {
        var planned = world.History.Assessments.Plan(permission)?.Topics.Select(t => t.Id).ToList();
        return planned is null ? world.Topics : [.. world.Topics.Where(t => planned.Contains(t.Id, StringComparer.Ordinal))];
    }

    static string Title => Words.Of("bike.title");

    /// <summary>Who leads here, or empty.</summary>
    public static string Lead(World world) => world.History.Workshop?.Lead ?? world.History.Assessments.Desk?.Lead ?? "";

    /// <summary>True when a name that was typed is the person's own, now or before it was corrected.</summary>
    public static bool IsSelf(World world, string typed, string person) => Same(world.History.Called.OfTyped(typed), person);

    static bool Same(string one, string other) => string.Equals(one.Trim(), other.Trim(), StringComparison.OrdinalIgnoreCase);
}
