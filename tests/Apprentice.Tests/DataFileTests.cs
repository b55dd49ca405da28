using Apprentice.Storage;

namespace Apprentice.Tests;

public sealed class DataFileTests
{
    [Fact]
    public void The_option_comes_first() => Assert.Equal("a.db", DataFile.Locate(["--data", "a.db"], Set(DataFile.Variable, "b.db")));

    [Fact]
    public void The_option_may_be_one_word() => Assert.Equal("a.db", DataFile.Locate(["topics", "--data=a.db"], _ => null));

    [Fact]
    public void The_variable_comes_second() => Assert.Equal("b.db", DataFile.Locate([], Set(DataFile.Variable, "b.db")));

    [Fact]
    public void Else_it_lies_where_the_system_keeps_data()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "the place of other systems is another");
        Assert.Equal("/data/apprentice/log.db", DataFile.Locate([], Set("XDG_DATA_HOME", "/data")));
        Assert.Equal("/home/sam/.local/share/apprentice/log.db", DataFile.Locate([], Set("HOME", "/home/sam")));
    }

    [Theory]
    [InlineData("--data")]
    [InlineData("--data --json")]
    [InlineData("--data=")]
    public void An_option_without_a_file_is_told(string line) =>
        Assert.Equal(
            "--data needs a file after it, for example --data my-log.db.",
            Assert.Throws<LogException>(() => DataFile.Locate(line.Split(' '), _ => null)).Message);

    static Func<string, string?> Set(string name, string value) => n => string.Equals(n, name, StringComparison.Ordinal) ? value : null;
}
