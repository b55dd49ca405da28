using System.Globalization;

namespace Apprentice.Content.Lessons;

/// <summary>Works out a small sum: numbers, + - * /, brackets, pi, sin(x) in radians, sqrt(x).</summary>
public sealed class Sum
{
    const int Deepest = 20;
    readonly string _text;
    int _at;
    int _depth;

    Sum(string text) => _text = text.Replace(" ", "", StringComparison.Ordinal);

    /// <summary>The result, or null when it is no sum.</summary>
    public static double? Of(string text)
    {
        var sum = new Sum(text);
        var result = sum.Terms();
        return sum._at == sum._text.Length && double.IsFinite(result) ? result : null;
    }

    bool Take(char sign)
    {
        if (_at >= _text.Length || _text[_at] != sign) return false;
        _at++;
        return true;
    }

    bool Take(string word)
    {
        if (!_text.AsSpan(_at).StartsWith(word, StringComparison.Ordinal)) return false;
        _at += word.Length;
        return true;
    }

    double Terms()
    {
        var value = Factors();
        while (true)
        {
            if (Take('+')) value += Factors();
            else if (Take('-')) value -= Factors();
            else return value;
        }
    }

    double Factors()
    {
        var value = Single();
        while (true)
        {
            if (Take('*')) value *= Single();
            else if (Take('/')) value /= Single();
            else return value;
        }
    }

    double Single()
    {
        if (++_depth > Deepest) return double.NaN;
        var value = Take('-') ? -Single() : Take("sin(") ? Math.Sin(Bracket()) : Take("sqrt(") ? Math.Sqrt(Bracket()) : Take('(') ? Bracket() : Take("pi") ? Math.PI : Number();
        _depth--;
        return value;
    }

    double Bracket()
    {
        var value = Terms();
        return Take(')') ? value : double.NaN;
    }

    double Number()
    {
        var from = _at;
        while (_at < _text.Length && (char.IsAsciiDigit(_text[_at]) || _text[_at] == '.')) _at++;
        return double.TryParse(_text.AsSpan(from, _at - from), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : double.NaN;
    }
}
