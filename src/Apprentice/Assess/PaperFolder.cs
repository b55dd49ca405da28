using Apprentice.Storage.Papers;

namespace Apprentice.Assess;

/// <summary>The folder of sealed papers and results beside the log. Nothing in it is ever written over.</summary>
/// <param name="path">Its path; it is made when the first file is written.</param>
public sealed class PaperFolder(string path)
{
    /// <summary>How the name of a sealed paper ends.</summary>
    public const string PaperEnding = ".paper";

    /// <summary>How the name of a result ends.</summary>
    public const string ResultEnding = ".result";

    // A paper has about 20 kB, a result less than 200.
    const long Largest = 8_000_000;
    const int MostCopies = 1000;

    /// <summary>Its full path.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    /// <summary>The folder beside a log.</summary>
    /// <param name="dataFile">The log's file.</param>
    public static PaperFolder Beside(string dataFile) => new(System.IO.Path.Combine(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(dataFile)) ?? ".", "papers"));

    /// <summary>A file's bytes.</summary>
    /// <exception cref="SealException">It is not there, cannot be read, or is far too large.</exception>
    public static byte[] Read(string file)
    {
        try
        {
            var about = new FileInfo(file);
            if (!about.Exists) throw new SealException($"There is no file {file}. Type its name with its folder.");
            return about.Length <= Largest ? File.ReadAllBytes(file) : throw new SealException($"{file} is far too large for a paper or a result. Choose the file that was handed out.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new SealException($"{file} cannot be read: {e.Message}", e);
        }
    }

    /// <summary>Files of an ending in a folder, by name.</summary>
    /// <exception cref="SealException">The folder cannot be read.</exception>
    public static IReadOnlyList<string> Files(string folder, string ending)
    {
        try
        {
            return Directory.Exists(folder) ? [.. Directory.EnumerateFiles(folder, "*" + ending).Order(StringComparer.Ordinal)] : [];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SealException($"The folder {folder} cannot be read: {e.Message}", e);
        }
    }

    /// <summary>Files of an ending in this folder, by name.</summary>
    /// <exception cref="SealException">The folder cannot be read.</exception>
    public IReadOnlyList<string> Files(string ending) => Files(Path, ending);

    /// <summary>The file of a sealed paper of this folder and its bytes, or null when none of the files is of that paper.</summary>
    /// <param name="paper">Number of the paper.</param>
    public (string File, byte[] Bytes)? Sealed(string paper)
    {
        foreach (var file in Files(PaperEnding))
        {
            try
            {
                var bytes = Read(file);
                if (string.Equals(PaperFile.Outside(bytes).Paper, paper, StringComparison.Ordinal)) return (file, bytes);
            }
            catch (SealException)
            {
                // Another file, or a damaged one: it is not the one that is looked for.
            }
        }

        return null;
    }

    /// <summary>Writes a file, never over another one.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="bytes">What it holds.</param>
    /// <param name="folder">Another folder, or null for this one.</param>
    /// <returns>Where it lies.</returns>
    /// <exception cref="SealException">It cannot be written.</exception>
    public string Write(string name, byte[] bytes, string? folder = null)
    {
        try
        {
            Directory.CreateDirectory(folder ?? Path);
            for (var copy = 1; copy < MostCopies; copy++)
            {
                var file = System.IO.Path.Combine(folder ?? Path, copy == 1 ? name : $"{System.IO.Path.GetFileNameWithoutExtension(name)}-{copy}{System.IO.Path.GetExtension(name)}");
                if (File.Exists(file)) continue;
                File.WriteAllBytes(file, bytes);
                return file;
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new SealException($"{name} cannot be written to {folder ?? Path}: {e.Message}", e);
        }

        throw new SealException($"There are too many files called {name} in {folder ?? Path}. Move some away.");
    }

    /// <summary>A file's name for a paper: its number, then the candidate in letters and digits of the name.</summary>
    /// <param name="paper">Number of the paper.</param>
    /// <param name="candidate">For whom.</param>
    /// <param name="ending">Ending.</param>
    public static string NameOf(string paper, string candidate, string ending)
    {
        var name = new string([.. candidate.Select(c => char.IsLetterOrDigit(c) ? c : '-')]).Trim('-');
        return $"{paper}{(name.Length > 0 ? "-" + name[..Math.Min(name.Length, 20)] : "")}{ending}";
    }
}
