namespace Apprentice.Tests.Content;

public sealed class ShopFaultTests
{
    /// <summary>Faults of openings, wants, spares and notes: file, what is written, what is written instead, the message, and text of the line that is told.</summary>
    public static TheoryData<string, string, string, string, string?> Faults { get; } = new()
    {
        {
            Sample.Bar, "| plate by phone                        |",
            "| plat by phone                        |",
            "There is no clue \"plat\": use plate, motor or grip-length.", null
        },
        {
            Sample.Bar, "| plate by phone                        |",
            "| plate by letter                      |",
            "\"letter\" is no way to see a clue: use bench, photo or phone.", null
        },
        {
            Sample.Bar, "| plate by phone                        |",
            "| lever-holes by phone                        |",
            "The clue \"lever-holes\" is not seen by phone: add it to \"Seen by\".", null
        },
        {
            Sample.Bar, "| plate by phone                        |",
            "|                         |",
            "What is told is missing: write plate by phone; grip-length by photo.", null
        },
        {
            Sample.Bar, "- Asks: bar\n",
            "- Asks: baar\n",
            "There is no part \"baar\": use bar, stem or lever.", null
        },
        {
            Sample.Bar, "- Asks: bar\n",
            "- Asks: bar, grips\n",
            "\"grips\" asks for \"grips\", which is not asked: write yes under \"asked\" in \"Parts\".", "### grips"
        },
        {
            Sample.Bar, "- Order: grips = Grips, pair",
            "- Order: grips",
            "\"grips\" is no order line: write grips = Grips, pair.", null
        },
        {
            Sample.Bar, "- Order: cables = Gear cables",
            "- Order: cables = Gear cables; grips = Handles",
            "The order line \"grips\" has two names, \"Grips, pair\" and \"Handles\": take one.", null
        },
        {
            Sample.Bar, "- Order: cables = Gear cables",
            "- Order: cables = Gear cables; outer = Outer casing",
            "Nothing can be ordered for \"outer\": add it to \"Spares\".", null
        },
        {
            Sample.Bar, "- Says: \"I fell, and the brake lever is bent.\"\n",
            "",
            "\"lever: A new brake lever\" needs the field \"Says\".", "### lever:"
        },
        {
            Sample.Bar, "| grips-short  | grips      | Grips, short        | bar: older                 |",
            "| grips-short  | grips      | Grips, short        |                  |",
            "This spare fits nothing: write bar: low, mid; stem: long.", null
        },
        {
            Sample.Bar, "| grips-short  | grips      | Grips, short        | bar: older                 |",
            "| grips-short  | grips      | Grips, short        | bar:                 |",
            "The kinds of \"bar\" that it fits are missing: write bar: low, mid.", null
        },
        {
            Sample.Bar, "| grips-short  | grips      | Grips, short        | bar: older                 |",
            "| grips-short  | grips      | Grips, short        | bar: old                 |",
            "There is no kind of bar \"old\": use older or newer.", null
        },
        {
            Sample.Bar, "| grips-short  | grips      |",
            "| grips-short  | handles      |",
            "There is no order line \"handles\": use cables, grips or lever.", null
        },
        {
            Sample.Bar, "| 14    | 6            | 5    |",
            "| 14,-    | 6            | 5    |",
            "price: \"14,-\" is not a number: write 2 or 2.5.", null
        },
        {
            Sample.Bar, "| swapped-bar    | swapped part     |",
            "| swapped-bar    | swap     |",
            "There is no class of pitfalls \"swap\": use wear, swapped part or wrong datum.", null
        },
        {
            Sample.Bar, "| 0.8          | 4              | 5               |",
            "| 0.8          | 4              | 5               |\n| 0.8          | 4              | 5               |",
            "\"What time costs\" needs a table with one row.", "## What t"
        },
        {
            Sample.Bar, "| 0.8          | 4              | 5               |",
            "| cheap          | 4              | 5               |",
            "bench minute: \"cheap\" is not a number: write 2 or 2.5.", null
        },
        {
            Sample.EveryField, "| book | A book, 1999, p. 3 |",
            "| book, one | A book, 1999, p. 3 |\n| book | A book, 1999, p. 3 |",
            "A source needs a key without commas.", null
        },
        {
            Sample.EveryField, "| book | A book, 1999, p. 3 |",
            "| book | A book, 1999, p. 3 |\n| book | Another |",
            "The source \"book\" stands twice.", "| book | An"
        },
        {
            Sample.Bar, "| 2010 to 2016 | 1   | 1   |\n| 2017 to 2023 | 1   | 0.5 |\n",
            "| 2010 to 2016 | 1   | 1   |\n| 2017 to 2023 | 1   | 0 |\n",
            "The line \"electric\" has no months for \"lot\": \"Years\" gives none in which it was made.", "| el"
        },
        {
            Sample.Bar, "### grips: New grips",
            "### grips",
            "The want \"grips\" needs a name: write ### grips: its name.", null
        },
        {
            Sample.Bar, "| bar: older                 | 14 ",
            "| bar: older; bar: newer | 14 ",
            "The part \"bar\" stands twice in \"fits\": put its kinds together, bar: low, mid.", null
        },
        {
            Sample.Bar, "| grips-short  | grips ",
            "| Grips-short  | grips ",
            "\"Grips-short\" is no short name of a spare: use lower-case letters, digits and hyphens.", null
        },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_of_wants_and_spares_is_told_with_its_line(string file, string was, string now, string message, string? at) =>
        Faulty.IsTold(file, was, now, message, at);
}
