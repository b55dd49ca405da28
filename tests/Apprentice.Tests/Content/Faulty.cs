using Apprentice.Content;
using Apprentice.Content.Topics;

namespace Apprentice.Tests.Content;

/// <summary>Sample files with something wrong in them.</summary>
static class Faulty
{
    /// <summary>Asserts that a change makes this one fault, told with its line, and no topic.</summary>
    /// <param name="file">The sample.</param>
    /// <param name="was">What is written there; the first place counts.</param>
    /// <param name="now">What is written instead.</param>
    /// <param name="message">The fault.</param>
    /// <param name="at">Text of the line that is told, or null for what is written instead.</param>
    public static void IsTold(string file, string was, string now, string message, string? at)
    {
        var changed = Changed(file, was, now);
        var reading = TopicReader.Read(file, changed);
        Assert.Equal([new Fault(file, LineOf(changed, at ?? now), message)], reading.Faults);
        Assert.Null(reading.Topic);
    }

    /// <summary>The faults of a changed sample as they are printed, without the file's name.</summary>
    public static IEnumerable<string> Of(string file, string was, string now) =>
        TopicReader.Read(file, Changed(file, was, now)).Faults.Select(fault => fault.ToString()[(file.Length + 1)..]);

    static string Changed(string file, string was, string now)
    {
        var text = Sample.Text(file);
        var at = text.IndexOf(was, StringComparison.Ordinal);
        Assert.True(at >= 0, $"{file} does not contain {was}");
        return string.Concat(text.AsSpan(0, at), now, text.AsSpan(at + was.Length));
    }

    static int LineOf(string text, string part) => 1 + text[..text.IndexOf(part, StringComparison.Ordinal)].Count(letter => letter == '\n');
}
