namespace Apprentice.Tests.Content;

public sealed class PageFaultTests
{
    /// <summary>Faults of the title, headings and tables: file, what is written, what is written instead, the message, and text of the line that is told.</summary>
    public static TheoryData<string, string, string, string, string?> Faults { get; } = new()
    {
        {
            Sample.Bar, "# Older or newer bar\n",
            "\n",
            "The title is missing: begin with \"# \" and the title.", null
        },
        {
            Sample.Bar, "## Years",
            "# Another title\n\n## Years",
            "A file has one title, before everything else: use ## for sections.", null
        },
        {
            Sample.Bar, "# Older or newer bar\n",
            "# Older or newer bar\n\n### stray: entry\n",
            "This entry stands in no section: put it beneath a ## heading.", "###"
        },
        {
            Sample.Bar, "| year         | own | lot |",
            "| years        | own | lot |",
            "\"Years\" needs a table with the columns year, own, lot.", "## Y"
        },
        {
            Sample.Bar, "| pitfall       | counts from |",
            "| pitfall       | pitfall |",
            "The column \"pitfall\" stands twice.", null
        },
        {
            Sample.Bar, "| 2010 to 2016 | 1   | 1   |",
            "| 2010 to 2016 | 1   | 1   | 2 |",
            "This row has more cells than its table has columns, 3.", null
        },
        {
            Sample.Bar, "| slip                       | share   | offset | pitfall     |",
            "| slips                      | share   | offset | pitfall     |",
            "This table is read by nobody: the tables of a clue have a column finding, code, slip, decoy or writing.", null
        },
        {
            Sample.Bar, "- Question: which bar and which stem are fitted?\n",
            "",
            "\"Older or newer bar\" needs the field \"Question\".", "# Ol"
        },
        {
            Sample.Bar, "- State: draft",
            "- State: finished",
            "\"finished\" is not understood: write draft, or checked, by whom, 2026-11-25, or in use, by whom, 2026-11-25.", null
        },
        {
            Sample.Bar, "- State: draft",
            "- State: checked, by me",
            "\"checked, by me\" is not understood: write draft, or checked, by whom, 2026-11-25, or in use, by whom, 2026-11-25.", null
        },
        {
            Sample.Bar, "- State: draft",
            "- State: checked",
            "\"checked\" is not understood: write draft, or checked, by whom, 2026-11-25, or in use, by whom, 2026-11-25.", null
        },
        {
            Sample.Bar, "- State: draft",
            "- State: draft\n- State: in use, by the lead, 2026-11-25",
            "The field \"State\" stands twice.", "- State: in"
        },
        {
            Sample.Bar, "### plate: Number plate",
            "Some words before the table\n| a | b |\n| c | d |\n\n### plate: Number plate",
            "This looks like a table and is none: it needs an empty line before it and a line of dashes, |---|---|, under its header.", "Some words"
        },
        {
            Sample.Bar, "## Sizes\n",
            "### more: More\n\n## Sizes\n",
            "\"What can have happened\" has no entries: it is a table.", "### more"
        },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_of_the_page_is_told_with_its_line(string file, string was, string now, string message, string? at) =>
        Faulty.IsTold(file, was, now, message, at);
}
