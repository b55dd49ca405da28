using System.Diagnostics;
using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Storage;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Plain;

/// <summary>The program as plain lines, driven by a pipe.</summary>
public sealed class PlainTests
{
    static readonly string[] Job = ["1", "1", "2", "3", "A", "2", "9", "2", "", "", "Sam"];

    [Fact]
    public void A_job_reads_as_it_was_looked_at() => Golden.Same("job", Talk().Say(Job));

    [Fact]
    public void An_own_bike_reads_as_it_was_looked_at() => Golden.Same("own-bike", Talk().Say("2", "1", "1", "1", "2", "two hands", "100", "140", "d"));

    [Fact]
    public void A_scale_is_said_in_words() => Golden.Same("scale", Reader(plain: true).Say("1", "2", "1", "333 mm", "."));

    [Fact]
    public void The_same_job_by_screens_and_by_lines_leaves_the_same_record()
    {
        var lines = Talk();
        lines.Say(Job);
        var screens = new Talk([Corpus.Sample]).Keys("1123A292{Enter}{Enter}Sam{Enter}");
        Assert.Equal(Records(screens), Records(lines));
        Assert.Contains(lines.Entries, e => e.What is LogEntry.Answered);
        Assert.IsType<HomeScreen>(lines.Screen);
    }

    [Fact]
    public void A_scale_read_by_screens_and_by_lines_leaves_the_same_record()
    {
        var lines = Reader(plain: true);
        lines.Say("1", "2", "1", "333 mm");
        Assert.Equal(Records(Reader(plain: false).Keys("121333 mm{Enter}")), Records(lines));
        Assert.Equal(333, Assert.Single(lines.Entries.Select(e => e.What).OfType<LogEntry.Looked>()).Look.OwnReading);
    }

    [Fact]
    public void The_shipped_topic_with_its_long_list_leaves_the_same_record()
    {
        var lines = new Talk(plain: true, [Corpus.Topic("rim-size")]);
        var said = lines.Say("1", "12", "1", "10", "13", "11", "3", "13", "", "");
        var screens = new Talk([Corpus.Topic("rim-size")]).Keys("112{Enter}1{Enter}10{Enter}13{Enter}11{Enter}313{Enter}{Enter}{Enter}");
        Assert.Equal(Records(screens), Records(lines));
        Assert.True(lines.Entries.Any(e => e.What is LogEntry.Answered), said);
    }

