namespace Apprentice.Engine.Topics;

/// <summary>The engine's revision: raised whenever the same topic, request and seed would make another case.</summary>
public static class EngineRevision
{
    /// <summary>The revision of this engine, part of every topic's version.</summary>
    public const string Current = "1";
}
