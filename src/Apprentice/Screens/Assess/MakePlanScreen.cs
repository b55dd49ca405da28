using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Reports;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>For which permission papers are made.</summary>
/// <param name="Desk">The desk to go back to.</param>
sealed record MakePlanScreen(DeskScreen Desk) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("papers.title"),
        Words.Of("lead.right", ("lead", world.History.Workshop?.Lead ?? "")),
        [
            new Block.Text(Words.Of(Count(world) == 0 ? "papers.no-plan" : "papers.which")),
            new Block.Gap(),
            new Block.Table([new("")], Rows(world.History.Assessments.Plans.Select(p => (string[])[p.Permission]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.History.Assessments.Plans.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new MakeNamesScreen(Desk, world.History.Assessments.Plans[line], world.History.People, []));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Desk);
}

/// <summary>For whom papers are made.</summary>
/// <param name="Desk">The desk to go back to.</param>
/// <param name="Plan">The plan.</param>
/// <param name="Names">Names to choose from.</param>
/// <param name="Chosen">Names that are chosen.</param>
/// <param name="Note">What is wrong, or empty.</param>
sealed record MakeNamesScreen(DeskScreen Desk, TestPlan Plan, IReadOnlyList<string> Names, IReadOnlyList<string> Chosen, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("papers.title"),
        Plan.Permission,
        [
            new Block.Text(Words.Of("papers.who")),
            new Block.Gap(),
            new Block.Table([new(""), new(""), new("")], Rows(
            [
                .. Names.Select(n => (string[])[n, Words.Of(IsChosen(n) ? "workshop.on" : "workshop.off"), Met(world, n)]),
                [Words.Of("papers.add"), "", ""],
                [Words.Of("papers.make", ("n", Chosen.Count)), "", ""],
            ])),
            new Block.Gap(),
            new Block.Text(Words.Of("papers.fresh")),
        ],
        [Digits(world), Words.Of("key.enter-take"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Names.Count + 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        if (line == Names.Count) return Turn.To(new MakeNameScreen(this));
        if (line > Names.Count) return Chosen.Count == 0 ? Turn.To(this with { Note = Words.Of("papers.none") }) : DeskDoor.Through(world, this, Made);
        var name = Names[line];
        return Turn.To(this with { Note = "", Chosen = [.. Names.Where(n => n == name ? !IsChosen(n) : IsChosen(n))] });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(new MakePlanScreen(Desk));

    bool IsChosen(string name) => Chosen.Contains(name, StringComparer.Ordinal);

    string Met(World world, string name)
    {
        var (met, of) = world.History.Assessments.MetBefore(name, Plan);
        var sorts = met == 0 ? "" : Words.Of("papers.met-note", ("met", met), ("of", of));
        if (Plan.RealBikes == 0) return sorts;
        var real = RealOffer.Of([.. world.Topics.Where(t => Plan.Topics.Any(p => p.Id == t.Id))], world.History.Notebook, world.History.Assessments, name);
        return real.Met == 0 ? sorts : string.Join("; ", ((string[])[sorts, Words.Of("papers.real-note", ("met", real.Met), ("there", real.Met + real.Fresh.Count))]).Where(t => t.Length > 0));
    }

    Turn Made(World opened) => Turn.To(this) with
    {
        Errand = (w, folder) =>
        {
            try
            {
                var made = DeskWork.Make(Plan, w.Benches, w.History.Assessments, w.History.Notebook, Chosen, opened.DeskKey ?? [], folder);
                return Turn.To(new MadeScreen(Desk, made, folder.Path), [.. made.Select(m => m.Entry)]);
            }
            catch (Exception e) when (e is SealException or ArgumentException)
            {
                return Turn.To(this with { Note = Words.Of("papers.failed", ("why", e.Message.Split(" (Parameter", 2)[0])) });
            }
        },
    };
}

/// <summary>The name of a candidate who has no name at this machine yet.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record MakeNameScreen(MakeNamesScreen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("papers.title"),
        Below.Plan.Permission,
        [new Block.Text(Words.Of("papers.name")), new Block.Gap(), .. Field(Words.Of("workshop.field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string typed)
    {
        var text = world.History.Called.OfTyped(typed);
        if (text.Length == 0) return Turn.To(this with { Wrong = Words.Of("papers.name-none") });
        if (Below.Names.Contains(text, StringComparer.OrdinalIgnoreCase)) return Turn.To(this with { Wrong = Words.Of("papers.name-twice") });
        return Turn.To(Below with { Names = [.. Below.Names, text], Chosen = [.. Below.Chosen, text], Note = "" });
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>Papers that were made: their codes are shown once.</summary>
/// <param name="Desk">The desk to go back to.</param>
/// <param name="Made">The papers.</param>
/// <param name="Folder">Where they lie.</param>
/// <param name="Note">Where the print lies, or empty.</param>
sealed record MadeScreen(DeskScreen Desk, IReadOnlyList<MadePaper> Made, string Folder, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("papers.made"),
        Made[0].Entry.Permission,
        [
            new Block.Text(Words.Of("papers.made-once")),
            new Block.Gap(Drop: true),
            new Block.Table(
                [new(Words.Of("sit.pick-who")), new(Words.Of("sit.pick-paper")), new(Words.Of("papers.code")), new(Words.Of("papers.met"))],
                [.. Made.Select(m => new Row("", Marked: false, [m.Entry.Candidate, m.Entry.Paper, m.Code, Words.Of("papers.met-of", ("met", m.Met), ("of", m.Of))]))]),
            .. Made.Select(RealText.Made).OfType<string>().Select(t => new Block.Text(t)),
            new Block.Gap(Drop: true),
            new Block.Text(Words.Of("papers.made-keep")),
            new Block.Text(Words.Of("papers.made-where", ("folder", Folder))),
            new Block.Gap(Drop: true),
            new Block.Table([new("")], Rows([[Words.Of("papers.made-print")], [Words.Of("papers.made-done")]])),
        ],
        [Digits(world), Words.Of("key.enter-go")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 1
        ? Turn.To(Desk)
        : new Turn(this, [], Sheet: new Sheet(Words.Of("papers.file"), ReportText.Of(DeskSheets.Codes(world, Made), "html"), note => this with { Note = note }));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(this);
}
