using System.Text;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Engine.Quantities;
using Apprentice.Engine.Topics;
using Apprentice.Storage;
using Apprentice.Storage.Papers;

namespace Apprentice.Tests.Assessing;

/// <summary>Attacks on sealed papers, results and the saved sitting.</summary>
public sealed class PaperFileTests
{
    static readonly DateTimeOffset Nine = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    static readonly byte[] DeskKey = Seal.NewKey();
    static readonly Paper Sams = PaperOf("7F2ABC", "Sam");
    static readonly (byte[] File, string Code) Sealed = PaperFile.Sealed(Sams, DeskKey);

    static Assessments Made => Assessments.Of([new(Nine, new LogEntry.PaperMade("7F2ABC", "may order rims alone", "Sam", 1)), new(Nine, new LogEntry.PaperMade("8A1ABC", "may order rims alone", "Kim", 1))]);

    [Fact]
    public void It_opens_by_its_code_and_at_its_desk()
    {
        var byCode = PaperFile.OpenByCode(Sealed.File, $" {Sealed.Code.ToLowerInvariant()} ");
        var atDesk = PaperFile.OpenAtDesk(Sealed.File, DeskKey);
        Assert.Equivalent(Sams, byCode.Paper, strict: true);
        Assert.Equivalent(Sams, atDesk.Paper, strict: true);
        Assert.Equal(byCode.SittingKey, atDesk.SittingKey);
    }

    [Theory]
    [InlineData("")]
    [InlineData("2345-6789-ABCD")]
    public void Another_code_does_not_open_it(string code) => Assert.Contains("code", Assert.Throws<SealException>(() => PaperFile.OpenByCode(Sealed.File, code)).Message);

    [Fact]
    public void Another_desk_does_not_open_it() => Assert.Contains("another desk", Assert.Throws<SealException>(() => PaperFile.OpenAtDesk(Sealed.File, Seal.NewKey())).Message);

    [Fact]
    public void Any_byte_changed_is_refused()
    {
        for (var i = 0; i < Sealed.File.Length; i++) RefusedAtDesk(Changed(Sealed.File, i));
    }

    [Fact]
    public void Any_cut_is_refused()
    {
        for (var length = 0; length < Sealed.File.Length; length++) RefusedAtDesk(Sealed.File[..length]);
        RefusedAtDesk([.. Sealed.File, .. "\n"u8]);
    }

    // A changed head is refused by the code too; few, since each try takes as long as it should.
    [Fact]
    public void A_changed_file_is_refused_by_the_code_too()
    {
        foreach (var at in new[] { 30, Sealed.File.Length / 2, Sealed.File.Length - 3 }) Assert.Throws<SealException>(() => PaperFile.OpenByCode(Changed(Sealed.File, at), Sealed.Code));
    }

    [Fact]
    public void The_outside_holds_no_seed()
    {
        var file = Encoding.Latin1.GetString(Sealed.File);
        var bytes = file.Split('\n').Skip(1).Where(l => l.Length > 0).SelectMany(Convert.FromBase64String).ToArray();
        AssertHoldsNoSeed(bytes);
        AssertHoldsNoSeed(Sealed.File);
    }

    [Fact]
    public void The_saved_sitting_holds_no_seed_and_no_key()
    {
        var opened = PaperFile.OpenByCode(Sealed.File, Sealed.Code);
        var folder = Directory.CreateTempSubdirectory("sat").FullName;
        try
        {
            var path = Path.Combine(folder, "log.db");
            using (var log = Log.Open(path))
            {
                foreach (var entry in Sat()) log.Append(entry);
            }

            var bytes = File.ReadAllBytes(path);
            AssertHoldsNoSeed(bytes);
            Assert.Equal(-1, bytes.AsSpan().IndexOf(opened.SittingKey));
            Assert.Equal(-1, bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(Seal.CodeOf(Sealed.Code))));
            Assert.NotEqual(-1, bytes.AsSpan().IndexOf("7F2ABC"u8));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        Assert.DoesNotContain(typeof(Sitting).GetProperties().Concat(typeof(SittingJob).GetProperties()), p => p.PropertyType == typeof(ulong) || p.PropertyType == typeof(Truth) || p.PropertyType == typeof(Case));
    }

