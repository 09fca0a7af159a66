namespace PatternGen.Tests.Architecture.Rooms.Sample;

/// <summary>What the first room must not know; itself, it may use the first room.</summary>
internal class Later
{
    public Sound Below { get; } = new();

    public static int Answer() => 42;
}

internal interface ILater;

internal enum LaterKind
{
    Odd,
    Even,
}

internal sealed class LaterException : Exception;

[AttributeUsage(AttributeTargets.All)]
internal sealed class LaterAttribute : Attribute;
