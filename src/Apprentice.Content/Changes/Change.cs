namespace Apprentice.Content.Changes;

/// <summary>A change that the workshop makes to a shipped file: some lines are replaced by others.</summary>
/// <param name="Number">Its number, from 1.</param>
/// <param name="Title">What it is about.</param>
public sealed record Change(int Number, string Title)
{
    /// <summary>The file that it changes: "question-bank/rim-size.md" or "lessons/rim-size/round.md"; empty for one that takes another back.</summary>
    public string File { get; init; } = "";

    /// <summary>The day it was made.</summary>
    public DateOnly Day { get; init; }

    /// <summary>Who made it.</summary>
    public string By { get; init; } = "";

    /// <summary>Why: "report 4", "rates of 40 routine bikes"; empty for no reason given.</summary>
    public string Because { get; init; } = "";

    /// <summary>The workshop that it came from; empty for one of this workshop.</summary>
    public string From { get; init; } = "";

    /// <summary>Number of the change that this one takes back, or null.</summary>
    public int? TakesBack { get; init; }

    /// <summary>The lines as they were; they stand exactly once in the file.</summary>
    public IReadOnlyList<string> Was { get; init; } = [];

    /// <summary>The lines as they are.</summary>
    public IReadOnlyList<string> Is { get; init; } = [];

    /// <summary>Line of the change in its own file, from 1; 0 for one that was not read from a file.</summary>
    public int Line { get; init; }
}
