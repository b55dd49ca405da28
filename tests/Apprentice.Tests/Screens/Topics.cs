using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Screens;

/// <summary>Topics for the tests.</summary>
static class Topics
{
    /// <summary>The shipped topics.</summary>
    public static IReadOnlyList<Topic> Shipped { get; } = QuestionBank.Read(QuestionBank.Shipped).Topics;
}
