namespace PatternGen.Tests.Architecture.Rooms.Sample;

/// <summary>Lies beside the rooms.</summary>
internal static class Homeless;
