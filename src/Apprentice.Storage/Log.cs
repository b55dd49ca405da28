using Apprentice.Engine.Learning;
using LiteDB;

namespace Apprentice.Storage;

/// <summary>The append-only log in one file: one program, one thread. Each entry is on the disk before <see cref="Append"/> returns.</summary>
/// <remarks>The database takes no lock of its own on every system, so a file beside it is held open; it is freed by the system when the program dies.</remarks>
public sealed class Log : IDisposable
{
    /// <summary>The shape of the documents. A file with a higher number was written by a newer program.</summary>
    public const int Schema = 1;

    const int HeadAt = 32;
    const int AtOnce = 5000;

    readonly FileStream _lock;
    readonly string _path;
    LiteDatabase _file;
    ILiteCollection<BsonDocument> _entries;

    static ReadOnlySpan<byte> Head => "** This is a LiteDB file **"u8;

    Log(FileStream held, LiteDatabase file, string path)
    {
        (_lock, _file, _path) = (held, file, path);
        _entries = EntriesOf(file);
        Sign(file);
    }

    static ILiteCollection<BsonDocument> EntriesOf(LiteDatabase file) => file.GetCollection("log", BsonAutoId.Int64);

    static void Sign(LiteDatabase file)
    {
        var about = file.GetCollection("about");
        if (about.FindById("schema") is not { } known)
        {
            about.Insert(new BsonDocument { ["_id"] = "schema", ["number"] = Schema });
            file.Checkpoint();
        }
        else if (known["number"].AsInt32 > Schema)
        {
            throw new LogException("This file was written by a newer version of the program. Use that version, or another file.");
        }
    }

    /// <summary>The log in a file, which is made when it is not there.</summary>
    /// <param name="path">Path of the file.</param>
    /// <exception cref="LogException">Another running copy holds the file, or it is not a log.</exception>
    public static Log Open(string path)
    {
        var full = Path.GetFullPath(path);
        var held = Hold(full);
        LiteDatabase? file = null;
        try
        {
            if (!IsOurs(full)) throw Foreign(full, null);
            file = Database(full);
            return new Log(held, file, full);
        }
        catch (Exception e)
        {
            file?.Dispose();
            held.Dispose();
            if (e is not (IOException or UnauthorizedAccessException or LogException))
            {
                throw Foreign(full, e);
            }
            throw;
        }
    }

    static LiteDatabase Database(string full) => new(
        new ConnectionString { Filename = full, Connection = ConnectionType.Direct, Collation = Collation.Binary },
        new BsonMapper { TrimWhitespace = false, EmptyStringToNull = false })
    {
        UtcDate = true,
    };

    /// <summary>Writes the log anew with these entries alone: the only way in which something is ever taken out of it. The old file is gone when it returns; until then it is whole.</summary>
    /// <param name="entries">Entries, oldest first.</param>
    public void Rewrite(IReadOnlyList<Logged> entries)
    {
        var fresh = _path + ".new";
        Remove(fresh);
        using (var file = Database(fresh))
        {
            Sign(file);
            EntriesOf(file).InsertBulk(entries.Select(EntryDocument.Of));
            file.Checkpoint();
        }

        _file.Dispose();
        File.Move(fresh, _path, overwrite: true);
        Remove(Beside(_path));
        _file = Database(_path);
        _entries = EntriesOf(_file);
    }

    static void Remove(string path)
    {
        File.Delete(path);
        File.Delete(Beside(path));
    }

    // The file into which the database writes first.
    static string Beside(string path) => Path.Combine(Path.GetDirectoryName(path) ?? "", $"{Path.GetFileNameWithoutExtension(path)}-log{Path.GetExtension(path)}");

    /// <summary>All entries, oldest first, at once.</summary>
    /// <exception cref="LogException">An entry cannot be read.</exception>
    public IReadOnlyList<Logged> Read() => [.. Entries()];

    /// <summary>All entries, oldest first, one after the other. So a long log is never held whole: the database keeps every page that one query has touched, so it is asked for a run at a time, and each document of a run goes as soon as it is read.</summary>
    /// <remarks>Nothing may be added before the last one was taken.</remarks>
    /// <exception cref="LogException">An entry cannot be read.</exception>
    public IEnumerable<Logged> Entries()
    {
        var (after, read) = (long.MinValue, AtOnce);
        while (read == AtOnce)
        {
            read = 0;
            using var run = _entries.Query().Where(Query.GT("_id", after)).OrderBy("_id").Limit(AtOnce).ToDocuments().GetEnumerator();
            while (Next(run) is { } next)
            {
                (after, read) = (next.Number, read + 1);
                yield return next.Entry;
            }
        }
    }

    (long Number, Logged Entry)? Next(IEnumerator<BsonDocument> run)
    {
        try
        {
            return run.MoveNext() ? (run.Current["_id"].AsInt64, EntryDocument.Read(run.Current)) : null;
        }
        catch (Exception e) when (e is not (IOException or UnauthorizedAccessException or LogException))
        {
            throw new LogException($"{_path} is damaged and cannot be read. Keep it and ask for help, or choose another file with --data.", e);
        }
    }

    /// <summary>Adds an entry and sees it on to the disk.</summary>
    public void Append(Logged entry)
    {
        _entries.Insert(EntryDocument.Of(entry));
        _file.Checkpoint();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        try
        {
            _file.Dispose();
        }
        finally
        {
            _lock.Dispose();
        }
    }

    /// <summary>False for a file of somebody else: the database would cut it to whole pages before it finds that out.</summary>
    static bool IsOurs(string full)
    {
        if (!File.Exists(full)) return true;
        using var file = new FileStream(full, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var head = new byte[HeadAt + Head.Length];
        var read = file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        return read == 0 || head.AsSpan(HeadAt).SequenceEqual(Head);
    }

    static LogException Foreign(string full, Exception? cause) => cause is null
        ? new LogException($"{full} is not a log of this program, or it is damaged. Choose another file.")
        : new LogException($"{full} is not a log of this program, or it is damaged. Choose another file.", cause);

    static FileStream Hold(string full)
    {
        try
        {
            if (Path.GetDirectoryName(full) is { Length: > 0 } folder) Directory.CreateDirectory(folder);
            return new FileStream(full + ".lock", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
        }
        catch (IOException e) when (File.Exists(full + ".lock"))
        {
            throw new LogException($"Another copy of this program is using {full}. Close it first, or choose another file with --data.", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new LogException($"{full} cannot be written: {e.Message} Choose another file with --data.", e);
        }
    }
}

/// <summary>The log cannot be used; the message says why and what would do.</summary>
public sealed class LogException : Exception
{
    /// <summary>An exception without a message; needed by convention only.</summary>
    public LogException()
    {
    }

    /// <summary>An exception with a sentence for the person at the machine.</summary>
    public LogException(string message)
        : base(message)
    {
    }

    /// <summary>An exception with a sentence for the person at the machine and its cause.</summary>
    public LogException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
