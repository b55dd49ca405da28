using Apprentice.Engine.Histories;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Tests.Histories;

public sealed class OverruleTests
{
    [Fact]
    public void An_event_overrules_a_clue_that_tells_of_another_event()
    {
        // The swap leaves a mark in 9 of 10; paint over it hides every mark, whatever happened.
        var bar = Some.Part("bar", "older", "newer");
        var topic = Some.Topic(
            [Some.Line("any", 1)], [bar], [Some.Built(bar, ("", [1, 0]))],
            Some.Table("mark", new Node.OfEvent("swapped"), [1, 0], [0.1, 0.9])) with
        {
            Events =
            [
                Some.Event("swapped", 0.5, new Effect.ChangeKind("bar", "older", [("newer", 1)])),
                Some.Event("painted", 0.4, new Effect.Overrule("mark", [1, 0])),
            ],
        };
        var scene = Some.Scene(topic);
        var seen = Belief.Total(scene.Table.Model, scene.Reader.SetOf([Some.Saw("mark", 1)]).All);
        Assert.Equal(0.5 * 0.6 * 0.9, seen, 1e-12);
    }
}
