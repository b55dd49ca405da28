using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Grading;

/// <summary>An answer judged on one set of findings: the shown ones, or the learner's own readings.</summary>
sealed class Judgement
{
    readonly Workbench _bench;
    readonly Case _case;
    readonly Answer _answer;

    public Judgement(Workbench bench, Case made, Answer answer, IReadOnlyList<Finding> findings)
    {
        (_bench, _case, _answer, Findings) = (bench, made, answer, findings);
        NoQuestionLeft = made.Job.Request.Questions is { } most && answer.Looks.Count >= most;
        Reasoning = bench.Reason(bench.EnquiryOf(made.Job) with { OnOffer = NoQuestionLeft ? [] : made.Job.Bench }, findings);
        Variants = [.. bench.Variants.Select(v => VariantOf(v, findings))];
        Ripe = Reasoning.Ripe || Reasoning.Stops.Count > 0 || Variants.Any(v => v.Settled.All(s => s >= 0));
    }

    public IReadOnlyList<Finding> Findings { get; }

    public string Provenance => _case.Job.Request.Provenance;

    public Reasoning Reasoning { get; }

    /// <summary>True when only so many questions may be asked, and all were.</summary>
    public bool NoQuestionLeft { get; }

    /// <summary>True when answering now can be defended: ripe, stopped by a sign, or settled once the judged figures are moved within reason.</summary>
    public bool Ripe { get; }

    /// <summary>Per variant of the judged figures: per part the settled class or −1, per order line the best choice that does not wait.</summary>
    public IReadOnlyList<(IReadOnlyList<int> Settled, IReadOnlyList<Choice> Best)> Variants { get; }

    public bool OpenToArgument
    {
        get
        {
            var settled = Reasoning.Parts.Select(p => p.Settled ? p.Leading : -1).ToList();
            var best = Reasoning.Decisions.Select(d => BestNow(d)).ToList();
            return Variants.Any(v => !v.Settled.SequenceEqual(settled) || !v.Best.SequenceEqual(best));
        }
    }

    /// <summary>0 when ripe, otherwise what the best continuation would have saved, against the cost of asking.</summary>
    public double Stopping => Ripe ? 1 : Math.Max(0, 1 - (Reasoning.Gain / _bench.Topic.Costs.AskCost));

    public double Identification(int part)
    {
        var belief = Reasoning.Parts[part];
        var kind = _answer.Parts[part].Kind;
        if (kind is null && !Ripe) return 0;
        if (kind is null && Reasoning.Stops.Count > 0) return 1;
        if (Ripe && Accepted(part, kind is null ? -1 : belief.ClassOf(kind))) return 1;
        var regret = Math.Max(belief.Highest, belief.SettleAt) - (kind is null ? belief.SettleAt : belief.Classes[belief.ClassOf(kind)].Belief);
        return Math.Max(0, 1 - (regret / (1 - belief.SettleAt)));
    }

    // The quadratic score of G. W. Brier, Verification of forecasts expressed in terms of probability, 1950, as a regret.
    public double Certainty(int part)
    {
        var belief = Reasoning.Parts[part];
        var named = _answer.Parts[part].Kind is { } kind ? belief.ClassOf(kind) : belief.Leading;
        var b = belief.Classes[named].Belief;
        var q = _answer.Parts[part].Certainty;
        return 1 - (((q - b) * (q - b)) + (belief.Highest * belief.Highest) - (b * b));
    }

    /// <summary>Regret of the choice against the cost of asking; 0 for waiting, since a check that stands on the bench untaken is never an answer.</summary>
    public double Decision(int line)
    {
        if (OptionOf(line) is not { Choice: not Choice.Wait } option) return 0;
        if (Ripe && Variants.Any(v => v.Best[line].Equals(option.Choice)) && Reasoning.Stops.Count == 0) return 1;
        return Math.Max(0, 1 - ((option.Loss - Reasoning.Decisions[line].Best.Loss) / _bench.Topic.Costs.AskCost));
    }

    public PartJudged PartOf(int part, bool own)
    {
        var belief = Reasoning.Parts[part];
        var kind = _answer.Parts[part].Kind;
        var by = kind is null && !Ripe ? JudgedBy.TooEarly
            : kind is null && Reasoning.Stops.Count > 0 ? JudgedBy.StopSign
            : Ripe && Accepted(part, kind is null ? -1 : belief.ClassOf(kind)) ? JudgedBy.Accepted : JudgedBy.Formula;
        return new PartJudged(belief.Part, kind, belief.Classes, belief.SettleAt, Identification(part), by, own);
    }

