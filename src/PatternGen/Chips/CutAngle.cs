using System.Runtime.CompilerServices;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Checks angles from the surface, in the carver's words.</summary>
internal static class CutAngle
{
    /// <summary>Flatter walls than this, in degrees, are shavings rather than chips.</summary>
    internal const double FlattestWall = 20;

    /// <summary>Steeper walls than this, in degrees, are as good as upright, and their depth runs away.</summary>
    internal const double SteepestWall = 85;

    /// <summary>Decimals of a degree that a size in radians still holds.</summary>
    private const int Decimals = 9;

    /// <summary>An angle between a wall, or the blade that cuts it, and the surface.</summary>
    internal static Angle Wall(
        double degrees,
        [CallerArgumentExpression(nameof(degrees))] string name = ""
    ) => Within(degrees, FlattestWall, SteepestWall, "The wall angle", name);

    /// <inheritdoc cref="Wall(double, string)"/>
    internal static Angle Wall(
        Angle angle,
        [CallerArgumentExpression(nameof(angle))] string name = ""
    )
    {
        Wall(Math.Round(angle.Degrees, Decimals), name);
        return angle;
    }

    /// <summary>An angle between the floor of a stab-cut chip and the surface.</summary>
    internal static Angle Floor(
        double degrees,
        [CallerArgumentExpression(nameof(degrees))] string name = ""
    ) => Within(degrees, 5, 70, "The slope of the floor", name);

    /// <inheritdoc cref="Floor(double, string)"/>
    internal static Angle Floor(
        Angle angle,
        [CallerArgumentExpression(nameof(angle))] string name = ""
    )
    {
        Floor(Math.Round(angle.Degrees, Decimals), name);
        return angle;
    }

    private static Angle Within(
        double degrees,
        double least,
        double most,
        string subject,
        string name
    )
    {
        if (!(degrees >= least && degrees <= most))
            Guard.Throw(
                name,
                subject,
                degrees,
                $"must lie between {Guard.Text(least)} and {Guard.Text(most)} degrees from the surface"
            );
        return Angle.FromDegrees(degrees);
    }
}
