using Apprentice.Content;
using Apprentice.Content.Lessons;
using Apprentice.Drawing;
using Apprentice.Engine.Topics;

namespace Apprentice.Screens;

/// <summary>Drawings of lessons: one part alone, or two kinds side by side with the difference marked.</summary>
static class LessonPictures
{
    const int LeastRows = 8;

    /// <summary>A drawing, or its words; its caption where the topic has no such drawing.</summary>
    public static IEnumerable<Block> Of(World world, Lesson lesson, LessonBlock.Picture picture, bool inWords)
    {
        if (world.Bench(lesson.Topic)?.Topic is not { } topic || topic.Drawings.All(d => d.Id != picture.Drawing) || picture.Kinds.Count == 0)
            return [new Block.Text(Words.Of("lesson.picture", ("caption", picture.Caption)))];
        if (inWords) return [new Block.Text(Words.Of("lesson.picture", ("caption", picture.Caption))), .. WordsOf(topic, picture).Select(w => new Block.Text(w, 2))];
        if (picture.Kinds.Count > 1)
        {
            var pair = DrawnPair.Of(topic, picture.Drawing, Choice(topic, picture, 0), Choice(topic, picture, 1));
            return [new Block.Picture(room => pair.Rows(room.Columns, Math.Max(LeastRows, room.Rows)))];
        }
        var part = DrawnPart.Of(topic, picture.Drawing, Choice(topic, picture, 0));
        return [new Block.Text(Words.Of("lesson.picture", ("caption", picture.Caption))), new Block.Picture(room => part.Rows(room.Columns, Math.Max(LeastRows, room.Rows)))];
    }

    /// <summary>What a drawing says in words, for plain lines and screen readers.</summary>
    static IReadOnlyList<string> WordsOf(Topic topic, LessonBlock.Picture picture) => picture.Kinds.Count > 1
        ? DrawnPair.Of(topic, picture.Drawing, Choice(topic, picture, 0), Choice(topic, picture, 1)).Words
        : DrawnPart.Of(topic, picture.Drawing, Choice(topic, picture, 0)) is { IsArt: false } part ? part.Words : [];

    static DrawnChoice Choice(Topic topic, LessonBlock.Picture picture, int index)
    {
        var drawing = topic.Drawings.First(d => d.Id == picture.Drawing);
        var id = picture.Kinds[index];
        return drawing.Kinds.Any(k => k.Of == id) ? DrawnChoice.Kind(id) : DrawnChoice.Finding(id);
    }
}
