using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Reports;

namespace Apprentice.Screens.Assess;

/// <summary>A marked job with everything that its mark rests on: for the candidate, the lead and whoever hears an appeal.</summary>
static class WhyBlocks
{
    /// <summary>The blocks from top to bottom: mark and rule, bike, told and looked at, answer, figures, proof.</summary>
    public static IEnumerable<Block> Of(RecordTelling telling, JobMark mark)
    {
        yield return new Block.Text($"{AssessWords.Mark(mark)}. {telling.InShort(mark)}");
        yield return new Block.Text(RecordTelling.Rule(mark), 2);
        if (mark.Record is not { } record) yield break;
        yield return new Block.Rule(Drop: true);
        yield return new Block.Table([new(""), new("")], [Row(Words.Of("whyjob.sort"), telling.Sort(mark)), Row(Words.Of("whyjob.was"), telling.Bike(record)), .. telling.Answer(record).Select(a => Row(Words.Of("whyjob.said", ("asked", a.Asked)), a.Said))]);
        yield return new Block.Rule(Drop: true);
        yield return Checks(telling, record);
        yield return new Block.Rule(Drop: true);
        yield return new Block.Text(Words.Of("whyjob.figures"));
        foreach (var figure in telling.Figures(record).Concat(telling.Proof(record))) yield return new Block.Text(figure, 2);
        yield return new Block.Text(Words.Of("whyjob.again"));
        yield return new Block.Text(RecordTelling.Command(record), 2);
    }

    static Block.Table Checks(RecordTelling telling, JobRecord record) => new(
        [new(Words.Of("whyjob.check")), new(Words.Of("whyjob.shown")), new(Words.Of("whyjob.read"))],
        [
            .. telling.Told(record).Select(t => new Row("", Marked: false, [t.Check, t.Seen, Words.Of("whyjob.told")])),
            .. telling.Looks(record).Select(l => new Row("", Marked: false, [l.Check, l.Shown, l.Read.Length > 0 ? l.Read : Words.Of("whyjob.seen")])),
            .. telling.Unused(record).Select(u => new Row("", Marked: false, [u.Check, u.Seen, Words.Of("whyjob.unused")])),
        ]);

    static Row Row(string label, string text) => new("", Marked: false, [label, text]);
}
