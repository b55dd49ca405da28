using Apprentice.Content;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>Sheets to take along: before the shop is rung, and the job card; as text or as a page to print.</summary>
/// <param name="Below">The bike.</param>
/// <param name="Note">Where the sheet lies, or empty.</param>
sealed record SheetsScreen(BikeScreen Below, string Note = "") : ChoiceScreen
{
    static readonly string[] Names = ["stand.sheet-before", "stand.sheet-before-html", "stand.sheet-card", "stand.sheet-card-html"];

    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        StandWords.Title(Below.Of(world)),
        Words.Of("stand.do-sheets"),
        [
            new Block.Text(Words.Of("stand.sheets")),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Names.Select(n => (string[])[Words.Of(n)]))),
            new Block.Rule(Drop: true),
            .. StandSheets.Customer(Below.Views(world)).Prepend(Words.Of("stand.customer") + ":").Select((s, i) => new Block.Text(s, i == 0 ? 0 : 2)),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Names.Length;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var (bike, views) = (Below.Of(world), Below.Views(world));
        var page = line < 2 ? StandSheets.Before([.. views.Select(v => v.Topic)], views) : StandSheets.Card(world.History.Notebook, bike, views, world.Now);
        var file = Words.Of(line < 2 ? "stand.file-before" : "stand.file-card", ("n", bike.Number)) + (line % 2 == 0 ? ".txt" : ".html");
        return new Turn(this, [], Sheet: new Sheet(file, line % 2 == 0 ? page.Text() : page.Html(), note => this with { Note = note }));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}
