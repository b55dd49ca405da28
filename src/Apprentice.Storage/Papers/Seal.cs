using System.Security.Cryptography;
using System.Text;

namespace Apprentice.Storage.Papers;

/// <summary>Locking and opening, by the platform's own cryptography only: AES-256-GCM (NIST SP 800-38D), PBKDF2 with SHA-256 (RFC 8018), HKDF (RFC 5869).</summary>
public static class Seal
{
    /// <summary>Rounds of PBKDF2. Source: OWASP Password Storage Cheat Sheet, 2023: 600,000 for PBKDF2 with HMAC-SHA-256.</summary>
    public const int Rounds = 600_000;

    /// <summary>Rounds above which a file is not taken for one of ours: nobody shall keep a machine busy with a made-up file.</summary>
    public const int MostRounds = 10_000_000;

    /// <summary>Bytes of a key.</summary>
    public const int KeyBytes = 32;

    const int SaltBytes = 16;
    const int NonceBytes = 12;
    const int TagBytes = 16;

    // Letters and digits that are not mistaken for each other: no 0, 1, I, L, O.
    const string Signs = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";
    const int Group = 4;

    /// <summary>A fresh key.</summary>
    public static byte[] NewKey() => RandomNumberGenerator.GetBytes(KeyBytes);

    /// <summary>A fresh salt.</summary>
    public static byte[] NewSalt() => RandomNumberGenerator.GetBytes(SaltBytes);

    /// <summary>A fresh seed for a paper.</summary>
    public static ulong NewSeed() => BitConverter.ToUInt64(RandomNumberGenerator.GetBytes(sizeof(ulong)));

    /// <summary>A fresh number for a paper, six signs, not worked out from anything.</summary>
    public static string NewPaperNumber() => new([.. Enumerable.Range(0, 6).Select(_ => Signs[RandomNumberGenerator.GetInt32(Signs.Length)])]);

    /// <summary>A fresh code, in groups of four signs: 12 signs are 59 bits, 24 signs 118.</summary>
    /// <param name="signs">A multiple of four.</param>
    public static string NewCode(int signs) =>
        string.Join('-', Enumerable.Range(0, signs / Group).Select(_ => new string([.. Enumerable.Range(0, Group).Select(_ => Signs[RandomNumberGenerator.GetInt32(Signs.Length)])])));

    /// <summary>A code as it counts: capitals, without spaces and hyphens.</summary>
    public static string CodeOf(string typed) => new([.. typed.ToUpperInvariant().Where(c => !char.IsWhiteSpace(c) && c != '-')]);

    /// <summary>The key of a passphrase or code.</summary>
    /// <param name="secret">The passphrase, or a code by <see cref="CodeOf"/>.</param>
    /// <param name="salt">Salt.</param>
    /// <param name="rounds">Rounds, at least <see cref="Rounds"/>.</param>
    /// <exception cref="SealException">Too few or too many rounds.</exception>
    public static byte[] KeyOf(string secret, byte[] salt, int rounds)
    {
        if (rounds is < Rounds or > MostRounds) throw new SealException("This file was not made by this program, or it was changed.");
        return Rfc2898DeriveBytes.Pbkdf2(Encoding.UTF8.GetBytes(secret.Normalize(NormalizationForm.FormC)), salt, rounds, HashAlgorithmName.SHA256, KeyBytes);
    }

    /// <summary>A key for one purpose from another key.</summary>
    public static byte[] Derived(byte[] key, string purpose) => HKDF.DeriveKey(HashAlgorithmName.SHA256, key, KeyBytes, info: Encoding.UTF8.GetBytes(purpose));

    /// <summary>Locks bytes; what stands beside them is authenticated too.</summary>
    /// <param name="key">Key.</param>
    /// <param name="plain">What is locked.</param>
    /// <param name="beside">What is not locked but must not be changed.</param>
    public static byte[] Lock(byte[] key, byte[] plain, byte[] beside)
    {
        var box = new byte[NonceBytes + plain.Length + TagBytes];
        RandomNumberGenerator.Fill(box.AsSpan(0, NonceBytes));
        using var aes = new AesGcm(key, TagBytes);
        aes.Encrypt(box.AsSpan(0, NonceBytes), plain, box.AsSpan(NonceBytes, plain.Length), box.AsSpan(NonceBytes + plain.Length), beside);
        return box;
    }

    /// <summary>Opens bytes, or null when the key is another one or anything was changed.</summary>
    public static byte[]? Open(byte[] key, byte[] box, byte[] beside)
    {
        if (box.Length < NonceBytes + TagBytes) return null;
        var plain = new byte[box.Length - NonceBytes - TagBytes];
        using var aes = new AesGcm(key, TagBytes);
        try
        {
            aes.Decrypt(box.AsSpan(0, NonceBytes), box.AsSpan(NonceBytes, plain.Length), box.AsSpan(box.Length - TagBytes), plain, beside);
            return plain;
        }
        catch (AuthenticationTagMismatchException)
        {
            return null;
        }
    }
}

/// <summary>A sealed file is refused; the message says why and what would do.</summary>
public sealed class SealException : Exception
{
    /// <summary>An exception without a message; needed by convention only.</summary>
    public SealException()
    {
    }

    /// <summary>An exception with a sentence for the person at the machine.</summary>
    public SealException(string message)
        : base(message)
    {
    }

    /// <summary>An exception with a sentence and its cause.</summary>
    public SealException(string message, Exception inner)
        : base(message, inner)
    {
    }
}
