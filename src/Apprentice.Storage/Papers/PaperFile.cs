using Apprentice.Engine.Assessing;
using LiteDB;

namespace Apprentice.Storage.Papers;

/// <summary>A sealed paper: only the desk's key or the sitting's one-time code opens it. The seeds, from which truth and key of the cases follow, are inside only.</summary>
public static class PaperFile
{
    const string Kind = "apprentice paper 1";
    const int CodeSigns = 12;
    const int Fields = 4;

    /// <summary>Seals a paper.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="deskKey">The desk's key.</param>
    /// <returns>The file and the one-time code, which is shown once and kept nowhere.</returns>
    public static (byte[] File, string Code) Sealed(Paper paper, byte[] deskKey)
    {
        var code = Seal.NewCode(CodeSigns);
        var salt = Seal.NewSalt();
        var key = Seal.NewKey();
        var head = BsonSerializer.Serialize(new BsonDocument
        {
            ["paper"] = paper.Id,
            ["candidate"] = paper.Candidate,
            ["number"] = paper.Number,
            ["permission"] = paper.Permission,
            ["rounds"] = Seal.Rounds,
            ["salt"] = salt,
        });
        var desk = Seal.Lock(Seal.Derived(deskKey, "paper"), key, head);
        var sitting = Seal.Lock(Seal.KeyOf(Seal.CodeOf(code), salt, Seal.Rounds), key, head);
        var body = Seal.Lock(key, BsonSerializer.Serialize(PaperFields.Of(paper)), [.. head, .. desk, .. sitting]);
        return (SealedText.Write(Kind, head, desk, sitting, body), code);
    }

    /// <summary>What stands on the outside: number, candidate, how-manieth, permission. Not to be trusted before the file is opened.</summary>
    /// <exception cref="SealException">It is no paper.</exception>
    public static (string Paper, string Candidate, int Number, string Permission) Outside(byte[] file)
    {
        var head = Head(SealedText.Read(file, Kind, Fields)[0]);
        return (head["paper"].AsString, head["candidate"].AsString, head["number"].AsInt32, head["permission"].AsString);
    }

    /// <summary>Opens a paper for the sitting.</summary>
    /// <exception cref="SealException">The code is another one, or the file was changed.</exception>
    public static OpenedPaper OpenByCode(byte[] file, string code)
    {
        var fields = SealedText.Read(file, Kind, Fields);
        var head = Head(fields[0]);
        var key = Seal.Open(Seal.KeyOf(Seal.CodeOf(code), head["salt"].AsBinary, head["rounds"].AsInt32), fields[2], fields[0])
            ?? throw new SealException("This code does not open this paper. Type the code that was printed with it; if it still fails, the file was changed: ask for it again.");
        return Opened(fields, key);
    }

    /// <summary>Opens a paper at the desk.</summary>
    /// <exception cref="SealException">It was made at another desk, or the file was changed.</exception>
    public static OpenedPaper OpenAtDesk(byte[] file, byte[] deskKey)
    {
        var fields = SealedText.Read(file, Kind, Fields);
        var key = Seal.Open(Seal.Derived(deskKey, "paper"), fields[1], fields[0]) ?? throw new SealException("This paper was made at another desk, or it was changed. Open it where it was made.");
        return Opened(fields, key);
    }

    static OpenedPaper Opened(byte[][] fields, byte[] key)
    {
        var body = Seal.Open(key, fields[3], [.. fields[0], .. fields[1], .. fields[2]]) ?? throw SealedText.Changed();
        return new OpenedPaper(PaperFields.ToPaper(BsonSerializer.Deserialize(body)), key);
    }

    static BsonDocument Head(byte[] head)
    {
        try
        {
            var document = BsonSerializer.Deserialize(head);
            if (document["paper"].IsString && document["candidate"].IsString && document["number"].IsInt32 && document["permission"].IsString && document["rounds"].IsInt32 && document["salt"].IsBinary)
                return document;
        }
        catch (Exception e)
        {
            throw new SealException(SealedText.Changed().Message, e);
        }

        throw SealedText.Changed();
    }
}

/// <summary>An opened paper. Keep it in memory only.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="SittingKey">The key under which its result is sealed.</param>
public sealed record OpenedPaper(Paper Paper, byte[] SittingKey);
