using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;

namespace Apprentice.Benchmarks;

/// <summary>A simulation of made-up learners: no figure here was measured on people.</summary>
/// <remarks>
/// Their memory is none of the program's models: chance = σ(ability − difficulty + own bent + 1.2·ln(1 + Σ (1 + days since)^−¼)), summed over all practice of the skill.
/// Ability Normal(0, ½), difficulty Normal(1, 0.8), own bent Normal(0, 0.4); six learners share a log; eight jobs a day; a topic of twelve skills.
/// </remarks>
static class Learners
{
    const int Skills = 12;
    const int People = 6;
    const int JobsADay = 8;
    const int MostDays = 150;
    const double Goal = 0.8;
    const ulong Tuned = 501;
    const ulong Fresh = 90_001;

    public static void Print()
    {
        Console.WriteLine("SIMULATION: made-up learners, not people.");
        Orders();
        Strengths();
        Slopes();
    }

    static void Orders()
    {
        const int Workshops = 30;
        foreach (var (along, seed) in new[] { (0, Tuned), (1, Tuned), (0, Fresh), (1, Fresh) })
        {
            var planned = Jobs(Order.Planned, seed, Workshops, along);
            var random = Jobs(Order.Random, seed, Workshops, along);
            var blocks = Jobs(Order.Blocks, seed, Workshops, along);
            var (ratio, error) = Ratio(planned, random);
            Console.WriteLine(
                $"jobs to 8 of 10 on each of {Skills} skills, {along} other skill practised along, {People * Workshops} learners, seed {seed}{(seed == Tuned ? " (the rule was tuned on it)" : "")}: " +
                $"planned {planned.Average():0}, random {random.Average():0}, blocks of five {blocks.Average():0}; planned/random {ratio:0.00} +- {1.96 * error:0.00} (goal at most 0.60)");
        }
    }

    // Ratio of two means with its standard error, the workshops being pairs. Source: W. G. Cochran, Sampling Techniques, 3rd edition 1977, 6.4.
    static (double Ratio, double Error) Ratio(List<double> above, List<double> below)
    {
        var ratio = above.Average() / below.Average();
        var squares = above.Zip(below, (a, b) => (a - (ratio * b)) * (a - (ratio * b))).Sum();
        return (ratio, Math.Sqrt(squares / (above.Count - 1) / above.Count) / below.Average());
    }

    static List<double> Jobs(Order order, ulong seed, int workshops, int along) =>
        [.. Enumerable.Range(0, workshops).Select(w => new Workshop(new Rng(seed + (ulong)w), order, along).Run().Average())];

    static void Strengths()
    {
        const ulong Seed = 601;
        var rng = new Rng(Seed);
        foreach (var strength in new[] { 0.5, 0.6, 0.7 })
        {
            var found = Enumerable.Range(0, 4000).Select(_ => Found(rng, strength, 60)).ToList();
            var jobs = found.OfType<int>().Order().ToList();
            Console.WriteLine(
                $"habit of strength {strength}, 4,000 learners, seed {Seed}: found within 15 jobs in which it could show {Share(found, 15):0.000}{(strength > 0.65 ? " (goal 0.95)" : "")}, " +
                $"within 30 {Share(found, 30):0.000}, within 60 {Share(found, 60):0.000}; half of those found by job {jobs[jobs.Count / 2]}");
        }

        foreach (var slip in new[] { 0.05, 0.1 })
        {
            var told = Enumerable.Range(0, 2000).Count(_ => Enum.GetValues<Habit>().Any(_ => Found(rng, slip, 100) is not null));
            Console.WriteLine($"no habit, each pattern slips in {slip} of jobs, {Enum.GetValues<Habit>().Length} patterns, 100 looks each, 2,000 learners: told of any {told / 2000.0:0.000} (limit 0.05)");
        }

        double Share(List<int?> found, int jobs) => found.Count(f => f <= jobs) / (double)found.Count;
    }

    static int? Found(Rng rng, double share, int jobs)
    {
        var test = new RunningTest(Habits.Free, above: true);
        for (var j = 1; j <= jobs; j++)
        {
            test.Take(rng.Unit() < share);
            if (test.Value >= Habits.Limit) return j;
        }

        return null;
    }

