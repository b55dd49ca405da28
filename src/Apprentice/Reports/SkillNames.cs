using Apprentice.Content;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>Skills and topics in words.</summary>
static class SkillNames
{
    /// <summary>The name of a skill with its topic.</summary>
    /// <param name="topics">Topics at hand.</param>
    /// <param name="skill">The skill.</param>
    public static string Of(IReadOnlyList<Topic> topics, SkillKey skill) => $"{Title(topics, skill.Topic)}: {Short(topics, skill)}";

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
