using Apprentice.Content;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>Skills and topics in words.</summary>
static class SkillNames
{
    // A title's first word or words say enough beside the name of a skill, where no other topic begins alike.
    static readonly string[] Ends = [":", ",", " and ", " or "];

    /// <summary>The name of a skill with the beginning of its topic's title.</summary>
    /// <param name="topics">Topics at hand.</param>
    /// <param name="skill">The skill.</param>
    public static string Of(IReadOnlyList<Topic> topics, SkillKey skill)
    {
        var title = Title(topics, skill.Topic);
        var head = Head(title);
        return $"{(topics.Count(t => string.Equals(Head(t.Title), head, StringComparison.Ordinal)) > 1 ? title : head)}: {Short(topics, skill)}";
    }

    static string Head(string title) => title[..Ends.Select(e => title.IndexOf(e, StringComparison.Ordinal)).Where(i => i > 0).DefaultIfEmpty(title.Length).Min()];

    /// <summary>The title of a topic, or its short name when it is not here.</summary>
    public static string Title(IReadOnlyList<Topic> topics, string topic) => Find(topics, topic)?.Title ?? topic;

    /// <summary>The name of a skill.</summary>
    public static string Short(IReadOnlyList<Topic> topics, SkillKey skill) => Find(topics, skill.Topic) is not { } topic ? skill.Id : Planner.NameOf(topic, skill) switch
    {
        Value.Text text => text.Words.TrimEnd('.'),
        Value.Said said => Spoken.Lower(new Telling(topic, []).Of(said.Remark)),
        _ => skill.Id,
    };

    static Topic? Find(IReadOnlyList<Topic> topics, string topic) => topics.FirstOrDefault(t => string.Equals(t.Id, topic, StringComparison.Ordinal));
}
