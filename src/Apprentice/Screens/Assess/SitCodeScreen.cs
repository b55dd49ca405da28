using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>Asks for the one-time code that opens a paper. The lead types it.</summary>
/// <param name="File">The sealed file.</param>
/// <param name="Folder">Where it lies, and where the result goes.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SitCodeScreen(byte[] File, string Folder, Screen Below) : FieldScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override bool Pauses => false;

    /// <inheritdoc/>
    public override Page Show(World world)
    {
        var (paper, sealedFor, number, permission) = PaperFile.Outside(File);
        var candidate = world.History.Called.Of(sealedFor);
        return new Page(
            Words.Of("sit.title", ("paper", paper)),
            candidate,
            [
                new Block.Text(Words.Of("sit.for", ("candidate", candidate), ("number", number), ("permission", permission))),
                new Block.Gap(),
                new Block.Text(Words.Of("sit.code")),
                new Block.Gap(),
                .. (this with { Typed = new string('*', Math.Min(Typed.Length, 40)) }).Field(Words.Of("sit.code-field")),
                new Block.Text(Words.Of("sit.code-keep")),
            ],
            [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);
    }

    /// <inheritdoc/>
    protected override Turn Take(World world, string text)
    {
        try
        {
            var opened = PaperFile.OpenByCode(File, text);
            return Opened(world, new Seat(opened.Paper, opened.SittingKey, File, Folder));
        }
        catch (SealException e)
        {
            return Wronged(e.Message);
        }
    }

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    Turn Wronged(string why) => Turn.To(this with { Typed = "", Wrong = why });

    Turn Opened(World world, Seat seat)
    {
        if (seat.Fault(world.BenchesOf(seat.Paper)) is { } fault) return Wronged(fault);
        var all = world.History.Assessments;
        return all.SittingOf(seat.Paper.Id) switch
        {
            { End: null } open => Turn.To(new SitResumeScreen(seat, open, Below)),
            { } => Turn.To(new SitAgainScreen(seat, Below)),
            null when all.Result(seat.Paper.Id) is not null => Turn.To(new SitAgainScreen(seat, Below)),
            null => Turn.To(new SitWhoScreen(seat, Below)),
        };
    }
}

/// <summary>A paper that cannot be opened, and why.</summary>
/// <param name="Why">The sentence.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SitNoScreen(string Why, Screen Below) : Screen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(Words.Of("sit.no"), "", [new Block.Text(Why)], [Words.Of("key.enter-ok"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    public override Turn Press(World world, Input key) => Turn.To(key.IsBack || key.Press == Screens.Press.Enter ? Below : this);
}

/// <summary>A sitting that was broken off: it goes on with the time that was left.</summary>
/// <param name="Seat">The paper.</param>
/// <param name="Known">What the log says of it.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SitResumeScreen(Seat Seat, Sitting Known, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override bool Slow => true;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.title", ("paper", Seat.Paper.Id)),
        world.History.Called.Of(Seat.Paper.Candidate),
        [
            new Block.Text(Words.Of("sit.resume", ("candidate", world.History.Called.Of(Seat.Paper.Candidate)), ("answered", Known.Answered), ("places", Known.Places), ("minutes", (int)(Known.Allowed - Known.Used).TotalMinutes))),
            new Block.Gap(),
            new Block.Text(Words.Of("sit.resume-clock")),
            new Block.Gap(),
            new Block.Table([new("")], Rows([[Words.Of("sit.go-on")], [Words.Of("sit.not-now")]])),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back")]);

    /// <inheritdoc/>
    protected override int Count(World world) => 2;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => line == 0 ? Sit.Resume(world, Seat, Known) : Back(world);

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>A paper that was sat: its result is written once more, or after the talk its fresh safety jobs are sat, or the new job of an appeal.</summary>
/// <param name="Seat">The paper.</param>
/// <param name="Below">The screen to go back to.</param>
sealed record SitAgainScreen(Seat Seat, Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("sit.title", ("paper", Seat.Paper.Id)),
        world.History.Called.Of(Seat.Paper.Candidate),
        [
            new Block.Text(Words.Of("sit.sat", ("candidate", world.History.Called.Of(Seat.Paper.Candidate)))),
            new Block.Gap(),
            new Block.Table([new("")], Rows(Lines(world).Select(l => (string[])[l.Name]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back")]);

    /// <inheritdoc/>
    protected override int Count(World world) => Lines(world).Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Lines(world)[line].Go();

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    List<(string Name, Func<Turn> Go)> Lines(World world)
    {
        var sat = world.History.Assessments.SittingOf(Seat.Paper.Id);
        return
        [
            .. sat is { End: not null and not SittingEnd.ByLead, RealOver: false } && SitReal.Jobs(world, Seat.Paper).Count > 0 && world.History.Assessments.Result(Seat.Paper.Id) is null
                ? [(Words.Of("sit.real-go-on"), () => SitReal.Open(Seat))] : Array.Empty<(string, Func<Turn>)>(),
            .. sat is { End: not null } ? [(Words.Of("sit.write-again"), () => Turn.To(this) with { Keeps = w => w with { Seat = Seat }, Errand = (w, folder) => Sit.Written(w, folder) })] : Array.Empty<(string, Func<Turn>)>(),
            .. Seat.Paper.Again is { } again ? [(Words.Of("sit.safety-again", ("n", again.Jobs.Count)), () => Again(world, again))] : Array.Empty<(string, Func<Turn>)>(),
            .. (world.History.Assessments.Result(Seat.Paper.Id)?.NewJobsDue ?? []).Select(place => (Words.Of("sit.new-job", ("job", place)), (Func<Turn>)(() => Again(world, Seat.Paper.NewJob(place))))),
            (Words.Of("sit.not-now"), () => Back(world)),
        ];
    }

    Turn Again(World world, Paper again)
    {
        var seat = Seat with { Paper = again };
        return world.History.Assessments.SittingOf(again.Id) switch
        {
            { End: null } open => Turn.To(new SitResumeScreen(seat, open, Below)),
            { } => Turn.To(new SitAgainScreen(seat, Below)),
            null => Turn.To(new SitWhoScreen(seat, Below)),
        };
    }
}
