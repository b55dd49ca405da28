using System.Text;
using System.Text.Json;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>A line of a file in which each line is a JSON document.</summary>
static class JsonLine
{
    /// <summary>The document of a line, or null when it is none.</summary>
    public static BsonDocument? Of(string line)
    {
        try
        {
            return LiteDB.JsonSerializer.Deserialize(line) as BsonDocument;
        }
        catch (LiteException)
        {
            return null;
        }
    }

    /// <summary>Sees that no field stands twice in the same place: the last one would be taken in silence.</summary>
    /// <param name="lines">Lines of a file, from the first.</param>
    /// <exception cref="LogException">One does; line and field are named.</exception>
    public static void OnceEach(IReadOnlyList<string> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            if (Twice(lines[i]) is { } field) throw new LogException($"Line {i + 1}: the field {field} stands there twice. Nothing was changed; keep one of the two, or write the file anew.");
        }
    }

    // What is no JSON at all is told by those who read it.
    static string? Twice(string line)
    {
        var names = new Stack<HashSet<string>>();
        try
        {
            var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(line));
            while (reader.Read())
            {
                if (reader.TokenType == JsonTokenType.StartObject) names.Push(new(StringComparer.Ordinal));
                else if (reader.TokenType == JsonTokenType.EndObject) _ = names.Pop();
                else if (reader.TokenType == JsonTokenType.PropertyName && reader.GetString() is { } name && !names.Peek().Add(name)) return name;
            }
        }
        catch (System.Text.Json.JsonException)
        {
            return null;
        }
        return null;
    }
}
