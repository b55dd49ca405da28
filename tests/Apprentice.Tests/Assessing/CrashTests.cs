using Apprentice.Assess;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Assessing;

/// <summary>The power goes in the middle of a sitting: the real file, as it lies on the disk at that moment, is opened again.</summary>
public sealed class CrashTests
{
    const int Moments = 200;

    [Fact]
    public void A_sitting_killed_at_200_random_moments_loses_no_answer_and_no_more_than_two_seconds()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        Started(room);
        var rng = new Rng(31);
        var (began, crashes, answered) = (room.Clock.Now, 0, 0);
        while (crashes < Moments)
        {
            room.Pass(TimeSpan.FromSeconds(rng.Unit()));
            if (rng.Below(3) == 0)
            {
                Crash(room, folder, began, answered);
                crashes++;
            }

            room.Pass(TimeSpan.FromSeconds(0.2 * rng.Unit()));
            room.Beat();
            if (rng.Below(24) == 0) room.Keys("1");
            if (rng.Below(60) == 0 && answered < 3)
            {
                if (room.Screen is not BenchScreen) Back(room);
                room.Answer();
                answered++;
            }
        }

        Assert.True(answered >= 3, $"{answered} answers");
        Assert.True(room.Clock.Now - began > TimeSpan.FromMinutes(4), "the sitting was too short to lose anything");
    }

    [Fact]
    public void After_a_crash_the_code_is_typed_again_and_the_time_that_was_left_is_there()
    {
        using var folder = new TempFolder();
        TimeSpan left;
        using (var room = new Room(folder, before: Exam.Before))
        {
            Started(room);
            room.Answer();
            room.Wait(TimeSpan.FromMinutes(5));
            left = room.Sitting.LeftAt(room.Clock.Now);
            room.Pass(TimeSpan.FromSeconds(0.9));
        }

        using var again = new Room(folder);
        again.Pass(TimeSpan.FromHours(2));
        again.ToDesk().Keys("31");
        Assert.IsType<SitCodeScreen>(again.Screen);
        Assert.Contains("This code does not open this paper", again.Keys("2345-6789-ABCD{Enter}").Text, StringComparison.Ordinal);
        again.Keys(Exam.Sealed.Code + "{Enter}");
        Assert.IsType<SitResumeScreen>(again.Screen);
        again.Keys("1");
        Assert.IsType<BenchScreen>(again.Screen);
        Assert.InRange(left - again.Sitting.LeftAt(again.Clock.Now), TimeSpan.FromSeconds(-2), TimeSpan.FromSeconds(2));
        Assert.Equal(1, again.Sitting.Answered);
        Assert.Contains("the program was closed from 09:05 to 11:05", Assert.Single(again.Sitting.Stops).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void When_no_time_is_left_the_jobs_without_an_answer_are_not_sound_and_it_goes_on_while_it_is_close()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        Started(room);
        room.Answer();
        room.Wait(TimeSpan.FromMinutes(16));
        Assert.Equal((8, 4), (room.Sitting.Places, room.Sitting.Closed));
        Assert.Equal(5, room.Sitting.OnScreen);
        room.Wait(TimeSpan.FromMinutes(17));
        Assert.IsType<SitEndScreen>(room.Screen);
        Assert.Equal(SittingEnd.TimeUp, room.Sitting.End);
        Assert.Equal(1, room.Sitting.Answered);
        Assert.Single(PaperFolder.Files(room.Papers.Path, PaperFolder.ResultEnding));
    }

    [Fact]
    public void The_clock_runs_on_in_a_pause_and_stands_when_the_lead_stops_it()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        Started(room);
        room.Wait(TimeSpan.FromMinutes(2));
        room.Keys("P");
        Assert.DoesNotContain("Sam", room.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Somebody else", room.Text, StringComparison.Ordinal);
        room.Wait(TimeSpan.FromMinutes(2));
        Assert.Equal(4, room.Sitting.Used.TotalMinutes, 0.1);
        room.Keys("231");
        Assert.IsType<BenchScreen>(room.Screen);
        room.Keys("05fire alarm{Enter}wrong code{Enter}");
        Assert.Contains("not the code of this paper", room.Text, StringComparison.Ordinal);
        room.Keys(Exam.Sealed.Code + "{Enter}");
        Assert.IsType<SitStoppedScreen>(room.Screen);
        var used = room.Sitting.Used;
        room.Wait(TimeSpan.FromMinutes(30));
        Assert.Equal(used, room.Sitting.Used);
        room.Keys("1");
        Assert.Equal((1, "fire alarm"), (room.Sitting.JobAt(1).Fresh, Assert.Single(room.Sitting.Stops).Reason));
        Assert.NotEqual(Exam.Paper.Make(Exam.Bench, 1).Job.Seed, Assert.IsType<BenchScreen>(room.Screen).On.Made.Job.Seed);
        room.Keys("05it burns{Enter}" + Exam.Sealed.Code + "{Enter}2");
        Assert.Equal(SittingEnd.ByLead, room.Sitting.End);
    }

    [Fact]
    public void Jobs_are_put_off_and_come_back()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        Started(room);
        room.Keys("02");
        Assert.Equal(2, Assert.IsType<BenchScreen>(room.Screen).On.Number);
        Assert.Contains("put off", room.Keys("03").Text, StringComparison.Ordinal);
        room.Keys("4").Answer();
        Assert.Equal(2, room.Sitting.OnScreen);
        room.Answer().Answer();
        Assert.Equal(1, room.Sitting.OnScreen);
        Assert.Contains("No answer yet: job 1.", room.Keys("03").Text, StringComparison.Ordinal);
        room.Keys("2");
        Assert.Equal(5, room.Sitting.OnScreen);
    }

    [Fact]
    public void A_crash_between_the_end_and_the_result_loses_nothing()
    {
        using var folder = new TempFolder();
        using (var room = new Room(folder, before: Exam.Before))
        {
            Started(room);
            room.Keys("05it burns{Enter}" + Exam.Sealed.Code + "{Enter}2");
            File.Delete(Assert.Single(room.Papers.Files(PaperFolder.ResultEnding)));
        }

        using var again = new Room(folder);
        again.ToDesk().Keys("31" + Exam.Sealed.Code + "{Enter}");
        Assert.IsType<SitAgainScreen>(again.Screen);
        again.Take("sit.write-again");
        Assert.Contains("The result lies in", again.Text, StringComparison.Ordinal);
        Assert.Single(again.Papers.Files(PaperFolder.ResultEnding));
        Assert.Null(again.World.Seat);
        Assert.IsType<SitAgainScreen>(again.Keys("{Enter}").ToDesk().Keys("31" + Exam.Sealed.Code + "{Enter}").Screen);
    }

    internal static void Started(Room room)
    {
        room.PutPaper();
        room.ToDesk().Keys("31" + Exam.Sealed.Code + "{Enter}Jo{Enter}11");
        Assert.IsType<BenchScreen>(room.Screen);
    }

    static void Back(Room room)
    {
        while (room.Screen is not BenchScreen) room.Keys(room.Screen is SitMenuScreen or PauseScreen ? "1" : "{Esc}");
    }

    // What lies on the disk now is copied as it is, the part that the database writes first included, and read as after a power cut.
    static void Crash(Room room, TempFolder folder, DateTimeOffset began, int answered)
    {
        var died = room.Clock.Now;
        using var copy = new TempFolder();
        foreach (var file in Directory.GetFiles(folder.Path, "log*.db")) Copied(file, copy.In(Path.GetFileName(file)));
        using var log = Log.Open(copy.In("log.db"));
        var entries = log.Read();
        var back = died.AddMinutes(7);
        var resumed = Assessments.Of([.. entries, new Logged(back, new LogEntry.SittingResumed(Exam.Number))]).SittingOf(Exam.Number) ?? throw new InvalidOperationException("the sitting is lost");
        Assert.Equal(answered, resumed.Answered);
        Assert.Equal(room.Sitting.Jobs.Sum(j => j.Looks.Count), resumed.Jobs.Sum(j => j.Looks.Count));
        Assert.InRange(died - began - resumed.Used, TimeSpan.Zero, TimeSpan.FromSeconds(2));
        Assert.Equal(resumed.Allowed - resumed.Used, resumed.LeftAt(back));
    }

    static void Copied(string from, string to)
    {
        using var source = new FileStream(from, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using var target = File.Create(to);
        source.CopyTo(target);
    }
}
