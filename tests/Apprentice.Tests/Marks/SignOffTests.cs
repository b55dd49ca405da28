using Apprentice.Content.Marks;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Learning;
using Apprentice.Reports;
using Apprentice.Screens;
using Apprentice.Screens.Assess;
using Apprentice.Tests.Screens;

namespace Apprentice.Tests.Marks;

/// <summary>The register, bikes on the bench, signing.</summary>
public sealed class SignOffTests
{
    static readonly PageSize[] Sizes = [new(80, 24), new(60, 20), new(120, 40)];

    [Theory]
    [InlineData("register", "")]
    [InlineData("register-one", "1")]
    [InlineData("bike-which", "11")]
    [InlineData("bike-hidden", "11old roadster{Enter}{Enter}26{Enter}622")]
    [InlineData("bike-both", "11old roadster{Enter}{Enter}26{Enter}622{Enter}621{Enter}1{Enter}622, tyre 622{Enter}622, tyre 37-622{Enter}")]
    [InlineData("bike-why", "11old roadster{Enter}{Enter}26{Enter}622{Enter}621{Enter}1{Enter}622, tyre 622{Enter}622, tyre 37-622{Enter}1")]
    [InlineData("sign-missing", "23")]
    [InlineData("sign-order", "24")]
    public void The_page_is_as_it_was_looked_at(string name, string keys)
    {
        var talk = Sat.Talk().At(new RegisterListScreen(new HomeScreen())).Keys(keys);
        foreach (var size in Sizes) Golden.Same($"{name}-{size.Columns}x{size.Rows}", talk.TextAt(size));
    }

    [Fact]
    public void Neither_reading_is_shown_before_both_are_typed()
    {
        var talk = Sat.Talk().At(new RegisterListScreen(new HomeScreen())).Keys("11old roadster{Enter}{Enter}26{Enter}");
        talk.Keys("1955{Enter}");
        Assert.DoesNotContain("1955", talk.Text, StringComparison.Ordinal);
        talk.Keys("1957");
        Assert.DoesNotContain("1957", talk.Text, StringComparison.Ordinal);
        talk.Keys("{Enter}1{Enter}left{Enter}");
        Assert.DoesNotContain("left", talk.Text, StringComparison.Ordinal);
        talk.Keys("right{Enter}");
        foreach (var typed in new[] { "1955", "1957", "left", "right" }) Assert.Contains(typed, talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_candidate_neither_looks_on_nor_signs()
    {
        var talk = Sat.Talk().At(new RegisterListScreen(new HomeScreen())).Keys("11old roadster{Enter}sam{Enter}");
        Assert.Contains("somebody else", talk.Text, StringComparison.Ordinal);
        var sign = Signing(3).Keys("32sam{Enter}");
        Assert.Contains("somebody else", sign.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(sign.Entries, e => e.What is LogEntry.PermissionSigned);
    }

    [Fact]
    public void With_all_its_evidence_a_permission_is_signed_and_after_ten_orders_alone()
    {
        var talk = Signing(3).Keys("32Jo{Enter}");
        var signed = Assert.IsType<LogEntry.PermissionSigned>(talk.Entries[^1].What).Signature;
        Assert.Equal((PermissionLevel.WithSecondLook, "Jo", Sat.Passed, true), (signed.Level, signed.By, signed.Paper, signed.SetByOnePerson));
        Assert.Equal(signed.Day.AddMonths(12), signed.Expires);
        Assert.Equal([new PlanTopic(Sat.Topic.Id, Sat.Topic.Version)], signed.Topics);
        for (var i = 0; i < 9; i++) talk.Keys("4tyre{Enter}{Enter}1");
        Assert.Contains("ten real orders", talk.Keys("5").Text, StringComparison.Ordinal);
        talk.Keys("04tyre{Enter}{Enter}1").Keys("51Jo{Enter}");
        Assert.Equal(PermissionLevel.Alone, Assert.IsType<LogEntry.PermissionSigned>(talk.Entries[^1].What).Signature.Level);
        Assert.Contains("Alone.", talk.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_changed_fact_is_listed_to_be_looked_at_again()
    {
        var log = Signing(3).Keys("32Jo{Enter}").Entries;
        var changed = new Talk(log, [Sat.Topic with { Version = "other" }]).At(new RegisterScreen("Sam", Sat.Permission, new HomeScreen()));
        Assert.Contains("To be looked at again", changed.Text, StringComparison.Ordinal);
        Assert.Contains(Sat.Topic.Title, changed.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "three real bikes")]
    [InlineData(1, "three real bikes")]
    public void Without_its_evidence_it_is_not_signed(int bikes, string missing)
    {
        var talk = Signing(bikes).Keys("3");
        Assert.Contains(missing, talk.TextAt(new PageSize(120, 40)), StringComparison.Ordinal);
        talk.Keys("1");
        Assert.DoesNotContain(talk.Entries, e => e.What is LogEntry.PermissionSigned);
    }

    [Fact]
    public void The_printed_register_holds_evidence_and_signature()
    {
        var talk = Signing(3).Keys("32Jo{Enter}").Keys("4tyre 37-622{Enter}{Enter}1").Keys("7");
        var (name, html) = talk.Sheets[^1];
        Assert.Equal("apprentice-register.html", name);
        foreach (var part in new[] { "Sam", Sat.Passed, "old roadster 2", "set by one person", "tyre 37-622", "Signature of the lead" }) Assert.Contains(part, html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_forms_ask_other_questions_at_each_bike_and_the_candidate_s_sheet_holds_no_answers()
    {
        var html = AssessSignOffForm.Html([Sat.Topic], "Sam", Sat.Permission, 0, Sat.Nine);
        var (lead, candidate) = (html[..html.IndexOf("Sheets of Sam", StringComparison.Ordinal)], html[html.IndexOf("Sheets of Sam", StringComparison.Ordinal)..]);
        Assert.Equal(WhyQuestions.Each * 3, lead.Split("A good answer contains").Length - 1);
        Assert.DoesNotContain("A good answer", candidate, StringComparison.Ordinal);
        var questions = Enumerable.Range(0, 3).SelectMany(b => WhyQuestions.For([Corpus.Topic("rim-size")], b)).Select(q => q.Good).ToList();
        Assert.Equal(questions.Count, questions.Distinct(StringComparer.Ordinal).Count());
    }

    static Talk Signing(int bikes)
    {
        var form = new BenchForm(DateOnly.FromDateTime(Sat.Nine.Date), "old roadster", Odd: false, "Jo", [new BenchReading("round", "1955", "1957")], Agreed: true, 3);
        var done = Enumerable.Range(0, bikes).Select(i => (LogEntry)new LogEntry.BenchDone("Sam", Sat.Permission, form with { Day = form.Day.AddDays(i), Bike = $"old roadster {i}", Odd = i == 1 }));
        return Sat.Talk([.. done]).At(new RegisterScreen("Sam", Sat.Permission, new HomeScreen()));
    }
}
