using System.Text;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage.Papers;
using Apprentice.Tests.Commands;

namespace Apprentice.Tests.Assessing;

/// <summary>Attacks on the real files and the real screens.</summary>
public sealed class AttackTests
{
    static readonly Type[] OfASitting =
    [
        typeof(BenchScreen), typeof(AnswerScreen), typeof(ConfirmScreen), typeof(DatumScreen), typeof(ScaleScreen), typeof(GaugeScreen), typeof(PlateScreen), typeof(LookScreen), typeof(TellsScreen), typeof(HelpScreen),
        typeof(PauseScreen), typeof(SitMenuScreen), typeof(SitListScreen), typeof(SitHandInScreen), typeof(SitStopScreen), typeof(SitBreakScreen), typeof(SitEndScreen),
    ];

    [Fact]
    public void The_files_of_a_candidate_hold_no_seed_no_code_and_no_key()
    {
        using var folder = new TempFolder();
        File.WriteAllBytes(folder.In("stick.paper"), Exam.Sealed.File);
        using (var room = new Room(folder, paper: folder.In("stick.paper")))
        {
            room.Keys(Exam.Sealed.Code + "{Enter}Jo{Enter}11").Keys("1").Answer();
            Assert.Equal(1, room.Sitting.Answered);
            room.Keys("05stop{Enter}" + Exam.Sealed.Code + "{Enter}2");
            Assert.IsType<SitEndScreen>(room.Screen);
            Assert.Null(room.World.Seat);
        }

        var key = PaperFile.OpenAtDesk(Exam.Sealed.File, Exam.Desk.Key).SittingKey;
        var files = Directory.GetFiles(folder.Path);
        Assert.Contains(files, f => f.EndsWith(".result", StringComparison.Ordinal));
        Assert.Contains(files, f => Path.GetFileName(f).StartsWith("log", StringComparison.Ordinal));
        foreach (var file in files)
        {
            var bytes = File.ReadAllBytes(file);
            Holds(bytes, key, file, holds: false);
            Holds(bytes, Encoding.UTF8.GetBytes(Seal.CodeOf(Exam.Sealed.Code)), file, holds: false);
            foreach (var seed in Exam.Paper.Jobs.Concat(Exam.Paper.SafetyAgain).SelectMany(j => new[] { j.Seed, j.SeedOf(1) }))
            {
                Holds(bytes, BitConverter.GetBytes(seed), file, holds: false);
                Holds(bytes, Encoding.ASCII.GetBytes($"{seed}"), file, holds: false);
                Holds(bytes, Encoding.ASCII.GetBytes($"{unchecked((long)seed)}"), file, holds: false);
            }
        }

        Holds(File.ReadAllBytes(folder.In("log.db")), Encoding.ASCII.GetBytes(Exam.Number), "log.db", holds: true);
    }

    /// <summary>Thousands of random keys: no other screen is reached before the sitting has ended.</summary>
    [Fact]
    public void Nothing_else_can_be_reached_during_a_sitting()
    {
        const string Letters = "0123456789AHLRSPWQBXCNUDZ+?.";
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        CrashTests.Started(room);
        var rng = new Rng(77);
        var seen = new HashSet<Type>();
        for (var i = 0; i < 1500 && room.Sitting.End is null; i++)
        {
            var key = rng.Below(8);
            room.Keys(key switch { 0 => "{Enter}", 1 => "{Esc}", 2 => "{Right}", 3 => "{Left}", _ => $"{Letters[rng.Below(Letters.Length)]}" });
            if (room.Screen is SitStopScreen { Reason: not null }) room.Keys("{Esc}");
            seen.Add(room.Screen.GetType());
            Assert.Contains(room.Screen.GetType(), OfASitting);
            Assert.DoesNotContain("sound:", room.Text, StringComparison.Ordinal);
        }

        Assert.Contains(typeof(SitMenuScreen), seen);
        Assert.Contains(typeof(PauseScreen), seen);
        Assert.Contains(typeof(AnswerScreen), seen);
        Assert.True(seen.Count > 6, string.Join(", ", seen.Select(t => t.Name)));
    }

