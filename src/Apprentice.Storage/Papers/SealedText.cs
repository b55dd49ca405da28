using System.Text;

namespace Apprentice.Storage.Papers;

/// <summary>A sealed file: a first line that names its kind, then lines of base 64. It survives mail, and there is one way only to write it.</summary>
static class SealedText
{
    /// <summary>The file.</summary>
    public static byte[] Write(string kind, params byte[][] fields) =>
        Encoding.ASCII.GetBytes($"{kind}\n{string.Concat(fields.Select(f => Convert.ToBase64String(f) + "\n"))}");

    /// <summary>Its fields.</summary>
    /// <exception cref="SealException">It is another kind of file, was cut short or was changed.</exception>
    public static byte[][] Read(byte[] file, string kind, int fields)
    {
        var lines = Encoding.Latin1.GetString(file).Split('\n');
        if (lines[0] != kind) throw new SealException($"This is not a file of the kind \"{kind}\". Choose the file that was handed out.");
        if (lines.Length != fields + 2 || lines[^1].Length > 0) throw Changed();
        try
        {
            byte[][] read = [.. lines.Skip(1).Take(fields).Select(Convert.FromBase64String)];
            return Write(kind, read).AsSpan().SequenceEqual(file) ? read : throw Changed();
        }
        catch (FormatException e)
        {
            throw new SealException(Changed().Message, e);
        }
    }

    /// <summary>The sentence for a file that is no longer whole.</summary>
    public static SealException Changed() => new("This file was changed or cut short on its way. Ask for it again.");
}
