using Apprentice.Content;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;

namespace Apprentice.Screens;

/// <summary>The grade: what the bike really was, the sentence in short, each part in words, what each check said.</summary>
/// <param name="On">The job.</param>
/// <param name="Given">The answer.</param>
/// <param name="Grade">The grade.</param>
/// <param name="Past">True when it was opened again from the list of past jobs.</param>
/// <param name="Note">A sentence about the last key, or empty.</param>
sealed record GradeScreen(BenchJob On, Given Given, Grade Grade, bool Past = false, string Note = "") : Screen
{
    /// <summary>Where a grade that was opened again goes back to, or null for the list of past jobs.</summary>
    public Screen? Below { get; init; }

    int Charted => Grade.Reasoning.Parts.ToList().IndexOf(GradeChart.First(On, Given, Grade));

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override int? Job => On.Number;

    /// <summary>Hands an answer in: the grade, and its entry for the log.</summary>
    public static Turn HandIn(AnswerForm form)
    {
        var given = form.Given();
        var grade = form.On.Grade(given);
        return Turn.To(new GradeScreen(form.On, given, grade), new LogEntry.Answered(form.On.Number, given, Verdict.Of(grade)) { Observed = form.On.Observe(given, grade) });
    }

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var words = new TopicWords(On.Topic);
        var telling = new Telling(On.Topic, On.Made.Job.Bench);
        return new Page(
            Words.Of("grade.title", ("job", On.Number)),
            On.Guided ? Words.Of("job.guided") : world.Who,
            [
                new Block.Table([new(""), new("")], [.. Head(words, telling).Select(r => new Row("", Marked: false, r))]),
                .. Warnings(telling).Concat(Notes(world)).Select(n => new Block.Text(n)),
                new Block.Rule(),
                new Block.Table([new(""), new(""), new("")], [.. Grade.Parts.Select(p => new Row("", Marked: false, Marks(p, telling)))]),
                new Block.Rule(),
                GradeChart.Of(On, Grade, Grade.Reasoning.Parts[Charted], words),
                .. Remarks(telling).SelectMany(r => new Block[] { new Block.Gap(Drop: true), new Block.Text(r) }),
            ],
            [
                Words.Of("grade.keys-next"), Words.Of("grade.keys-why"), Words.Of("grade.keys-unused"), Words.Of("grade.keys-card"),
                Words.Of("grade.keys-wrong"), .. Grade.Readings.Count > 0 ? [Words.Of("grade.keys-readings")] : Array.Empty<string>(),
                .. Grade.Reasoning.Parts.Count > 1 ? [Words.Of("grade.keys-chart")] : Array.Empty<string>(), Words.Of("key.back"),
            ]);
    }

    /// <inheritdoc/>
    public override Turn Press(World world, Input key)
    {
        var here = this with { Note = "" };
        return key.Letter switch
        {
            'W' or '1' => Turn.To(new WhyScreen(here)),
            'U' or '2' => Turn.To(new UnusedScreen(here, [])),
            'L' or '3' => Turn.To(new CardsScreen(here)),
            'X' or '4' => Turn.To(new WrongScreen(here)),
            'R' or '5' when Grade.Readings.Count > 0 => Turn.To(ReadingsScreen.Of(here)),
            'C' or '6' when Grade.Reasoning.Parts.Count > 1 => Turn.To(new PartChartScreen(here, (Charted + 1) % Grade.Reasoning.Parts.Count)),
            _ when key.IsBack => Turn.To(Leave(world, Past ? Below ?? new PastScreen() : On.Session?.End ?? new HomeScreen())),
            _ when key.Press == Screens.Press.Enter => Past ? Turn.To(Below ?? new PastScreen()) : Next(world),
            _ => Turn.To(here),
        };
    }

    Turn Next(World world) => IsNameless(world) ? Turn.To(Leave(world, this)) : On.Session is { } session ? session.Next(world) : Start.Today(world);

    Screen Leave(World world, Screen otherwise) => !Past && IsNameless(world) ? new NameScreen(On.Number) : otherwise;

    bool IsNameless(World world) => On.Session?.End is null && world.Person is null && On.Guided && world.History.People.Count == 0;

    /// <summary>Remarks about safety stand above the marks.</summary>
    IEnumerable<string> Warnings(Telling telling) => Grade.Remarks.Where(IsWarning).Select(telling.Of);

    /// <summary>What is not already said beside a mark.</summary>
    IEnumerable<string> Remarks(Telling telling) => Grade.Remarks.Where(r => !IsWarning(r)).Select(telling.Of).Except(Grade.Parts.Select(p => telling.Of(p.Remark)), StringComparer.Ordinal);

    IEnumerable<string[]> Head(TopicWords words, Telling telling)
    {
        var parts = On.Topic.Parts.Select(p => p.Id).ToList();
        var was = On.Want.Asks.Select(p => words.Kind(p, On.Made.Truth.Kinds[parts.IndexOf(p)])).ToList();
        var story = On.Made.Truth.Story.Select(words.Tag).Distinct(StringComparer.Ordinal).ToList();
        yield return [Words.Of("grade.short"), InShort(telling)];
        yield return
        [
            Words.Of("grade.was"),
            string.Join("; ", was) + ". " + (story.Count == 0
                ? Spoken.Capital(Words.Of("story.nothing")) + "."
                : Words.Of("grade.happened", ("story", Spoken.List(story)))),
        ];
        yield return
        [
            Words.Of("grade.said"),
            string.Join("; ", Given.Parts.Select(p => $"{words.Kind(p.Part, p.Kind)}, {Sure(p)}")) + ". "
                + string.Join(" ", Given.Orders.Select((o, i) => Ordered(i, words.Choice(o)))) + (Given.Forced ? " " + Words.Of("grade.forced") : ""),
        ];
    }

    IEnumerable<string> Notes(World world)
    {
        if (Note.Length > 0) yield return Note;
        if (IsArguable) yield return Words.Of("grade.open");
        if (world.History.Jobs.Count >= On.Number && world.History.Jobs[On.Number - 1].Questions.Count > 0) yield return Words.Of("grade.questioned");
    }

    /// <summary>The sentence in short; it does not praise the reason where the mark beside "Reason" does not.</summary>
    string InShort(Telling telling) =>
        Grade.InShort == Engine.Grading.InShort.RightForTheRightReason && Grade.Parts.Any(p => p.Aspect == Aspect.Evidence && p.Word != MarkWord.Good)
            ? Words.Of("grade.short.right-only")
            : telling.Of(Grade.InShortRemark);

    /// <summary>An order in words; its line stands before it where there are several.</summary>
    string Ordered(int line, string choice) => On.Want.OrderLines.Count > 1 ? $"{On.Want.OrderLines[line].Name}: {choice}." : Spoken.Capital(choice) + ".";

    /// <summary>Open to argument, and nothing beside it says "not yet": both together only confuse.</summary>
    bool IsArguable => Grade.OpenToArgument && Grade.Parts.All(p => p.Aspect is not (Aspect.Identification or Aspect.Decision) || p.Word != MarkWord.NotYet);

    static bool IsWarning(Remark remark) => remark.Key.Split('.') is [_, "safety", ..];

    static string[] Marks(GradePart part, Telling telling) => [Words.Of($"aspect.{part.Aspect}"), Words.Of($"mark.{part.Word}"), telling.Of(part.Remark)];

    static string Sure(PartAnswer part) => part.Tenths >= 10 ? Words.Of("grade.certain") : Words.Of("grade.sure", ("tenths", part.Tenths));
}
