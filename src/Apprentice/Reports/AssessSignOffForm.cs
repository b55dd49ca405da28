using Apprentice.Content;
using Apprentice.Content.Marks;
using Apprentice.Engine.Topics;

namespace Apprentice.Reports;

/// <summary>The forms for three real bikes: a sheet a bike for the lead, with the spoken questions and what a good answer contains, and a sheet for the candidate.</summary>
static class AssessSignOffForm
{
    const int Bikes = 3;
    const int Readings = 4;

    /// <summary>The forms as HTML.</summary>
    /// <param name="topics">Topics of the permission.</param>
    /// <param name="person">The candidate.</param>
    /// <param name="permission">The permission.</param>
    /// <param name="done">Bikes done so far: the questions go on from there.</param>
    /// <param name="now">The time.</param>
    public static string Html(IReadOnlyList<Topic> topics, string person, string permission, int done, DateTimeOffset now)
    {
        var page = new AssessHtml(Words.Of("form.title", ("name", person), ("permission", permission))).Text(Words.Of("form.how")).Text(Words.Of("form.caution"));
        for (var bike = 0; bike < Bikes; bike++) Lead(page, topics, bike, done);
        page.Part(Words.Of("form.candidate", ("name", person)), onNewSheet: true).Text(Words.Of("form.candidate-how"));
        for (var bike = 0; bike < Bikes; bike++) page.Group("job", p => Sheet(p.Small(Words.Of("form.bike", ("n", bike + 1)))));
        return page.Done(now);
    }

    static void Lead(AssessHtml page, IReadOnlyList<Topic> topics, int bike, int done)
    {
        page.Part(Words.Of("form.lead", ("n", bike + 1)), onNewSheet: bike > 0);
        Sheet(page);
        page.Small(Words.Of("form.whys"));
        foreach (var (question, n) in WhyQuestions.For(topics, done + bike).Select((q, i) => (q, i + 1)))
            page.Group("box", p => p.Text(Words.Of("form.question", ("n", n), ("question", question.Question))).Text(Words.Of("bike.good", ("text", question.Good)), "note").Field(Words.Of("form.well")));
        page.Field(Words.Of("form.agree")).Field(Words.Of("print.signature-lead"));
    }

    static AssessHtml Sheet(AssessHtml page) => page.Field(Words.Of("form.which"))
        .Table([Words.Of("form.read"), Words.Of("form.reading")], [.. Enumerable.Range(0, Readings).Select(_ => (string[])["\u00a0", ""])])
        .Field(Words.Of("form.part")).Field(Words.Of("form.order"));
}
