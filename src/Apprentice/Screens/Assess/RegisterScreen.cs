using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>One person and one permission: the evidence, what was signed, what is missing, and what the lead can do.</summary>
/// <param name="Person">Whose.</param>
/// <param name="Permission">Which.</param>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Note">A sentence about what was just done, or empty.</param>
sealed record RegisterScreen(string Person, string Permission, Screen Below, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var register = world.History.Assessments.RegisterOf(Person, Permission);
        return new Page(
            Words.Of("register.one", ("name", Person)),
            Words.Of("result.quoted", ("permission", Permission)),
            [
                new Block.Table([new(""), new("")], [.. AssessRegister.Lines(world.History, world.Topics, register, world.Now).Select(l => new Row("", Marked: false, [l.Label, l.Text]))]),
                new Block.Rule(Drop: true),
                new Block.Table([new("")], Rows(Lines(register).Select(l => (string[])[l.Name]))),
            ],
            [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.pause"), Words.Of("key.help")])
        {
            Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
        };
    }

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world.History.Assessments.RegisterOf(Person, Permission)).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Lines(world.History.Assessments.RegisterOf(Person, Permission))[line].Go(world);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(string Name, Func<World, Turn> Go)> Lines(Register register)
    {
        var here = this with { Note = "" };
        return
        [
            (Words.Of("register.bike"), _ => SignOffBike.Begin(Person, Permission, here)),
            (Words.Of("register.form"), world => Print(world, Words.Of("register.form-file"), AssessSignOffForm.Html(SignOffBike.TopicsOf(world, Permission), Person, Permission, register.Bench.Count, world.Now))),
            (Words.Of("register.second"), world => SignOffSign.Sign(world, register, PermissionLevel.WithSecondLook, here)),
            (Words.Of("register.order", ("n", register.RightInARow), ("of", Register.Orders)), world => SignOffSign.Order(world, register, here)),
            (Words.Of("register.alone"), world => SignOffSign.Sign(world, register, PermissionLevel.Alone, here)),
            .. register.Last is null || register.TakenBack is not null ? [] : new (string, Func<World, Turn>)[] { (Words.Of("register.takeback"), world => SignOffSign.TakeBack(world, register, here)) },
            (Words.Of("register.print"), world => Print(world, Words.Of("register.file"), AssessRegister.Html(world.History, world.Topics, [register], world.Now))),
        ];
    }

    Turn Print(World world, string name, string html) => new(this, [], Sheet: new Sheet(name, html, note => this with { Note = note }));
}
