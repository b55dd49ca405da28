using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Checks that wants ask for what their orders need, and that every order line can be filled.</summary>
static class ShopChecks
{
    /// <summary>Notes wants and spares that do not go together.</summary>
    public static void Check(Draft draft, Topic topic)
    {
        if (!topic.Parts.Any(part => part.Asked))
            draft.Faults.Add(draft.Section(Headings.Parts)?.Heading.Line ?? 1, "No part is asked for: write yes under \"asked\" for at least one.");
        foreach (var want in topic.Wants)
        {
            foreach (var part in topic.Parts.Where(part => !part.Asked && want.Asks.Contains(part.Id)))
                draft.Faults.Add(draft.LineOf(want), $"\"{want.Id}\" asks for \"{part.Id}\", which is not asked: write yes under \"asked\" in \"{Headings.Parts}\".");
            foreach (var line in want.OrderLines) Check(draft, topic, want, line);
        }
    }

    static void Check(Draft draft, Topic topic, Want want, OrderLine line)
    {
        if (topic.Wants.SelectMany(other => other.OrderLines).First(other => Same(other.Id, line.Id)) is { } first && !Same(first.Name, line.Name))
            draft.Faults.Add(draft.LineOf(line), $"The order line \"{line.Id}\" has two names, \"{first.Name}\" and \"{line.Name}\": take one.");
        var spares = topic.Spares.Where(spare => Same(spare.OrderLine, line.Id)).ToArray();
        if (spares.Length == 0) draft.Faults.Add(draft.LineOf(line), $"Nothing can be ordered for \"{line.Id}\": add it to \"{Headings.Spares}\".");
        foreach (var spare in spares)
        {
            foreach (var (part, _) in spare.Fits.Where(fit => !want.Asks.Contains(fit.Part)))
                draft.Faults.Add(draft.LineOf(spare), $"\"{spare.Id}\" depends on \"{part}\", but \"{want.Id}\" does not ask for it: add it to \"Asks\".");
        }
    }

    static bool Same(string one, string other) => string.Equals(one, other, StringComparison.Ordinal);
}