    [Fact]
    public void A_card_opens_and_shuts()
    {
        var said = Talk().Say("1", "L", "");
        Assert.Contains("The card of a check", said, StringComparison.Ordinal);
        Assert.Contains("Look at: the plate under the frame, first two digits.", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("99", "\"99\" means nothing here. Keys: 1-4 choose, Enter go, 0 more, ? help, Q leave.")]
    [InlineData("what now", "\"what now\" means nothing here. Keys: 1-4 choose, Enter go, 0 more, ? help, Q leave.")]
    [InlineData("7", "\"7\" means nothing here. Keys: 1-4 choose, Enter go, 0 more, ? help, Q leave.")]
    [InlineData("z", "\"z\" changes nothing here. Keys: 1-4 choose, Enter go, 0 more, ? help, Q leave.")]
    public void A_line_that_means_nothing_gets_a_sentence(string line, string sentence)
    {
        var talk = Talk();
        Assert.Contains(sentence, talk.Say(line), StringComparison.Ordinal);
        Assert.Single(talk.Entries);
    }

    [Fact]
    public void A_full_stop_says_the_page_again()
    {
        var page = PlainPageOf(Talk().Say());
        Assert.Equal(page + page, PlainPageOf(Talk().Say(".")).Replace("> .\n", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Only_what_changed_is_said()
    {
        var said = Talk().Say("1", "1").Split("> 1\n")[^1];
        Assert.DoesNotContain("2  Stem", said, StringComparison.Ordinal);
        Assert.Contains("1  ", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_field_is_filled_anew_and_left_by_a_word()
    {
        var talk = Talk();
        var said = talk.Say("3", "", "?", "Bench and Co", "esc");
        Assert.Contains("What you type goes into the field.", said, StringComparison.Ordinal);
        Assert.Equal("Bench and Co", Assert.IsType<WorkshopNameScreen>(talk.Screen).Typed);
        talk.Say("Other");
        Assert.Equal("Other", Assert.IsType<WorkshopLeadScreen>(talk.Screen).Name);
    }

    [Fact]
    public void Nothing_said_moves_a_cursor_or_colours()
    {
        var said = Talk().Say([.. Job, "?", ".", "quit"]);
        Assert.DoesNotContain(said, c => char.IsControl(c) && c != '\n');
        Assert.DoesNotContain("###", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_process_fed_by_a_pipe_ends_with_0_and_keeps_every_step(bool byVariable)
    {
        var folder = Directory.CreateTempSubdirectory("plain").FullName;
        try
        {
            var data = Path.Combine(folder, "log.db");
            var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, OperatingSystem.IsWindows() ? "apprentice.exe" : "apprentice"), ["--data", data, .. byVariable ? Array.Empty<string>() : ["--plain"]])
            {
                UseShellExecute = false,
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
            };
            if (byVariable) start.Environment["APPRENTICE_PLAIN"] = "1";
            using var process = Process.Start(start) ?? throw new InvalidOperationException();
            process.StandardInput.Write("1\n12\n3\n");
            process.StandardInput.Close();
            var said = process.StandardOutput.ReadToEnd();
            Assert.True(process.WaitForExit(TimeSpan.FromSeconds(60)));
            Assert.Equal(0, process.ExitCode);
            Assert.Contains("> 12", said, StringComparison.Ordinal);
            using var log = Log.Open(data);
            Assert.Equal(2, Assert.Single(History.Of(log.Read()).Jobs).Looks.Count);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // A lesson of the folding bike: contents, its list, a part with two kinds drawn side by side, the next parts, and a question with its answer.
    [Fact]
    public void A_lesson_reads_in_lines_as_it_was_looked_at() => Golden.Same("lesson", Reading().Say(ToLesson));

    [Fact]
    public void A_lesson_says_its_pictures_in_words_and_asks()
    {
        var talk = Reading();
        var said = talk.Say(ToLesson);
        Assert.Contains("Picture: A tall bar and a low one, side by side", said, StringComparison.Ordinal);
        Assert.Contains("Look at A: there they differ.", said.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain(said, c => c is >= '\u2800' and <= '\u28ff');
        Assert.Equal("folding-bar/bend.md", Assert.Single(talk.Entries.Select(e => e.What).OfType<LogEntry.LessonRead>()).Lesson);
        Assert.Equal(Records(new Talk(false, [Corpus.Topic("folding-bar")], Corpus.Lessons([Corpus.Topic("folding-bar")]), Sam).Keys("618{Enter}{Enter}{Enter}{Enter}{Enter}{Enter}{Enter}{Enter}17")), Records(talk));
    }

    static readonly string[] ToLesson = ["6", "1", "8", "", "", "", "", "", "", "", "1", "7"];

    static readonly LogEntry[] Sam = [new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam")];

    static Talk Reading() => new(plain: true, [Corpus.Topic("folding-bar")], Corpus.Lessons([Corpus.Topic("folding-bar")]), Sam);

    // A whole job of step 2: a scale with drawn points, a plate with what it tells, a look at a drawing; then the answer.
    [Fact]
    public void A_whole_job_with_scale_plate_and_look_reads_as_it_was_looked_at() => Golden.Same("job-step-2", Second(plain: true).Say(WholeJob));

    [Fact]
    public void A_whole_job_with_scale_plate_and_look_leaves_the_same_record_by_screens_and_by_lines()
    {
        var lines = Second(plain: true);
        lines.Say(WholeJob);
        var screens = Second(plain: false).Keys("14{Enter}1290 mm{Enter}2{Enter}17{Enter}39{Enter}2A1811{Enter}{Enter}{Enter}");
        Assert.Equal(Records(screens), Records(lines));
        var looks = lines.Entries.Select(e => e.What).OfType<LogEntry.Looked>().Select(l => l.Look).ToList();
        Assert.Equal(290, Assert.Single(looks, l => l.OwnReading is not null).OwnReading);
        Assert.Equal("2012", Assert.Single(looks, l => l.Writing is not null).OwnFinding);
        Assert.Equal("cast", Assert.Single(looks, l => l.OwnFinding is not null && l.Writing is null).OwnFinding);
        Assert.Contains(lines.Entries, e => e.What is LogEntry.Answered);
    }

    static readonly string[] WholeJob = ["1", "4", "1", "290 mm", "2", "1", "7", "3", "9", "2", "A", "1", "8", "1", "1", "", "", ""];

    static Talk Second(bool plain)
    {
        var topic = Corpus.Topic("folding-bar");
        return new(plain, [topic], [.. Sam, new LogEntry.JobStarted(
            1, "Sam", topic.Id, topic.Version, 7, new("own", "grips", "grip-phone", Engine.Cases.Selection.AsTheyCome, Engine.Topics.Channel.Bench), false, 2)]);
    }

    static Talk Talk() => new(plain: true, [Corpus.Sample]);

    // An open job of step 2, in which scales are read.
    static Talk Reader(bool plain) => new(plain, [Corpus.Sample], new LogEntry.PersonAdded("Sam"), new LogEntry.SatDown("Sam"), new LogEntry.JobStarted(
        1, "Sam", Corpus.Sample.Id, Corpus.Sample.Version, 7, new("own", "cables", "number", Engine.Cases.Selection.AsTheyCome, Engine.Topics.Channel.Bench), false, 2));

    // Entries as they are stored, times too: records with lists in them do not compare by value.
    static IEnumerable<string> Records(Talk talk) => talk.Entries.Select(e => EntryDocument.Of(e).ToString());

    static string PlainPageOf(string said) => said[(said.IndexOf('\n') + 1)..].Replace("> \n", "", StringComparison.Ordinal);
}
