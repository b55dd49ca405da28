using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>The register: who may do what, and how far they are.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what was just done, or empty.</param>
sealed record RegisterListScreen(Screen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("register.title"),
        world.History.Workshop?.Name ?? "",
        [
            new Block.Text(Words.Of(world.History.Assessments.Registers.Count == 0 ? "register.none" : "register.ask")),
            new Block.Gap(Drop: true),
            new Block.Table(
                [new(Words.Of("results.who")), new(Words.Of("results.permission")), new(Words.Of("register.state")), new(Words.Of("register.until"))],
                Rows([.. world.History.Assessments.Registers.Select(r => Cells(world, r)), [Words.Of("register.new"), "", "", ""], [Words.Of("register.print-all"), "", "", ""]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => world.History.Assessments.Registers.Count + 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line)
    {
        var here = this with { Note = "" };
        var registers = world.History.Assessments.Registers;
        if (line < registers.Count) return Turn.To(new RegisterScreen(registers[line].Person, registers[line].Permission, here));
        return line == registers.Count ? New(world, here) : new Turn(this, [], Sheet: new Sheet(
            Words.Of("register.file"), AssessRegister.Html(world.History, world.Topics, registers, world.Now), note => this with { Note = note }));
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    Turn New(World world, Screen here)
    {
        var (people, plans) = (world.History.People, world.History.Assessments.Plans);
        if (people.Count == 0 || plans.Count == 0) return Turn.To(this with { Note = Words.Of(people.Count == 0 ? "register.nobody" : "register.no-plan") });
        return Turn.To(new SignOffChooseScreen(Words.Of("register.title"), "", [Words.Of("register.who")], people, (_, who, person) => Turn.To(new SignOffChooseScreen(
            Words.Of("register.title"), people[person], [Words.Of("register.which")], [.. plans.Select(p => p.Permission)], (_, _, plan) => Turn.To(new RegisterScreen(people[person], plans[plan].Permission, here)), who)), here));
    }

    static string[] Cells(World world, Register register)
    {
        var state = AssessRegister.State(register, world.Topics, world.Now);
        return [register.Person, register.Permission, state, register.Last is { } last && register.TakenBack is null ? AssessWords.Day(last.Expires) : ""];
    }
}
