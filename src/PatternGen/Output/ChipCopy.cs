using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A chip as a copy of a shape: what a file says instead of its outline.</summary>
/// <param name="Shape">Number of the shape, from 0.</param>
/// <param name="At">Where the shape's first corner comes to lie.</param>
/// <param name="Degrees">Counter-clockwise turn about that corner, rounded to <see cref="TurnDecimals"/>.</param>
internal readonly record struct ChipCopy(int Shape, Point At, double Degrees)
{
    /// <summary>Decimals of a turn: enough that the far end of a chip of 1 m lies within 1e-9 mm.</summary>
    internal const int TurnDecimals = 10;
}
