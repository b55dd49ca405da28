using System.Text.Json;

namespace Apprentice.Engine.Tests.Histories;

/// <summary>Reads the network's file for <see cref="Benchnet"/>, which the tests share with the measurements.</summary>
static class Network
{
    static readonly JsonSerializerOptions Camel = new(JsonSerializerDefaults.Web);

    public static T Read<T>(string file) =>
        JsonSerializer.Deserialize<T>(File.ReadAllText(FileOf(file)), Camel) ?? throw new InvalidDataException(file);

    public static string FileOf(string file) => Path.Combine(AppContext.BaseDirectory, "Data", file);
}
