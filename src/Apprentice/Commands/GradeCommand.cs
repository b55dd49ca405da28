using System.CommandLine;
using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Grading;

namespace Apprentice.Commands;

/// <summary><c>grade CASE-FILE ANSWER-FILE</c>: the judgement of an answer to a case.</summary>
static class GradeCommand
{
    /// <summary>The verb.</summary>
    public static Command Make(Desk desk, SourceOptions sources)
    {
        var caseFile = new Argument<string>("CASE-FILE") { Description = "A case as 'case … --json' prints it" };
        var answerFile = new Argument<string>("ANSWER-FILE") { Description = "The answer" };
        var json = new Option<bool>("--json") { Description = "Print JSON" };
        var command = new Command("grade", "Grades an answer to a case") { caseFile, answerFile, json, sources.Shipped };
        command.SetAction(parsed =>
        {
            var taught = sources.Taught(parsed);
            var (bench, made) = CaseFile.Read(parsed.GetRequiredValue(caseFile), taught.Topics);
            taught.Tell(desk.Error, bench.Topic);
            var answer = AnswerFile.Read(parsed.GetRequiredValue(answerFile), bench, made);
            var grade = bench.Grade(made, answer);
            if (parsed.GetValue(json)) Json.Write(desk.Out, Of(made, grade));
            else Write(desk.Out, bench, made, grade);
            return ExitCode.Done;
        });
        return command;
    }

    static void Write(TextWriter to, Workbench bench, Case made, Grade grade)
    {
        var telling = new Telling(bench.Topic, made.Job.Bench);
        to.WriteLine(telling.Of(grade.InShortRemark));
        foreach (var remark in grade.Remarks) to.WriteLine($"  {telling.Of(remark)}");
        to.WriteLine();
        foreach (var part in grade.Parts)
        {
            to.WriteLine($"{Words.Of($"aspect.{part.Aspect}")}: {Words.Of($"mark.{part.Word}")}. {telling.Of(part.Remark)}");
            to.WriteLine($"  {telling.Of(part.Rule)}");
        }

        to.WriteLine();
        to.WriteLine("What the bike is");
        foreach (var line in CaseText.Truth(bench, made)) to.WriteLine($"  {line}");
        if (grade.OpenToArgument) to.WriteLine("Open to argument: with other judged figures another answer is as good, and it is accepted too.");
        if (grade.SafetyError) to.WriteLine("Safety error.");
    }

    static object Of(Case made, Grade grade) => new
    {
        Json.Schema,
        made.Job.Topic,
        made.Job.Version,
        made.Job.Seed,
        grade.InShort,
        grade.Sound,
        grade.SafetyError,
        grade.OpenToArgument,
        Parts = grade.Parts.Select(p => new { p.Aspect, p.Mark, p.Word, Remark = p.Remark.Key, Rule = p.Rule.Key }),
        Remarks = grade.Remarks.Select(r => r.Key),
        grade.Minutes,
        grade.PathMinutes,
        grade.Path,
        Findings = grade.Findings.Select(Json.Of),
        Beliefs = grade.Reasoning.Parts.Select(ReasoningJson.Of),
        Decisions = grade.Reasoning.Decisions.Select(ReasoningJson.Of),
        Truth = new { made.Truth.Line, Built = made.Truth.Built?.ToString(), made.Truth.Kinds, made.Truth.Story },
    };
}
