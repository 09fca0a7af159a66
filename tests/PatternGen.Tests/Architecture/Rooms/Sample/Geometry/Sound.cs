namespace PatternGen.Tests.Architecture.Rooms.Sample;

/// <summary>Uses nothing but the framework and itself, as a type of the first room should.</summary>
internal sealed class Sound
{
    public List<Sound> Parts { get; } = [];
}