    [Fact]
    public void A_result_comes_back_whole()
    {
        var sat = SatPaper.Of(Sitting());
        var back = ResultFile.Collect(ResultFile.Sealed(sat, Key()), Made, _ => Key());
        Assert.Equivalent(sat, back, strict: true);
    }

    [Fact]
    public void A_result_with_any_byte_changed_or_cut_is_refused()
    {
        var file = ResultFile.Sealed(SatPaper.Of(Sitting()), Key());
        for (var i = 0; i < file.Length; i++)
        {
            var changed = Changed(file, i);
            Assert.Throws<SealException>(() => ResultFile.Collect(changed, Made, _ => Key()));
            Assert.Throws<SealException>(() => ResultFile.Collect(file[..i], Made, _ => Key()));
        }
    }

    [Fact]
    public void A_result_that_was_replayed_renamed_or_is_foreign_is_refused()
    {
        var sat = SatPaper.Of(Sitting());
        var file = ResultFile.Sealed(sat, Key());
        var collected = Made.With(new Logged(Nine, new LogEntry.PaperMarked(Result(sat), Published: false)));
        Assert.Contains("collected before", Refusal(file, collected, Key()));
        Assert.Contains("renamed", Refusal(ResultFile.Sealed(sat with { Candidate = "Kim" }, Key()), Made, Key()));
        Assert.Contains("not made at this desk", Refusal(ResultFile.Sealed(sat with { Paper = "FFFFFF" }, Key()), Made, Key()));
        Assert.Contains("belongs to another paper", Refusal(ResultFile.Sealed(sat with { Paper = "8A1ABC", Candidate = "Kim" }, Key()), Made, Seal.NewKey()));
        Assert.Contains("is not there", Assert.Throws<SealException>(() => ResultFile.Collect(file, Made, _ => null)).Message);
        Assert.Contains("not a file of the kind", Refusal(Sealed.File, Made, Key()));
    }

    [Fact]
    public void A_result_put_into_the_wrapper_of_another_paper_is_refused()
    {
        var one = Encoding.Latin1.GetString(ResultFile.Sealed(SatPaper.Of(Sitting()), Key())).Split('\n');
        var other = Encoding.Latin1.GetString(ResultFile.Sealed(SatPaper.Of(Sitting()) with { Paper = "8A1ABC", Candidate = "Kim" }, Key())).Split('\n');
        one[1] = other[1];
        Assert.Contains("changed", Refusal(Encoding.Latin1.GetBytes(string.Join('\n', one)), Made, Key()));
    }

    [Fact]
    public void The_desk_opens_by_passphrase_and_recovery_code_and_keeps_its_key()
    {
        var (locked, key, code) = Desk.SetUp("eight old bicycles");
        Assert.Equal(key, Desk.Open(locked, "eight old bicycles"));
        Assert.Equal(key, Desk.Open(locked, code.Replace("-", " ", StringComparison.Ordinal).ToLowerInvariant()));
        Assert.Null(Desk.Open(locked, "Eight old bicycles"));
        var (again, same, _) = Desk.SetUp("nine new bicycles", key);
        Assert.Equal(key, same);
        Assert.Null(Desk.Open(again, "eight old bicycles"));
        Assert.Equal(Sams.Id, PaperFile.OpenAtDesk(PaperFile.Sealed(Sams, key).File, same).Paper.Id);
        Assert.Contains("at least 8", Assert.Throws<SealException>(() => Desk.SetUp("seven77")).Message);
        Assert.Contains("damaged", Assert.Throws<SealException>(() => Desk.Open(locked[..^8], "eight old bicycles")).Message);
    }

    [Fact]
    public void Wrong_passphrases_slow_down()
    {
        Assert.Equal([0, 0, 2, 4, 8, 600, 600], new[] { 0, 3, 4, 5, 6, 13, int.MaxValue }.Select(t => Desk.Delay(t).TotalSeconds));
        Assert.True(Enumerable.Range(0, 40).All(t => Desk.Delay(t) <= Desk.Delay(t + 1)));
        var tried = Assessments.Of([.. Enumerable.Range(0, 5).Select(_ => new Logged(Nine, new LogEntry.DeskTried(Opened: false)))]);
        Assert.Equal(5, tried.WrongTries);
        Assert.Equal(0, tried.With(new Logged(Nine, new LogEntry.DeskTried(Opened: true))).WrongTries);
    }

