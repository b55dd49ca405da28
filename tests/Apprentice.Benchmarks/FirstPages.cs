using System.Diagnostics;
using Apprentice.Content.Topics;
using Apprentice.Engine.Topics;
using Apprentice.Screens;
using Press = Apprentice.Screens.Press;

namespace Apprentice.Benchmarks;

/// <summary>The made-up log of 200 learners as a real file, opened by a program of its own: how long it takes until a page stands there for the first time, and how much memory that takes.</summary>
static class FirstPages
{
    static readonly PageSize Size = new(80, 24);

    /// <summary>The topics of the question bank.</summary>
    public static IReadOnlyList<Topic> Topics() =>
    [
        .. Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Data"), "*.md").Order(StringComparer.Ordinal)
            .Select(f => TopicReader.Read(f, File.ReadAllText(f)).Topic).OfType<Topic>(),
    ];

    /// <summary>Writes the file, then has a fresh program open it.</summary>
    public static void Print(IReadOnlyList<Topic> topics)
    {
        var file = Path.Combine(Path.GetTempPath(), $"apprentice-{Environment.ProcessId}.db");
        try
        {
            using (var log = Storage.Log.Open(file)) log.Rewrite([.. Log.Entries(topics)]);
            Console.WriteLine($"file of {new FileInfo(file).Length / 1048576} MB");
            using var fresh = Process.Start(new ProcessStartInfo(Environment.ProcessPath ?? "", ["--pages", file]));
            fresh?.WaitForExit();
        }
        finally
        {
            foreach (var left in Directory.GetFiles(Path.GetTempPath(), $"apprentice-{Environment.ProcessId}*")) File.Delete(left);
        }
    }

    /// <summary>Opens the file, and shows both pages twice.</summary>
    public static void Open(string file)
    {
        var topics = Topics();
        var before = Environment.CpuUsage.TotalTime;
        using var log = Storage.Log.Open(file);
        var conversation = Shell.Converse(log, new ShellOptions(file, topics, TimeProvider.System, Console.Error));
        Console.WriteLine($"{(Environment.CpuUsage.TotalTime - before).TotalSeconds,8:0.0} s of processor time  opening the file");
        Time("the list of names", () => conversation.Press(Input.Typed('7'), Size));
        Time("learner's page, for the first time (goal under 100 ms)", () => conversation.Press(new Input(Press.Enter), Size));
        conversation.Press(Input.Typed('7'), Size);
        Time("learner's page again", () => conversation.Press(Input.Typed('0'), Size));
        conversation.Press(Input.Typed('0'), Size);
        Time("workshop's page, for the first time (goal under 1,000 ms)", () => conversation.Press(Input.Typed('6'), Size));
        conversation.Press(Input.Typed('0'), Size);
        Time("workshop's page again", () => conversation.Press(Input.Typed('6'), Size));
        var held = GC.GetTotalMemory(forceFullCollection: true) / 1048576.0;
        using var own = Process.GetCurrentProcess();
        Console.WriteLine($"held {held:0} MB (goal under 250 MB); the whole process at most {own.PeakWorkingSet64 / 1048576.0:0} MB, while the file was read");
        GC.KeepAlive(conversation);

        void Time(string what, Action press)
        {
            var start = Environment.CpuUsage.TotalTime;
            press();
            var text = string.Join('\n', Layout.Of(conversation.Page, Size, conversation.Scroll).Select(l => l.Text));
            Console.WriteLine($"{(Environment.CpuUsage.TotalTime - start).TotalMilliseconds,8:0.0} ms of processor time  {what}: {text.Split('\n')[0].Trim()}");
        }
    }
}
