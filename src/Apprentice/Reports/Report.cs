namespace Apprentice.Reports;

/// <summary>A page as tables, to be written as CSV, JSON or one printable HTML page.</summary>
/// <param name="Title">What it is.</param>
/// <param name="At">When it was made.</param>
/// <param name="Notes">Sentences below the title.</param>
/// <param name="Tables">Tables.</param>
sealed record Report(string Title, DateTimeOffset At, IReadOnlyList<string> Notes, IReadOnlyList<ReportTable> Tables);

/// <summary>A table of a report.</summary>
/// <param name="Id">Short name, for scripts.</param>
/// <param name="Title">What it shows.</param>
/// <param name="Columns">Short names of the columns.</param>
/// <param name="Rows">Rows: text, whole numbers, numbers or null.</param>
sealed record ReportTable(string Id, string Title, IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows);
