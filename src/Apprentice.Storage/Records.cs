using Apprentice.Engine.Learning;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>The file with which a person's records go from one machine to another: a head, then an entry a line, each a JSON document.</summary>
public static class Records
{
    const string HeadField = "records";

    /// <summary>The text of the file.</summary>
    /// <param name="person">Whose records.</param>
    /// <param name="entries">Their entries alone, oldest first; see <see cref="PersonEntries"/>.</param>
    public static string Write(string person, IReadOnlyList<Logged> entries)
    {
        var head = new BsonDocument { [HeadField] = person, ["schema"] = Log.Schema, ["entries"] = entries.Count };
        return string.Concat(entries.Select(EntryDocument.Of).Prepend(head).Select(d => JsonSerializer.Serialize(d) + "\n"));
    }

    /// <summary>The person and the entries of a file.</summary>
    /// <param name="text">Its text.</param>
    /// <exception cref="LogException">It is not such a file, or a line of it is damaged or missing.</exception>
    public static (string Person, IReadOnlyList<Logged> Entries) Read(string text)
    {
        var lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        JsonLine.OnceEach(lines);
        if (JsonLine.Of(lines[0]) is not { } head || !head[HeadField].IsString || !head["schema"].IsInt32 || !head["entries"].IsInt32)
            throw new LogException("Line 1: this is not a file of records. Such a file is written by 'apprentice export NAME --as move'.");
        if (head["schema"].AsInt32 > Log.Schema) throw new LogException("Line 1: this file was written by a newer version of the program. Use that version.");
        if (head["entries"].AsInt32 != lines.Length - 1) throw new LogException($"The file should hold {head["entries"].AsInt32} entries and holds {lines.Length - 1}. It was cut or changed; write it anew.");
        return (head[HeadField].AsString, [.. lines.Skip(1).Select(Entry)]);
    }

    static Logged Entry(string line, int nth)
    {
        try
        {
            return EntryDocument.Read(JsonLine.Of(line) ?? throw new LogException("No JSON."));
        }
        catch (LogException e)
        {
            throw new LogException($"Line {nth + 2}: this entry cannot be read. Nothing was changed; write the file anew.", e);
        }
    }
}
