using Apprentice.Screens.Assess;

namespace Apprentice.Screens;

/// <summary>What help says on the pages of whoever leads: each has sentences of its own.</summary>
static class LeadHelp
{
    /// <summary>Pages and the end of their key.</summary>
    public static IReadOnlyDictionary<Type, string> Pages { get; } = new (string Key, Type[] Pages)[]
    {
        ("week", [typeof(WorkshopScreen)]),
        ("people", [typeof(PeopleScreen)]),
        ("rename", [typeof(RenameScreen)]),
        ("month", [typeof(MonthScreen)]),
        ("coach", [typeof(CoachScreen)]),
        ("setup", [typeof(WorkshopNameScreen), typeof(WorkshopLeadScreen), typeof(WorkshopTopicsScreen)]),
        ("desk", [typeof(DeskScreen)]),
        ("passphrase", [typeof(DeskSetScreen), typeof(DeskCodeScreen), typeof(DeskOpenScreen)]),
        ("plan", [typeof(PlansScreen), typeof(PlanScreen), typeof(PlanNameScreen), typeof(PlanTopicsScreen), typeof(PlanChoiceScreen), typeof(PlanReasonScreen), typeof(SampleScreen)]),
        ("line", [typeof(PassLineScreen), typeof(JudgeScreen), typeof(PassLineSortScreen)]),
        ("papers", [typeof(MakePlanScreen), typeof(MakeNamesScreen), typeof(MakeNameScreen), typeof(MadeScreen)]),
        ("sit", [typeof(SitPickScreen), typeof(SitPathScreen), typeof(SitCodeScreen), typeof(SitWhoScreen), typeof(SitTimeScreen), typeof(SitStopScreen), typeof(SitStoppedScreen)]),
        ("collect", [typeof(CollectScreen), typeof(CollectPathScreen), typeof(CollectedScreen)]),
        ("results", [typeof(ResultListScreen), typeof(ResultScreen), typeof(WhyListScreen), typeof(WhyJobScreen), typeof(ResultRealScreen)]),
        ("firm", [typeof(ResultFirmScreen)]),
        ("talk", [typeof(ResultTalkScreen)]),
        ("appeals", [typeof(AppealListScreen), typeof(AppealReadScreen), typeof(AppealAskScreen)]),
        ("register", [typeof(RegisterListScreen), typeof(RegisterScreen)]),
        ("form", [typeof(SignOffAskScreen), typeof(SignOffChooseScreen)]),
        ("kits", [typeof(KitListScreen)]),
        ("reports", [typeof(ReportMenuScreen)]),
        ("use", [typeof(UseScreen)]),
        ("bikes", [typeof(LeadBikesScreen)]),
        ("rule", [typeof(RuleScreen)]),
        ("standing", [typeof(StandingScreen)]),
        ("inbox", [typeof(InboxScreen), typeof(ReportScreen), typeof(AnswerTextScreen), typeof(AcceptNoteScreen), typeof(AcceptLessonScreen), typeof(AcceptLineScreen)]),
        ("rates", [typeof(RatesTopicScreen), typeof(RatesScreen), typeof(RateScreen), typeof(MonthReplaceScreen)]),
        ("asked", [typeof(AskedBikesScreen)]),
        ("prices", [typeof(PriceTopicScreen), typeof(PricesScreen), typeof(PriceScreen)]),
        ("changes", [typeof(ChangesScreen), typeof(ChangeScreen)]),
    }.SelectMany(g => g.Pages.Select(p => (p, g.Key))).ToDictionary(p => p.p, p => p.Key);

    /// <summary>What help says on a page, or null where it is not the lead's.</summary>
    public static IReadOnlyList<string>? Of(Screen page) => Pages.TryGetValue(page.GetType(), out var key) ? [$"lead.{key}", "keys", "data"] : null;
}
