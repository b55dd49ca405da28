using Apprentice.Content;
using Apprentice.Engine.Assessing;
using Apprentice.Engine.Cases;
using Apprentice.Engine.Topics;

namespace Apprentice.Assess;

/// <summary>A sort of job in words.</summary>
static class FamilyName
{
    /// <summary>"Tyre and rim size: a tyre; own bike; by phone; something seems changed".</summary>
    /// <param name="topic">The family's topic, or null when it is not here: then its key is said.</param>
    /// <param name="family">The family.</param>
    public static string Of(Topic? topic, JobFamily family)
    {
        if (topic is null) return family.Key;
        var parts = new List<string>
        {
            topic.Wants.FirstOrDefault(w => w.Id == family.Want)?.Name ?? family.Want,
            topic.Provenances.FirstOrDefault(p => p.Id == family.Provenance)?.Name ?? family.Provenance,
            Words.Of(family.Offer switch
            {
                Channel.Phone => "testplan.by-phone",
                Channel.Photo => "testplan.by-photo",
                _ => "testplan.on-bench",
            }),
        };
        if (topic.Openings.FirstOrDefault(o => o.Id == family.Opening) is { } opening) parts.Add(Words.Of("testplan.told", ("opening", opening.Name)));
        if (family.Select == Selection.SuggestsChange) parts.Add(Words.Of("testplan.suggests"));
        if (family.Select == Selection.LeavesTwoOpen) parts.Add(Words.Of("testplan.leaves"));
        if (family.Safety) parts.Add(Words.Of("testplan.safety"));
        return $"{topic.Title}: {string.Join("; ", parts)}";
    }
}