    [Fact]
    public void Results_that_are_not_as_they_left_are_refused_on_the_screen_each_with_a_sentence()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        room.PutPaper();
        var key = PaperFile.OpenAtDesk(Exam.Sealed.File, Exam.Desk.Key).SittingKey;
        var sat = new SatPaper(Exam.Number, "Sam", 1, 4, [], TimeSpan.FromMinutes(9), room.Clock.Now, SittingEnd.TimeUp, []);
        var good = ResultFile.Sealed(sat, key);
        byte[] changed = [.. good];
        changed[^9] ^= 1;
        (string Name, byte[] Bytes)[] files =
        [
            ("1-changed", changed), ("2-cut", good[..^40]), ("3-foreign", ResultFile.Sealed(sat with { Paper = "FFFFFF" }, key)), ("4-renamed", ResultFile.Sealed(sat with { Candidate = "Kim" }, key)),
            ("5-made-up", ResultFile.Sealed(sat, Seal.NewKey())), ("6-paper", Exam.Sealed.File), ("7-again", ResultFile.Sealed(sat with { Paper = Exam.Number + "-S" }, key)), ("8-good", good), ("9-double", good),
        ];
        foreach (var (name, bytes) in files) File.WriteAllBytes(Path.Combine(room.Papers.Path, name + ".result"), bytes);
        room.ToDesk().Keys("41" + Exam.Passphrase + "{Enter}");
        string[] expected = ["changed", "changed or cut short", "not made at this desk", "renamed", "belongs to another paper", "not a file of the kind", "not collected yet", "collected and marked", "collected before"];
        var lines = Assert.IsType<CollectedScreen>(room.Screen).Lines;
        Assert.Equal(expected.Length, lines.Count);
        Assert.All(lines.Zip(expected), p => Assert.Contains(p.Second, p.First.Sentence, StringComparison.Ordinal));
        Assert.Single(room.All.Results);
    }

    [Fact]
    public void Wrong_passphrases_wait_on_the_screen_and_stand_in_the_log()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        room.PutPaper();
        room.ToDesk().Keys("41");
        for (var i = 0; i < 4; i++) room.Keys("not it at all{Enter}");
        Assert.Equal(4, room.All.WrongTries);
        Assert.Contains("Wait 2 s", room.Keys(Exam.Passphrase + "{Enter}").Text, StringComparison.Ordinal);
        Assert.Equal(4, room.All.WrongTries);
        room.Pass(TimeSpan.FromSeconds(3));
        room.Keys(Exam.Passphrase + "{Enter}");
        Assert.IsType<CollectedScreen>(room.Screen);
        Assert.Equal(0, room.All.WrongTries);
    }

    [Fact]
    public void A_forgotten_passphrase_is_changed_with_the_recovery_code_and_papers_made_before_still_open()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        room.PutPaper();
        room.ToDesk().Take("desk.passphrase").Keys(Exam.Desk.Recovery + "{Enter}");
        room.Keys("nine new bicycles{Enter}nine new bicycles{Enter}2");
        Assert.IsType<DeskScreen>(room.Screen);
        var locked = room.All.Desk?.Locked ?? "";
        Assert.Null(Apprentice.Storage.Papers.Desk.Open(locked, Exam.Passphrase));
        Assert.Equal(Exam.Desk.Key, Apprentice.Storage.Papers.Desk.Open(locked, "nine new bicycles"));
    }

    [Fact]
    public void A_pause_closes_the_desk()
    {
        using var folder = new TempFolder();
        using var room = new Room(folder, before: Exam.Before);
        room.ToDesk().Keys("41" + Exam.Passphrase + "{Enter}{Enter}");
        Assert.NotNull(room.World.DeskKey);
        Assert.Null(room.Keys("P").World.DeskKey);
        Assert.Contains("The desk is closed", room.Keys("1").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_desk_that_is_there_never_gets_another_key()
    {
        var world = new World([Exam.Bench], History.Of(Exam.Before.Select(e => new Logged(DateTimeOffset.UnixEpoch, e))));
        var again = new DeskSetScreen(new DeskScreen(new HomeScreen()), _ => Turn.To(new HomeScreen()), "nine new bicycles") { Typed = "nine new bicycles" };
        var turn = again.Press(world, new Input(Press.Enter));
        Assert.IsType<DeskOpenScreen>(turn.Errand?.Invoke(world, new Apprentice.Assess.PaperFolder("nowhere")).Next);
    }

    static void Holds(byte[] bytes, byte[] what, string file, bool holds) => Assert.True(bytes.AsSpan().IndexOf(what) >= 0 == holds, $"{file} {(holds ? "should hold" : "holds")} {Convert.ToHexString(what)}");
}
