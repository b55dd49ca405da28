using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>What the commands print for scripts.</summary>
static class Json
{
    /// <summary>Number of the form of all files and outputs; raised when a script written for it would no longer do.</summary>
    public const int Schema = 1;

    static readonly JsonSerializerOptions Options = new()
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        NewLine = "\n",
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower) },
    };

    /// <summary>Writes a value and a line end.</summary>
    public static void Write(TextWriter to, object value) => to.WriteLine(JsonSerializer.Serialize(value, Options));

    /// <summary>A number as JSON can say it: null when it is not finite.</summary>
    public static double? Finite(double number) => double.IsFinite(number) ? number : null;

    /// <summary>A finding.</summary>
    public static object Of(Finding finding) => new
    {
        finding.Clue,
        finding.Channel,
        Finding = (finding.Seen as Seen.Named)?.Id,
        Millimetres = (finding.Seen as Seen.Reading)?.Millimetres,
        Hidden = finding.Seen is Seen.Hidden,
    };

    /// <summary>A choice, as it also stands in an answer.</summary>
    public static object Of(Choice choice) => choice switch
    {
        Choice.Order order => new { Do = "order", order.Spare },
        Choice.OrderTwo two => new { Do = "order-two", two.First, two.Second },
        Choice.Wait wait => new { Do = "wait", wait.Clue },
        Choice.Ask => new { Do = "ask" },
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>What a clue reads: "part:bar", "build-date", "line" or "event:repaint".</summary>
    public static string Of(Node node) => node switch
    {
        Node.OfPart part => $"part:{part.Part}",
        Node.OfDate => "build-date",
        Node.OfLine => "line",
        Node.OfEvent happened => $"event:{happened.Event}",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
