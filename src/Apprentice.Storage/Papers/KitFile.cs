using System.Text;
using Apprentice.Engine.Assessing;
using LiteDB;

namespace Apprentice.Storage.Papers;

/// <summary>A paper kit with its key, sealed under the code that stands on the printed key: so the log holds no key that can be read.</summary>
public static class KitFile
{
    const string Kind = "apprentice kit 1";
    const int CodeSigns = 12;
    const int Fields = 2;

    /// <summary>Seals a kit.</summary>
    /// <returns>The sealed text for the log, and the code for the printed key, which is kept nowhere else.</returns>
    public static (string Sealed, string Code) Sealed(Kit kit)
    {
        var code = Seal.NewCode(CodeSigns);
        var salt = Seal.NewSalt();
        var head = BsonSerializer.Serialize(new BsonDocument { ["kit"] = kit.Id, ["rounds"] = Seal.Rounds, ["salt"] = salt });
        var box = Seal.Lock(Seal.KeyOf(Seal.CodeOf(code), salt, Seal.Rounds), BsonSerializer.Serialize(KitFields.Of(kit)), head);
        return (Encoding.ASCII.GetString(SealedText.Write(Kind, head, box)), code);
    }

    /// <summary>Opens a kit.</summary>
    /// <param name="sealedKit">What the log holds.</param>
    /// <param name="code">The code of the printed key.</param>
    /// <exception cref="SealException">The code is another one, or the text was changed.</exception>
    public static Kit Open(string sealedKit, string code)
    {
        var fields = SealedText.Read(Encoding.ASCII.GetBytes(sealedKit), Kind, Fields);
        try
        {
            var head = BsonSerializer.Deserialize(fields[0]);
            var body = Seal.Open(Seal.KeyOf(Seal.CodeOf(code), head["salt"].AsBinary, head["rounds"].AsInt32), fields[1], fields[0])
                ?? throw new SealException("This code does not open this kit. Type the code that stands on its printed key.");
            return KitFields.ToKit(BsonSerializer.Deserialize(body));
        }
        catch (Exception e) when (e is not SealException)
        {
            throw new SealException(SealedText.Changed().Message, e);
        }
    }
}
