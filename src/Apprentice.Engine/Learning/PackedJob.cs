using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Topics;

namespace Apprentice.Engine.Learning;

/// <summary>An answered job as bytes, about a tenth of its size in objects: whole numbers of seven bits a byte, and values by the number under which they are kept. Nothing is lost.</summary>
static class PackedJob
{
    const int Usual = 128;

    /// <summary>The bytes of a job that was answered.</summary>
    public static byte[] Pack(PastJob job, KeptOnce kept)
    {
        var to = new Writer(kept);
        to.Whole(job.Started.Job);
        to.Value(job.Started.Person);
        to.Value(job.Started.Topic);
        to.Value(job.Started.Version);
        to.Number(job.Started.Seed);
        Pack(job.Started.Request, to);
        to.Whole(job.Started.Guided ? 1 : 0);
        to.Whole(job.Started.Step);
        to.Time(job.At);
        to.Value(job.Person);
        to.Values(job.Looks);
        Pack(job.Given ?? throw new ArgumentException("It is unfinished.", nameof(job)), to);
        Pack(job.Verdict ?? throw new ArgumentException("It has no grade.", nameof(job)), to);
        to.Values(job.Observed);
        to.Values(job.Updates);
        to.Time(job.Ended ?? throw new ArgumentException("It has no end.", nameof(job)));
        to.Values(job.Questions);
        return to.Bytes;
    }

    /// <summary>The job of bytes.</summary>
    public static PastJob Unpack(byte[] bytes, KeptOnce kept)
    {
        var from = new Reader(bytes, kept);
        var started = new LogEntry.JobStarted(
            from.Whole(), from.Perhaps<string>(), from.Value<string>(), from.Value<string>(), from.Number(), ToRequest(ref from), from.Whole() == 1, from.Whole());
        return new PastJob(started, from.Time())
        {
            Person = from.Perhaps<string>(),
            Looks = from.Values<Look>(),
            Given = ToGiven(ref from),
            Verdict = ToVerdict(ref from),
            Observed = from.Values<Observed>(),
            Updates = from.Values<LogEntry.Updated>(),
            Ended = from.Time(),
            Questions = from.Values<string>(),
        };
    }

    static void Pack(CaseRequest request, Writer to)
    {
        to.Value(request.Provenance);
        to.Value(request.Want);
        to.Value(request.Opening);
        to.Whole((int)request.Select);
        to.Whole((int)request.Offer);
        to.Whole(request.Tools is null ? 0 : 1);
        to.Values(request.Tools ?? []);
        to.Value(request.Questions);
    }

    static CaseRequest ToRequest(ref Reader from)
    {
        var request = new CaseRequest(from.Value<string>(), from.Value<string>(), from.Perhaps<string>(), (Selection)from.Whole(), (Channel)from.Whole());
        var limited = from.Whole() == 1;
        var tools = from.Values<string>();
        return request with { Tools = limited ? tools : null, Questions = (int?)from.Perhaps<object>() };
    }

    static void Pack(Given given, Writer to)
    {
        to.Values(given.Parts);
        to.Values(given.Orders);
        to.Value(given.SettledBy);
        to.Value(given.SetAside);
        to.Value(given.Story);
        to.Whole(given.Forced ? 1 : 0);
    }

    static Given ToGiven(ref Reader from) => new(
        from.Values<PartAnswer>(), from.Values<Choice>(), from.Perhaps<string>(), from.Perhaps<string>(), from.Perhaps<string>(), from.Whole() == 1);

    static void Pack(Verdict verdict, Writer to)
    {
        to.Whole((int)verdict.InShort);
        to.Values(verdict.Marks);
        to.Whole(verdict.Sound ? 1 : 0);
        to.Whole(verdict.SafetyError ? 1 : 0);
    }

    static Verdict ToVerdict(ref Reader from) => new((InShort)from.Whole(), from.Values<AspectMark>(), from.Whole() == 1, from.Whole() == 1);

    sealed class Writer(KeptOnce kept)
    {
        readonly List<byte> _bytes = new(Usual);

        public byte[] Bytes => [.. _bytes];

        public void Number(ulong number)
        {
            for (; number >= 0x80; number >>= 7) _bytes.Add((byte)(number & 0x7f | 0x80));
            _bytes.Add((byte)number);
        }

        public void Whole(int number) => Number(unchecked((uint)number));

        public void Value(object? value) => Whole(kept.NumberOf(value));

        public void Values<T>(IReadOnlyList<T> values)
        {
            Whole(values.Count);
            foreach (var value in values) Value(value);
        }

        public void Time(DateTimeOffset time)
        {
            Number((ulong)time.Ticks);
            Whole(time.TotalOffsetMinutes);
        }
    }

    ref struct Reader(byte[] bytes, KeptOnce kept)
    {
        int _at;

        public ulong Number()
        {
            var number = 0UL;
            for (var shift = 0; ; shift += 7)
            {
                var next = bytes[_at++];
                number |= (next & 0x7fUL) << shift;
                if (next < 0x80) return number;
            }
        }

        public int Whole() => unchecked((int)(uint)Number());

        public T? Perhaps<T>()
            where T : class => (T?)kept.Of(Whole());

        public T Value<T>()
            where T : class => Perhaps<T>() ?? throw new InvalidOperationException("A value is missing.");

        public T[] Values<T>()
            where T : class
        {
            var values = new T[Whole()];
            for (var i = 0; i < values.Length; i++) values[i] = Value<T>();
            return values;
        }

        public DateTimeOffset Time()
        {
            var ticks = (long)Number();
            return new DateTimeOffset(ticks, TimeSpan.FromMinutes(Whole()));
        }
    }
}
