using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A V groove cut along a line.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class LineCut
{
    /// <summary>Creates a line cut.</summary>
    /// <param name="path">The line at the bottom of the groove.</param>
    /// <param name="width">Width of the groove at the surface, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not positive.</exception>
    public LineCut(Chain path, double width)
    {
        Path = Guard.NotNull(path);
        Width = Guard.Positive(width);
    }

    /// <summary>The line at the bottom of the groove.</summary>
    public Chain Path { get; }

    /// <summary>Width of the groove at the surface, in mm.</summary>
    public double Width { get; }
}
