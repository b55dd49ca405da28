using System.Globalization;
using Apprentice.Content;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens;

/// <summary>A person's skills as a table: asked, right, the word for now, and when again.</summary>
static class SkillList
{
    /// <summary>The skills, those that are to be practised first on top.</summary>
    public static IReadOnlyList<SkillState> Of(World world, string? person) =>
        [.. world.History.Book.Of(person, world.Now).OrderBy(s => s.AgainOn(world.Now)).ThenBy(s => s.Chance)];

    /// <summary>The table.</summary>
    public static Block.Table Table(World world, IReadOnlyList<SkillState> skills) => new(
        [
            new(Words.Of("skills.what")), new(Words.Of("skills.asked"), Right: true), new(Words.Of("skills.right"), Right: true), new(Words.Of("skills.now")),
            new(Words.Of("skills.again")),
        ],
        [.. skills.Select(s => new Row("", Marked: false, [Name(world, s.Skill), s.Asked.ToString(), s.Right.ToString(), Words.Of($"skills.word.{s.Word}"), Again(world, s)]))]);

    /// <summary>The name of a skill in words, with its topic where several are practised.</summary>
    public static string Name(World world, SkillKey skill) =>
        world.Practised.Count == 1 ? Spoken.Capital(SkillNames.Short(world.Topics, skill)) : SkillNames.Of(world.Topics, skill);

    static string Again(World world, SkillState skill) =>
        skill.AgainOn(world.Now) <= world.Now ? Words.Of("skills.today") : skill.Due.ToOffset(world.Now.Offset).ToString("d MMM", CultureInfo.InvariantCulture);
}
