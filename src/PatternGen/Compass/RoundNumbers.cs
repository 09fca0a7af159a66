namespace PatternGen;

/// <summary>The numbers of points that are marked one after another round a circle, evenly spaced so that a later walk can fill the gaps.</summary>
internal readonly record struct RoundNumbers(int First, int Stride)
{
    internal int At(int index) => First + index * Stride;
}
