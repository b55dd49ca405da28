using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>Chooses what to say of each part of a grade.</summary>
sealed class GradeRemarks(Workbench bench, Case made, Answer answer, Judgement shown, Judgement own, SafetyFault safety, IReadOnlyList<string> safetyLeft)
{
    const int MostRemarks = 3;

    IReadOnlyList<PartBelief> Parts_ => shown.Reasoning.Parts;

    public IReadOnlyList<GradePart> Parts(double minutes, double pathMinutes)
    {
        var parts = new List<GradePart>();
        if (ReadingGrades.Of(bench, made, answer) is { } reading) parts.Add(reading);
        parts.Add(Stopping());
        parts.Add(Identification());
        parts.Add(Certainty());
        if (new[] { shown, own }.Select(j => new EvidenceGrades(bench, answer, j).Of()).OfType<GradePart>().MaxBy(e => e.Mark) is { } evidence) parts.Add(evidence);
        if (answer.Orders.Count > 0) parts.Add(Decision());
        parts.Add(Economy(minutes, pathMinutes));
        return parts;
    }

    public (InShort Form, Remark Remark) InShort()
    {
        var named = answer.Parts.All(p => p.Kind is null) ? null : answer.Parts.Select((p, i) => (p, i)).FirstOrDefault(x => x.p.Kind is not null).p;
        var sound = Enumerable.Range(0, answer.Parts.Count).All(i => Best(j => j.Identification(i)) >= 0.5);
        var right = answer.Parts.All(p => p.Kind is null || IsTrue(p));
        if (!shown.Ripe && (!sound || answer.Orders.Any(o => o is Choice.Wait)) && Parts_.Any(p => !p.Settled) && NextCheckNamed() is { } next) return (Grading.InShort.StoppedTooEarly, TooEarly(next));
        var follows = Enumerable.Range(0, answer.Orders.Count).All(i => Best(j => j.Decision(i)) >= 0.5) && safety is SafetyFault.None;
        if (sound && !follows) return (Grading.InShort.ChecksPointedOtherWay, Remark.Of(named is null ? "grade.short.order-open" : right ? "grade.short.order" : "grade.short.order-other"));
        if (named is null && shown.Ripe && sound) return (Grading.InShort.RightToWait, Remark.Of("grade.short.wait"));
        if (sound && right) return (Grading.InShort.RightForTheRightReason, Remark.Of("grade.short.right"));
        if (sound) return (Grading.InShort.GoodJudgementOddBike, Remark.Of("grade.short.odd", ("rare", new Value.OneOf(MissShare()))));
        if (right && named is not null && answer.Parts.All(p => p.Kind is not null)) return (Grading.InShort.RightByLuck, Remark.Of("grade.short.luck", ("others", new Value.Chance(MissShare()))));
        return (Grading.InShort.ChecksPointedOtherWay, OtherWay());
    }

    public IReadOnlyList<Remark> Chosen(IReadOnlyList<GradePart> parts)
    {
        var chosen = new List<Remark>();
        if (safety is not SafetyFault.None) chosen.Add(SafetyRemark());
        if (answer.Ordered) chosen.AddRange(NotLooked());
        var order = new[] { Aspect.Identification, Aspect.Decision, Aspect.Evidence, Aspect.Reading, Aspect.Certainty, Aspect.Stopping, Aspect.Economy };
        var good = order.Select(a => parts.FirstOrDefault(p => p.Aspect == a && p.Word == MarkWord.Good)).OfType<GradePart>().FirstOrDefault();
        if (good is not null) chosen.Add(good.Remark);
        var worst = parts.Where(p => p.Word != MarkWord.Good && p.Aspect != Aspect.Economy).OrderBy(p => p.Mark).FirstOrDefault();
        if (worst is not null) chosen.Add(worst.Remark);
        return How() is { } how ? [.. chosen.Take(MostRemarks - 1), how] : [.. chosen.Take(MostRemarks)];
    }

    double Best(Func<Judgement, double> mark) => Math.Max(mark(shown), mark(own));

    bool IsTrue(PartAnswer part)
    {
        var index = bench.Topic.Parts.ToList().FindIndex(p => p.Id == part.Part);
        var belief = Parts_.First(p => p.Part == part.Part);
        return part.Kind is { } kind && belief.ClassOf(kind) == belief.ClassOf(made.Truth.Kinds[index]);
    }

    double MissShare() => 1 - answer.Parts.Select((p, i) => p.Kind is { } k ? Parts_[i].Classes[Parts_[i].ClassOf(k)].Belief : 1).Min();

    NextCheck? NextCheckNamed() => shown.Reasoning.Next.Count > 0 ? shown.Reasoning.Next[0] : null;

    static Remark TooEarly(NextCheck next) => next.Again
        ? Remark.Of("grade.short.early-again", ("check", new Value.OfClue(next.Clue)))
        : Remark.Of("grade.short.early", ("check", new Value.OfClue(next.Clue)), ("minutes", new Value.Minutes(next.Minutes)));

