using System.Collections.Immutable;
using Apprentice.Content;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>The answer to a job as it is filled in: the questions that follow from what was answered, and the answer at the end.</summary>
/// <param name="On">The job.</param>
/// <param name="Values">Chosen value per question key.</param>
sealed record AnswerForm(BenchJob On, ImmutableDictionary<string, string> Values)
{
    const string Open = "open";
    const string Force = "force";
    const string None = Kind.NoneId;

    /// <summary>The questions, in order; some follow from earlier answers.</summary>
    public IReadOnlyList<AnswerQuestion> Questions
    {
        get
        {
            var words = new TopicWords(On.Topic);
            return
            [
                .. On.Want.Asks.SelectMany(p => Part(On.Topic.Parts.First(x => Same(x.Id, p)), words)),
                .. On.Want.OrderLines.SelectMany(l => Order(l, words)),
                .. Reasons(words),
            ];
        }
    }

    /// <summary>The first question without an answer, or null when the form is full.</summary>
    public AnswerQuestion? Next => Questions.FirstOrDefault(q => !Values.ContainsKey(q.Key));

    /// <summary>Spares that are ordered and can hurt when wrong.</summary>
    public IReadOnlyList<Spare> Hazards =>
    [
        .. Given().Orders.SelectMany(o => o switch
        {
            Choice.Order order => [order.Spare],
            Choice.OrderTwo two => [two.First, two.Second],
            _ => Array.Empty<string>(),
        }).Distinct(StringComparer.Ordinal).Select(id => On.Topic.Spares.First(s => Same(s.Id, id))).Where(s => s.Hazard),
    ];

    /// <summary>This form with one more answer.</summary>
    public AnswerForm With(string key, string value) => this with { Values = Values.SetItem(key, value) };

    /// <summary>This form without the answer to a question and to those that follow from it.</summary>
    public AnswerForm Without(string key)
    {
        var of = key[(key.IndexOf(':') + 1)..];
        string[] with = key.StartsWith("which:", StringComparison.Ordinal) ? [key, $"sure:{of}"]
            : key.StartsWith("do:", StringComparison.Ordinal) ? [key, $"two1:{of}", $"two2:{of}", $"wait:{of}", $"force:{of}"]
            : key.StartsWith("two1:", StringComparison.Ordinal) ? [key, $"two2:{of}"]
            : [key];
        return this with { Values = Values.RemoveRange(with) };
    }

    /// <summary>The answer of a full form.</summary>
    public Given Given() => new(
        [.. On.Want.Asks.Select(p => new PartAnswer(p, Values[$"which:{p}"] is var kind && Same(kind, Open) ? null : kind, int.Parse(Values[$"sure:{p}"])))],
        [.. On.Want.OrderLines.Select(l => Chosen(l.Id))],
        Values.GetValueOrDefault("settled"), Values.GetValueOrDefault("aside"), Values.GetValueOrDefault("story"), Forced);

    /// <summary>True when a part that can hurt is to be put in by force.</summary>
    public bool Forced => On.Want.OrderLines.Any(l => Values.GetValueOrDefault($"do:{l.Id}") is Force);

    IEnumerable<AnswerQuestion> Part(Part part, TopicWords words)
    {
        yield return new AnswerQuestion(
            $"which:{part.Id}", Words.Of("answer.line-which", ("part", part.Name)), part.Question, Words.Of("answer.which-help"),
            [.. part.Kinds.Select(k => (k.Id, k.Name)), (None, Words.Of("answer.none")), (Open, Words.Of("answer.not-settled"))]);
        if (!Values.TryGetValue($"which:{part.Id}", out var kind)) yield break;
        yield return new AnswerQuestion(
            $"sure:{part.Id}", Words.Of("answer.line-sure"),
            Same(kind, Open) ? Words.Of("answer.sure-open") : Words.Of("answer.sure", ("kind", words.Kind(part.Id, kind))),
            Words.Of("answer.sure-help"),
            [.. Enumerable.Range(1, 9).Select(n => (n.ToString(), Words.Of("answer.tenths", ("n", n)))), ("10", Words.Of("answer.as-certain"))],
            Scale: true);
    }

