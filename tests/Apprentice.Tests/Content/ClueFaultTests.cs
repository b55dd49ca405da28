namespace Apprentice.Tests.Content;

public sealed class ClueFaultTests
{
    /// <summary>Faults of clues: file, what is written, what is written instead, the message, and text of the line that is told.</summary>
    public static TheoryData<string, string, string, string, string?> Faults { get; } = new()
    {
        {
            Sample.Bar, "### motor: Motor in the front hub",
            "### motor",
            "The clue \"motor\" needs a name: write ### motor: its name.", null
        },
        {
            Sample.Bar, "### motor: Motor in the front hub",
            "### plate: Motor in the front hub",
            "The clue \"plate\" stands twice: also on line 105.", null
        },
        {
            Sample.Bar, "- From where to where: the front hub\n",
            "",
            "\"motor: Motor in the front hub\" needs the field \"From where to where\".", "### m"
        },
        {
            Sample.Bar, "- Minutes: 0.5",
            "- Minutes: half",
            "Minutes: \"half\" is not a number: write 2 or 2.5.", null
        },
        {
            Sample.Bar, "- Seen by: bench; photo; phone",
            "- Seen by: letter",
            "\"letter\" is no way to see a clue: use bench, photo or phone.", null
        },
        {
            Sample.Bar, "- Seen by: bench; photo; phone\n",
            "",
            "\"motor: Motor in the front hub\" needs the field \"Seen by\".", "### m"
        },
        {
            Sample.Bar, "- Seen by: bench; photo; phone",
            "- Seen by: bench; bench",
            "\"bench\" stands twice.", null
        },
        {
            Sample.Bar, "- Seen by: bench; photo; phone",
            "- Seen by: bench, error 3 mm",
            "\"error 3 mm\" is not understood: a clue that is read or seen takes misread 1 in 10 here.", null
        },
        {
            Sample.Bar, "- Seen by: bench; photo; phone",
            "- Seen by: bench, misread 1",
            "By bench this clue would always go wrong: lower its shares.", null
        },
        {
            Sample.Bar, "photo, error 4 mm; phone, error 3 mm, slips 1 in 10",
            "photo, misread 1 in 10",
            "\"misread 1 in 10\" is not understood: a measured clue takes error 3 mm or slips 1 in 10 here.", null
        },
        {
            Sample.Bar, "- Family: number or date",
            "- Family: number",
            "There is no family of clues \"number\": use number or date, size marking, measured, shape seen, felt or heard or told.", null
        },
        {
            Sample.Bar, "- Reads: line",
            "- Reads: lines",
            "Nothing is called \"lines\": a clue reads a part (lever, stem or grips), build date, line or event with its name.", null
        },
        {
            Sample.Bar, "- Reads: stem\n- Measures: stem-length",
            "- Reads: bar\n- Measures: stem-length",
            "\"stem-length\" is a size of \"stem\", but the clue reads \"bar\".", "- Me"
        },
        {
            Sample.Bar, "- Reads: stem\n- Measures: stem-length",
            "- Reads: line\n- Measures: stem-length",
            "A measured clue reads a part: put it into \"Reads\".", "- Me"
        },
        {
            Sample.Bar, "- Measures: stem-length",
            "- Measures: stem-width",
            "There is no size \"stem-width\": use stem-length, bar-height or grip-size.", null
        },
        {
            Sample.Bar, "- Measures: stem-length",
            "- Measures: stem-length x pie",
            "\"pie\" is not a factor: write 0.5, pi or sin(pi/5).", null
        },
        {
            Sample.Bar, "- Measures: stem-length\n",
            "",
            "\"stem-length: Stem, hinge to bolt\" needs the field \"Measures\".", "### s"
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: step 1 mm, from 260 to 370 mm",
            "The reading needs a step, a range, and either a limit or an uncertainty: write step 1 mm, limit 1 mm, from 60 to 180 mm.", null
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: step 1 mm, limit 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "The reading needs a step, a range, and either a limit or an uncertainty: write step 1 mm, limit 1 mm, from 60 to 180 mm.", null
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: steps 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "\"steps 1 mm\" is not understood: write step 1 mm, limit 1 mm, from 60 to 180 mm.", null
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: step 0 mm, uncertainty 1 mm, from 260 to 370 mm",
            "The step must be greater than 0.", null
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: step 1 mm, uncertainty 0 mm, from 260 to 370 mm",
            "The uncertainty must be greater than 0.", null
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: step 0.001 mm, uncertainty 1 mm, from 260 to 370 mm",
            "The range has more than 10000 steps: take a coarser step or a shorter range.", null
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: step 1 mm, uncertainty 1 mm, from 260.5 to 370 mm",
            "The range from 260.5 to 370 mm must begin and end on whole steps of 1 mm.", null
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: step 1 mm, uncertainty 1 mm, from 270 to 370 mm",
            "Readings of \"stem-length\" reach from 268 to 363 mm, the range only from 270 to 370 mm: widen it.", null
        },
        {
            Sample.Bar, "- Reading: step 1 mm, uncertainty 1 mm, from 260 to 370 mm",
            "- Reading: step 1 mm, uncertainty 1 mm, from 260",
            "\"260\" is not a range of lengths: write 60 to 180 mm.", null
        },
        {
            Sample.Bar, "| to the edge of the clamp   | 1 in 20 | -14 mm |",
            "| to the edge of the clamp   | 1 in 20 | a bit |",
            "\"a bit\" is not a length: write 310 mm, 12.7 or 27 1/4 in.", null
        },
        {
            Sample.Bar, "| to the edge of the clamp   | 1 in 20 | -14 mm |",
            "| to the edge of the clamp   | 0.95 | -14 mm |",
            "By phone this clue would always go wrong: lower its shares.", "- Seen by: bench; photo, e"
        },
        {
            Sample.Bar, "- Misread: 1 in 100",
            "- Misread: 0.001",
            "\"Misread\" is 0.001: everybody misreads at least 0.002, so leave it out or write more.", null
        },
        {
            Sample.Bar, "- Misread: 1 in 100",
            "- Misread: 1 in 100\n- Lag: a year",
            "\"a year\" is no lag: write 18 months, at most 240.", "- La"
        },
        {
            Sample.Bar, "- Family: shape seen\n",
            "- Family: shape seen\n- Lag: 3 months\n",
            "\"Lag\" is only for clues that read the build date.", "- La"
        },
        {
            Sample.Bar, "- Family: shape seen\n",
            "- Family: shape seen\n- Formula: a = b\n",
            "\"Formula\" is only for clues that are measured.", "- Fo"
        },
        {
            Sample.Bar, "- Tool: tape",
            "- Misread: 0.01\n- Tool: tape",
            "\"Misread\" is only for clues that are not measured.", null
        },
        {
            Sample.Bar, "- Tool: tape",
            "- Cannot be seen: 1\n- Tool: tape",
            "A clue that can never be seen is no clue: leave it out.", null
        },
        {
            Sample.Bar, "- Tool: tape",
            "- Comes off: wheel\n- Tool: tape",
            "There is no thing to take off \"wheel\": this file names none.", null
        },
        {
            Sample.Bar, "- Pitfalls: kept-old-line, running-change",
            "- Pitfalls: kept-old-line, runing-change",
            "There is no pitfall \"runing-change\": use running-change, wrong-datum or changed-set.", null
        },
        {
            Sample.Bar, "- Reads: line\n- Ask: Is there a motor in the front hub?\n- Source: judgement\n",
            "- Reads: line\n- Ask: Is there a motor in the front hub?\n",
            "The clue \"motor\" needs a source: write a key of \"Sources\", \"judgement\" or \"common practice, no source\".", "### m"
        },
        {
            Sample.Bar, "| motor   | a motor  | 0        | 0     | 1        |\n| plain   | no motor | 1        | 1     | 0        |",
            "| motor   | a motor  | 1 | 1     | 1        |",
            "A clue with one finding tells nothing: add another.", null
        },
        {
            Sample.Bar, "| finding | text     | standard | basic | electric |\n|---------|----------|----------|-------|----------|\n| motor   | a motor  | 0        | 0     | 1        |\n| plain   | no motor | 1        | 1     | 0        |\n",
            "",
            "\"motor: Motor in the front hub\" needs a table with the columns finding, text, standard, basic, electric.", "### m"
        },
        {
            Sample.Bar, "| plain   | no motor | 1        |",
            "| motor   | no motor | 1        |",
            "The finding \"motor\" stands twice: also on line 235.", null
        },
        {
            Sample.Bar, "| plain   | no motor | 1        |",
            "| plain   | no motor | 0.9        |",
            "The column \"standard\" adds up to 0.9, not 1: write \"rest\" in one place.", "| mo"
        },
        {
            Sample.Bar, "| finding | text     | standard | basic | electric |\n|---------|----------|----------|-------|----------|\n| motor   | a motor  | 0        | 0     | 1        |\n| plain   | no motor | 1        | 1     | 0        |",
            "| finding | text     | standard | basic | electric | none |\n|---------|----------|----------|-------|----------|---|\n| motor   | a motor  | 0        | 0     | 1        | 1 |\n| plain   | no motor | 1        | 1     | 0        | 0 |",
            "The column \"none\" is only for clues that read a part.", "| mo"
        },
        {
            Sample.Bar, "| 2016      | 2016      | 2016       |         |\n",
            "",
            "The clue \"plate\" has no code for 2016-01, when bikes are built: add one.", "###"
        },
        {
            Sample.Bar, "| 2016      | 2016      | 2016       |         |",
            "| 2016      | 2016      | 2016       | 0.1 |",
            "The code \"2016\" either stands for months or has a share of bikes that show it.", null
        },
        {
            Sample.Bar, "| 2016      | 2016      | 2016       |         |",
            "| 2016      | 2016      | about 2016       |         |",
            "\"about 2016\" is not a range of months: write 2012, 2008 to 2020-06, from 2014 or to 2016.", null
        },
        {
            Sample.Bar, "| 2023      | 2023      | 2023       |         |",
            "| 2023      | 2023      | from 2023       |         |",
            "\"from 2023\" is open at one end: write 2012 or 2012-01 to 2012-06.", null
        },
        {
            Sample.Bar, "| worn-away | worn away |            | 1 in 50 |",
            "| worn-away | worn away |            | 1 |",
            "The codes without months take every bike: lower their shares.", "| 2010  "
        },
        {
            Sample.EveryField, "| batch number | 1 in 40 | any              |",
            "| batch number | 1 in 40 | s12              |",
            "There is no code \"s12\": use s10, s11 or s09.", null
        },
        {
            Sample.EveryField, "| batch number | 1 in 40 | any              |",
            "| batch number | 1 in 40 | s09 0.5, s10 0.2 |",
            "\"s09 0.5, s10 0.2\" adds up to 0.7, not 1: write \"rest\" in one place.", null
        },
        {
            Sample.EveryField, "| s09   | 09 or 12  | 2009; 2012         |",
            "| s09   | 09 or 12  | 2012         |",
            "The clue \"stamp\" has no code for 2009-10, 3 months or less before a bike is built: add one.", "###"
        },
        {
            Sample.Bar, "| worn-away | worn away |",
            "| rest      | worn away |",
            "\"rest\" has a meaning of its own: give this code another short name.", null
        },
        {
            Sample.EveryField, "- From where to where: both sides",
            "- Datum: side to side\n- From where to where: both sides",
            "\"Datum\" is only for clues that are measured.", "- Datum"
        },
        {
            Sample.EveryField, "- Tool: tape",
            "- Tool: caliper, inches",
            "A caliper reads millimetres here: write \"caliper\", or \"rule, inches\" for a scale in inches.", null
        },
        {
            Sample.Bar, "| two-holes | two fixing holes |",
            "| two holes | two fixing holes |",
            "\"two holes\" is no short name of a finding: use lower-case letters, digits and hyphens.", null
        },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_of_a_clue_is_told_with_its_line(string file, string was, string now, string message, string? at) =>
        Faulty.IsTold(file, was, now, message, at);
}
