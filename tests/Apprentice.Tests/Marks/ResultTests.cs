using System.Globalization;
using System.Text.RegularExpressions;
using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Grading;
using Apprentice.Engine.Learning;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Storage;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Marks;

/// <summary>Results and their reasons.</summary>
public sealed partial class ResultTests
{
    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];

    [Theory]
    [InlineData("result")]
    [InlineData("result-not-yet")]
    [InlineData("result-lead")]
    [InlineData("firm")]
    [InlineData("results")]
    [InlineData("why-list")]
    [InlineData("why-job")]
    [InlineData("why-job-sound")]
    [InlineData("appeal-ask")]
    [InlineData("talk")]
    public void The_page_is_as_it_was_looked_at(string name)
    {
        var talk = Of(name);
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    static Talk Of(string name)
    {
        var home = new HomeScreen();
        var mine = new ResultScreen(Sat.Passed, IsLead: false, home);
        return name switch
        {
            "result" => Sat.Talk().At(mine),
            "result-not-yet" => Sat.Talk(new LogEntry.SatDown("Kim")).At(new ResultScreen(Sat.NotYet, IsLead: false, home)),
            "result-lead" => new Talk([.. Sat.Log().Where(e => e.What is not LogEntry.PaperMarked), new(Sat.Nine.AddDays(1), new LogEntry.PaperMarked(Sat.Result(Sat.Passed) with { Published = null }, Published: false))], [Sat.Topic]).At(new ResultScreen(Sat.Passed, IsLead: true, home)),
            "firm" => Sat.Talk().At(new ResultFirmScreen(Sat.Passed, mine)),
            "results" => Sat.Talk().At(ResultListScreen.ForLead(home)),
            "why-list" => Sat.Talk().At(new WhyListScreen(Sat.Passed, Asks: false, mine)),
            "why-job" => Sat.Talk().At(new WhyJobScreen(Sat.Passed, 14, mine)),
            "why-job-sound" => Sat.Talk().At(new WhyJobScreen(Sat.Passed, 1, mine)),
            "appeal-ask" => Sat.Talk().At(new AppealAskScreen(Sat.Passed, 6, mine)),
            _ => Sat.Talk().At(new ResultTalkScreen(Sat.Passed, mine)),
        };
    }
}
