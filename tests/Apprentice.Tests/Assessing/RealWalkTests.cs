using System.Text;
using Apprentice.Assess;
using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Commands;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Assessing;

/// <summary>A paper with real bikes from the plan to the result, by keys and by plain lines, on real files.</summary>
public sealed class RealWalkTests
{
    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];

    [Fact]
    public void A_lead_puts_two_real_bikes_at_the_end_of_the_papers()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: [.. RealExam.Before, new LogEntry.RealTried("Kim", RealExam.Bikes[2].Key, null, 5, Right: false)]);
        room.ToDesk().Keys("11");
        Assert.Contains("2 of other workshops at the end, which do not count", Flat(room), StringComparison.Ordinal);
        room.Keys("9");
        Look(room, "plan-real");
        Assert.Contains("There are 3 on these topics now", Flat(room), StringComparison.Ordinal);
        room.Keys("4S");
        Assert.IsType<PlanReasonScreen>(room.Screen);
        room.Keys("more real bikes{Enter}");
        Assert.Equal(3, room.All.Plan(Exam.Permission)?.RealBikes);
        Assert.Equal(Exam.Plan.Families, room.All.Plan(Exam.Permission)?.Families);
        room.Keys("00").Keys("21").Keys("12");
        Assert.Contains("1 of 3 real bikes met before", Flat(room), StringComparison.Ordinal);
        room.Keys("4" + Exam.Passphrase + "{Enter}");
        var made = Assert.IsType<MadeScreen>(room.Screen).Made;
        Assert.Contains("Sam: 3 of 3 real bikes at the end; they do not count. Kim: 2 of 3 real bikes at the end; they do not count. 1 was left out", Flat(room), StringComparison.Ordinal);
        Assert.Equal([(3, 0), (2, 1)], made.Select(m => (m.Real, m.RealMet)));
        Assert.DoesNotContain(PaperFile.OpenByCode(File.ReadAllBytes(made[1].File), made[1].Code).Paper.Real, r => r.Case.Key == RealExam.Bikes[2].Key);
    }

    [Fact]
    public void Real_bikes_are_sat_after_the_end_without_a_clock_and_shown_in_the_result()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: RealExam.Before);
        Put(room);
        room.ToDesk().Keys("31" + RealExam.Sealed.Code + "{Enter}Jo{Enter}1");
        Look(room, "sit-rules-real");
        room.Keys("1");
        while (room.Sitting.End is null)
        {
            if (room.Screen is BenchScreen) room.Answer();
            else room.Keys("2");
        }

        Assert.IsType<SitRealScreen>(room.Screen);
        Look(room, "sit-real");
        Assert.Empty(room.Papers.Files(PaperFolder.ResultEnding));
        var used = room.Sitting.Used;
        Assert.DoesNotContain("min left", room.Text, StringComparison.Ordinal);
        Assert.Contains("No clock runs", room.Keys("P").Text, StringComparison.Ordinal);
        Assert.IsType<SitRealScreen>(room.Keys("10").Screen);
        room.Keys("12");
        Look(room, "sit-real-bench");
        Assert.Contains("not yet", room.Keys("0").Text, StringComparison.Ordinal);
        room.Keys("1");
        Assert.Equal([0], Assert.IsType<RealBenchScreen>(room.Screen).Opened);
        room.Wait(TimeSpan.FromMinutes(30));
        room.Keys("1{Down}{Enter}8");
        Look(room, "sit-real-answered");
        Assert.Equal((2, used), (Assert.IsType<SitRealScreen>(room.Screen).Cursor.Marked + 1, room.Sitting.Used));
        room.Keys("3");
        Assert.IsType<SitEndScreen>(room.Screen);
        Assert.Null(room.World.Seat);
        Result(room);
    }

    [Fact]
    public void They_are_sat_on_another_machine_in_plain_lines_and_gone_on_with_after_a_crash()
    {
        using var desk = new TempFolder();
        using var other = new TempFolder();
        using var lead = new Room(desk, before: RealExam.Before);
        Put(lead);
        File.WriteAllBytes(other.In("stick.paper"), RealExam.Sealed.File);
        using (var room = new Room(other, plain: true, paper: other.In("stick.paper")))
        {
            var said = room.Say([RealExam.Sealed.Code, "Jo", "1"]);
            Assert.Contains("At the end come 2 real bikes from other workshops. They do not count.", said, StringComparison.Ordinal);
            room.Say(["1", "0", "3", "2"]);
            while (room.Sitting.End is null) room.Say(room.Screen is SitMenuScreen ? "4" : room.Screen is BenchScreen ? "0" : "2");
            said = room.Say("1");
            Assert.Contains("A real bike. It does not count.", said, StringComparison.Ordinal);
            room.Say(["2", "1", "1", "9"]);
            Assert.Equal(9, room.Sitting.RealAt(1).Tenths);
        }

        Assert.Equal(-1, File.ReadAllBytes(other.In("log.db")).AsSpan().IndexOf(Encoding.UTF8.GetBytes("Yard")));
        Assert.Empty(PaperFolder.Files(other.Path, PaperFolder.ResultEnding));
        using (var room = new Room(other, plain: true, paper: other.In("stick.paper")))
        {
            Assert.Contains("Go on with the real bikes, which do not count", room.Say(RealExam.Sealed.Code), StringComparison.Ordinal);
            Assert.Contains("answered", room.Say("1"), StringComparison.Ordinal);
            room.Say("3");
            Assert.True(room.Sitting.RealOver);
        }

        using (var room = new Room(other, plain: true, paper: other.In("stick.paper"))) Assert.DoesNotContain("real bikes", room.Say(RealExam.Sealed.Code), StringComparison.Ordinal);
        File.Copy(Assert.Single(PaperFolder.Files(other.Path, PaperFolder.ResultEnding)), Path.Combine(lead.Papers.Path, "back.result"));
        lead.ToDesk().Keys("41" + Exam.Passphrase + "{Enter}");
        Assert.Equal([9, null], lead.All.Result(Exam.Number)?.Real.Select(r => r.Sat.Tenths));
        Assert.Equal(Outcome.NotYet, lead.All.Result(Exam.Number)?.Outcome);
    }

    [Fact]
    public void A_bike_met_in_practice_since_is_left_out_and_the_lead_can_end_without_them()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: [.. RealExam.Before, new LogEntry.RealTried("Sam", RealExam.Paper.Real[0].Case.Key, "older", 5, Right: true)]);
        Put(room);
        room.ToDesk().Keys("31" + RealExam.Sealed.Code + "{Enter}Jo{Enter}1");
        Assert.Contains("At the end comes one real bike", room.Text, StringComparison.Ordinal);
        room.Keys("1").Wait(TimeSpan.FromMinutes(17));
        room.Beat();
        while (room.Screen is not SitRealScreen)
        {
            room.Wait(TimeSpan.FromMinutes(17));
            room.Beat();
        }

        Assert.Contains("One more bike is left out", room.Text, StringComparison.Ordinal);
        Assert.Contains("Real bike 2", room.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Real bike 1", room.Text, StringComparison.Ordinal);
        room.Keys("2");
        Assert.Single(room.Papers.Files(PaperFolder.ResultEnding));
    }

    [Fact]
    public void When_the_lead_ends_the_test_no_real_bike_follows()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: RealExam.Before);
        Put(room);
        room.ToDesk().Keys("31" + RealExam.Sealed.Code + "{Enter}Jo{Enter}1105fire alarm{Enter}" + RealExam.Sealed.Code + "{Enter}2");
        Assert.IsType<SitEndScreen>(room.Screen);
        Assert.Equal(SittingEnd.ByLead, room.Sitting.End);
    }

    static void Put(Room room) => room.Papers.Write(PaperFolder.NameOf(Exam.Number, "Sam", PaperFolder.PaperEnding), RealExam.Sealed.File);

    static void Result(Room room)
    {
        room.Keys("{Enter}").ToDesk().Keys("41" + Exam.Passphrase + "{Enter}{Enter}");
        var result = room.All.Result(Exam.Number) ?? throw new InvalidOperationException("no result");
        Assert.Equal([8, null], result.Real.Select(r => r.Sat.Tenths));
        Assert.Equivalent(SatPaper.Of(room.Sitting).Mark(Exam.Paper, [Exam.Bench]), result with { Real = [] }, strict: true);
        room.Take("desk.results").Keys("1");
        Assert.IsType<ResultScreen>(room.Screen);
        Look(room, "result-real-lead");
        Assert.IsType<ResultRealScreen>(room.Keys("R").Screen);
        Look(room, "result-real");
        Assert.IsType<ResultScreen>(room.Keys("0").Screen);
        var page = Apprentice.Reports.AssessCandidatePage.Html(room.World.History, room.World.Topics, result, room.World.Now);
        Assert.Contains("Real bike 1: Older or newer bar, from Yard", page, StringComparison.Ordinal);
        Assert.Contains(Words.Of("realbike.what"), page, StringComparison.Ordinal);
    }

    static string Flat(Room room) => string.Join(' ', room.Text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    static void Look(Room room, string name)
    {
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", room.TextAt(size));
    }
}
