using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads the points beneath the title.</summary>
static class HeadReader
{
    const string Forms = "write draft, or checked, by whom, 2026-11-25, or in use, by whom, 2026-11-25";

    /// <summary>The question, how far the topic may be used, and by whom it was checked.</summary>
    public static (string Question, TopicState State, string CheckedBy) Head(Draft draft)
    {
        var fields = new Fields(draft.Head, draft.Faults, ["Question", "State"]);
        var question = fields.Needed("Question").Text;
        var (word, by) = fields["State"].Cut(",");
        TopicState? state = word switch
        {
            { IsBlank: true } => TopicState.Draft,
            _ when word.Is("draft") => TopicState.Draft,
            _ when word.Is("checked") => TopicState.Checked,
            _ when word.Is("in use") => TopicState.InUse,
            _ => null,
        };
        if (state is null || (state == TopicState.Draft) != by.IsBlank || (!by.IsBlank && !HasDate(by)))
            draft.Faults.Add(fields["State"], $"\"{fields["State"].Text}\" is not understood: {Forms}.");
        return (question, state ?? TopicState.Draft, by.Text);
    }

    static bool HasDate(Cell by)
    {
        var date = by.Text[(by.Text.LastIndexOf(',') + 1)..].Trim();
        return by.Text.Contains(',') && DateOnly.TryParseExact(date, "yyyy-MM-dd", out _);
    }
}