    IEnumerable<AnswerQuestion> Order(OrderLine line, TopicWords words)
    {
        var spares = On.Topic.Spares.Where(s => Same(s.OrderLine, line.Id)).ToList();
        var open = On.OnOffer.Where(c => !c.Safety && On.Times(c.Id) == 0).ToList();
        yield return new AnswerQuestion(
            $"do:{line.Id}", Spoken.Capital(Words.Of("answer.line-do", ("line", line.Name))), Words.Of("answer.do", ("line", line.Name)), "",
            [
                .. spares.Select(s => ($"={s.Id}", Words.Of("answer.order", ("spare", s.Name)))),
                .. spares.Count > 1 ? [("two", Words.Of("answer.two"))] : Array.Empty<(string, string)>(),
                .. spares.Any(s => s.Hazard) ? [(Force, Words.Of("answer.force"))] : Array.Empty<(string, string)>(),
                .. open.Count > 0 ? [("wait", Words.Of("answer.wait"))] : Array.Empty<(string, string)>(),
                ("ask", Words.Of("answer.ask")),
            ]);
        var chosen = Values.GetValueOrDefault($"do:{line.Id}");
        if (chosen is "wait")
        {
            yield return new AnswerQuestion(
                $"wait:{line.Id}", Words.Of("answer.line-wait"), Words.Of("answer.wait-which"), "", [.. open.Select(c => (c.Id, words.Clue(c.Id)))]);
        }
        if (chosen is Force)
        {
            yield return new AnswerQuestion(
                $"force:{line.Id}", Words.Of("answer.line-force"), Words.Of("answer.force-which"), "", [.. spares.Where(s => s.Hazard).Select(s => (s.Id, s.Name))]);
        }
        if (chosen is not "two") yield break;
        yield return new AnswerQuestion(
            $"two1:{line.Id}", Words.Of("answer.line-two"), Words.Of("answer.two-first"), "", [.. spares.Select(s => (s.Id, s.Name))]);
        var first = Values.GetValueOrDefault($"two1:{line.Id}");
        yield return new AnswerQuestion(
            $"two2:{line.Id}", Words.Of("answer.line-two"), Words.Of("answer.two-second"), "",
            [.. spares.Where(s => !string.Equals(s.Id, first, StringComparison.Ordinal)).Select(s => (s.Id, s.Name))]);
    }

    IEnumerable<AnswerQuestion> Reasons(TopicWords words)
    {
        var none = (None, Words.Of("answer.none-check"));
        var used = On.Findings.Select(f => f.Clue).Distinct(StringComparer.Ordinal).Select(c => (c, words.Clue(c))).ToList();
        if (On.Step >= 2)
            yield return new AnswerQuestion("settled", Words.Of("answer.line-settled"), Words.Of("answer.settled"), "", [.. used, none]);
        if (On.Step < 3) yield break;
        yield return new AnswerQuestion("aside", Words.Of("answer.line-aside"), Words.Of("answer.aside"), Words.Of("answer.aside-help"), [none, .. used]);
        yield return new AnswerQuestion(
            "story", Words.Of("answer.line-story"), Words.Of("answer.story"), Words.Of("answer.story-help"),
            [(None, Words.Of("story.nothing")), .. Tags().Select(t => (t, words.Tag(t)))]);
    }

    IEnumerable<string> Tags() => On.Bench.SceneOf(On.Made.Job.Request.Provenance).Table.Tags.Select(t => t.Id);

    Choice Chosen(string line)
    {
        var order = On.Topic.Spares.Select(s => s.Id).ToList();
        return Values[$"do:{line}"] switch
        {
            "ask" => new Choice.Ask(),
            "wait" => new Choice.Wait(Values[$"wait:{line}"]),
            Force => new Choice.Order(Values[$"force:{line}"]),
            "two" => order.IndexOf(Values[$"two1:{line}"]) < order.IndexOf(Values[$"two2:{line}"])
                ? new Choice.OrderTwo(Values[$"two1:{line}"], Values[$"two2:{line}"])
                : new Choice.OrderTwo(Values[$"two2:{line}"], Values[$"two1:{line}"]),
            var spare => new Choice.Order(spare[1..]),
        };
    }

    static bool Same(string left, string right) => string.Equals(left, right, StringComparison.Ordinal);
}
