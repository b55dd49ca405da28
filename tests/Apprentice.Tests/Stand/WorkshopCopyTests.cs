using Apprentice.Content.Changes;
using Apprentice.Engine;
using Apprentice.Engine.Notebook;
using Apprentice.Tests.Assessing;
using TopicDrafts = Apprentice.Content.Changes.Drafts;

namespace Apprentice.Tests.Stand;

/// <summary>The workshop's changes over the shipped files.</summary>
public sealed class WorkshopCopyTests
{
    const string Topic = "question-bank/rim-size.md";
    const string Lesson = "lessons/rim-size/round.md";
    static readonly DateOnly Day = new(2026, 11, 25);
    static readonly Dictionary<string, string> Shipped = new(StringComparer.Ordinal)
    {
        [Topic] = File.ReadAllText(Path.Combine(Corpus.Root, "question-bank", "rim-size.md")),
        [Lesson] = File.ReadAllText(Path.Combine(Corpus.Root, "lessons", "rim-size", "round.md")),
    };

    [Fact]
    public void Without_changes_every_file_is_the_shipped_one_letter_by_letter()
    {
        Assert.All(Shipped, f => Assert.Equal(f.Value, Copy().Text(f.Key)));
        Assert.Equal(Corpus.Topic("rim-size").Version, Copy().Topic("rim-size")?.Version);
    }

    [Fact]
    public void Changes_taken_back_restore_the_shipped_text_and_the_shipped_cases()
    {
        var changed = Copy(Note(1), Event(2));
        Assert.NotEqual(Shipped[Topic], changed.Text(Topic));
        Assert.NotEqual(Corpus.Topic("rim-size").Version, changed.Topic("rim-size")?.Version);
        var back = changed.With([new Change(3, "back") { Day = Day, TakesBack = 1 }, new Change(4, "back") { Day = Day, TakesBack = 2 }]);
        Assert.All(Shipped, f => Assert.Equal(f.Value, back.Text(f.Key)));
        Assert.Equal(Corpus.Topic("rim-size").Version, back.Topic("rim-size")?.Version);
    }

    [Fact]
    public void A_new_line_counts_in_the_topic()
    {
        var topic = Copy(Event(1)).Topic("rim-size");
        var happened = Assert.Single(topic?.Events ?? [], e => e.Id == "workshop-1");
        Assert.Equal("the rim was changed to 597 (26 x 1 1/4)", happened.Story);
        Assert.Equal(0.02, happened.Rates[0], 12);
        Assert.Equal(Corpus.Topic("rim-size").Events.Count + 1, topic?.Events.Count);
    }

    [Fact]
    public void A_note_stands_dated_before_the_last_line_of_the_lesson()
    {
        var text = Copy(Note(1)).Text(Lesson) ?? "";
        var lines = text.TrimEnd().Split('\n');
        Assert.Equal("On the bike, the part decides. Ask if it disagrees.", lines[^1]);
        Assert.Contains("## Note of the workshop, 25 November 2026 (1)", lines);
        Assert.Contains("Some tapes are worn at the hook. (Jo, 25 November 2026.)", lines);
    }

