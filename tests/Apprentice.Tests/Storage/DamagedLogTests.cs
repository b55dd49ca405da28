using Apprentice.Engine.Learning;
using Apprentice.Storage;
using LiteDB;

namespace Apprentice.Tests.Storage;

public sealed class DamagedLogTests : IDisposable
{
    static readonly DateTimeOffset At = new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero);

    readonly string _folder = Directory.CreateTempSubdirectory("damaged-log").FullName;

    string FilePath => Path.Combine(_folder, "log.db");

    public static TheoryData<int, int> Places => new() { { 8192, 64 }, { 8192, 8192 }, { 16384, 8192 }, { 24576, 8192 }, { 32768, 8192 }, { 40960, 8192 }, { 100, 200 } };

    public static TheoryData<int> Lengths => [1, 100, 8191, 8192, 8193, 20_000, 24_576];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Places))]
    public void Pages_that_were_overwritten_are_told_in_a_sentence_or_do_not_matter(int from, int count)
    {
        Fill();
        var bytes = File.ReadAllBytes(FilePath);
        for (var i = from; i < Math.Min(bytes.Length, from + count); i++) bytes[i] = (byte)(i * 37 % 251);
        File.WriteAllBytes(FilePath, bytes);
        AssertSpoken();
    }

    [Theory]
    [MemberData(nameof(Lengths))]
    public void A_file_that_was_cut_off_is_told_in_a_sentence_or_does_not_matter(int length)
    {
        Fill();
        using (var file = new FileStream(FilePath, FileMode.Open)) file.SetLength(length);
        AssertSpoken();
    }

    [Fact]
    public void An_entry_without_its_fields_is_told_by_its_number()
    {
        Fill();
        using (var file = new LiteDatabase(new ConnectionString { Filename = FilePath, Collation = Collation.Binary }))
            file.GetCollection("log", BsonAutoId.Int64).Insert(new BsonDocument { ["kind"] = "Looked", ["at"] = At.ToString("O"), ["job"] = 1 });
        using var log = Log.Open(FilePath);
        Assert.Contains("Entry 41 of the log cannot be read", Assert.Throws<LogException>(() => log.Read()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_a_newer_program_is_left_as_it_is()
    {
        Fill();
        using (var file = new LiteDatabase(new ConnectionString { Filename = FilePath, Collation = Collation.Binary }))
            file.GetCollection("about").Update(new BsonDocument { ["_id"] = "schema", ["number"] = Log.Schema + 1 });
        var before = File.ReadAllBytes(FilePath);
        Assert.Contains("newer version", Assert.Throws<LogException>(() => Log.Open(FilePath)).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(FilePath));
    }

    void Fill()
    {
        using var log = Log.Open(FilePath);
        for (var i = 0; i < 40; i++) log.Append(new Logged(At, new LogEntry.Questioned(1, new string('x', 900))));
    }

    // Whatever is wrong with the file, a person reads a sentence and no program dies of it.
    void AssertSpoken()
    {
        try
        {
            using var log = Log.Open(FilePath);
            Assert.All(log.Read(), e => Assert.Equal(At, e.At));
        }
        catch (LogException e)
        {
            Assert.EndsWith(".", e.Message, StringComparison.Ordinal);
        }
    }
}
