using System.Text.Json;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using static Apprentice.Engine.Tests.Learning.Logbook;

namespace Apprentice.Engine.Tests.Learning;

public sealed class SkillBookTests
{
    static JsonElement Json(string file) => JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Data", file))).RootElement;

    // Source: Data/decay_elo.json, a trace worked out by a second program.
    [Fact]
    public void A_worked_trace_comes_out_to_the_tenth_digit()
    {
        var log = new Logbook();
        foreach (var step in Json("decay_elo.json").GetProperty("trace").EnumerateArray())
        {
            var day = step.GetProperty("t").GetDouble();
            var before = log.History.Book.Chance("Sam", Skill("plate"), Start.AddDays(day));
            Assert.Equal(step.GetProperty("p").GetDouble(), before, 1e-10);
            var book = log.Job("Sam", day, Mark("plate", step.GetProperty("y").GetInt32() == 1)).History.Book;
            var (theta, d, c) = (step.GetProperty("theta").GetDouble(), step.GetProperty("d").GetDouble(), step.GetProperty("c").GetDouble());
            Assert.Equal(theta, book.Ability("Sam"), 1e-10);
            Assert.Equal(d, book.Difficulty(Skill("plate")), 1e-10);
            Assert.Equal(theta - d + c, Odds.Log(book.Chance("Sam", Skill("plate"), Start.AddDays(day))), 1e-10);
        }

        var due = Json("decay_elo.json").GetProperty("review").GetProperty("due_day").GetDouble();
        var state = Assert.Single(log.History.Book.Of("Sam", Start.AddDays(60)));
        Assert.Equal(due, (state.Due - Start).TotalDays, 1e-6);
        Assert.Equal(0.7, log.History.Book.Chance("Sam", Skill("plate"), state.Due), 1e-8);
    }

    // Source: Data/learner_oracles.json, beta distribution with counts that halve in 30 days, quantiles by a statistics library.
    [Fact]
    public void The_interval_is_that_of_counts_that_fade()
    {
        var log = new Logbook();
        foreach (var row in Json("learner_oracles.json").GetProperty("discounted_beta_prior1_1_H30").EnumerateArray())
        {
            var day = row.GetProperty("t").GetDouble();
            var state = Assert.Single(log.Job("Sam", day, Mark("plate", row.GetProperty("x").GetInt32() == 1)).History.Book.Of("Sam", Start.AddDays(day)));
            Assert.Equal(row.GetProperty("q05").GetDouble(), state.Low, 1e-9);
        }
    }

    // Reckoned again by another way: plain arrays over the list of answers.
    [Fact]
    public void Every_figure_comes_out_of_a_second_fold()
    {
        var (log, answers) = Busy(seed: 11, jobs: 400);
        var theta = new Dictionary<string, (double Value, int N)>();
        var d = new Dictionary<string, (double Value, int N)>();
        var c = new Dictionary<(string, string), (double Value, double Day)>();
        foreach (var (person, day, skill, right, guess) in answers)
        {
            var (a, n) = theta.GetValueOrDefault(person);
            var (b, m) = d.GetValueOrDefault(skill, (0.5, 0));
            var memory = c.TryGetValue((person, skill), out var last) ? last.Value * Math.Pow(2, -(day - last.Day) / 60) : 0;
            var error = (right ? 1 : 0) - (guess + ((1 - guess) / (1 + Math.Exp(-(a - b + memory)))));
            theta[person] = (a + (0.3 / (1 + (0.05 * n)) * error), n + 1);
            d[skill] = (b - (0.3 / (1 + (0.05 * m)) * error), m + 1);
            c[(person, skill)] = (memory + (0.4 * error) + 0.5, day);
        }

        var book = log.History.Book;
        Assert.All(theta, t => Assert.Equal(t.Value.Value, book.Ability(t.Key), 1e-10));
        Assert.All(d, t => Assert.Equal(t.Value.Value, book.Difficulty(Skill(t.Key)), 1e-10));
        foreach (var ((person, skill), (memory, day)) in c)
        {
            var state = book.Of(person, Start.AddDays(day)).Single(s => s.Skill == Skill(skill));
            var its = answers.Where(x => x.Person == person && x.Skill == skill).ToList();
            Assert.Equal(1 / (1 + Math.Exp(-(theta[person].Value - d[skill].Value + memory))), state.Chance, 1e-9);
            Assert.Equal((its.Count, its.Count(x => x.Right), its.Select(x => Start.AddDays(x.Day).Date).Distinct().Count(), its[^1].Right), (state.Asked, state.Right, state.Days, state.LastRight));
        }
    }

