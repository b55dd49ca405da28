namespace Apprentice.Engine.Learning;

/// <summary>The skills of all people of a log, folded from their answers in the order of time. See <see cref="SkillModel"/>.</summary>
/// <remarks>Answers are taken by time and number of job, whatever order the entries of different jobs have in the log. Guided jobs and jobs of nobody known are left out.</remarks>
public sealed class SkillBook
{
    readonly Dictionary<SkillKey, int> _numbers = [];
    readonly Dictionary<Observed.Mark, int> _seen = new(ReferenceEqualityComparer.Instance);
    readonly List<SkillKey> _keys = [];
    readonly List<(double Difficulty, int Answers)> _skills = [];
    readonly Dictionary<string, PersonSkills> _people = new(StringComparer.Ordinal);
    (DateTimeOffset At, int Job) _last = (DateTimeOffset.MinValue, 0);
    int _answers;

    SkillBook()
    {
    }

    SkillBook(SkillBook other)
    {
        (_last, _answers) = (other._last, other._answers);
        _numbers = new(other._numbers);
        _seen = new(other._seen, ReferenceEqualityComparer.Instance);
        _keys = [.. other._keys];
        _skills = [.. other._skills];
        foreach (var (name, person) in other._people) _people[name] = person.Copy();
    }

    /// <summary>The book of a history.</summary>
    /// <param name="history">The history.</param>
    /// <param name="before">The book of an earlier state of the same log, or null: then only what came since is read, with the same result.</param>
    public static SkillBook Of(History history, SkillBook? before = null)
    {
        var answered = history.Answered;
        if (before is not null && before._answers == answered.Count) return before;
        var from = before?._answers ?? 0;
        var book = before is null ? new SkillBook() : new SkillBook(before);
        if (!book.IsTaken(history, Enumerable.Range(from, answered.Count - from).Select(i => answered[i])))
        {
            book = new SkillBook();
            foreach (var (at, number) in Counting(history, answered).Select(j => (At: EndOf(j), j.Started.Job)).Order()) book.Take(history.Jobs[number - 1], at);
        }

        book._answers = answered.Count;
        return book;
    }

    /// <summary>The person's skills, each as it stands now, in the order in which they were first asked.</summary>
    /// <param name="person">A name.</param>
    /// <param name="now">The time for which it is worked out.</param>
    public IReadOnlyList<SkillState> Of(string? person, DateTimeOffset now)
    {
        if (person is null || !_people.TryGetValue(person, out var its)) return [];
        return [.. its.Skills.Select(s => s.Value.State(_keys[s.Key], its.Ability, _skills[s.Key].Difficulty, now))];
    }

    /// <summary>The words for all skills of a person, and those that need work, weakest first.</summary>
    /// <param name="person">A name.</param>
    /// <param name="now">The time for which it is worked out.</param>
    /// <param name="most">How many of the weakest at most.</param>
    public (IReadOnlyList<SkillCount> Words, IReadOnlyList<SkillState> Weakest) Needs(string person, DateTimeOffset now, int most)
    {
        if (!_people.TryGetValue(person, out var its)) return ([], []);
        var words = its.Skills.Select(s => (Number: s.Key, Pair: s.Value, Word: s.Value.WordAt(now))).ToList();
        var weakest = words.Where(w => w.Word == SkillWord.NeedsWork).OrderBy(w => w.Pair.MemoryAt(now) - _skills[w.Number].Difficulty).Take(most);
        return (
            [.. words.Select(w => new SkillCount(_keys[w.Number], w.Word, w.Pair.Asked, w.Pair.Right))],
            [.. weakest.Select(w => w.Pair.State(_keys[w.Number], its.Ability, _skills[w.Number].Difficulty, now))]);
    }

    /// <summary>How many jobs of a person were taken in.</summary>
    public int Jobs(string person) => _people.TryGetValue(person, out var its) ? its.Jobs : 0;

    /// <summary>Everybody's skills.</summary>
    public IEnumerable<(string Person, IReadOnlyList<SkillState> Skills)> All(DateTimeOffset now) => _people.Keys.Select(p => (p, Of(p, now)));

    /// <summary>A person's ability θ; 0 for one who has not answered.</summary>
    public double Ability(string person) => _people.TryGetValue(person, out var its) ? its.Ability : 0;

    /// <summary>A skill's difficulty d.</summary>
    public double Difficulty(SkillKey skill) => _numbers.TryGetValue(skill, out var n) ? _skills[n].Difficulty : SkillModel.FirstDifficulty;

    /// <summary>The chance that the person shows the skill at a time, guessing left out.</summary>
    public double Chance(string person, SkillKey skill, DateTimeOffset at)
    {
        if (!_people.TryGetValue(person, out var its)) return SkillModel.Chance(-Difficulty(skill), 0);
        var memory = _numbers.TryGetValue(skill, out var n) && its.Skills.TryGetValue(n, out var pair) ? pair.MemoryAt(at) : 0;
        return SkillModel.Chance(its.Ability - Difficulty(skill) + memory, 0);
    }

    static IEnumerable<PastJob> Counting(History history, IEnumerable<int> jobs) =>
        jobs.Select(n => history.Jobs[n - 1]).Where(j => j.Counts && j.Person is not null && j.Ended is not null);

    static DateTimeOffset EndOf(PastJob job) => job.Ended ?? job.At;

    // Most logs are in the order of time as they are: false at the first job that is not.
    bool IsTaken(History history, IEnumerable<int> jobs)
    {
        foreach (var job in Counting(history, jobs))
        {
            if ((EndOf(job), job.Started.Job).CompareTo(_last) <= 0) return false;
            Take(job, EndOf(job));
        }

        return true;
    }

    void Take(PastJob job, DateTimeOffset at)
    {
        _last = (at, job.Started.Job);
        if (!_people.TryGetValue(job.Person ?? "", out var person)) person = _people[job.Person ?? ""] = new PersonSkills();
        person.Jobs++;
        foreach (var observed in job.Observed)
        {
            if (observed is Observed.Mark mark) Take(person, mark, at);
        }
    }

    // Histories keep like marks once, so that most are known by sight.
    int NumberOf(Observed.Mark mark)
    {
        if (_seen.TryGetValue(mark, out var number)) return number;
        if (!_numbers.TryGetValue(mark.Skill, out number))
        {
            number = _numbers[mark.Skill] = _keys.Count;
            _keys.Add(mark.Skill);
            _skills.Add((SkillModel.FirstDifficulty, 0));
        }

        return _seen[mark] = number;
    }

    void Take(PersonSkills person, Observed.Mark mark, DateTimeOffset at)
    {
        var number = NumberOf(mark);
        if (!person.Skills.TryGetValue(number, out var pair)) pair = person.Skills[number] = new PairMemory();
        var (difficulty, answers) = _skills[number];
        var error = pair.Take(mark, person.Ability - difficulty, at);
        person.Ability += SkillModel.Step(person.Answers++) * error;
        _skills[number] = (difficulty - (SkillModel.Step(answers) * error), answers + 1);
    }
}

/// <summary>What the book keeps of one person.</summary>
sealed class PersonSkills
{
    public double Ability { get; set; }

    public int Answers { get; set; }

    public int Jobs { get; set; }

    public Dictionary<int, PairMemory> Skills { get; } = [];

    public PersonSkills Copy()
    {
        var copy = new PersonSkills { Ability = Ability, Answers = Answers, Jobs = Jobs };
        foreach (var (skill, pair) in Skills) copy.Skills[skill] = pair.Copy();
        return copy;
    }
}
