using Apprentice.Content.Pages;
using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Reads how a clue reaches the bench: <c>bench; photo, error 4 mm; phone, error 3 mm, slips 1 in 10</c>.</summary>
static class ChannelReader
{
    /// <summary>Channels in the order of the text.</summary>
    public static IReadOnlyList<ClueChannel> Channels(Draft draft, Cell cell, Shows shows)
    {
        var channels = cell.Split(';').Select(piece => ChannelOf(draft, piece, shows)).OfType<ClueChannel>().ToArray();
        foreach (var channel in Enum.GetValues<Channel>())
        {
            if (channels.Count(own => own.Channel == channel) > 1) draft.Faults.Add(cell, $"\"{Word(channel)}\" stands twice.");
        }

        return channels;
    }

    /// <summary>A channel by its word: bench, photo or phone; null with a fault for anything else.</summary>
    public static Channel? Named(Draft draft, Cell cell)
    {
        foreach (var channel in Enum.GetValues<Channel>())
        {
            if (cell.Is(Word(channel))) return channel;
        }

        draft.Faults.Add(cell, $"\"{cell.Text}\" is no way to see a clue: use bench, photo or phone.");
        return null;
    }

    /// <summary>The word of a channel.</summary>
    public static string Word(Channel channel) => channel.ToString().ToLowerInvariant();

    static ClueChannel? ChannelOf(Draft draft, Cell cell, Shows shows)
    {
        Cell[] pieces = [.. cell.Split(',')];
        if (pieces.Length == 0 || Named(draft, pieces[0]) is not { } channel) return null;
        var (error, misread) = (0.0, 0.0);
        foreach (var piece in pieces.Skip(1))
        {
            var (word, value) = piece.Cut(" ");
            if (shows is Shows.Measured && word.Is("error")) error = Math.Abs(draft.Cells.Length(value));
            else if (shows is Shows.Measured && word.Is("slips")) misread = draft.Cells.Share(value);
            else if (shows is not Shows.Measured && word.Is("misread")) misread = draft.Cells.Share(value);
            else draft.Faults.Add(piece, NotUnderstood(piece, shows));
        }

        if (misread + Own(shows) >= 1) draft.Faults.Add(cell, $"By {Word(channel)} this clue would always go wrong: lower its shares.");
        return new ClueChannel(channel, error, misread);
    }

    static double Own(Shows shows)
    {
        var own = shows switch
        {
            Shows.Measured measured => measured.Blunder,
            Shows.Table table => table.Misread,
            Shows.Code code => code.Misread,
            _ => 0,
        };
        foreach (var slip in (shows as Shows.Measured)?.Slips ?? []) own += slip.Share;
        foreach (var decoy in (shows as Shows.Code)?.Decoys ?? []) own += decoy.Share;
        return own;
    }

    static string NotUnderstood(Cell piece, Shows shows) => shows is Shows.Measured
        ? $"\"{piece.Text}\" is not understood: a measured clue takes error 3 mm or slips 1 in 10 here."
        : $"\"{piece.Text}\" is not understood: a clue that is read or seen takes misread 1 in 10 here.";
}