    static void Slopes()
    {
        const ulong Seed = 701;
        var rng = new Rng(Seed);
        foreach (var n in new[] { 10, 20, 40 })
        {
            var errors = Enumerable.Range(0, 4000).Average(_ =>
            {
                var slope = Math.Max(0, 1 + (0.5 * rng.Normal()));
                return Math.Abs(Trust.SlopeOf(Updates(rng, n, slope)).Slope - slope);
            });
            Console.WriteLine($"trust, {n} updates said in tenths, 4,000 learners, seed {Seed}: mean absolute error of a slope {errors:0.000}{(n == 20 ? " (goal below 0.15)" : "")}");
        }
    }

    // What a learner says is rounded to tenths and cannot leave 0.01 to 0.99, as on the screen.
    static List<Observed.Weighed> Updates(Rng rng, int n, double slope)
    {
        var updates = new List<Observed.Weighed>();
        while (updates.Count < n)
        {
            var (before, worth) = (Odds.Log(0.1 + (0.8 * rng.Unit())), 1.5 * rng.Normal());
            var after = before + (slope * worth) + (0.7 * rng.Normal());
            updates.Add(new Observed.Weighed("c", ClueFamily.Measured, Linked: false, worth, Said(after) - Said(before)));
        }

        return updates;
    }

    static double Said(double logOdds) => Odds.Log(Sureness.Said((int)Math.Round(Odds.Chance(logOdds) * 10)));

    enum Order
    {
        Planned,
        Random,
        Blocks,
    }

    sealed class Workshop(Rng rng, Order order, int along)
    {
        static readonly DateTimeOffset Start = new(2026, 1, 1, 9, 0, 0, TimeSpan.Zero);
        static readonly SkillKey[] Keys = [.. Enumerable.Range(0, Skills).Select(s => new SkillKey(SkillSort.Clue, "topic", "s" + s))];

        readonly double[] _difficulty = [.. Enumerable.Range(0, Skills).Select(_ => 1 + (0.8 * rng.Normal()))];
        readonly double[] _ability = [.. Enumerable.Range(0, People).Select(_ => 0.5 * rng.Normal())];
        readonly double[][] _bent = [.. Enumerable.Range(0, People).Select(_ => Enumerable.Range(0, Skills).Select(_ => 0.4 * rng.Normal()).ToArray())];
        readonly List<double>[][] _practice = [.. Enumerable.Range(0, People).Select(_ => Enumerable.Range(0, Skills).Select(_ => new List<double>()).ToArray())];
        History _history = History.Empty;

        public IEnumerable<int> Run()
        {
            var needed = new int?[People];
            for (var day = 0; day < MostDays && needed.Any(n => n is null); day++)
            {
                for (var p = 0; p < People; p++)
                {
                    if (needed[p] is not null) continue;
                    var skills = Session(p, day);
                    for (var j = 0; j < JobsADay; j++)
                    {
                        Practise(p, skills[j], day + (j / 200.0));
                        if (Enumerable.Range(0, Skills).All(s => Chance(p, s, day + 0.1) >= Goal)) needed[p] ??= (day * JobsADay) + j + 1;
                    }
                }
            }

            return needed.Select(n => n ?? MostDays * JobsADay);
        }

        int[] Session(int person, int day)
        {
            if (order == Order.Random) return [.. Enumerable.Range(0, JobsADay).Select(_ => (int)(rng.Unit() * Skills))];
            if (order == Order.Blocks) return [.. Enumerable.Range(0, JobsADay).Select(j => ((day * JobsADay) + j) / 5 % Skills)];
            var now = Start.AddDays(day);
            var known = _history.Book.Of(Name(person), now);
            var fresh = Keys.Where(k => known.All(s => s.Skill != k)).ToList();
            return [.. PlanChoice.Of(known, fresh, JobsADay, now).Select(c => Array.IndexOf(Keys, c.Skill))];
        }

        void Practise(int person, int skill, double day)
        {
            var marks = new List<Observed>();
            foreach (var s in (int[])[skill, .. Enumerable.Range(0, along).Select(_ => (int)(rng.Unit() * Skills))])
            {
                marks.Add(new Observed.Mark(Keys[s], rng.Unit() < Chance(person, s, day), 0));
                _practice[person][s].Add(day);
            }

            if (order == Order.Planned) _history = Log.Job(_history, Name(person), Start.AddDays(day), marks);
        }

        double Chance(int person, int skill, double day)
        {
            var memory = _practice[person][skill].Sum(t => Math.Pow(1 + Math.Max(0, day - t), -0.25));
            return Odds.Chance(_ability[person] - _difficulty[skill] + _bent[person][skill] + (1.2 * Math.Log(1 + memory)));
        }

        static string Name(int person) => "P" + person;
    }
}
