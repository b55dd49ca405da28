using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>Checks of a topic that could be read: what its sections say of one another.</summary>
static class TopicChecks
{
    /// <summary>Notes what does not go together.</summary>
    public static void Check(Draft draft, Topic topic)
    {
    }
}
