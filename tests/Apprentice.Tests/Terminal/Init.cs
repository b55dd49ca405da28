using System.Runtime.CompilerServices;

[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]

namespace Apprentice.Tests.Terminal;

/// <summary>Keeps the toolkit from the real terminal while tests run.</summary>
static class Init
{
    [ModuleInitializer]
    internal static void Go() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
}
