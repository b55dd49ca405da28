namespace Apprentice.Tests.Content;

public sealed class BikeFaultTests
{
    /// <summary>Faults of bikes, parts, what was fitted, what happened and sizes: file, what is written, what is written instead, the message, and text of the line that is told.</summary>
    public static TheoryData<string, string, string, string, string?> Faults { get; } = new()
    {
        {
            Sample.Bar, "| lot | second-hand lot |",
            "| lot |  |",
            "The name is missing.", null
        },
        {
            Sample.Bar, "| 0.1  | 0.15 | kept",
            "| 0.1  | 1 on 7 | kept",
            "\"1 on 7\" is not a share: write 1 in 20, 0.05, rare, sometimes, often or mostly.", null
        },
        {
            Sample.Bar, "| rest | rest |               |",
            "| 0.2 | rest |               |",
            "The column \"own\" of \"Lines\" adds up to 1.1, not 1: write \"rest\" in one place.", "| st"
        },
        {
            Sample.Bar, "| 0.1  | 0.15 | kept",
            "| rest  | 0.15 | kept",
            "The column \"own\" of \"Lines\" says \"rest\" 2 times: once is enough.", "| st"
        },
        {
            Sample.Bar, "| standard line | 2010 to 2023 | 0.8  |",
            "| standard line | 2010 to 2023 | 0.95  |",
            "The column \"own\" of \"Lines\" adds up to 1.05 before \"rest\": nothing is left.", null
        },
        {
            Sample.Bar, "| 0.1  | 0.15 | kept",
            "|   | 0.15 | kept",
            "A share is missing: write 0 for never.", null
        },
        {
            Sample.Bar, "| 2010 to 2023 | 0.1",
            "| 2010 till 2023 | 0.1",
            "\"2010 till 2023\" is not a range of months: write 2012, 2008 to 2020-06, from 2014 or to 2016.", null
        },
        {
            Sample.Bar, "| 2018 to 2023 | rest | rest |               |             |",
            "| 2018 to 2023 | rest | rest |               | 2018        |",
            "\"counts from\" needs a pitfall beside it.", null
        },
        {
            Sample.Bar, "| kept-old-line | 2017-07     |",
            "| kept-old-lines | 2017-07     |",
            "There is no pitfall \"kept-old-lines\": use kept-old-line, swapped-stem or changed-set.", null
        },
        {
            Sample.Bar, "| kept-old-line | 2017-07     |",
            "| kept-old-line | July 2017     |",
            "\"July 2017\" is not a month: write 2014-06 or 2014.", null
        },
        {
            Sample.Bar, "| 2017 to 2023 | 1   | 0.5 |",
            "| 2017-03 to 2023 | 1   | 0.5 |",
            "\"2017-03 to 2023\" is no year or range of years: write 2008 or 2008 to 2012.", null
        },
        {
            Sample.Bar, "| 2017 to 2023 | 1   | 0.5 |",
            "| 2016 to 2023 | 1   | 0.5 |",
            "The year 2016 stands twice.", null
        },
        {
            Sample.Bar, "| grips | grips       |                   | no    | bar     |",
            "| grips | grips       |                   | perhaps | bar     |",
            "\"perhaps\" should be yes or no.", null
        },
        {
            Sample.Bar, "| grips | grips       |                   | no    | bar     |",
            "| grips | grips       |                   | yes    | bar     |",
            "The part \"grips\" is asked for and needs a question.", null
        },
        {
            Sample.Bar, "| grips | grips       |                   | no    | bar     |",
            "| grips | grips       |                   | no    | baar     |",
            "There is no part \"baar\": use bar, stem or lever.", null
        },
        {
            Sample.Bar, "| bar   | bar         | Which bar is it?  | yes   |         |",
            "| bar   | bar         | Which bar is it?  | yes   | grips   |",
            "\"sits on\" runs in a ring: bar on grips, grips on bar.", null
        },
        {
            Sample.Bar, "| bar   | bar         | Which bar is it?  | yes   |         |            |",
            "| bar   | bar         | Which bar is it?  | yes   |         | 0.4 |",
            "\"settled at\" is 0.4: it can only be raised here; write at least 0.95 and less than 1.", null
        },
        {
            Sample.Bar, "| bar   | bar         | Which bar is it?  | yes   |         |            |               |",
            "| bar   | bar         | Which bar is it?  | yes   |         | | 0.6 |",
            "\"none of these\" is 0.6: a part that is mostly something else needs more kinds.", null
        },
        {
            Sample.Bar, "| built | build date  | When was it built? | yes  |         |            |               |",
            "| built | build date  | When was it built? | yes  |         |            | rare |",
            "A build date is always one of its groups: leave \"none of these\" blank.", null
        },
        {
            Sample.Bar, "| built | after  | July 2017 or later | 2017-07 | 2023 |",
            "| built | after  | July 2017 or later | 2017-07 | |",
            "Some kinds of \"built\" have \"from\" and \"to\" and some have not: fill both in all rows or in none.", "| bu"
        },
        {
            Sample.Bar, "| built | after  | July 2017 or later | 2017-07 | 2023 |",
            "| built | after  | July 2017 or later | 2017-08 | 2023 |",
            "No group of \"built\" holds 2017-07, when bikes are built: close the gap.", "| bu"
        },
        {
            Sample.Bar, "| built | after  | July 2017 or later | 2017-07 | 2023 |",
            "| built | after  | July 2017 or later | 2017-06 | 2023 |",
            "Two groups of \"built\" hold 2017-06: end one before the other begins.", "| bu"
        },
        {
            Sample.Bar, "| built | after  | July 2017 or later | 2017-07 | 2023 |",
            "| built | after  | July 2017 or later | 2023 | 2017-07 |",
            "\"after\" ends in 2017-07 before it begins in 2023-01.", null
        },
        {
            Sample.Bar, "| grips | glued  | glued grips   |      |         |\n| grips | bolted | bolted grips  |      |         |\n",
            "",
            "The part \"grips\" has no kinds: add them to \"Kinds\".", "| gr"
        },
        {
            Sample.Bar, "| stem     |          |                      | stem: older",
            "| stem     |          |                      | stem: oder",
            "There is no kind of stem \"oder\": use older or newer.", null
        },
        {
            Sample.Bar, "| stem     |          |                      | stem: older",
            "| stem     |          |                      | steam: older",
            "There is no part \"steam\": use stem, bar or lever.", null
        },
        {
            Sample.Bar, "| stem     |          |                      | stem: older                   |",
            "| stem     |          |                      |                   |",
            "What is fitted is missing: write bar: low; stem: long.", null
        },
        {
            Sample.Bar, "| stem     | basic    |                      | stem: older",
            "| stem     | basics   |                      | stem: older",
            "There is no line \"basics\": use basic, standard or electric.", null
        },
        {
            Sample.Bar, "| controls | basic    |                      | lever: older; grips: glued    |",
            "| controls | basic    |                      | lever: older    |",
            "Every row of the package \"controls\" says what is fitted for: lever, grips.", null
        },
        {
            Sample.Bar, "| controls | basic    |                      | lever: older; grips: glued    |",
            "| controls | basic    |                      | lever: older; grips: glued; lever: newer    |",
            "The part \"lever\" is fitted twice.", null
        },
        {
            Sample.Bar, "| stem     |          |                      | stem: older                   |",
            "| stem     |          | 2010                 | stem: older                   |",
            "The package \"stem\" of the line \"standard\" has no row from the start: add one with \"from\" left blank.", null
        },
        {
            Sample.Bar, "| stem     | basic    |                      | stem: older                   |                |",
            "| stem     | basic    |                      | stem: older                   | running-change |",
            "The pitfall of a running change needs a \"from\" beside it.", null
        },
        {
            Sample.Bar, "| stem     |          | 2016-05 to 2017-07   |",
            "| stem     |          | 2017-07 to 2016-05   |",
            "The running change closes in 2016-05, not after it opens in 2017-07.", null
        },
        {
            Sample.Bar, "| stem     |          | 2016-05 to 2017-07   |",
            "| stem     |          | summer 2016 to 2017-07   |",
            "\"summer 2016\" is not a month: write 2014-06 or 2014.", null
        },
        {
            Sample.Bar, "| stem     |          | 2016-05 to 2017-07   |",
            "| stem     |          | 2016-05 to 2017-07, tell 2017  |",
            "\"tell 2017\" is not understood: write 2013-11 to 2015-01, told 2014-06, source judgement.", null
        },
        {
            Sample.Bar, "| stem     | basic    |                      |",
            "| stem     |          | 2017 to 2018      | stem: newer |    |\n| stem     | basic    |                      |",
            "The package \"stem\" of the line \"standard\" changes from 2017-01 on before the change until 2017-07 is over.", null
        },
        {
            Sample.Bar, "| stem     | basic    |                      |",
            "| stem     |          |                   | stem: newer |    |\n| stem     | basic    |                      |",
            "The package \"stem\" of the line \"standard\" has shares that add up to 2, not 1, in the rows with the same \"from\".", "| stem     |"
        },
        {
            Sample.Bar, "| stem     |          |                      | stem: older                   |                |\n| stem     |          | 2016-05 to 2017-07   | stem: newer                   | running-change |\n",
            "",
            "The package \"stem\" of the line \"standard\" has no row from the start: add one with \"from\" left blank.", "| stem     |"
        },
        {
            Sample.Bar, "| stem     |          |                      | stem: older                   |                |\n| stem     |          | 2016-05 to 2017-07   | stem: newer                   | running-change |\n| stem     | basic    |                      | stem: older                   |                |\n| stem     | electric |                      | stem: newer                   |                |\n",
            "",
            "The part \"stem\" is in no package: say in \"As built\" what was fitted.", "| ste"
        },
        {
            Sample.Bar, "| controls |          |                      | lever: older; grips: glued    |",
            "| more     |          |                      | lever: older                  | |\n| controls |          |                      | lever: older; grips: glued    |",
            "The part \"lever\" is in 2 packages, \"more\" and \"controls\": one is enough.", "| le"
        },
        {
            Sample.EveryField, "| rest   | early   |",
            "| 0.5    | early   |",
            "The package \"wheel\" of the line \"long\" has shares that add up to 0.75, not 1, in the rows with the same \"from\".", "| wheel   |       | 2"
        },
        {
            Sample.EveryField, "disc: small; hub: thick | rest   | early   |",
            "disc: small; hub: thick | rest   |    |",
            "The package \"wheel\" of the line \"long\" has rows with the same \"from\": \"told\", the source and the pitfall must be the same too.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "bar older becomes never             |",
            "There is no kind of bar \"never\": use newer or older.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "baar older becomes newer             |",
            "There is no part \"baar\": use bar, stem or lever.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "bar is newer             |",
            "\"bar is newer\" is not understood: write bar becomes low, bar low becomes tall, stem-length plus 0.3 mm spread 0.1 mm, or plate shows worn.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "             |",
            "What the event does is missing: write bar becomes low.", "| bar-"
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "bar becomes newer 1 in 2, older 1 in 3             |",
            "\"newer 1 in 2, older 1 in 3\" adds up to 0.8333, not 1: write \"rest\" in one place.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "stem-lenght plus 2 mm            |",
            "There is no size \"stem-lenght\": use stem-length, bar-height or grip-size.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "stem-length plus 2 kg            |",
            "\"2 kg\" is not a length: write 310 mm, 12.7 or 27 1/4 in.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "stem-length shows 310            |",
            "\"stem-length\" is measured: an event moves its size with plus or minus.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "plate shows 1999            |",
            "There is no finding of plate \"1999\": use 2019, 2010 or 2011.", null
        },
        {
            Sample.Bar, "bar older becomes newer             |",
            "built becomes after            |",
            "\"built\" is a build date: nothing changes it.", null
        },
        {
            Sample.Bar, "| swapped-bar  | 1 in 20 |",
            "| swaped-bar  | 1 in 20 |",
            "There is no pitfall \"swaped-bar\": use swapped-bar, swapped-stem or changed-set.", null
        },
        {
            Sample.Bar, "| swapped-bar  | 1 in 20 |",
            "| swapped-bar  | 1 |",
            "\"bar-to-newer\" always happens: fit it as built instead.", null
        },
        {
            Sample.Bar, "| bar older becomes newer             | judgement  |",
            "| bar older becomes newer             |   |",
            "The event \"bar-to-newer\" needs a source: write a key of \"Sources\", \"judgement\" or \"common practice, no source\".", null
        },
        {
            Sample.Bar, "| bar older becomes newer             | judgement  |",
            "| bar older becomes newer             | a book  |",
            "There is no source \"a book\": use \"judgement\", or \"common practice, no source\".", null
        },
        {
            Sample.EveryField, "| disc | big  | thin   |",
            "| clip | wire | thin   |",
            "The part \"clip\" sits on nothing: fill \"sits on\" in \"Parts\".", null
        },
        {
            Sample.EveryField, "| disc | big  | thin   |",
            "| disc | big  | thn    |",
            "There is no kind of hub \"thn\": use thin or thick.", null
        },
        {
            Sample.EveryField, "| disc | big  | thin   |",
            "| disc | big  | thin   |\n| disc | small | thin |",
            "No kind of \"disc\" is left that fits on \"thin\".", "| disc | small | t"
        },
        {
            Sample.Bar, "| 270 to 360 mm | common practice, no source |",
            "| 270 to 360 mm |  |",
            "The size \"stem-length\" needs a source: write a key of \"Sources\", \"judgement\" or \"common practice, no source\".", null
        },
        {
            Sample.Bar, "| 270 to 360 mm | common practice, no source |",
            "| 360 to 270 mm | judgement |",
            "\"360 to 270 mm\" is not a range of lengths: write 60 to 180 mm.", null
        },
        {
            Sample.Bar, "| 270 to 360 mm | common practice, no source |",
            "| 300 to 360 mm | judgement |",
            "Real parts of \"stem-length\" reach from 298 to 347 mm, the range only from 300 to 360 mm: widen it.", null
        },
        {
            Sample.Bar, "| stem-length | older  | 310 mm  | 2 mm   |",
            "| stem-length | older  | 310 mm  | 0 mm   |",
            "A spread must be greater than 0: real parts differ.", null
        },
        {
            Sample.Bar, "| stem-length | older  | 310 mm  | 2 mm   |",
            "| stem-length | older  | long  | 2 mm   |",
            "\"long\" is not a length: write 310 mm, 12.7 or 27 1/4 in.", null
        },
        {
            Sample.Bar, "| stem-length | older  | 310 mm  | 2 mm   |",
            "| stem-length | older, newer  | 310 mm  | 2 mm   |",
            "The kind \"newer\" has this size twice.", "| stem-length | n"
        },
        {
            Sample.Bar, "| stem-length | older  | 310 mm  | 2 mm   |",
            "| stem-lenth | older  | 310 mm  | 2 mm   |",
            "There is no size \"stem-lenth\": use stem-length, bar-height or grip-size.", null
        },
        {
            Sample.Bar, "| grip-size   | glued  | 100 mm  | 1 mm   |\n| grip-size   | bolted | 130 mm  | 1 mm   |\n",
            "",
            "The size \"grip-size\" has no nominal for any kind: it tells nothing.", "| grip-"
        },
        {
            Sample.EveryField, "| 2010 to 2011 | 1 in 4  | 1    |",
            "| 1860 to 2011 | 1 in 4  | 1    |",
            "These are 153 years: at most 150.", null
        },
        {
            Sample.EveryField, "| hub: thick; disc: big   | 1 in 4 |",
            "| hub: thick; disc: big   | rest |",
            "The shares of rows with the same lines and \"from\" says \"rest\" 2 times: once is enough.", null
        },
        {
            Sample.EveryField, "| clip    |       |                                   | clip: wire",
            "| dates | | | when: old | | |\n| clip    |       |                                   | clip: wire",
            "\"when\" is a build date and comes of itself: take it out of the package \"dates\".", "| when |"
        },
        {
            Sample.EveryField, "disc becomes small 3 in 4, big rest;",
            "disc becomes ,;",
            "A name is missing: write low, or low 3 in 4, tall rest.", null
        },
        {
            Sample.EveryField, "| worn     | the disc",
            "| swapped  | the disc",
            "The event \"swapped\" stands twice: also on line 68.", null
        },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_fault_in_how_bikes_are_is_told_with_its_line(string file, string was, string now, string message, string? at) =>
        Faulty.IsTold(file, was, now, message, at);
}