    [Fact]
    public void Two_notes_can_be_taken_back_alone()
    {
        var copy = Copy(Note(1), Note(2) with { Number = 2 }, new Change(3, "back") { Day = Day, TakesBack = 1 });
        Assert.Empty(copy.Faults);
        Assert.DoesNotContain("(1)\n", copy.Text(Lesson) ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void A_learned_rate_stands_in_its_cell_alone()
    {
        var shipped = Corpus.Topic("rim-size");
        var learned = new Learned(LearnedSort.EventRate, "wheel-622", "own", shipped.Events[0].Rates[0], 6, 40, 0.11, 0.05, 0.2);
        var change = Approval.Of(Copy(), shipped, shipped, learned, [learned], Day, "Jo").Change;
        Assert.NotNull(change);
        var topic = Copy(change).Topic("rim-size");
        Assert.Equal(0.11, topic?.Events[0].Rates[0]);
        Assert.Equal(shipped.Events[0].Rates[1], topic?.Events[0].Rates[1]);
        Assert.Equal(shipped.Events.Skip(1).SelectMany(e => e.Rates), topic?.Events.Skip(1).SelectMany(e => e.Rates));
    }

    [Fact]
    public void Learned_shares_of_lines_still_add_up_to_1()
    {
        var shipped = Corpus.Topic("rim-size");
        Learned[] all = [.. shipped.Lines.Select(l => new Learned(LearnedSort.LineShare, l.Id, "own", l.Shares[0], 1, 10, ((40 * l.Shares[0]) + 1) / 50, 0, 1))];
        var topic = Copy([.. Approval.Of(Copy(), shipped, shipped, all[0], all, Day, "Jo").Changes]).Topic("rim-size");
        Assert.Equal(1, topic?.Lines.Sum(l => l.Shares[0]) ?? 0, 9);
        Assert.Equal(((40 * 0.05) + 1) / 50, topic?.Lines[0].Shares[0]);
    }

    [Fact]
    public void Papers_find_the_version_that_they_were_made_from()
    {
        var (first, second) = (Event(1), Event(2) with { Number = 2 });
        var then = Copy(first).Topic("rim-size")?.Version ?? "";
        var now = Copy(first, second, new Change(3, "back") { Day = Day, TakesBack = 1 });
        Assert.NotEqual(then, now.Topic("rim-size")?.Version);
        Assert.Equal(then, now.Topic("rim-size", then)?.Version);
        Assert.Equal(Corpus.Topic("rim-size").Version, now.Topic("rim-size", Corpus.Topic("rim-size").Version)?.Version);
        Assert.Null(now.Topic("rim-size", "another"));
    }

    /// <summary>A paper is sat and marked with the figures it was made with, whatever the lead has let count since.</summary>
    [Fact]
    public void A_paper_keeps_the_figures_of_its_version()
    {
        var path = WorkshopCopy.PathOf(Corpus.Sample.Id);
        var shipped = new WorkshopCopy(new Dictionary<string, string>(StringComparer.Ordinal) { [path] = File.ReadAllText(Path.Combine(Corpus.Root, "tests/Apprentice.Tests/Data/topics/older-newer-bar.md")) }, [], Corpus.Sources);
        var change = Drafts(1, path, shipped).Cells("rate", TopicDrafts.Events, [new CellEdit(new Dictionary<string, string>(StringComparer.Ordinal) { ["id"] = "bar-to-newer" }, "own", "0.2")]) ?? throw new InvalidOperationException();
        var copy = shipped.With([change]);
        Workbench[] now = [new(copy.Topic(Corpus.Sample.Id) ?? throw new InvalidOperationException())];
        Assert.Equal(0.2, now[0].Topic.Events[0].Rates[0]);
        var frozen = Assert.Single(copy.Frozen(now, Exam.Paper));
        Assert.Equal((0.05, Exam.Paper.Jobs[0].Version), (frozen.Topic.Events[0].Rates[0], frozen.Topic.Version));
    }

    [Fact]
    public void A_shipped_update_under_a_change_that_no_longer_fits_is_told_with_file_and_line_and_nothing_is_lost()
    {
        var changes = Read(ChangesFile.Write([Event(1), Note(2)]));
        var updated = new Dictionary<string, string>(Shipped, StringComparer.Ordinal) { [Topic] = Shipped[Topic].Replace("its mark is gone", "its mark is away", StringComparison.Ordinal) };
        var copy = new WorkshopCopy(updated, changes, Corpus.Sources);
        var fault = Assert.Single(copy.Faults);
        Assert.Equal("changes.md", fault.File);
        Assert.Equal(5, fault.Line);
        var line = updated[Topic].Split('\n').ToList().FindIndex(l => l.StartsWith("| mark-lost |", StringComparison.Ordinal)) + 1;
        Assert.Contains($"{Topic}:{line} is not as it was", fault.Message, StringComparison.Ordinal);
        Assert.Equal(updated[Topic], copy.Text(Topic));
        Assert.Contains("Note of the workshop", copy.Text(Lesson) ?? "", StringComparison.Ordinal);
        Assert.Equal(2, copy.Changes.Count);
    }

    [Fact]
    public void A_change_that_would_break_a_topic_is_told_and_left_out()
    {
        var row = Shipped[Topic].Split('\n').First(l => l.StartsWith("| mark-lost |", StringComparison.Ordinal));
        var copy = Copy(new Change(1, "typing error") { File = Topic, Day = Day, Was = [row], Is = [row.Replace("1 in 50", "1 of 50", StringComparison.Ordinal)] });
        Assert.Contains("could not be read", Assert.Single(copy.Faults).Message, StringComparison.Ordinal);
        Assert.Equal(Shipped[Topic], copy.Text(Topic));
    }

    [Fact]
    public void A_change_that_another_builds_on_is_named()
    {
        var first = Drafts(1, Topic, Copy()).Cells("rate", TopicDrafts.Events, [Edit("0.1")]) ?? throw new InvalidOperationException();
        var second = Drafts(2, Topic, Copy(first)).Cells("rate", TopicDrafts.Events, [Edit("0.2")]) ?? throw new InvalidOperationException();
        var copy = Copy(first, second);
        Assert.Equal(0.2, copy.Topic("rim-size")?.Events[0].Rates[0]);
        Assert.Equal(2, Assert.Single(copy.BuiltOn(1)).Number);
        Assert.Empty(copy.BuiltOn(2));
    }

    [Fact]
    public void The_file_is_read_as_it_was_written()
    {
        Change[] changes = [Event(1) with { Because = "line 3 of the inbox", From = "Other yard" }, Note(2), new Change(5, "takes back change 2") { Day = Day, By = "Jo", TakesBack = 2 }];
        var read = Read(ChangesFile.Write(changes));
        Assert.Equal(ChangesFile.Write(changes), ChangesFile.Write(read));
        Assert.Equal(changes[0].Is, read[0].Is);
        Assert.Equal((2, "Other yard"), (read[2].TakesBack, read[0].From));
    }

    [Theory]
    [InlineData("hello", 1, "This is no file of changes")]
    [InlineData("# Changes of the workshop\n\n## one: x\n", 3, "A change begins with its number")]
    [InlineData("# Changes of the workshop\n\n## 1: x\n\n- File: a.md\n", 3, "Change 1 has no day")]
    [InlineData("# Changes of the workshop\n\n## 1: x\n\n- Day: 2026-11-25\n", 3, "Change 1 names no file")]
    [InlineData("# Changes of the workshop\n\n## 1: x\n\n- Day: 25.11.2026\n", 5, "is not known here")]
    [InlineData("# Changes of the workshop\n\n## 1: x\n\n- File: a.md\n- Day: 2026-11-25\n\n### Was\n\nline\n", 10, "Lines of a change stand between two lines of ~~~~")]
    [InlineData("# Changes of the workshop\n\n## 1: x\n\n- Day: 2026-11-25\n- Takes back: 7\n", 3, "takes back change 7, which is not there")]
    public void A_fault_of_the_file_is_told_with_its_line(string text, int line, string sentence)
    {
        var fault = ChangesFile.Read("changes.md", text).Faults[0];
        Assert.Equal(line, fault.Line);
        Assert.Contains(sentence, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_change_is_seen_as_a_difference() =>
        Assert.Equal(["+ | a | b |"], WorkshopCopy.Difference(new Change(1, "x") { Was = ["| h |"], Is = ["| h |", "| a | b |"] }));

    static WorkshopCopy Copy(params Change[] changes) => new(Shipped, changes, Corpus.Sources);

    static TopicDrafts Drafts(int number, string path, WorkshopCopy copy) => new(number, path, copy.Text(path) ?? "", Day, "Jo");

    static CellEdit Edit(string value) => new(new Dictionary<string, string>(StringComparer.Ordinal) { ["id"] = "wheel-622" }, "own", value);

    static Change Note(int number) => Drafts(number, Lesson, Copy()).Note("Some tapes are worn at the hook.") ?? throw new InvalidOperationException();

    static Change Event(int number) => Drafts(number, Topic, Copy()).Row("new", TopicDrafts.Events, new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["id"] = $"workshop-{number}",
        ["what happened"] = "the rim was changed to 597 (26 x 1 1/4)",
        ["pitfall"] = "wheel-changed",
        ["own"] = "rare",
        ["lot"] = "rare",
        ["shed"] = "rare",
        ["does"] = "rim becomes 597",
        ["rates from"] = "judgement",
    }) ?? throw new InvalidOperationException();

    static IReadOnlyList<Change> Read(string text)
    {
        var (changes, faults) = ChangesFile.Read("changes.md", text);
        Assert.Empty(faults);
        return changes;
    }
}
