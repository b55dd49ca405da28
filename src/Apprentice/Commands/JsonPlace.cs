using System.Text;
using System.Text.Json;

namespace Apprentice.Commands;

/// <summary>A value of a JSON file that knows its line and field, so that whoever wrote it can put it right.</summary>
sealed class JsonPlace
{
    readonly string _file;
    readonly int _line;
    readonly string _path;
    readonly JsonTokenType _type;
    readonly string _text;
    readonly Dictionary<string, JsonPlace> _fields = new(StringComparer.Ordinal);
    readonly List<JsonPlace> _items = [];

    JsonPlace(string file, byte[] bytes, ref Utf8JsonReader reader, string path)
    {
        (_file, _path, _type) = (file, path, reader.TokenType);
        _line = 1 + bytes.AsSpan(0, (int)reader.TokenStartIndex).Count((byte)'\n');
        _text = _type is JsonTokenType.String ? reader.GetString() ?? "" : Encoding.UTF8.GetString(reader.ValueSpan);
        if (_type == JsonTokenType.StartObject) ReadFields(bytes, ref reader);
        if (_type == JsonTokenType.StartArray) ReadItems(bytes, ref reader);
    }

    /// <summary>True for a JSON null.</summary>
    public bool IsNull => _type == JsonTokenType.Null;

    /// <summary>True for a JSON object.</summary>
    public bool IsObject => _type == JsonTokenType.StartObject;

    /// <summary>Reads a file.</summary>
    /// <exception cref="Complaint">It is not there, or not JSON.</exception>
    public static JsonPlace Of(string file)
    {
        if (!File.Exists(file)) throw new Complaint($"There is no file '{file}'.", ExitCode.Usage);
        var bytes = Encoding.UTF8.GetBytes(File.ReadAllText(file));
        try
        {
            var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true });
            reader.Read();
            var place = new JsonPlace(file, bytes, ref reader, "");
            reader.Read();
            return place;
        }
        catch (JsonException e)
        {
            var sentence = e.Message.Split(" LineNumber:")[0];
            throw new Complaint($"{file}:{(e.LineNumber ?? 0) + 1}: This is not JSON: {sentence}", ExitCode.Fault);
        }
    }

    /// <summary>What is wrong here, told with file, line and field.</summary>
    public Complaint Wrong(string sentence) => new($"{_file}:{_line}: {(_path.Length == 0 ? "" : $"{_path}: ")}{sentence}", ExitCode.Fault);

    /// <summary>The field of that name, or null when it is left out or null.</summary>
    public JsonPlace? Field(string name) =>
        !IsObject ? throw Wrong($"An object with the field {name} would do here.")
        : _fields.TryGetValue(name, out var field) && !field.IsNull ? field : null;

    /// <summary>The field of that name.</summary>
    /// <exception cref="Complaint">It is left out, or null.</exception>
    public JsonPlace Needed(string name) => Field(name) ?? throw Wrong($"The field {name} is missing.");

    /// <summary>This object, if it has no fields but these.</summary>
    /// <exception cref="Complaint">It has another one.</exception>
    public JsonPlace Only(params string[] names)
    {
        if (!IsObject) throw Wrong($"An object with the fields {string.Join(", ", names)} would do here.");
        foreach (var (name, field) in _fields)
        {
            if (!names.Contains(name)) throw field.Wrong(Choose.Unknown("field", name, names));
        }

        return this;
    }

    /// <summary>The items of a list.</summary>
    /// <exception cref="Complaint">It is no list.</exception>
    public IReadOnlyList<JsonPlace> Items() => _type == JsonTokenType.StartArray ? _items : throw Wrong("A list in [ ] would do here.");

    /// <summary>The text.</summary>
    /// <exception cref="Complaint">It is no text.</exception>
    public string Text() => _type == JsonTokenType.String ? _text : throw Wrong("A text in \" \" would do here.");

    /// <summary>The text or the number as it is written.</summary>
    /// <exception cref="Complaint">It is neither.</exception>
    public string TextOrNumber() => _type is JsonTokenType.String or JsonTokenType.Number ? _text : throw Wrong("A number or a text would do here.");

    /// <summary>The text, if it is one of the names.</summary>
    /// <exception cref="Complaint">It is none of them.</exception>
    public string Name(string what, IEnumerable<string> names)
    {
        var all = names.ToList();
        return all.Contains(Text()) ? _text : throw Wrong(Choose.Unknown(what, _text, all));
    }

    /// <summary>The whole number.</summary>
    /// <exception cref="Complaint">It is none, or outside the range.</exception>
    public int Whole(int from, int to) =>
        _type == JsonTokenType.Number && int.TryParse(_text, out var number) && number >= from && number <= to
            ? number : throw Wrong($"A whole number from {from} to {to} would do here.");

    /// <summary>True or false.</summary>
    /// <exception cref="Complaint">It is neither.</exception>
    public bool Truth() => _type is JsonTokenType.True or JsonTokenType.False ? _type == JsonTokenType.True : throw Wrong("true or false would do here.");

    void ReadFields(byte[] bytes, ref Utf8JsonReader reader)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndObject)
        {
            var name = reader.GetString() ?? "";
            reader.Read();
            var field = new JsonPlace(_file, bytes, ref reader, _path.Length == 0 ? name : $"{_path}.{name}");
            if (!_fields.TryAdd(name, field)) throw field.Wrong("This field stands here twice. Keep one of the two.");
        }
    }

    void ReadItems(byte[] bytes, ref Utf8JsonReader reader)
    {
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
            _items.Add(new JsonPlace(_file, bytes, ref reader, $"{_path}[{_items.Count}]"));
    }
}
