using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Evidence;
using Apprentice.Engine.Topics;

namespace Apprentice.Tests.Laws;

/// <summary>MODEL 8, law 7: same version, request and seed, same bytes, on every machine. 1,000 hashes stand beside this test; APPRENTICE_GOLDEN=write writes them anew after a topic was changed on purpose.</summary>
public class GoldenCaseTests
{
    static readonly int PerTopic = (1000 + Corpus.Shipped.Count() - 1) / Corpus.Shipped.Count();

    [Fact]
    public void A_thousand_cases_are_the_same_as_ever()
    {
        var file = Path.Combine(Folder(), "golden-cases.txt");
        var lines = Corpus.Shipped.SelectMany(Hashes).ToList();
        if (Environment.GetEnvironmentVariable("APPRENTICE_GOLDEN") is "write") File.WriteAllText(file, string.Join('\n', lines) + "\n");
        Assert.True(lines.Count >= 1000, $"{lines.Count}");
        Assert.Equal(File.ReadAllLines(file), lines);
    }

    [Fact]
    public void Another_seed_makes_another_case()
    {
        var bench = Corpus.Bench("folding-bar");
        var texts = Enumerable.Range(0, 50).Select(i => Text(Some.Case(bench, RequestOf(bench.Topic, 0), (ulong)i))).ToHashSet(StringComparer.Ordinal);
        Assert.True(texts.Count > 45, $"{texts.Count}");
    }

    static IEnumerable<string> Hashes(string id)
    {
        var bench = Corpus.Bench(id);
        for (var seed = 0; seed < PerTopic; seed++)
        {
            var text = bench.Make(RequestOf(bench.Topic, seed), (ulong)seed) is { } made ? Text(made) : "refused";
            yield return $"{id} {seed} {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16]}";
        }
    }

    static CaseRequest RequestOf(Topic topic, int seed) => new(
        topic.Provenances[seed % topic.Provenances.Count].Id,
        topic.Wants[seed % topic.Wants.Count].Id,
        topic.Openings[seed % topic.Openings.Count].Id,
        seed % 5 == 4 ? Selection.LeavesTwoOpen : Selection.AsTheyCome,
        seed % 7 == 6 ? Channel.Phone : Channel.Bench);

    // Doubles are written as bits, so that not even the last digit may differ.
    static string Text(Case made)
    {
        var text = new StringBuilder($"{made.Job.Topic} {made.Job.Version} {made.Job.Seed} {made.Job.Request}\n");
        text.AppendJoin(' ', made.Job.Told.Select(Text)).Append('\n');
        foreach (var clue in made.Job.Bench) text.AppendJoin(' ', made.Shows[clue].Select(Text)).Append('\n');
        var truth = made.Truth;
        text.Append(truth.Line).Append(truth.Built).AppendJoin(',', truth.AsBuilt).AppendJoin(',', truth.Kinds).AppendJoin(',', truth.Story);
        return text.AppendJoin(',', truth.Sizes.Select(s => BitConverter.DoubleToInt64Bits(s))).ToString();
    }

    static string Text(Finding finding) =>
        $"{finding.Clue}/{finding.Channel}/{(finding.Seen is Seen.Reading r ? $"{BitConverter.DoubleToInt64Bits(r.Millimetres)}" : finding.Seen.ToString())}";

    static string Folder([CallerFilePath] string file = "") => Path.GetDirectoryName(file) ?? "";
}
