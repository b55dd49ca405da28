using Apprentice.Screens;

namespace Apprentice.Tests.Screens;

/// <summary>Keys as tests write them: characters one by one, words in braces for the others: "1{Enter}".</summary>
static class Keystrokes
{
    /// <summary>The keys of a text, in order.</summary>
    public static IEnumerable<Input> Of(string keys)
    {
        for (var i = 0; i < keys.Length; i++)
        {
            if (keys[i] != '{')
            {
                yield return Input.Typed(keys[i]);
                continue;
            }

            var end = keys.IndexOf('}', i);
            yield return new Input(Enum.Parse<Press>(keys[(i + 1)..end]));
            i = end;
        }
    }

    /// <summary>The screen after these keys, in a world that stays as it is.</summary>
    public static Screen Pressed(Screen screen, World world, string keys) => Of(keys).Aggregate(screen, (now, key) => now.Press(world, key).Next);
}
