using Apprentice.Content.Values;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>Findings as they are written on a command line: <c>clue=finding</c>, <c>clue=335mm</c>, <c>clue@phone=finding</c>.</summary>
static class FindingText
{
    /// <summary>What to write for a clue that cannot be seen on this bike.</summary>
    public const string Hidden = "cannot-be-seen";

    /// <summary>Most findings that the engine takes at once.</summary>
    public const int Most = 60;

    /// <summary>Reads findings.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="texts">What was written.</param>
    /// <param name="channel">How they reached the bench, unless one says otherwise.</param>
    /// <exception cref="Complaint">A clue, finding, channel, unit or size that will not do.</exception>
    public static IReadOnlyList<Finding> ReadAll(Topic topic, IReadOnlyList<string> texts, Channel channel) => texts.Count > Most
        ? throw new Complaint($"{texts.Count} findings are too many; at most {Most} can be weighed at once.", ExitCode.Usage)
        : [.. texts.Select(text => Read(topic, text, channel))];

    /// <summary>What can be found at a clue that is not measured; empty for a measured one.</summary>
    public static IReadOnlyList<(string Id, string Text)> FindingsOf(Clue clue) => clue.Shows switch
    {
        Shows.Table table => [.. table.Findings.Select(f => (f.Id, f.Text))],
        Shows.Code code => [.. code.Findings.Select(f => (f.Id, f.Text))],
        _ => [],
    };

    /// <summary>A finding as it would be written.</summary>
    public static string Of(Finding finding) => $"{finding.Clue}={finding.Seen switch
    {
        Seen.Reading reading => $"{reading.Millimetres:0.###}mm",
        Seen.Named named => named.Id,
        _ => Hidden,
    }}";

    static Finding Read(Topic topic, string text, Channel otherwise)
    {
        var at = text.IndexOf('=');
        if (at < 0) throw new Complaint($"'{text}' is no finding; write clue=finding, for example {Example(topic)}.", ExitCode.Usage);
        var (left, written) = (text[..at].Trim(), text[(at + 1)..].Trim());
        var by = left.IndexOf('@');
        var clue = Choose.One("clue", by < 0 ? left : left[..by], topic.Clues, c => c.Id);
        var channel = by < 0 ? otherwise : Choose.Value<Channel>("channel", left[(by + 1)..]);
        if (clue.Channels.All(c => c.Channel != channel))
            throw new Complaint($"{clue.Id} is not seen by {Choose.Dashed(channel)}; write {clue.Id}@{Choose.Dashed(clue.Channels[0].Channel)}={written} if that is how.", ExitCode.Usage);
        return new Finding(clue.Id, channel, SeenAs(clue, written));
    }

    static Seen SeenAs(Clue clue, string written)
    {
        if (written == Hidden) return new Seen.Hidden();
        if (clue.Shows is Shows.Measured measured) return new Seen.Reading(Millimetres(clue.Id, measured, written));
        return new Seen.Named(Choose.One($"finding at {clue.Id}", written, FindingsOf(clue), f => f.Id).Id);
    }

    /// <summary>A reading as a whole number of the tool's steps.</summary>
    /// <exception cref="Complaint">It is no length, or outside the tool's range.</exception>
    public static double Millimetres(string clue, Shows.Measured measured, string written)
    {
        if (!LengthText.TryParseTyped(written, out var read))
            throw new Complaint($"{clue}: '{written}' is no length; {LengthText.Forms}.", ExitCode.Usage);
        return read >= measured.Low && read <= measured.High
            ? Math.Round(read / measured.Step, MidpointRounding.AwayFromZero) * measured.Step
            : throw new Complaint($"{clue}: {read:0.##} mm is outside the tool's range of {measured.Low:0.##} to {measured.High:0.##} mm.", ExitCode.Usage);
    }

    static string Example(Topic topic)
    {
        var clue = topic.Clues[0];
        return clue.Shows is Shows.Measured measured ? $"{clue.Id}={measured.Low:0.##}mm" : $"{clue.Id}={FindingsOf(clue)[0].Id}";
    }
}
