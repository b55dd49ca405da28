using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine;

/// <summary>One topic made ready to work with: the same engine makes its cases, judges answers and helps with a real bike.</summary>
/// <remarks>Tables are made when first needed and kept. Not for use by several threads at once.</remarks>
public sealed class Workbench
{
    readonly Dictionary<string, Scene> _scenes = new(StringComparer.Ordinal);
    readonly Dictionary<string, CaseMaker> _makers = new(StringComparer.Ordinal);
    IReadOnlyList<Workbench>? _variants;

    /// <summary>Makes a topic ready.</summary>
    public Workbench(Topic topic) => Topic = topic;

    /// <summary>The topic.</summary>
    public Topic Topic { get; }

    /// <summary>The same topic with its judged figures moved within reason: see <see cref="Robustness"/>.</summary>
    public IReadOnlyList<Workbench> Variants => _variants ??= [.. Robustness.VariantsOf(Topic).Select(t => new Workbench(t))];

    /// <summary>The histories and clues of one provenance.</summary>
    /// <exception cref="ArgumentException">The topic has no such provenance.</exception>
    public Scene SceneOf(string provenance)
    {
        if (_scenes.TryGetValue(provenance, out var known)) return known;
        var index = Topic.Provenances.ToList().FindIndex(p => p.Id == provenance);
        if (index < 0) throw new ArgumentException($"the topic {Topic.Id} has no provenance {provenance}", nameof(provenance));
        return _scenes[provenance] = new Scene(HistoryTable.Of(Topic, index));
    }

    /// <summary>What the findings amount to.</summary>
    public Reasoning Reason(Enquiry enquiry, IReadOnlyList<Finding> findings) => new Reasoner(SceneOf(enquiry.Provenance)).Reason(enquiry, findings);

    /// <summary>Of which of the parts asked about a check tells most, given the findings; <paramref name="otherwise"/>, or the first asked, where it tells as much of that one.</summary>
    /// <exception cref="ArgumentException">The topic has no such provenance or clue.</exception>
    public string PartToldMost(Enquiry enquiry, IReadOnlyList<Finding> findings, string clue, string? otherwise) =>
        ToldMost.Of(SceneOf(enquiry.Provenance), enquiry, findings, clue, otherwise);

    /// <summary>The case of a request and a seed, or null when the request is met less than once in 5,000 draws.</summary>
    public Case? Make(CaseRequest request, ulong seed)
    {
        if (!_makers.TryGetValue(request.Provenance, out var maker)) maker = _makers[request.Provenance] = new CaseMaker(SceneOf(request.Provenance));
        return maker.Make(request, seed);
    }

    /// <summary>What all clues on offer amount to. Shown, never used to choose a case.</summary>
    public Proof Prove(Case made)
    {
        var findings = made.Job.Told.Concat(made.Job.Bench.Select(c => made.Look(c, 0))).ToList();
        return new Reasoner(SceneOf(made.Job.Request.Provenance)).Prove(EnquiryOf(made.Job) with { OnOffer = [] }, findings);
    }

    /// <summary>Where the edge lies on the scale, in mm, when the learner takes a reading from a datum (0 right, n the clue's n-th slip).</summary>
    /// <exception cref="ArgumentException">The clue is not measured, or has no such datum.</exception>
    public double EdgeOf(Case made, string clue, int nth, int datum)
    {
        var scene = SceneOf(made.Job.Request.Provenance);
        if (scene.Table.Names.ClueOf(clue).Shows is not Shows.Measured measured) throw new ArgumentException($"{clue} is not measured", nameof(clue));
        var ways = scene.Reader.ModelOf(clue, made.Job.Request.Offer, null).Ways;
        if (datum < 0 || datum >= ways.Count) throw new ArgumentException($"{clue} has no datum {datum}", nameof(datum));
        return made.Edge(clue, nth, ways[datum], made.Truth.Sizes[scene.Table.Names.Dimension(measured.Dimension)]);
    }

    /// <summary>What the caliper of a job reads with its jaws closed, in mm: the same one through the whole job, 0 for two jobs of three.</summary>
    public static double ZeroErrorOf(Case made) => ZeroError.Of(made.Job.Seed);

    /// <summary>What a look of an answer showed: a reading taken from a chosen datum, to the tool's step; what a chosen writing says; or else what the case shows.</summary>
    public Finding Shown(Case made, Grading.Look look)
    {
        var shown = made.Look(look.Clue, look.Nth);
        if (look.Writing is { } writing && shown.Seen is Seen.Named)
            return shown with { Seen = made.Written(look.Clue, look.Nth, writing) is { } id ? new Seen.Named(id) : new Seen.Hidden(), Writing = writing };
        if (look.Datum is not { } datum || shown.Seen is not Seen.Reading) return shown;
        var step = ((Shows.Measured)Topic.Clues.First(c => c.Id == look.Clue).Shows).Step;
        return shown with { Seen = new Seen.Reading(Math.Floor((EdgeOf(made, look.Clue, look.Nth, datum) / step) + 0.5) * step), Datum = datum };
    }

    /// <summary>The enquiry of a job with everything still on offer.</summary>
    public Enquiry EnquiryOf(Job job) => new(
        job.Request.Provenance, Topic.Wants.First(w => w.Id == job.Request.Want).Asks, job.Request.Want, job.Request.Offer, job.Bench);

    /// <summary>The grade of an answer.</summary>
    public Grade Grade(Case made, Answer answer) => new Grader(this, made).Grade(answer);

    /// <summary>The engine's own path on a case: always the best next check, until ripe.</summary>
    /// <param name="made">The case.</param>
    /// <param name="known">The next check, or null when ripe, by what was found so far; filled here. For many cases of this topic, since they begin alike.</param>
    public IReadOnlyList<Finding> PathOf(Case made, IDictionary<string, string?>? known = null)
    {
        var reasoner = new Reasoner(SceneOf(made.Job.Request.Provenance));
        var enquiry = EnquiryOf(made.Job);
        var findings = made.Job.Told.ToList();
        var left = made.Job.Request.Questions ?? int.MaxValue;
        while (left-- > 0)
        {
            var key = known is null ? "" : $"{enquiry.Provenance} {enquiry.Want} {enquiry.Channel} {string.Join(' ', enquiry.OnOffer)}: {string.Join("; ", findings)}";
            if (known is null || !known.TryGetValue(key, out var clue))
            {
                var (next, ripe, _) = reasoner.Look(enquiry, findings);
                clue = ripe || next.Count == 0 ? null : next[0].Clue;
                if (known is not null) known[key] = clue;
            }

            if (clue is null) break;
            findings.Add(made.Look(clue, findings.Skip(made.Job.Told.Count).Count(f => f.Clue == clue)));
        }

        return findings;
    }
}
