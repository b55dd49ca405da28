using System.Security.Cryptography;
using System.Text;

namespace Apprentice.Reports;

/// <summary>A PIN as a salted hash. A courtesy among people who share a machine: whoever can read the file can try all ten thousand PINs.</summary>
static class PinHash
{
    /// <summary>Shortest PIN.</summary>
    public const int Shortest = 4;

    /// <summary>Longest PIN.</summary>
    public const int Longest = 8;

    const string Form = "pbkdf2-sha256";
    const int Rounds = 100_000;
    const int Bytes = 32;

    /// <summary>True for 4 to 8 digits.</summary>
    public static bool IsPin(string pin) => pin.Length is >= Shortest and <= Longest && pin.All(char.IsAsciiDigit);

    /// <summary>The hash as one text: form, rounds, salt, hash.</summary>
    /// <param name="pin">The PIN.</param>
    /// <param name="salt">Something that no other PIN has.</param>
    public static string Of(string pin, string salt)
    {
        var bytes = SHA256.HashData(Encoding.UTF8.GetBytes(salt));
        return $"{Form}${Rounds}${Convert.ToBase64String(bytes)}${Convert.ToBase64String(Derive(pin, bytes, Rounds))}";
    }

    /// <summary>True when a PIN is that of a hash.</summary>
    public static bool Matches(string pin, string hash) =>
        hash.Split('$') is [Form, var rounds, var salt, var derived] && int.TryParse(rounds, out var n)
        && CryptographicOperations.FixedTimeEquals(Derive(pin, Convert.FromBase64String(salt), n), Convert.FromBase64String(derived));

    static byte[] Derive(string pin, byte[] salt, int rounds) => Rfc2898DeriveBytes.Pbkdf2(pin, salt, rounds, HashAlgorithmName.SHA256, Bytes);
}