    Remark OtherWay()
    {
        var part = Enumerable.Range(0, answer.Parts.Count).OrderBy(i => Best(j => j.Identification(i))).First();
        var belief = Parts_[part];
        var strongest = Strongest(belief);
        var leading = new Value.OfClass(belief.Part, belief.Classes[belief.Leading].Kinds);
        if (strongest is null) return Remark.Of("grade.short.nothing", ("leading", leading));
        var check = new Value.OfClue(shown.Findings[strongest.Value].Clue);
        if (answer.Parts[part].Kind is not { } kind) return Remark.Of("grade.short.was-settled", ("leading", leading), ("check", check));
        if (belief.ClassOf(kind) == belief.Leading) return Remark.Of("grade.short.thin", ("leading", leading), ("chance", new Value.Chance(belief.Highest)));
        return Remark.Of("grade.short.other", ("named", new Value.OfKind(belief.Part, kind)), ("leading", leading), ("check", check));
    }

    static int? Strongest(PartBelief belief)
    {
        if (belief.Weights.Count == 0) return null;
        return Enumerable.Range(0, belief.Weights.Count).MaxBy(i => belief.Weights[i].Share);
    }

    GradePart Stopping()
    {
        var mark = Best(j => j.Stopping);
        var next = NextCheckNamed();
        var remark = shown.Reasoning.Stops.Count > 0 ? Remark.Of("grade.stopping.stop", ("sign", new Value.Text(shown.Reasoning.Stops[0])))
            : shown.Ripe && Parts_.All(p => p.Settled) ? Remark.Of("grade.stopping.settled")
            : shown.NoQuestionLeft ? Remark.Of("grade.stopping.no-question")
            : shown.Ripe ? Remark.Of("grade.stopping.nothing-left")
            : next is { Again: true } ? Remark.Of("grade.stopping.again", ("check", new Value.OfClue(next.Clue)))
            : Remark.Of("grade.stopping.early", ("check", new Value.OfClue(next?.Clue ?? "")), ("chance", new Value.Chance(next?.Settles ?? 0)));
        return new GradePart(Aspect.Stopping, mark, remark, Remark.Of("grade.rule.stopping", ("gain", new Value.Money(shown.Reasoning.Gain)), ("mark", new Value.Mark(mark))));
    }

    GradePart Identification()
    {
        var marks = Enumerable.Range(0, answer.Parts.Count).Select(i => Best(j => j.Identification(i))).ToList();
        var worst = marks.IndexOf(marks.Min());
        var belief = Parts_[worst];
        var leading = new Value.OfClass(belief.Part, belief.Classes[belief.Leading].Kinds);
        var chance = new Value.Chance(belief.Highest);
        var good = marks[worst] >= 0.85;
        var key = answer.Parts[worst].Kind is null
            ? (good ? "grade.which.rightly-open" : shown.Ripe ? "grade.which.was-settled" : "grade.which.too-early")
            : belief.ClassOf(answer.Parts[worst].Kind ?? Kind.NoneId) == belief.Leading ? (good ? "grade.which.settled" : "grade.which.thin") : (good ? "grade.which.arguable" : "grade.which.other");
        return new GradePart(
            Aspect.Identification, marks[worst], Remark.Of(key, ("leading", leading), ("chance", chance), ("level", new Value.Chance(belief.SettleAt))),
            Remark.Of("grade.rule.which", ("leading", leading), ("chance", chance), ("level", new Value.Chance(belief.SettleAt)), ("mark", new Value.Mark(marks[worst]))));
    }

    GradePart Certainty()
    {
        var marks = Enumerable.Range(0, answer.Parts.Count).Select(i => Best(j => j.Certainty(i))).ToList();
        var worst = marks.IndexOf(marks.Min());
        var belief = Parts_[worst];
        var named = answer.Parts[worst].Kind is { } kind ? belief.ClassOf(kind) : belief.Leading;
        var b = belief.Classes[named].Belief;
        var said = answer.Parts[worst].Certainty;
        var key = Math.Abs(said - b) <= 0.1 ? "grade.sure.good" : said > b ? "grade.sure.too-sure" : "grade.sure.too-unsure";
        return new GradePart(
            Aspect.Certainty, marks[worst], Remark.Of(key, ("said", new Value.Tenths(answer.Parts[worst].Tenths)), ("chance", new Value.Chance(b))),
            Remark.Of("grade.rule.sure", ("said", new Value.Tenths(answer.Parts[worst].Tenths)), ("chance", new Value.Chance(b)), ("mark", new Value.Mark(marks[worst]))));
    }

