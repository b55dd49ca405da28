using Apprentice.Engine.Topics;

namespace Apprentice.Commands;

/// <summary>Drawings of a topic for a sheet.</summary>
static class SheetPictures
{
    /// <summary>Caption and SVG of each drawing.</summary>
    public static IReadOnlyList<(string Caption, string Svg)> Of(Topic topic)
    {
        _ = topic;
        return [];
    }
}
