using Markdig;
using Markdig.Syntax;

namespace Apprentice.Content.Pages;

/// <summary>Markdown as all files of the project are written: with pipe tables.</summary>
static class Markup
{
    /// <summary>What to say of a text that cannot be read.</summary>
    public const string TooDeep = "Lists or quotes are nested too deeply to be read";

    static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().UsePipeTables().UsePreciseSourceLocation().Build();

    /// <summary>The document of a text, lines counted by their feeds; null when lists or quotes are nested too deeply to be read.</summary>
    public static MarkdownDocument? Read(string text)
    {
        try
        {
            return Markdown.Parse(text.ReplaceLineEndings("\n"), Pipeline);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