    GradePart Decision()
    {
        var marks = Enumerable.Range(0, answer.Orders.Count).Select(i => Best(j => j.Decision(i))).ToList();
        var worst = marks.IndexOf(marks.Min());
        var best = shown.Reasoning.Decisions[worst].Best;
        var option = shown.OptionOf(worst);
        var level = shown.HazardLevel(worst);
        if (answer.Orders[worst] is Choice.Wait) return Waited(marks[worst], worst);
        var rule = level is { } settle
            ? Remark.Of("grade.rule.order-hurts", ("best", new Value.OfChoice(best.Choice)), ("level", new Value.Chance(settle)), ("mark", new Value.Mark(marks[worst])))
            : Remark.Of("grade.rule.order", ("best", new Value.OfChoice(best.Choice)), ("loss", new Value.Money((option?.Loss ?? best.Loss) - best.Loss)), ("mark", new Value.Mark(marks[worst])));
        if (marks[worst] >= 0.85) return new GradePart(Aspect.Decision, marks[worst], Fitted(worst), rule);
        var remark = level is not null && option is { WrongShare: > 0.005 } ? Remark.Of("grade.order.hurts", ("chance", new Value.Chance(option.WrongShare)))
            : option is { WrongShare: > 0.005 }
            ? Remark.Of("grade.order.loses", ("money", new Value.Money(option.Money)), ("days", new Value.Days(option.Days)), ("chance", new Value.Chance(option.WrongShare)))
            : Remark.Of("grade.order.better", ("best", new Value.OfChoice(best.Choice)));
        return new GradePart(Aspect.Decision, marks[worst], remark, rule);
    }

    // A check that can be taken is taken, not waited for; without a question left there is none to wait for.
    GradePart Waited(double mark, int line) => new(
        Aspect.Decision, mark,
        shown.NoQuestionLeft ? Remark.Of("grade.order.no-question")
            : shown.Ripe ? Remark.Of("grade.order.waited", ("best", new Value.OfChoice(Judgement.BestNow(shown.Reasoning.Decisions[line]))))
            : Remark.Of("grade.order.waited-early"),
        Remark.Of("grade.rule.order-waited", ("mark", new Value.Mark(mark))));

    // What became of an order that was sound: it fits this bike, or it does not and nobody could know.
    Remark Fitted(int line)
    {
        if (answer.Orders[line] is not Choice.Order order) return Remark.Of("grade.order.good", ("choice", new Value.OfChoice(answer.Orders[line])));
        var spare = bench.Topic.Spares.First(s => s.Id == order.Spare);
        var fits = spare.Fits.All(f => f.Kinds.Contains(made.Truth.Kinds[bench.Topic.Parts.ToList().FindIndex(p => p.Id == f.Part)]));
        return Remark.Of(fits ? "grade.order.fits" : "grade.order.unlucky", ("choice", new Value.OfChoice(order)));
    }

    static GradePart Economy(double minutes, double pathMinutes)
    {
        var mark = minutes <= (2 * pathMinutes) + 1 ? 1 : ((2 * pathMinutes) + 1) / minutes;
        var key = minutes < pathMinutes ? "grade.time.shorter" : mark >= 1 ? "grade.time.good" : "grade.time.long";
        var values = new (string, Value)[] { ("spent", new Value.Minutes(minutes)), ("path", new Value.Minutes(pathMinutes)) };
        return new GradePart(Aspect.Economy, mark, Remark.Of(key, values), Remark.Of("grade.rule.time", [.. values, ("mark", new Value.Mark(mark))]));
    }

    Remark SafetyRemark()
    {
        if (shown.Reasoning.Stops.Count > 0) return Remark.Of("grade.safety.stop", ("sign", new Value.Text(shown.Reasoning.Stops[0])));
        if (answer.Forced) return Remark.Of("grade.safety.forced");
        var spare = bench.Topic.Spares.FirstOrDefault(s => s.Hazard && answer.Orders.Any(o => (o is Choice.Order x && x.Spare == s.Id) || (o is Choice.OrderTwo y && (y.First == s.Id || y.Second == s.Id))));
        return Remark.Of("grade.safety.thin", ("harm", new Value.Text(spare?.HazardText ?? "")));
    }

    // An order without the safety look is told whatever the bike was like, and lowers no mark: an order that the readings support is no safety error. What the look would have stopped is told as well.
    IEnumerable<Remark> NotLooked()
    {
        if (safetyLeft.Count == 0) yield break;
        var checks = new Value.OfClues(safetyLeft);
        yield return made.Job.Request.Questions is null
            ? Remark.Of("grade.safety.not-looked", ("checks", checks), ("minutes", new Value.Minutes(bench.Topic.Clues.Where(c => safetyLeft.Contains(c.Id)).Sum(c => c.Minutes))))
            : Remark.Of("grade.safety.not-asked", ("checks", checks));
        var stops = new Reasoner(bench.SceneOf(made.Job.Request.Provenance)).StopsOf([.. safetyLeft.Select(c => made.Look(c, 0))]);
        if (stops.Count > 0) yield return Remark.Of("grade.safety.was-there", ("sign", new Value.Text(stops[0])));
    }

    // The pitfall that this bike held, in the topic's words, or the odd reading.
    Remark? How()
    {
        if (shown.Reasoning.Odd.FirstOrDefault(o => o.Stands) is { } odd) return Remark.Of("grade.how.odd", ("check", new Value.OfClue(shown.Findings[odd.Finding].Clue)));
        var tag = made.Truth.Story.Count > 0 ? made.Truth.Story[0] : null;
        return tag is null ? null : Remark.Of("grade.how.pitfall", ("tag", new Value.OfTag(tag)));
    }
}
