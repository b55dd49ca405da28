using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using LiteDB;

namespace Apprentice.Storage.Papers;

/// <summary>A result on its way back to the lead: looks and answers, sealed under the key of the sitting. Any change shows.</summary>
/// <remarks>Whoever sat the paper held that key while they sat; it guards against everybody else, and against changes afterwards.</remarks>
public static class ResultFile
{
    const string Kind = "apprentice result 1";
    const int Fields = 2;

    /// <summary>Seals what was sat.</summary>
    public static byte[] Sealed(SatPaper sat, byte[] sittingKey)
    {
        var head = BsonSerializer.Serialize(new BsonDocument { ["paper"] = sat.Paper, ["candidate"] = sat.Candidate, ["number"] = sat.Number });
        return SealedText.Write(Kind, head, Seal.Lock(Seal.Derived(sittingKey, "result"), BsonSerializer.Serialize(PaperFields.Of(sat)), head));
    }

    /// <summary>Number of the paper and candidate as they stand on the outside; not to be trusted before it is collected.</summary>
    /// <exception cref="SealException">It is no result.</exception>
    public static (string Paper, string Candidate, int Number) Outside(byte[] file)
    {
        try
        {
            var head = BsonSerializer.Deserialize(SealedText.Read(file, Kind, Fields)[0]);
            return head["paper"].IsString && head["candidate"].IsString ? (head["paper"].AsString, head["candidate"].AsString, head["number"].AsInt32) : throw SealedText.Changed();
        }
        catch (Exception e) when (e is not SealException)
        {
            throw new SealException(SealedText.Changed().Message, e);
        }
    }

    /// <summary>Collects a result at the desk.</summary>
    /// <param name="file">The file.</param>
    /// <param name="assessments">Papers made and results collected here.</param>
    /// <param name="keyOf">The sitting's key of a paper, from its sealed file opened at the desk; null when that file is not there.</param>
    /// <exception cref="SealException">The result is of no paper of this desk, of another person, collected already, or changed.</exception>
    public static SatPaper Collect(byte[] file, Assessments assessments, Func<string, byte[]?> keyOf)
    {
        var (sat, candidate, number) = Outside(file);
        var (paper, isAgain, newJobOf) = Paper.Named(sat);
        if (assessments.Papers.FirstOrDefault(p => p.Paper == paper) is not { } made)
            throw new SealException($"The result is of paper {paper}, which was not made at this desk. Collect it where the paper was made.");
        if (made.Candidate != assessments.Called.Of(candidate) || made.Number != number)
            throw new SealException($"Paper {paper} was made for {made.Candidate}, paper {made.Number}; this result says {candidate}, paper {number}. It was renamed and is refused.");
        if (IsThere(assessments, paper, isAgain, newJobOf)) throw new SealException($"The result of paper {sat}, {candidate}, was collected before. A paper counts once.");
        var key = keyOf(paper) ?? throw new SealException($"The sealed file of paper {paper} is not there. Put it back beside the others and collect again.");
        return Opened(file, key, made with { Paper = sat, Candidate = candidate });
    }

    // Fresh safety jobs and new jobs come after the paper's own result, and once.
    static bool IsThere(Assessments assessments, string paper, bool isAgain, int? newJobOf)
    {
        if (newJobOf is { } place) return IsThere(assessments, paper, place);
        if (!isAgain) return assessments.Result(paper) is not null;
        if (assessments.Result(paper) is not { } result) throw new SealException($"The result of paper {paper} itself is not collected yet. Collect it before its fresh safety jobs.");
        return result.SafetyAgain.Count > 0;
    }

    // A new job is sat because a second person decided so.
    static bool IsThere(Assessments assessments, string paper, int place)
    {
        if (assessments.Result(paper)?.NewJobFor(place) is not null) return true;
        return assessments.Appeals.Any(a => a.Paper == paper && a.Place == place && a.Decided?.Decision == AppealDecision.NewJob)
            ? false
            : throw new SealException($"No new job was decided for job {place} of paper {paper}. Take in the second person's decision first.");
    }

    static SatPaper Opened(byte[] file, byte[] key, LogEntry.PaperMade made)
    {
        var fields = SealedText.Read(file, Kind, Fields);
        var body = Seal.Open(Seal.Derived(key, "result"), fields[1], fields[0])
            ?? throw new SealException($"The result of paper {made.Paper}, {made.Candidate}, was changed, or belongs to another paper. Ask for the file as it left the machine.");
        var sat = PaperFields.ToSat(BsonSerializer.Deserialize(body));
        return sat.Paper == made.Paper && sat.Candidate == made.Candidate && sat.Number == made.Number ? sat : throw SealedText.Changed();
    }
}
