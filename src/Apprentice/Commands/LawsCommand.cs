using System.CommandLine;
using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary><c>laws TOPIC</c>: whether, among made cases where the engine says p, the share that is so is p.</summary>
static class LawsCommand
{
    const int UsualCases = 20_000;
    const double Allowed = 4;

    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var topic = new Argument<string>("TOPIC") { Description = "The topic" };
        var cases = new Option<string?>("--cases") { Description = $"Cases for each provenance and selection; else {UsualCases}", HelpName = "N" };
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var command = new Command("laws", "Makes many cases and checks that the engine is as right as it is sure") { topic, cases, json, sources.Shipped };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            var it = taught.Topic(parsed.GetRequiredValue(topic));
            taught.Tell(desk.Error, it);
            return Run(desk, it, CountOf(parsed.GetValue(cases)), parsed.GetValue(json));
        });
        return command;
    }

    static int Run(Desk desk, Topic topic, int cases, bool json)
    {
        var bench = new Workbench(topic);
        var trials = new List<Trial>();
        foreach (var provenance in topic.Provenances)
        {
            foreach (var select in Enum.GetValues<Selection>())
            {
                trials.Add(Try(bench, provenance.Id, select, cases));
                if (!json) desk.Out.WriteLine(Line(trials[^1]));
            }
        }

        var broken = trials.Count(t => t.Worst > Allowed);
        if (json) Json.Write(desk.Out, new { Json.Schema, Topic = topic.Id, topic.Version, Allowed, Trials = trials, Broken = broken });
        else desk.Out.WriteLine($"{Plural.Of(trials.Count, "trial")}, {broken} beyond {Allowed} standard deviations");
        return broken == 0 ? ExitCode.Done : ExitCode.Fault;
    }

    // The openings take turns; one that hardly ever looks as wanted is left out from then on.
    static Trial Try(Workbench bench, string provenance, Selection select, int cases)
    {
        var topic = bench.Topic;
        var check = new CalibrationCheck(bench.SceneOf(provenance), [.. topic.Parts.Where(p => p.Asked).Select(p => p.Id)]);
        var openings = topic.Openings.Select(o => o.Id).ToList();
        var leftOut = new List<string>();
        var made = 0;
        for (var turn = 0; made < cases && openings.Count > 0; turn++)
        {
            var opening = openings[turn % openings.Count];
            var want = topic.Wants[turn % topic.Wants.Count].Id;
            if (bench.Make(new CaseRequest(provenance, want, opening, select, Channel.Bench), SeedOf(turn)) is { } one)
            {
                check.AddStages(one);
                made++;
                continue;
            }

            openings.Remove(opening);
            leftOut.Add(opening);
        }

        var worst = check.Cells.MaxBy(c => Math.Abs(c.Z));
        return new Trial(provenance, select, made, leftOut, check.Cells.Count, worst is null ? 0 : Math.Abs(worst.Z), worst);
    }

    // Cases of neighbouring seeds are too alike to count as independent, so the seeds are spread.
    // Source: Steele, Lea, Flood, Fast Splittable Pseudorandom Number Generators, 2014, the mixing of SplitMix64.
    static ulong SeedOf(int turn)
    {
        unchecked
        {
            var mixed = (ulong)(turn + 1) * 0x9E3779B97F4A7C15;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return mixed ^ (mixed >> 31);
        }
    }

    static string Line(Trial trial) =>
        $"{trial.Provenance}, {Choose.Dashed(trial.Select)}: {Plural.Of(trial.Cases, "case")}, {Plural.Of(trial.Cells, "cell")}, worst {trial.Worst:0.00}"
        + (trial.At is { } at ? $" ({at.Stage}, {at.Part} {at.Class}, {at.Tenth} of 10: {at.True} of {at.Count} where {at.Expected:0} were expected)" : "")
        + (trial.LeftOut.Count == 0 ? "" : $"; left out: {string.Join(", ", trial.LeftOut)}");

    static int CountOf(string? text) => text is null ? UsualCases
        : int.TryParse(text, out var count) && count is >= 1 and <= 10_000_000 ? count
        : throw new Complaint($"--cases '{text}' will not do; write a whole number from 1 to 10000000.", ExitCode.Usage);

    /// <summary>What one provenance and selection came to.</summary>
    sealed record Trial(
        string Provenance, Selection Select, int Cases, IReadOnlyList<string> LeftOut, int Cells, double Worst, CalibrationCell? At);
}
