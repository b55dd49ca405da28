using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>Paper kits: making one to print, and entering answers by number. Results stand apart from those of papers.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what was just done, or empty.</param>
sealed record KitListScreen(Screen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("kit.title"),
        world.History.Workshop?.Name ?? "",
        [
            new Block.Text(Words.Of("kit.ask")),
            new Block.Gap(),
            new Block.Table([new("")], Rows([[Words.Of("kit.new")], [Words.Of("kit.enter")]])),
            .. world.History.Assessments.KitResults.Count == 0 ? Array.Empty<Block>() : [new Block.Rule(Drop: true), new Block.Text(Words.Of("kit.results"))],
            .. world.History.Assessments.KitResults.Reverse().Select(r => new Block.Text(AssessWords.Kit(r), 2)),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (here, all) = (this with { Note = "" }, world.History.Assessments);
        if (line == 0)
        {
            return all.Plans.Count switch
            {
                0 => Turn.To(this with { Note = Words.Of("kit.none") }),
                1 => Make(all.Plans[0], here),
                _ => Turn.To(new SignOffChooseScreen(Words.Of("kit.title"), "", [Words.Of("kit.which-plan")], [.. all.Plans.Select(p => p.Permission)], (_, _, plan) => Make(all.Plans[plan], here), here)),
            };
        }

        return all.Kits.Count == 0 ? Turn.To(this with { Note = Words.Of("kit.none-made") }) : Turn.To(new SignOffChooseScreen(
            Words.Of("kit.title"), "", [Words.Of("kit.which")], [.. all.Kits.Reverse().Select(Name)], (_, before, kit) => Turn.To(KitEntry.AskWho(all.Kits[all.Kits.Count - 1 - kit], before, here)), here));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static string Name(LogEntry.KitMade kit) => Words.Of("kit.kit", ("kit", kit.Kit), ("jobs", kit.Jobs), ("permission", kit.Permission));

    static Turn Make(TestPlan plan, KitListScreen here) => Turn.To(here) with { Errand = (world, folder) => Made(world, folder, plan, here) };

    static Turn Made(World world, PaperFolder folder, TestPlan plan, KitListScreen here)
    {
        try
        {
            var maker = new KitMaker(plan, world.Benches);
            var kit = maker.Make(Seal.NewPaperNumber(), Kit.Usual, Seal.NewSeed());
            var (box, code) = KitFile.Sealed(kit);
            var pages = new AssessKit(kit, world.Topics, maker.CaseOf);
            var sheets = folder.Write(Words.Of("kit.file-sheets", ("kit", kit.Id)), System.Text.Encoding.UTF8.GetBytes(pages.Sheets(world.Now)));
            var key = folder.Write(Words.Of("kit.file-key", ("kit", kit.Id)), System.Text.Encoding.UTF8.GetBytes(pages.Key(code, world.Now)));
            return Turn.To(new SignOffChooseScreen(
                Words.Of("kit.title"), "", [Words.Of("kit.made", ("kit", kit.Id)), Words.Of("kit.made-sheets", ("file", sheets)), Words.Of("kit.made-key", ("file", key)), Words.Of("kit.made-note")],
                [Words.Of("sign.back")], (_, _, _) => Turn.To(here), here), new LogEntry.KitMade(kit.Id, plan.Permission, kit.Jobs.Count, box));
        }
        catch (Exception e) when (e is ArgumentException or SealException)
        {
            return Turn.To(here with { Note = Words.Of("kit.failed", ("why", e.Message.TrimEnd('.'))) });
        }
    }
}
