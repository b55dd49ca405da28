using System.CommandLine;
using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Storage.Papers;

namespace Apprentice.Commands;

/// <summary><c>sit FILE</c> and <c>mark FILE …</c>: a paper is sat, and results are collected and marked.</summary>
static class MarkCommand
{
    /// <summary><c>sit FILE</c>: opens the sitting.</summary>
    public static Command Sit(SourceOptions sources, Func<ScreenOptions, int> screens)
    {
        var file = new Argument<string>("FILE") { Description = "The sealed paper" };
        var plain = new Option<bool>("--plain") { Description = "Lines in place of screens" };
        var command = new Command("sit", "Opens a sealed paper to be sat; the lead types its code") { file, plain };
        command.SetAction(parsed => screens(sources.Screens(parsed, parsed.GetValue(plain), parsed.GetRequiredValue(file))));
        return command;
    }

    /// <summary><c>mark FILE …</c>: collects results.</summary>
    public static Command Mark(Desk desk, SourceOptions sources)
    {
        var files = new Argument<string[]>("FILE") { Description = "Results that came back", Arity = ArgumentArity.OneOrMore };
        var secret = Passphrase.Option();
        var json = new Option<bool>("--json") { Description = "For scripts" };
        var command = new Command("mark", "Collects results and marks them; a refused one is told with a sentence") { files, secret, json };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            using var log = sources.OpenLog(parsed);
            var key = Passphrase.Open(log, parsed.GetValue(secret));
            var all = Assessments.Of(log.Read());
            var told = new List<object>();
            var refused = 0;
            IReadOnlyList<Workbench> benches = [.. all.Plans.SelectMany(p => p.Topics).Select(t => t.Id).Distinct(StringComparer.Ordinal).Where(t => taught.Topics.Ids.Contains(t, StringComparer.Ordinal)).Select(t => new Workbench(taught.Topic(t)))];
            foreach (var file in parsed.GetRequiredValue(files))
            {
                try
                {
                    var collected = DeskWork.Collect(PaperFolder.Read(file), all, paper => taught.Copy.Frozen(benches, paper), key, PaperFolder.Beside(sources.LogFile(parsed)));
                    var logged = new Logged(TimeProvider.System.GetLocalNow(), collected.Entry);
                    log.Append(logged);
                    all = all.With(logged);
                    told.Add(Of(file, collected, all));
                    if (!parsed.GetValue(json)) Say(desk, file, collected, all);
                }
                catch (SealException e)
                {
                    refused++;
                    told.Add(new { File = file, Refused = e.Message });
                    if (!parsed.GetValue(json)) desk.Out.WriteLine($"{file}: refused. {e.Message}");
                }
            }

            if (parsed.GetValue(json)) Json.Write(desk.Out, new { Json.Schema, Results = told });
            return refused == 0 ? ExitCode.Done : ExitCode.Fault;
        });
        return command;
    }

    static void Say(Desk desk, string file, Collected collected, Assessments all)
    {
        var sat = collected.Sat;
        desk.Out.WriteLine($"{file}: {sat.Candidate}, paper {sat.Paper}, collected. {Marks(collected, all).Count(m => m.CountsSound)} of {Marks(collected, all).Count} jobs sound: {Choose.Dashed(OutcomeOf(collected, all))}.");
        foreach (var real in Real(collected)) desk.Out.WriteLine($"  real bike {real.Job.Place}, {real.Job.Case.Topic}: {(real.Sat.Tenths is null ? "nothing said" : $"said {real.Sat.Kind ?? "not settled"}")}, it was {real.Was}; it counts for nothing");
        foreach (var mark in Marks(collected, all).Where(m => !m.CountsSound)) desk.Out.WriteLine($"  job {mark.Place}: {Words.Of(mark.Rule, mark.Values.ToDictionary(v => v.Key, v => (object)v.Value, StringComparer.Ordinal))}");
    }

    static object Of(string file, Collected collected, Assessments all) => new
    {
        File = file,
        collected.Sat.Paper,
        collected.Sat.Candidate,
        collected.Sat.Number,
        Outcome = OutcomeOf(collected, all),
        Minutes = Math.Round(collected.Sat.Used.TotalMinutes, 1),
        collected.Sat.Why,
        collected.Sat.ConfirmedBy,
        collected.Sat.Multiplier,
        collected.Sat.Plain,
        collected.Sat.Stops,
        Jobs = Marks(collected, all).Select(m => new { m.Place, m.Family, m.Sound, m.SafetyJob, m.SafetyError, m.Rule, m.Values, m.Readings, m.ReadingsRight }),
        RealBikes = Real(collected).Select(m => new { m.Job.Place, m.Job.Case.Topic, m.Job.Version, m.Job.Case.From, m.Job.Part, m.Was, Said = m.Sat.Kind, SureOf10 = m.Sat.Tenths, m.Right, Opened = m.Sat.Opened.Count, Found = m.Found.Count }),
    };

    static IReadOnlyList<RealMark> Real(Collected collected) => collected.Entry is LogEntry.PaperMarked marked ? marked.Result.Real : [];

    static IReadOnlyList<JobMark> Marks(Collected collected, Assessments all) => collected.Entry switch
    {
        LogEntry.SafetyAgainMarked again => again.Marks,
        LogEntry.NewJobMarked anew => [anew.Mark],
        LogEntry.PaperMarked marked => all.Result(marked.Result.Paper)?.Jobs ?? marked.Result.Jobs,
        _ => [],
    };

    static Outcome OutcomeOf(Collected collected, Assessments all) => collected.Entry switch
    {
        LogEntry.SafetyAgainMarked again => all.Result(again.Paper)?.Outcome ?? Outcome.Open,
        LogEntry.NewJobMarked anew => all.Result(anew.Paper)?.Outcome ?? Outcome.Open,
        LogEntry.PaperMarked marked => all.Result(marked.Result.Paper)?.Outcome ?? Outcome.Open,
        _ => Outcome.Open,
    };
}
