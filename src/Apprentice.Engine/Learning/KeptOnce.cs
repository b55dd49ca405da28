using System.Diagnostics.CodeAnalysis;

namespace Apprentice.Engine.Learning;

/// <summary>Keeps like values once, each under a number. A log says most things over and over; read from a file each would be there anew.</summary>
sealed class KeptOnce
{
    readonly Dictionary<object, int> _numbers = [];
    readonly List<object?> _values = [null];

    /// <summary>The number of all values like this one; 0 for null.</summary>
    public int NumberOf(object? value)
    {
        if (value is null) return 0;
        if (_numbers.TryGetValue(value, out var number)) return number;
        _values.Add(value);
        return _numbers[value] = _values.Count - 1;
    }

    /// <summary>The value of a number.</summary>
    public object? Of(int number) => _values[number];

    /// <summary>The value that is kept for all that are like it.</summary>
    [return: NotNullIfNotNull(nameof(value))]
    public T? Same<T>(T? value)
        where T : class => (T?)Of(NumberOf(value));
}
