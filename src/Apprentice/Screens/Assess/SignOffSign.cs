using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>Signing a permission, countersigning orders, taking it back.</summary>
static class SignOffSign
{
    static readonly int[] Months = [6, 12, 24];

    /// <summary>Signs a level, or says what is missing.</summary>
    public static Turn Sign(World world, Register register, PermissionLevel level, Screen below)
    {
        var title = Words.Of("sign.title", ("level", Words.Of($"level.{level}")));
        var missing = AssessWords.Missing(register, level);
        if (missing.Count > 0)
            return Turn.To(new SignOffChooseScreen(title, register.Person, [Words.Of("sign.missing"), .. missing.Select(m => "- " + m)], [Words.Of("sign.back")], (_, _, _) => Turn.To(below), below));
        return Turn.To(new SignOffChooseScreen(
            title, register.Person, [Words.Of("sign.what", ("name", register.Person), ("permission", register.Permission)), Words.Of(level == PermissionLevel.Alone ? "sign.alone" : "sign.second"), Words.Of("sign.ends"), Words.Of("sign.until")],
            [.. Months.Select(m => Words.Of("sign.months", ("n", m), ("day", AssessWords.Day(Until(world, m)))))],
            (_, here, line) => Turn.To(Name(title, register, level, Months[line], here, below)), below));
    }

    /// <summary>A real order, looked at a second time.</summary>
    public static Turn Order(World world, Register register, Screen below)
    {
        var title = Words.Of("order.title");
        return Turn.To(new SignOffAskScreen(title, register.Person, [Words.Of("order.what", ("n", register.RightInARow), ("of", Register.Orders))], Words.Of("order.field"),
            (then, here, what) => Turn.To(new SignOffAskScreen(title, register.Person, [Words.Of("order.who", ("lead", SignOffBike.Lead(then)))], Words.Of("bike.name"),
                (now, asked, by) => SignOffBike.IsSelf(now, by, register.Person) ? asked.Again(Words.Of("bike.not-self")) : Turn.To(new SignOffChooseScreen(
                    title, register.Person, [Words.Of("order.right", ("what", what))], [Words.Of("order.yes"), Words.Of("order.no")],
                    (_, _, line) => Turn.To(below, new LogEntry.OrderCountersigned(register.Person, register.Permission, by, line == 0, what)), asked)), here)
            {
                Otherwise = SignOffBike.Lead(then),
            }), below));
    }

    /// <summary>Takes a permission back, with a reason that is kept.</summary>
    public static Turn TakeBack(World world, Register register, Screen below) => Turn.To(new SignOffAskScreen(
        Words.Of("takeback.title"), register.Person, [Words.Of("takeback.what", ("name", register.Person), ("permission", register.Permission))], Words.Of("takeback.field"),
        (then, _, reason) => Turn.To(below, new LogEntry.PermissionTakenBack(register.Person, register.Permission, SignOffBike.Lead(then), reason)), below));

    static SignOffAskScreen Name(string title, Register register, PermissionLevel level, int months, Screen before, Screen below) => new(
        title, register.Person, [Words.Of("sign.name", ("name", register.Person))], Words.Of("bike.name"),
        (world, here, by) => SignOffBike.IsSelf(world, by, register.Person) ? here.Again(Words.Of("bike.not-self")) : Turn.To(
            below is RegisterScreen page ? page with { Note = Words.Of("sign.done") } : below, new LogEntry.PermissionSigned(Signed(world, register, level, months, by))), before);

    static Signature Signed(World world, Register register, PermissionLevel level, int months, string by)
    {
        var passed = register.Results.Last(r => r.Outcome == Outcome.Passed);
        var topics = passed.Jobs.Select(j => new PlanTopic(j.Family.Split('/')[0], j.Version)).Distinct().ToList();
        var line = world.History.Assessments.PassLines.FirstOrDefault(p => p.Permission == register.Permission)?.Line;
        return new Signature(
            register.Person, register.Permission, level, by, DateOnly.FromDateTime(world.Now.Date), Until(world, months), passed.Paper, topics, line?.SetByOnePerson ?? true);
    }

    static DateOnly Until(World world, int months) => DateOnly.FromDateTime(world.Now.Date).AddMonths(months);
}
