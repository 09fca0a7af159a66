namespace PatternGen.Tests.Architecture.Rooms.Sample;

internal static partial class Split
{
    public static int InLayout() => 2;
}
