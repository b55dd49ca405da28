using Apprentice.Engine.Notebook;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>The file with which confirmed real bikes go to another workshop: a head, then a case a line, each a JSON document. No names of people or customers are in it.</summary>
public static class CaseExchange
{
    const string Head = "real-bikes";

    /// <summary>The text of the file.</summary>
    /// <param name="workshop">Name of the workshop that gives them.</param>
    /// <param name="cases">Its own cases.</param>
    public static string Write(string workshop, IReadOnlyList<RealCase> cases)
    {
        var head = new BsonDocument { [Head] = workshop, ["schema"] = Log.Schema, ["cases"] = cases.Count };
        return string.Concat(cases.Select(c => StandFields.Of(c with { Key = $"{workshop}: {c.Key}", From = workshop })).Prepend(head).Select(d => JsonSerializer.Serialize(d) + "\n"));
    }

    /// <summary>The cases of a file.</summary>
    /// <param name="text">Its text.</param>
    /// <exception cref="LogException">It is not such a file, or a line of it is damaged or missing.</exception>
    public static IReadOnlyList<RealCase> Read(string text)
    {
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        JsonLine.OnceEach(lines);
        if (JsonLine.Of(lines[0]) is not { } head || !head[Head].IsString || !head["cases"].IsInt32 || !head["schema"].IsInt32)
            throw new LogException("Line 1: this is no file of real bikes. Such a file is written by 'apprentice bike --cases NAME'.");
        if (head["schema"].AsInt32 > Log.Schema) throw new LogException("Line 1: this file was written by a newer version of the program. Use that version.");
        if (head["cases"].AsInt32 != lines.Length - 1) throw new LogException($"The file should hold {head["cases"].AsInt32} cases and holds {lines.Length - 1}. It was cut or changed; write it anew.");
        return [.. lines.Skip(1).Select((line, i) => Case(line, i + 2))];
    }

    static RealCase Case(string line, int number)
    {
        try
        {
            return StandFields.ToCase(JsonLine.Of(line) ?? throw new FormatException("No JSON.")) is { From.Length: > 0 } it ? it : throw new FormatException("No workshop.");
        }
        catch (Exception e) when (e is InvalidCastException or FormatException or ArgumentException or OverflowException or NullReferenceException)
        {
            throw new LogException($"Line {number}: this case cannot be read. Nothing was changed; write the file anew.", e);
        }
    }
}