    public OrderJudged OrderOf(int line, bool shown)
    {
        var decision = Reasoning.Decisions[line];
        var option = OptionOf(line) is { Choice: not Choice.Wait } chosen ? chosen : null;
        var by = option is null ? JudgedBy.TooEarly
            : Ripe && Variants.Any(v => v.Best[line].Equals(option.Choice)) && Reasoning.Stops.Count == 0 ? JudgedBy.Accepted : JudgedBy.Formula;
        return new OrderJudged(
            decision.OrderLine, _answer.Orders[line], option?.Loss, decision.Best.Choice, decision.Best.Loss, _bench.Topic.Costs.AskCost,
            option?.WrongShare ?? 0, HazardLevel(line), Decision(line), by, !shown);
    }

    /// <summary>The settle level of the parts that an ordered spare that can hurt depends on; null when nothing ordered on the line can hurt.</summary>
    public double? HazardLevel(int line)
    {
        var spares = CanHurt(line);
        return spares.Count == 0 ? null : _bench.Topic.Parts.Where(p => spares.Any(s => s.Fits.Any(f => f.Part == p.Id))).Max(p => p.SettleAt);
    }

    public Option? OptionOf(int line) => Reasoning.Decisions[line].Options.FirstOrDefault(o => o.Choice.Equals(_answer.Orders[line]));

    /// <summary>True when something was ordered although a stop sign was on show.</summary>
    public bool PassesOverStop => Reasoning.Stops.Count > 0 && _answer.Ordered;

    /// <summary>A part that can hurt, ordered although these findings leave more doubt than its settle level allows; or a stop sign passed over.</summary>
    public bool Unsafe()
    {
        if (_answer.Forced) return true;
        if (PassesOverStop) return true;
        return Enumerable.Range(0, _answer.Orders.Count).Any(Hazardous);
    }

    /// <summary>Of what was ordered and can hurt, the share of bikes like this that need another one, and the level; null when nothing that can hurt was ordered on too little.</summary>
    public (double Wrong, double Level)? Thin() => Enumerable.Range(0, _answer.Orders.Count).Where(Hazardous)
        .Select(l => ((double, double)?)(CanHurt(l).Max(s => Alone(l, s)?.WrongShare ?? 1), HazardLevel(l) ?? 1)).FirstOrDefault();

    /// <summary>The best choice of an order line that does not wait for a check.</summary>
    public static Choice BestNow(LineDecision decision) => decision.Options.First(o => o.Choice is not Choice.Wait).Choice;

    // Each part that can hurt is judged on its own, whatever else is ordered with it; what the findings do not even offer was not supported.
    bool Hazardous(int line) => HazardLevel(line) is { } settle && CanHurt(line).Any(spare =>
        Alone(line, spare) is not { } alone || alone.WrongShare > 1 - settle + 1e-9);

    Option? Alone(int line, Spare spare) => Reasoning.Decisions[line].Options.FirstOrDefault(o => o.Choice.Equals(new Choice.Order(spare.Id)));

    List<Spare> CanHurt(int line)
    {
        string[] ordered = _answer.Orders[line] switch
        {
            Choice.Order order => [order.Spare],
            Choice.OrderTwo two => [two.First, two.Second],
            _ => [],
        };
        return [.. _bench.Topic.Spares.Where(s => s.Hazard && ordered.Contains(s.Id))];
    }

    bool Accepted(int part, int named) => Variants.Any(v => v.Settled[part] == named);

    (IReadOnlyList<int> Settled, IReadOnlyList<Choice> Best) VariantOf(Workbench variant, IReadOnlyList<Finding> findings)
    {
        var enquiry = variant.EnquiryOf(_case.Job) with { OnOffer = [] };
        var reasoning = new Reasoner(variant.SceneOf(enquiry.Provenance)).Outline(enquiry, findings);
        return ([.. reasoning.Parts.Select(p => p.Settled ? p.Leading : -1)], [.. reasoning.Decisions.Select(BestNow)]);
    }
}
