using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Storage.Papers;

namespace Apprentice.Screens.Assess;

/// <summary>Entering the answer strip of a kit: whose, the code of the key, a row of digits a job, a look over it, kept.</summary>
static class KitEntry
{
    /// <summary>Whose answers.</summary>
    public static SignOffAskScreen AskWho(LogEntry.KitMade kit, Screen before, KitListScreen home) => new(
        Words.Of("kit.enter"), kit.Kit, [Words.Of("kit.who")], Words.Of("kit.who-field"),
        (world, asked, typed) =>
        {
            var name = world.History.Called.OfTyped(typed);
            return world.History.Assessments.KitResults.Any(r => r.Kit == kit.Kit && string.Equals(r.Candidate, name, StringComparison.OrdinalIgnoreCase))
                ? asked.Again(Words.Of("kit.twice", ("name", name))) : Turn.To(AskBy(world, kit, name, asked, home));
        }, before);

    static SignOffAskScreen AskBy(World world, LogEntry.KitMade kit, string name, Screen before, KitListScreen home) => new(
        Words.Of("kit.enter"), kit.Kit, [Words.Of("kit.by", ("lead", SignOffBike.Lead(world)))], Words.Of("bike.name"),
        (_, asked, by) => Turn.To(AskCode(kit, name, by, asked, home)), before)
    {
        Otherwise = SignOffBike.Lead(world),
    };

    static SignOffAskScreen AskCode(LogEntry.KitMade made, string name, string by, Screen before, KitListScreen home) => new(
        Words.Of("kit.enter"), made.Kit, [Words.Of("kit.code-ask")], Words.Of("kit.code-field"), (_, asked, code) =>
        {
            try
            {
                return Turn.To(AskJob(KitFile.Open(made.Sealed, code), name, by, [], asked, home));
            }
            catch (SealException e)
            {
                return asked.Again(e.Message);
            }
        }, before)
    {
        Works = true,
    };

    static SignOffAskScreen AskJob(Kit kit, string name, string by, IReadOnlyList<string> so, Screen before, KitListScreen home)
    {
        var job = kit.Jobs[so.Count];
        return new SignOffAskScreen(
            Words.Of("kit.enter"), name, [Words.Of("kit.job-of", ("n", job.Place), ("of", kit.Jobs.Count), ("count", job.Questions.Count))], Words.Of("kit.digits"),
            (world, asked, digits) =>
            {
                if (job.Fault(digits) is { } fault) return asked.Again(Spoken.Capital(fault) + ".");
                IReadOnlyList<string> now = [.. so, digits];
                return Turn.To(now.Count < kit.Jobs.Count ? AskJob(kit, name, by, now, asked, home) : Look(world, kit, name, by, now, asked, home));
            }, before);
    }

    static SignOffChooseScreen Look(World world, Kit kit, string name, string by, IReadOnlyList<string> digits, Screen before, KitListScreen home) => new(
        Words.Of("kit.enter"), name, [Words.Of("kit.check"), string.Join("   ", digits.Select((d, i) => $"{kit.Jobs[i].Place}:\u00a0{d}"))], [Words.Of("kit.keep"), Words.Of("kit.again")],
        (_, _, line) => line == 1 ? Turn.To(AskJob(kit, name, by, [], home, home)) : Kept(world, kit, name, by, [.. digits.Select((d, i) => kit.Jobs[i].Mark(d))], home), before);

    static Turn Kept(World world, Kit kit, string name, string by, IReadOnlyList<KitMark> marks, KitListScreen home) =>
        Turn.To(home with { Note = AssessWords.Kit(new KitResult(kit.Id, kit.Permission, name, by, world.Now, marks)) }, new LogEntry.KitEntered(kit.Id, name, by, marks));
}
