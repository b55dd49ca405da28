using Apprentice.Engine.Assessing;
using LiteDB;

namespace Apprentice.Storage.Papers;

/// <summary>A questioned job for a second person: sealed under a code of its own, without the lead's passphrase.</summary>
public static class AppealFile
{
    const string Kind = "apprentice appeal 1";
    const int CodeSigns = 12;
    const int Fields = 2;

    /// <summary>Seals a questioned job.</summary>
    /// <returns>The file and its code, which is shown once and kept nowhere.</returns>
    public static (byte[] File, string Code) Sealed(AppealPapers papers)
    {
        var code = Seal.NewCode(CodeSigns);
        var salt = Seal.NewSalt();
        var head = BsonSerializer.Serialize(new BsonDocument { ["paper"] = papers.Paper, ["rounds"] = Seal.Rounds, ["salt"] = salt });
        var body = BsonSerializer.Serialize(new BsonDocument
        {
            ["paper"] = papers.Paper,
            ["candidate"] = papers.Candidate,
            ["text"] = papers.Text,
            ["job"] = PaperFields.Of(papers.Job),
            ["sat"] = PaperFields.Of(papers.Sat),
            ["mark"] = AssessFields.Of(papers.Mark),
        });
        return (SealedText.Write(Kind, head, Seal.Lock(Seal.KeyOf(Seal.CodeOf(code), salt, Seal.Rounds), body, head)), code);
    }

    /// <summary>Opens a questioned job.</summary>
    /// <exception cref="SealException">The code is another one, or the file was changed.</exception>
    public static AppealPapers Open(byte[] file, string code)
    {
        var fields = SealedText.Read(file, Kind, Fields);
        try
        {
            var head = BsonSerializer.Deserialize(fields[0]);
            var body = Seal.Open(Seal.KeyOf(Seal.CodeOf(code), head["salt"].AsBinary, head["rounds"].AsInt32), fields[1], fields[0])
                ?? throw new SealException("This code does not open this appeal, or the file was changed. Ask for both again.");
            var d = BsonSerializer.Deserialize(body);
            return new AppealPapers(
                d["paper"].AsString, d["candidate"].AsString, d["text"].AsString, PaperFields.ToJob(d["job"].AsDocument), PaperFields.ToSitting(d["sat"].AsDocument), AssessFields.ToMark(d["mark"].AsDocument));
        }
        catch (Exception e) when (e is not SealException)
        {
            throw new SealException(SealedText.Changed().Message, e);
        }
    }
}

/// <summary>All that a second person needs: the bike follows from the job.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Candidate">Who sat it.</param>
/// <param name="Text">What the candidate says.</param>
/// <param name="Job">The job, replacement's number in <paramref name="Sat"/>.</param>
/// <param name="Sat">Looks, readings and answer.</param>
/// <param name="Mark">The mark with its rule.</param>
public sealed record AppealPapers(string Paper, string Candidate, string Text, PaperJob Job, SittingJob Sat, JobMark Mark);
