using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>What is known of a permission's sorts of jobs after use; one can be opened and found unfair.</summary>
/// <param name="Permission">The permission.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what was just done, or empty.</param>
sealed record UseScreen(string Permission, Screen Below, string Note = "") : ChoiceScreen
{
    /// <summary>The page of the only permission, or the choice of one.</summary>
    public static Turn Open(World world, Screen below)
    {
        var permissions = world.History.Assessments.Results.Select(r => r.Permission).Distinct(StringComparer.Ordinal).ToList();
        return permissions.Count switch
        {
            0 => Turn.To(new SignOffChooseScreen(Words.Of("use.title"), "", [Words.Of("results.none")], [Words.Of("sign.back")], (_, _, _) => Turn.To(below), below)),
            1 => Turn.To(new UseScreen(permissions[0], below)),
            _ => Turn.To(new SignOffChooseScreen(Words.Of("use.title"), "", [Words.Of("register.which")], permissions, (_, here, line) => Turn.To(new UseScreen(permissions[line], here)), below)),
        };
    }

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var use = AssessUse.Of(world.History, Permission);
        var sorts = new SortNames(world.Topics);
        return new Page(
            Words.Of("use.title"),
            Words.Of("result.quoted", ("permission", Permission)),
            [
                new Block.Text(Words.Of("use.per-sort")),
                new Block.Text(AssessUse.Reliability(use), 2),
                new Block.Text(AssessUse.Rasch(use), 2),
                .. world.History.Assessments.Unfair.Where(u => SortsHere(world).Contains(u.Family, StringComparer.Ordinal))
                    .Select(u => new Block.Text(Words.Of("use.unfair-line", ("sort", sorts.Of(u.Family)), ("said", UseFamily.Said(u)), ("people", UseFamily.People(world, u.Family, u.Version))), 2)),
                new Block.Gap(Drop: true),
                new Block.Table(
                    [new(Words.Of("whylist.sort")), new(Words.Of("use.sound"))],
                    Rows([.. use.Families.Select(f => (string[])[sorts.Of(f.Family), AssessUse.Share(f)]), [Words.Of("register.print"), ""]])),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => AssessUse.Of(world.History, Permission).Families.Count + 1;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var families = AssessUse.Of(world.History, Permission).Families;
        return line < families.Count ? UseFamily.Open(world, families[line], this with { Note = "" }) : new Turn(this, [], Sheet: new Sheet(
            Words.Of("use.file"), AssessPages.Use(world.History, world.Topics, Permission, world.Now), note => this with { Note = note }));
    }

    List<string> SortsHere(World world) => [.. world.History.Assessments.Results.Where(r => r.Permission == Permission).SelectMany(r => r.Jobs).Select(j => j.Family)];

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
