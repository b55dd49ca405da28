using Apprentice.Content;
using Apprentice.Engine.Assessing;

namespace Apprentice.Screens;

/// <summary>The next permission of a person, and what is missing for it. A result that was not told yet is not told here.</summary>
static class PermissionWords
{
    /// <summary>The sentence, or null where nothing is tested or all of it is held.</summary>
    public static string? Next(World world)
    {
        if (world.Person is not { } person) return null;
        var tests = world.History.Assessments;
        List<PlanTopic> topics = [.. world.Topics.Select(t => new PlanTopic(t.Id, t.Version))];
        var open = tests.Plans.Select(p => tests.RegisterOf(person, p.Permission)).Select(r => (Register: r, State: r.StateOn(DateOnly.FromDateTime(world.Now.Date), topics)))
            .Where(r => r.State != PermissionState.Alone).OrderByDescending(r => r.Register.Signatures.Count + r.Register.Results.Count + r.Register.Bench.Count).ToList();
        if (open.Count == 0) return null;
        var (register, state) = open[0];
        return Words.Of("permission.next", ("permission", register.Permission), ("missing", string.Join(", ", Missing(register, state, Test(tests, register)))));
    }

    static IEnumerable<string> Missing(Register register, PermissionState state, string test)
    {
        if (state == PermissionState.WithSecondLook)
        {
            yield return Words.Of("permission.second-look");
            yield return Words.Of("permission.orders", ("n", Math.Min(register.RightInARow, Register.Orders)), ("of", Register.Orders));
            yield break;
        }

        if (state != PermissionState.None) yield return Words.Of($"permission.state.{state}");
        yield return Words.Of($"permission.test.{test}");
        var missing = register.MissingFor(PermissionLevel.WithSecondLook);
        yield return Words.Of("permission.bench", ("n", Math.Min(register.Bench.Count(b => b.Agreed), Register.Bikes)), ("of", Register.Bikes));
        if (missing.Contains(Engine.Assessing.Missing.ThreeBikes)) yield break;
        foreach (var more in missing.Where(m => m is not Engine.Assessing.Missing.JobsTest)) yield return Words.Of($"permission.missing.{more}");
    }

    static string Test(Assessments tests, Register register)
    {
        var told = register.Results.Select(r => r.Published).ToList();
        if (told.Contains(Outcome.Passed)) return "passed";
        if (told.Contains(null)) return "sat";
        if (told.Count > 0) return "not-yet";
        return tests.Sittings.Any(s => s.Started.Candidate == register.Person && s.Started.Permission == register.Permission) ? "sat" : "open";
    }
}