    [Fact]
    public void Few_rounds_are_refused() => Assert.Throws<SealException>(() => Seal.KeyOf("code", Seal.NewSalt(), Seal.Rounds - 1));

    /// <summary>Source: RFC 7914, section 11, second test vector is for other rounds than ours, so the platform's function is checked by it and ours by the platform's.</summary>
    [Fact]
    public void Keys_are_those_of_the_standard()
    {
        var published = System.Security.Cryptography.Rfc2898DeriveBytes.Pbkdf2("Password", Encoding.ASCII.GetBytes("NaCl"), 80000, System.Security.Cryptography.HashAlgorithmName.SHA256, 64);
        Assert.StartsWith("4DDCD8F60B98BE21830CEE5EF22701F9641A4418D04C0414AEFF08876B34AB56", Convert.ToHexString(published), StringComparison.Ordinal);
        var salt = Seal.NewSalt();
        Assert.Equal(System.Security.Cryptography.Rfc2898DeriveBytes.Pbkdf2("Password", salt, Seal.Rounds, System.Security.Cryptography.HashAlgorithmName.SHA256, 32), Seal.KeyOf("Password", salt, Seal.Rounds));
    }

    static byte[] Key() => PaperFile.OpenAtDesk(Sealed.File, DeskKey).SittingKey;

    static string Refusal(byte[] file, Assessments assessments, byte[] key) => Assert.Throws<SealException>(() => ResultFile.Collect(file, assessments, _ => key)).Message;

    static void RefusedAtDesk(byte[] file) => Assert.Throws<SealException>(() => PaperFile.OpenAtDesk(file, DeskKey));

    static byte[] Changed(byte[] file, int at)
    {
        var changed = file.ToArray();
        changed[at] ^= 1;
        return changed;
    }

    static void AssertHoldsNoSeed(byte[] bytes)
    {
        foreach (var seed in Sams.Jobs.SelectMany(j => new[] { j.Seed, j.SeedOf(1) }))
        {
            Assert.Equal(-1, bytes.AsSpan().IndexOf(BitConverter.GetBytes(seed)));
            Assert.Equal(-1, bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(seed.ToString())));
            Assert.Equal(-1, bytes.AsSpan().IndexOf(Encoding.ASCII.GetBytes(unchecked((long)seed).ToString())));
        }
    }

    static List<Logged> Sat() =>
    [
        new(Nine, new LogEntry.SittingStarted("7F2ABC", "may order rims alone", "Sam", 1, "Jo", 12, 4, 1, Plain: false)),
        new(Nine, new LogEntry.SittingOpened("7F2ABC", 1)),
        new(Nine, new LogEntry.SittingLooked("7F2ABC", 1, new Look("tape", 0, 622.5), new Finding("tape", Channel.Bench, new Seen.Reading(622)))),
        new(Nine, new LogEntry.SittingAnswered("7F2ABC", 1, new Given([new PartAnswer("rim", "r622", 9)], [new Choice.Order("rim-622")], null, null, null, Forced: false))),
        new(Nine.AddMinutes(1), new LogEntry.SittingEnded("7F2ABC", SittingEnd.HandedIn)),
    ];

    static Sitting Sitting() => Assessments.Of(Sat()).SittingOf("7F2ABC") ?? throw new InvalidOperationException("no sitting");

    static PaperResult Result(SatPaper sat) => new()
    {
        Paper = sat.Paper,
        Permission = "may order rims alone",
        Candidate = sat.Candidate,
        Number = 1,
        Rule = StagedRule.Default,
        Jobs = [Marker.NotAnswered(Sams.Jobs[0])],
    };

    static Paper PaperOf(string id, string candidate)
    {
        var rng = new Rng(12345);
        var family = new JobFamily("rim-size", "own", "tyre", "phone", Selection.AsTheyCome, Channel.Bench, Safety: false);
        return new Paper
        {
            Id = id,
            Candidate = candidate,
            Number = 1,
            Permission = "may order rims alone",
            Rule = StagedRule.Default,
            MinutesPerJob = 4,
            Jobs = [.. Enumerable.Range(1, 36).Select(p => new PaperJob(p, family, "v1", ((ulong)rng.Next() << 32) | rng.Next()))],
            SafetyAgain = [],
        };
    }
}
