using System.Globalization;
using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Prices and days: of which topic.</summary>
/// <param name="Below">The screen to go back to.</param>
sealed record PriceTopicScreen(Screen Below) : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.lead-prices"),
        "",
        [new Block.Text(Words.Of("stand.rates-topic")), new Block.Gap(Drop: true), new Block.Table([new("")], Rows(world.Practised.Select(b => (string[])[b.Topic.Title])))],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")]);

    /// <inheritdoc/>
    protected override int Count(World world) => world.Practised.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new PricesScreen(this, world.Practised[line].Topic));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>The lead's list of a topic: price, what sending back costs, days.</summary>
/// <param name="Below">The screen to go back to.</param>
/// <param name="Topic">The topic as it is shipped.</param>
/// <param name="Note">A sentence about what just happened, or empty.</param>
sealed record PricesScreen(Screen Below, Topic Topic, string Note = "") : ChoiceScreen
{
    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.lead-prices"),
        Topic.Title,
        [
            new Block.Text(Words.Of("stand.prices")),
            new Block.Gap(Drop: true),
            new Block.Table([new(""), new(""), new("")], Rows(world.History.Notebook.Priced(Topic).Spares.Select(s => (string[])[
                s.Name, Words.Of("stand.price-line", ("price", Spoken.Money(s.Price)), ("back", Spoken.Money(s.ReturnCost)), ("days", Spoken.Minutes(s.DelayDays))),
                world.History.Notebook.ReturnDays(Topic.Id, s.Id) is { } days ? Words.Of("stand.price-return", ("n", days)) : Words.Of("stand.price-example")]))),
        ],
        [Digits(world), Words.Of("key.enter-go"), Words.Of("key.back"), Words.Of("key.help")])
    {
        Foot = Note.Length > 0 ? [new Block.Text(Note)] : [],
    };

    /// <inheritdoc/>
    protected override int Count(World world) => Topic.Spares.Count;

    /// <inheritdoc/>
    protected override Turn Take(World world, int line) => Turn.To(new PriceScreen(this with { Note = "" }, Topic.Spares[line]));

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);
}

/// <summary>Price and days of one spare.</summary>
/// <param name="Below">The list.</param>
/// <param name="Spare">The spare.</param>
sealed record PriceScreen(PricesScreen Below, Spare Spare) : FieldScreen
{
    const double Most = 100_000;

    /// <inheritdoc/>
    public override Page Show(World world) => new(
        Words.Of("stand.lead-prices"),
        Below.Topic.Title,
        [new Block.Text(Spare.Name), new Block.Gap(), new Block.Text(Words.Of("stand.price-ask")), new Block.Gap(), .. Field(Words.Of("stand.price-field"))],
        [Words.Of("key.type"), Words.Of("key.enter-ok"), BackKey]);

    /// <inheritdoc/>
    protected override Turn Take(World world, string text) => Parsed(text) is [var price, var back, var delay, var days] && days % 1 == 0
        ? Turn.To(Below with { Note = Words.Of("stand.price-set", ("spare", Spare.Name)) }, new LogEntry.PriceSet(Below.Topic.Id, Spare.Id, price, back, delay, (int)days))
        : Turn.To(this with { Wrong = Words.Of("stand.price-wrong", ("text", text)) });

    /// <inheritdoc/>
    protected override Turn Back(World world) => Turn.To(Below);

    static List<double>? Parsed(string text)
    {
        var numbers = new List<double>();
        foreach (var piece in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!double.TryParse(piece.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) || number > Most) return null;
            numbers.Add(number);
        }

        return numbers;
    }
}
