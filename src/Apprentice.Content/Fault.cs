namespace Apprentice.Content;

/// <summary>Something wrong in a content file, told so that its author can put it right.</summary>
/// <param name="File">The file as it was named to the reader.</param>
/// <param name="Line">Line in the file, from 1.</param>
/// <param name="Message">A sentence: what is wrong, and what would do.</param>
public sealed record Fault(string File, int Line, string Message)
{
    /// <summary>The fault as <c>file:line: sentence</c>.</summary>
    public override string ToString() => $"{File}:{Line}: {Message}";
}
