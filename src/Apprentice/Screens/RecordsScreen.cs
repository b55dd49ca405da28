using Apprentice.Content;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>A person's own records: PIN, export, move to another machine, erase, and the name.</summary>
/// <param name="Person">Whose.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">Where a file lies, or empty.</param>
sealed record RecordsScreen(string Person, Screen Below, string Note = "") : ChoiceScreen
{
    static readonly string[] Forms = ["html", "csv", "json"];

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("records.title"),
        Person,
        [
            new Block.Text(Words.Of("records.ask")),
            new Block.Gap(),
            new Block.Table([new(""), new("")], Rows(
            [
                [Words.Of(world.History.Pins.ContainsKey(Person) ? "records.pin-change" : "records.pin"), Words.Of("records.pin-note")],
                [Words.Of("records.html"), Words.Of("records.html-note")],
                [Words.Of("records.csv"), Words.Of("records.csv-note")],
                [Words.Of("records.json"), Words.Of("records.json-note")],
                [Words.Of("records.move"), Words.Of("records.move-note")],
                [Words.Of("records.erase"), Words.Of("records.erase-note")],
                [Words.Of("records.name"), Words.Of("records.name-note")],
            ])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => 7;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line switch
    {
        0 => Turn.To(new PinSetScreen(Person, this)),
        4 => new Turn(this, [], Sheet: new Sheet(Words.Of("records.move-file"), "", n => Noted($"{n} {Words.Of("records.moved")}")) { Moves = Person }),
        5 => Turn.To(new EraseScreen(Person, this)),
        6 => Turn.To(new RenameScreen(Person, now => this with { Person = now, Note = Words.Of("rename.done", ("name", now)) }, this with { Note = "" })),
        _ => Export(world, Forms[line - 1]),
    };

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    Turn Export(World world, string form)
    {
        var report = LearnerReport.Of(world.History, world.Topics, Person, world.Now);
        return new Turn(this, [], Sheet: new Sheet(Words.Of("records.file", ("form", form)), ReportText.Of(report, form), Noted));
    }

    RecordsScreen Noted(string note) => this with { Note = note };
}
