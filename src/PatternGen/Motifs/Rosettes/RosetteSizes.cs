using System.Runtime.CompilerServices;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Checks what rosettes are asked for.</summary>
internal static class RosetteSizes
{
    /// <summary>Smallest radius in mm; a smaller rosette has no part that a knife could cut.</summary>
    private const double LeastRadius = 1;

    /// <summary>Largest radius in mm, 4 m: wider than any board, and near enough for every compass point to have coordinates.</summary>
    private const double MostRadius = 4000;

    /// <summary>Smallest plain disc, inner circle or gap in mm: the width of a pencil line. Far smaller ones would merge with the centre.</summary>
    private const double Least = 0.1;

    /// <summary>A size as near to its limit as this share of it counts as there; a part as thin as that is none.</summary>
    private const double NoRoom = 1e-6;

    /// <summary>Whether a size stays under a limit by enough to leave room.</summary>
    internal static bool IsBelow(double size, double limit) => size < limit * (1 - NoRoom);

    /// <summary>A size that may be 0 for none, but not so small that its lines run into one.</summary>
    internal static double NoneOrAtLeast(
        double size,
        [CallerArgumentExpression(nameof(size))] string name = ""
    ) =>
        size == 0 || size >= Least
            ? Guard.NotNegative(size, name)
            : throw new ArgumentOutOfRangeException(
                name,
                $"{name} must be 0, for none, or at least {Guard.Text(Least)} mm, but is {Guard.Text(size)}."
            );

    internal static int Count(
        int count,
        [CallerArgumentExpression(nameof(count))] string name = ""
    ) => Guard.Within(count, Rosette.FewestParts, Rosette.MostParts, name);

    internal static double Radius(
        double radius,
        [CallerArgumentExpression(nameof(radius))] string name = ""
    ) => Guard.Within(radius, LeastRadius, MostRadius, name);

    /// <summary>The diameter of the plain disc: the one asked for, or what so many tips in one point ask for.</summary>
    /// <exception cref="PatternException">The disc would reach the rim.</exception>
    internal static double Centre(double? asked, int tips, double radius)
    {
        var needed = tips > Rosette.MostTips ? Rosette.LeastCentre : 0;
        var centre = asked is { } given ? NoneOrAtLeast(given, "centre") : needed;
        return IsBelow(centre, 2 * radius)
            ? centre
            : throw new PatternException(
                $"A plain centre {Guard.Text(centre)} mm wide leaves no room within a radius of {Guard.Text(radius)} mm.",
                Point.Origin,
                [
                    $"a centre of less than {Guard.Text(2 * radius)} mm",
                    $"a radius of more than {Guard.Text(centre / 2)} mm",
                ]
            );
    }

    /// <summary>The radius of an inner circle.</summary>
    /// <param name="inner">What is asked for, in mm.</param>
    /// <param name="radius">Radius of the rim in mm.</param>
    /// <param name="share">The share of it that the inner circle stays under.</param>
    /// <param name="name">What it is called.</param>
    /// <exception cref="PatternException">It is too large.</exception>
    internal static double Inner(
        double inner,
        double radius,
        double share = 1,
        [CallerArgumentExpression(nameof(inner))] string name = ""
    )
    {
        var limit = share * radius;
        return IsBelow(Guard.Within(inner, Least, Guard.MaxSize, name), limit)
            ? inner
            : throw new PatternException(
                $"An inner circle of {Guard.Text(inner)} mm radius leaves no room within a rim of {Guard.Text(radius)} mm radius.",
                Point.Origin,
                [
                    $"an inner radius of less than {Guard.Text(limit)} mm",
                    $"a radius of more than {Guard.Text(inner / share)} mm",
                ]
            );
    }
}
