using System.Reflection;

namespace PatternGen.Tests.Architecture.Surface;

internal static class Members
{
    /// <summary>Finds everything that a type declares itself, whoever may see it.</summary>
    public const BindingFlags Declared =
        BindingFlags.DeclaredOnly
        | BindingFlags.Instance
        | BindingFlags.Static
        | BindingFlags.Public
        | BindingFlags.NonPublic;
}
