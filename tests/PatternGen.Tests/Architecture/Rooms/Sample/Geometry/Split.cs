namespace PatternGen.Tests.Architecture.Rooms.Sample;

/// <summary>One half of a type that is split over two rooms.</summary>
internal static partial class Split
{
    public static int InGeometry() => 1;
}
