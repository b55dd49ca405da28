using System.Text;
using Apprentice.Engine.Assessing;
using LiteDB;

namespace Apprentice.Storage.Papers;

/// <summary>A questioned job for a second person, and their decision on its way back: sealed under a code of its own, without the lead's passphrase.</summary>
/// <remarks>Bike, looks, readings, answer, rule and proof stand in the mark's record; no seed leaves the desk.</remarks>
public static class AppealFile
{
    const string Kind = "apprentice appeal 1";
    const string DecisionKind = "apprentice decision 1";
    const int CodeSigns = 12;
    const int Fields = 2;

    /// <summary>True for the file of a questioned job.</summary>
    public static bool Is(byte[] file) => file.AsSpan().StartsWith(Encoding.ASCII.GetBytes(Kind));

    /// <summary>Seals a questioned job.</summary>
    /// <returns>The file and its code, which is shown once and kept nowhere.</returns>
    public static (byte[] File, string Code) Sealed(AppealPapers papers)
    {
        var code = Seal.NewCode(CodeSigns);
        return (Locked(Kind, papers.Paper, papers.Mark.Place, code, new BsonDocument
        {
            ["paper"] = papers.Paper,
            ["candidate"] = papers.Candidate,
            ["lead"] = papers.Lead,
            ["text"] = papers.Text,
            ["mark"] = AssessFields.Of(papers.Mark),
        }), code);
    }

    /// <summary>Opens a questioned job.</summary>
    /// <exception cref="SealException">The code is another one, or the file was changed.</exception>
    public static AppealPapers Open(byte[] file, string code)
    {
        var d = Opened(file, Kind, code, "This code does not open this appeal, or the file was changed. Ask for both again.");
        return Whole(() => new AppealPapers(d["paper"].AsString, d["candidate"].AsString, d["lead"].AsString, d["text"].AsString, AssessFields.ToMark(d["mark"].AsDocument)));
    }

    /// <summary>Seals a decision under the code of its questioned job.</summary>
    public static byte[] Sealed(AppealVerdict verdict, string code) => Locked(DecisionKind, verdict.Paper, verdict.Place, code, new BsonDocument
    {
        ["paper"] = verdict.Paper,
        ["place"] = verdict.Place,
        ["by"] = verdict.By,
        ["decision"] = verdict.Decision.ToString(),
        ["reason"] = verdict.Reason,
    });

    /// <summary>Opens a decision.</summary>
    /// <exception cref="SealException">The code is another one, or the file was changed.</exception>
    public static AppealVerdict OpenDecision(byte[] file, string code)
    {
        var d = Opened(file, DecisionKind, code, "This code does not open this decision, or the file was changed. Type the code that was given out with the questioned job.");
        return Whole(() => new AppealVerdict(d["paper"].AsString, d["place"].AsInt32, d["by"].AsString, Enum.Parse<AppealDecision>(d["decision"].AsString), d["reason"].AsString));
    }

    static byte[] Locked(string kind, string paper, int place, string code, BsonDocument body)
    {
        var salt = Seal.NewSalt();
        var head = BsonSerializer.Serialize(new BsonDocument { ["paper"] = paper, ["place"] = place, ["rounds"] = Seal.Rounds, ["salt"] = salt });
        return SealedText.Write(kind, head, Seal.Lock(Seal.KeyOf(Seal.CodeOf(code), salt, Seal.Rounds), BsonSerializer.Serialize(body), head));
    }

    static BsonDocument Opened(byte[] file, string kind, string code, string otherwise)
    {
        var fields = SealedText.Read(file, kind, Fields);
        return Whole(() =>
        {
            var head = BsonSerializer.Deserialize(fields[0]);
            return BsonSerializer.Deserialize(Seal.Open(Seal.KeyOf(Seal.CodeOf(code), head["salt"].AsBinary, head["rounds"].AsInt32), fields[1], fields[0]) ?? throw new SealException(otherwise));
        });
    }

    static T Whole<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception e) when (e is not SealException)
        {
            throw new SealException(SealedText.Changed().Message, e);
        }
    }
}

/// <summary>All that a second person needs.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Candidate">Who sat it.</param>
/// <param name="Lead">Who made and marked it, and so cannot decide.</param>
/// <param name="Text">What the candidate says.</param>
/// <param name="Mark">The mark with its rule and record: bike, looks, readings, answer, figures, proof.</param>
public sealed record AppealPapers(string Paper, string Candidate, string Lead, string Text, JobMark Mark);

/// <summary>What a second person decided.</summary>
/// <param name="Paper">Number of the paper.</param>
/// <param name="Place">The job.</param>
/// <param name="By">The second person.</param>
/// <param name="Decision">The decision.</param>
/// <param name="Reason">Why.</param>
public sealed record AppealVerdict(string Paper, int Place, string By, AppealDecision Decision, string Reason);
