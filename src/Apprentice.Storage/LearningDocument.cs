using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>Entries about learning, and what an answer showed, as fields of a document.</summary>
static class LearningDocument
{
    /// <summary>The fields of an entry, or null when it is another kind.</summary>
    public static BsonDocument? Fields(LogEntry entry) => entry switch
    {
        LogEntry.Updated e => new()
        {
            ["job"] = e.Job,
            ["look"] = e.Look,
            ["part"] = e.Part,
            ["of"] = e.Kind,
            ["before"] = e.Before,
            ["after"] = e.After,
        },
        LogEntry.SessionPlanned e => new()
        {
            ["person"] = e.Person,
            ["jobs"] = new BsonArray(e.Jobs.Select(j => new BsonDocument { ["topic"] = j.Topic, ["request"] = JobFields.Of(j.Draw.Request), ["seed"] = unchecked((long)j.Draw.Seed) })),
        },
        LogEntry.PinSet e => new() { ["person"] = e.Person, ["hash"] = e.Hash },
        LogEntry.HabitTold e => new() { ["person"] = e.Person, ["habit"] = e.Habit.ToString() },
        LogEntry.AimedAt e => new() { ["person"] = e.Person, ["habit"] = e.Habit.ToString() },
        LogEntry.PlacementAsked e => new() { ["person"] = e.Person, ["topics"] = Texts(e.Topics) },
        LogEntry.TopicsChosen e => new() { ["topics"] = Texts(e.Topics) },
        _ => null,
    };

    /// <summary>The entry of a kind's name, or null when it is another kind.</summary>
    public static LogEntry? What(string kind, BsonDocument d) => kind switch
    {
        nameof(LogEntry.Updated) => new LogEntry.Updated(
            d["job"].AsInt32, d["look"].AsInt32, d["part"].AsString, d["of"].AsString, d["before"].AsInt32, d["after"].AsInt32),
        nameof(LogEntry.SessionPlanned) => new LogEntry.SessionPlanned(
            JobFields.Text(d["person"]),
            [.. d["jobs"].AsArray.Select(j => new PlannedJob(j["topic"].AsString, new Draw(JobFields.ToRequest(j["request"].AsDocument), unchecked((ulong)j["seed"].AsInt64))))]),
        nameof(LogEntry.PinSet) => new LogEntry.PinSet(d["person"].AsString, JobFields.Text(d["hash"])),
        nameof(LogEntry.HabitTold) => new LogEntry.HabitTold(d["person"].AsString, Enum.Parse<Habit>(d["habit"].AsString)),
        nameof(LogEntry.AimedAt) => new LogEntry.AimedAt(d["person"].AsString, Enum.Parse<Habit>(d["habit"].AsString)),
        nameof(LogEntry.PlacementAsked) => new LogEntry.PlacementAsked(d["person"].AsString, Texts(d["topics"])),
        nameof(LogEntry.TopicsChosen) => new LogEntry.TopicsChosen(Texts(d["topics"])),
        _ => null,
    };

    /// <summary>What an answer showed.</summary>
    public static BsonArray Of(IReadOnlyList<Observed> observed) => new(observed.Select(Of));

    /// <summary>What an answer showed; nothing in entries that were written before it was kept.</summary>
    public static IReadOnlyList<Observed> ToObserved(BsonValue value) => value.IsNull ? [] : [.. value.AsArray.Select(v => ToObserved(v.AsDocument))];

    static BsonDocument Of(Observed observed) => observed switch
    {
        Observed.Mark m => new()
        {
            ["did"] = "mark",
            ["sort"] = m.Skill.Sort.ToString(),
            ["topic"] = m.Skill.Topic,
            ["id"] = m.Skill.Id,
            ["right"] = m.Right,
            ["guess"] = m.Guess,
        },
        Observed.Sure s => new() { ["did"] = "sure", ["part"] = s.Part, ["tenths"] = s.Tenths, ["right"] = s.Right },
        Observed.Pattern p => new() { ["did"] = "pattern", ["habit"] = p.Habit.ToString(), ["shown"] = p.Shown },
        Observed.Bench b => new() { ["did"] = "bench", ["minutes"] = b.Minutes, ["path"] = b.PathMinutes },
        Observed.Ordered o => new() { ["did"] = "ordered", ["wrong"] = o.Wrong },
        Observed.Weighed w => new()
        {
            ["did"] = "weighed",
            ["clue"] = w.Clue,
            ["family"] = w.Family.ToString(),
            ["linked"] = w.Linked,
            ["worth"] = w.Worth,
            ["taken"] = w.Taken,
        },
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    static Observed ToObserved(BsonDocument d) => d["did"].AsString switch
    {
        "mark" => new Observed.Mark(
            new SkillKey(Enum.Parse<SkillSort>(d["sort"].AsString), d["topic"].AsString, d["id"].AsString), d["right"].AsBoolean, d["guess"].AsDouble),
        "sure" => new Observed.Sure(d["part"].AsString, d["tenths"].AsInt32, d["right"].AsBoolean),
        "pattern" => new Observed.Pattern(Enum.Parse<Habit>(d["habit"].AsString), d["shown"].AsBoolean),
        "bench" => new Observed.Bench(d["minutes"].AsDouble, d["path"].AsDouble),
        "ordered" => new Observed.Ordered(d["wrong"].AsBoolean),
        "weighed" => new Observed.Weighed(
            d["clue"].AsString, Enum.Parse<ClueFamily>(d["family"].AsString), d["linked"].AsBoolean, d["worth"].AsDouble, d["taken"].AsDouble),
        var other => throw new FormatException($"Unknown observation {other}."),
    };

    static BsonArray Texts(IReadOnlyList<string> texts) => new(texts.Select(t => new BsonValue(t)));

    static string[] Texts(BsonValue value) => [.. value.AsArray.Select(t => t.AsString)];
}
