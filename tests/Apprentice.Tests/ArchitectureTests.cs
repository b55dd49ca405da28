using System.Reflection;
using Apprentice.Content;
using Apprentice.Engine;
using Apprentice.Storage;
using NetArchTest.Rules;

namespace Apprentice.Tests;

/// <summary>The rooms of DEVELOPERS.md: who may use what.</summary>
public class ArchitectureTests
{
    static readonly Assembly Engine = typeof(Workbench).Assembly;
    static readonly Assembly Content = typeof(Fault).Assembly;
    static readonly Assembly Storage = typeof(Log).Assembly;
    static readonly Assembly Program = typeof(DataFile).Assembly;

    [Fact]
    public void The_engine_references_the_platform_alone() =>
        Assert.All(Engine.GetReferencedAssemblies(), a => Assert.True(a.Name is "netstandard" or "System.Private.CoreLib" || a.Name?.StartsWith("System.", StringComparison.Ordinal) == true, a.FullName));

    [Theory]
    [InlineData("System.IO")]
    [InlineData("System.Console")]
    [InlineData("System.Net")]
    [InlineData("System.Threading")]
    [InlineData("System.Random")]
    public void The_engine_does_not_touch(string room) => Holds(Types.InAssembly(Engine).ShouldNot().HaveDependencyOn(room));

    [Fact]
    public void Content_knows_no_store_and_no_terminal() =>
        Holds(Types.InAssembly(Content).ShouldNot().HaveDependencyOnAny("LiteDB", "Terminal.Gui", "Apprentice.Storage", "System.IO.File", "System.IO.Directory"));

    [Fact]
    public void The_store_knows_no_content_and_no_terminal() =>
        Holds(Types.InAssembly(Storage).ShouldNot().HaveDependencyOnAny("Markdig", "Bogus", "Terminal.Gui", "Apprentice.Content"));

    [Fact]
    public void Only_the_terminal_room_uses_the_toolkit() =>
        Holds(Types.InAssembly(Program).That().DoNotResideInNamespace("Apprentice.Terminal").ShouldNot().HaveDependencyOn("Terminal.Gui"));

    [Fact]
    public void Screens_and_commands_are_ignorant_of_each_other()
    {
        Holds(Types.InAssembly(Program).That().ResideInNamespace("Apprentice.Screens").ShouldNot().HaveDependencyOn("Apprentice.Commands"));
        Holds(Types.InAssembly(Program).That().ResideInNamespace("Apprentice.Commands").ShouldNot().HaveDependencyOnAny("Apprentice.Screens", "Apprentice.Terminal"));
    }

    [Fact]
    public void Quantities_depend_on_no_other_room_of_the_engine() =>
        Holds(Types.InAssembly(Engine).That().ResideInNamespace("Apprentice.Engine.Quantities").ShouldNot().HaveDependencyOnAny(
            "Apprentice.Engine.Topics", "Apprentice.Engine.Histories", "Apprentice.Engine.Evidence", "Apprentice.Engine.Cases", "Apprentice.Engine.Grading", "Apprentice.Engine.Learning"));

    static void Holds(ConditionList rule)
    {
        var result = rule.GetResult();
        Assert.True(result.IsSuccessful, string.Join(", ", result.FailingTypeNames ?? []));
    }
}