    [Fact]
    public void The_order_of_unrelated_jobs_in_the_log_does_not_matter()
    {
        var jobs = Enumerable.Range(1, 60).Select(j => JobEntries(j, j % 2 == 0 ? "Sam" : "Kim", j / 3.0, "bar", guided: false, [Mark("a" + (j % 4), j % 3 > 0)]).ToList()).ToList();
        var woven = jobs.Select(j => j[0]).Concat(jobs.Where(j => ((LogEntry.Answered)j[1].What).Job % 2 == 0).Select(j => j[1])).Concat(jobs.Where(j => ((LogEntry.Answered)j[1].What).Job % 2 == 1).Select(j => j[1]));
        Same(History.Of(jobs.SelectMany(j => j)).Book, History.Of(woven).Book);
    }

    [Fact]
    public void A_book_that_was_carried_on_is_the_same_as_one_made_at_once()
    {
        var (log, _) = Busy(seed: 12, jobs: 120);
        var history = History.Empty;
        foreach (var entry in log.Entries)
        {
            history = history.With(entry);
            Assert.NotNull(history.Book);
        }

        Same(log.History.Book, history.Book);
    }

    [Theory]
    [InlineData("+++", 3, SkillWord.TooFewYet)]
    [InlineData("++++++++", 3, SkillWord.Safe)]
    [InlineData("++++++++", 2, SkillWord.Nearly)]
    [InlineData("+++++++", 3, SkillWord.Nearly)]
    [InlineData("-+++++++", 3, SkillWord.Nearly)]
    [InlineData("-+-+-+-+", 3, SkillWord.NeedsWork)]
    public void The_word_needs_eight_answers_on_three_days_and_a_high_lower_end(string answers, int days, SkillWord word)
    {
        var log = new Logbook();
        for (var i = 0; i < answers.Length; i++) log.Job("Sam", Math.Min(i, days - 1), Mark("plate", answers[i] == '+'));
        Assert.Equal(word, Assert.Single(log.History.Book.Of("Sam", Start.AddDays(days - 1))).Word);
    }

    [Fact]
    public void After_an_error_it_is_due_at_once_otherwise_not_before_the_next_day()
    {
        var wrong = Assert.Single(new Logbook().Job("Sam", 3, Mark("plate", right: false)).History.Book.Of("Sam", Start.AddDays(3)));
        Assert.Equal(Start.AddDays(3), wrong.Due);
        var right = Assert.Single(new Logbook().Job("Sam", 3, Mark("plate", right: true)).History.Book.Of("Sam", Start.AddDays(3)));
        Assert.Equal(Start.AddDays(4), right.Due);
    }

    [Fact]
    public void Guided_jobs_and_jobs_of_nobody_count_for_nothing()
    {
        var log = new Logbook().Job("Sam", 0, "bar", guided: true, [Mark("plate", true)]).Job(null, 0, Mark("plate", true));
        Assert.Empty(log.History.Book.Of("Sam", Start));
        Assert.Equal(0.5, log.History.Book.Difficulty(Skill("plate")));
    }

    [Fact]
    public void A_name_given_afterwards_takes_the_job_along()
    {
        var log = new Logbook().Job(null, 0, Mark("plate", true));
        var history = log.History;
        Assert.Empty(history.Book.Of("Sam", Start));
        Assert.Single(history.With(new Logged(Start, new LogEntry.PersonAdded("Sam", 1))).Book.Of("Sam", Start));
    }

    static (Logbook Log, List<(string Person, double Day, string Skill, bool Right, double Guess)> Answers) Busy(ulong seed, int jobs)
    {
        var rng = new Rng(seed);
        var (log, answers) = (new Logbook(), new List<(string, double, string, bool, double)>());
        for (var j = 0; j < jobs; j++)
        {
            var (person, day) = ("P" + (int)(rng.Unit() * 4), j / 8.0);
            var marks = Enumerable.Range(0, 3).Select(_ => (Skill: "s" + (int)(rng.Unit() * 9), Right: rng.Unit() < 0.6, Guess: rng.Unit() < 0.5 ? 0 : 0.25)).ToList();
            log.Job(person, day, marks.Select(m => Mark(m.Skill, m.Right, m.Guess)));
            answers.AddRange(marks.Select(m => (person, day, m.Skill, m.Right, m.Guess)));
        }

        return (log, answers);
    }

    static void Same(SkillBook one, SkillBook other)
    {
        var at = Start.AddDays(100);
        Assert.Equal(one.All(at).OrderBy(p => p.Person).SelectMany(p => p.Skills.OrderBy(s => s.Skill.Id)), other.All(at).OrderBy(p => p.Person).SelectMany(p => p.Skills.OrderBy(s => s.Skill.Id)));
    }
}
