using Apprentice.Assess;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Assessing;

/// <summary>From the lead's desk to the collected result, by keys and by plain lines, on real files.</summary>
public sealed class WalkTests
{
    [Fact]
    public void A_lead_gets_from_nothing_to_sealed_papers_by_keys()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: [new LogEntry.WorkshopSet("Back yard", "Jo", [Exam.Topic.Id]), new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam")]);
        room.ToDesk().Keys("11");
        Assert.IsType<PlanScreen>(room.Screen);
        room.Keys("S");
        Assert.Contains("The plan is saved", room.Text, StringComparison.Ordinal);
        Assert.Empty(room.All.Papers);
        Assert.Null(room.All.Desk);
        room.Keys("00").Keys("21").Keys("13");
        Assert.IsType<DeskSetScreen>(room.Screen);
        room.Keys("short{Enter}");
        Assert.Contains("at least 8 signs", room.Text, StringComparison.Ordinal);
        room.Keys(Exam.Passphrase + "{Enter}" + Exam.Passphrase + "{Enter}");
        var code = Assert.IsType<DeskCodeScreen>(room.Screen).Code;
        Assert.Contains(code, room.Text, StringComparison.Ordinal);
        room.Keys("2");
        var made = Assert.Single(Assert.IsType<MadeScreen>(room.Screen).Made);
        Assert.Contains(made.Code, room.Text, StringComparison.Ordinal);
        Assert.Equal(("Sam", 1), (Assert.Single(room.All.Papers).Candidate, room.All.Papers[0].Number));
        Assert.Equal(36, PaperFile.OpenByCode(File.ReadAllBytes(made.File), made.Code).Paper.Jobs.Count);
        var key = room.World.DeskKey;
        Assert.Equal(key, Apprentice.Storage.Papers.Desk.Open(room.All.Desk?.Locked ?? "", code));
        Assert.Null(room.Keys("20").World.DeskKey);
        Assert.Equal(-1, File.ReadAllBytes(room.DataFile).AsSpan().IndexOf(key));
    }

    [Fact]
    public void A_paper_is_sat_at_the_desk_and_its_result_is_collected()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        room.PutPaper();
        room.ToDesk().Keys("31").Keys(Exam.Sealed.Code + "{Enter}");
        Assert.IsType<SitWhoScreen>(room.Screen);
        Assert.Contains("The candidate cannot confirm this", room.Keys("sam{Enter}").Text, StringComparison.Ordinal);
        room.Keys("{Backspace}{Backspace}{Backspace}Jo{Enter}3");
        Assert.Contains("4 jobs in 24 min", room.Text.ReplaceLineEndings(" "), StringComparison.Ordinal);
        room.Keys("1");
        Assert.Equal((1.5, "Jo", 4), (room.Sitting.Started.Multiplier, room.Sitting.Started.ConfirmedBy, room.Sitting.Places));
        Assert.Contains("24 min left", room.Text, StringComparison.Ordinal);
        for (var i = 0; i < 4; i++) room.Answer();
        Assert.Contains("All 4 jobs are answered", room.Text, StringComparison.Ordinal);
        room.Keys("2");
        Assert.Contains("4 more jobs follow", room.Text, StringComparison.Ordinal);
        Assert.Equal((8, 4), (room.Sitting.Places, room.Sitting.Closed));
        for (var i = 0; i < 4; i++) room.Answer();
        room.Keys("2");
        Assert.IsType<SitEndScreen>(room.Screen);
        Assert.Equal(SittingEnd.Decided, room.Sitting.End);
        Assert.Null(room.World.Seat);
        Collected(room);
    }

    [Fact]
    public void A_paper_is_sat_on_another_machine_in_plain_lines()
    {
        using var desk = new TempFolder();
        using var other = new TempFolder();
        using var lead = new Room(desk, before: Exam.Before);
        lead.PutPaper();
        File.WriteAllBytes(other.In("stick.paper"), Exam.Sealed.File);
        using (var room = new Room(other, plain: true, paper: other.In("stick.paper")))
        {
            var said = room.Say([Exam.Sealed.Code, "Jo", "1", "1", "P", "1", "0", "5"]);
            Assert.Contains("16 min left", said, StringComparison.Ordinal);
            Assert.Contains("The clock runs on", said, StringComparison.Ordinal);
            while (room.Sitting.End is null)
            {
                if (room.Screen is BenchScreen) room.Answer();
                else room.Say(room.Screen is SitStopScreen ? "esc" : room.Screen is SitMenuScreen ? "1" : "2");
            }

            Assert.True(room.Sitting.Started.Plain);
        }

        var result = Assert.Single(PaperFolder.Files(other.Path, PaperFolder.ResultEnding));
        File.Copy(result, Path.Combine(lead.Papers.Path, "renamed on the way.result"));
        lead.ToDesk().Keys("41" + Exam.Passphrase + "{Enter}");
        Assert.Contains("Sam, paper 7F2ABC: collected and marked. 8 jobs", lead.Text.ReplaceLineEndings(" ").Replace("  ", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.NotNull(lead.All.Result(Exam.Number));
    }

    static void Collected(Room room)
    {
        room.Keys("{Enter}").ToDesk().Keys("41");
        Assert.IsType<DeskOpenScreen>(room.Screen);
        room.Keys("wrong{Enter}");
        Assert.Equal(1, room.All.WrongTries);
        room.Keys(Exam.Passphrase + "{Enter}");
        var said = Assert.IsType<CollectedScreen>(room.Screen).Lines;
        Assert.Contains("collected and marked", Assert.Single(said).Sentence, StringComparison.Ordinal);
        var expected = SatPaper.Of(room.Sitting).Mark(Exam.Paper, [Exam.Bench]);
        Assert.Equivalent(expected, room.All.Result(Exam.Number), strict: true);
        Assert.Null(room.All.PublishedAt(Exam.Number));
        Assert.Contains("collected before", Assert.Single(Assert.IsType<CollectedScreen>(room.Keys("{Enter}41").Screen).Lines).Sentence, StringComparison.Ordinal);
    }
}
