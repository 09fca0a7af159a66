using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The rectangle of the pattern's plane that an SVG shows, and the one place where y is turned over.</summary>
/// <param name="Left">x of the left edge in the pattern, in mm.</param>
/// <param name="Top">y of the upper edge in the pattern, in mm.</param>
/// <param name="Width">Width in mm, and in the SVG's units.</param>
/// <param name="Height">Height in mm, and in the SVG's units.</param>
internal readonly record struct SvgSheet(double Left, double Top, double Width, double Height)
{
    /// <summary>Returns the sheet that holds the extents, with sides of whole steps; what that adds goes to all sides alike.</summary>
    /// <param name="extents">What is to be seen.</param>
    /// <param name="step">Size in mm that both sides are multiples of.</param>
    internal static SvgSheet Around(Extents extents, double step)
    {
        var (width, height) = (RoundUp(extents.Width, step), RoundUp(extents.Height, step));
        var centre = extents.Centre;
        return new(centre.X - width / 2, centre.Y + height / 2, width, height);
    }

    /// <summary>Returns the sheet for what is drawn with a point of the pattern as its origin, wherever it is shown.</summary>
    internal static SvgSheet From(Point origin) => new(origin.X, origin.Y, 0, 0);

    internal double X(double x) => x - Left;

    internal double Y(double y) => Top - y;

    /// <summary>Rounds up, but not for what arithmetic in doubles has added to a whole number of steps.</summary>
    private static double RoundUp(double size, double step) =>
        Math.Round(Math.Ceiling(Math.Round(size / step, 6)) * step, 6);
}
