using LiteDB;

namespace Apprentice.Storage.Papers;

/// <summary>The lead's desk: one random key, locked by the passphrase and by a recovery code that is printed at set-up.</summary>
public static class Desk
{
    const int RecoverySigns = 24;
    const int FreeTries = 3;
    const int MostSeconds = 600;

    /// <summary>Fewest signs of a passphrase. Source: NIST SP 800-63B, 5.1.1.2: at least 8.</summary>
    public const int ShortestPassphrase = 8;

    /// <summary>A new desk, or a new passphrase for one.</summary>
    /// <param name="passphrase">The passphrase.</param>
    /// <param name="key">The desk's key when it has one already: papers made before still open. Null for a new desk.</param>
    /// <returns>What the log keeps, the key, and the recovery code, which is shown once and kept nowhere.</returns>
    /// <exception cref="SealException">The passphrase is too short.</exception>
    public static (string Locked, byte[] Key, string RecoveryCode) SetUp(string passphrase, byte[]? key = null)
    {
        if (passphrase.Length < ShortestPassphrase) throw new SealException($"The passphrase needs at least {ShortestPassphrase} signs; a short sentence is good.");
        key ??= Seal.NewKey();
        var code = Seal.NewCode(RecoverySigns);
        var locked = BsonSerializer.Serialize(new BsonDocument { ["rounds"] = Seal.Rounds, ["pass"] = Locked(passphrase, key), ["recovery"] = Locked(Seal.CodeOf(code), key) });
        return (Convert.ToBase64String(locked), key, code);
    }

    /// <summary>The desk's key, by passphrase or recovery code; null when it is neither.</summary>
    /// <param name="locked">What the log keeps.</param>
    /// <param name="secret">What was typed.</param>
    /// <exception cref="SealException">What the log keeps is damaged.</exception>
    public static byte[]? Open(string locked, string secret)
    {
        try
        {
            var document = BsonSerializer.Deserialize(Convert.FromBase64String(locked));
            var rounds = document["rounds"].AsInt32;
            return Opened(document["pass"].AsDocument, secret, rounds) ?? Opened(document["recovery"].AsDocument, Seal.CodeOf(secret), rounds);
        }
        catch (Exception e) when (e is not SealException)
        {
            throw new SealException("The desk's lock is damaged. Papers not yet sat are lost; the register and all results can still be read.", e);
        }
    }

    /// <summary>How long to wait after wrong tries before the next one: nothing up to three, then 2, 4, 8 … seconds, at most ten minutes.</summary>
    /// <param name="tries">Wrong tries since the last right one, as the log tells.</param>
    public static TimeSpan Delay(int tries) => tries <= FreeTries ? TimeSpan.Zero : TimeSpan.FromSeconds(tries - FreeTries >= 10 ? MostSeconds : Math.Min(MostSeconds, 1 << (tries - FreeTries)));

    static BsonDocument Locked(string secret, byte[] key)
    {
        var salt = Seal.NewSalt();
        return new BsonDocument { ["salt"] = salt, ["box"] = Seal.Lock(Seal.KeyOf(secret, salt, Seal.Rounds), key, salt) };
    }

    static byte[]? Opened(BsonDocument locked, string secret, int rounds) =>
        Seal.Open(Seal.KeyOf(secret, locked["salt"].AsBinary, rounds), locked["box"].AsBinary, locked["salt"].AsBinary);
}
