using Apprentice.Content;
using Apprentice.Content.Lessons;

namespace Apprentice.Screens;

/// <summary>Drawings of lessons.</summary>
static class LessonPictures
{
    /// <summary>A drawing as a block.</summary>
    public static Block Of(World world, Lesson lesson, LessonBlock.Picture picture)
    {
        _ = (world, lesson);
        return new Block.Text(Words.Of("lesson.picture", ("caption", picture.Caption)));
    }
}
