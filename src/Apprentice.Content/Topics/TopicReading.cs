using Apprentice.Engine.Topics;

namespace Apprentice.Content.Topics;

/// <summary>What reading a topic file came to.</summary>
/// <param name="Topic">The topic, or null when the file has any fault.</param>
/// <param name="Faults">Every fault of the file, in the order of its lines; empty when there is a topic.</param>
public sealed record TopicReading(Topic? Topic, IReadOnlyList<Fault> Faults);
