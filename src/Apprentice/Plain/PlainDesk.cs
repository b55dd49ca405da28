using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Apprentice.Plain;

/// <summary>Where plain lines come from and go to.</summary>
/// <param name="In">Lines that are typed.</param>
/// <param name="Out">Lines that are said.</param>
/// <param name="Echo">True to say each line that was typed: where no terminal shows it.</param>
public sealed record PlainDesk(TextReader In, TextWriter Out, bool Echo)
{
    static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The program's own input and output. The platform's console would send codes to a terminal when it reads from it; the bare files do not.</summary>
    public static PlainDesk Own() => OperatingSystem.IsWindows()
        ? new PlainDesk(Console.In, Console.Out, Console.IsInputRedirected)
        : new PlainDesk(
            new StreamReader(new FileStream(new SafeFileHandle(0, ownsHandle: false), FileAccess.Read, bufferSize: 0), Utf8),
            new StreamWriter(new FileStream(new SafeFileHandle(1, ownsHandle: false), FileAccess.Write, bufferSize: 0), Utf8) { AutoFlush = true },
            Console.IsInputRedirected);
}
