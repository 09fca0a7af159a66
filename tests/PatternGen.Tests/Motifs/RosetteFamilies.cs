using System.Collections.Concurrent;

namespace PatternGen.Tests.Motifs;

/// <summary>A rosette of each family for a number of parts, and how many faces it has, counted by hand.</summary>
/// <remarks>
/// Counted by Euler's relation, of a figure that hangs together: faces = 1 + edges − nodes, the outer one left out.
/// </remarks>
internal static class RosetteFamilies
{
    internal const double Radius = 40;

    private static readonly ConcurrentDictionary<
        int,
        Lazy<(string Name, Rosette Rosette, int Faces)[]>
    > Made = [];

    /// <summary>The rosettes are made once for all tests, and with them their faces.</summary>
    internal static IReadOnlyList<(string Name, Rosette Rosette, int Faces)> Of(int n) =>
        Made.GetOrAdd(n, count => new(() => [.. Make(count)])).Value;

    private static IEnumerable<(string Name, Rosette Rosette, int Faces)> Make(int n)
    {
        var disc = n > 8 ? 1 : 0;
        // Without a disc: n tips and the centre; 2n sides and n arcs of the rim. 1 + 3n − (n + 1) = 2n.
        yield return ("Petals", Rosette.Petals(n, Radius), 2 * n + disc);
        yield return ("Petals without a disc", Rosette.Petals(n, Radius, centre: 0), 2 * n);
        // With a disc: 3n nodes; 2n sides, n arcs of the rim, 2n of the disc. 1 + 5n − 3n = 2n + 1.
        yield return ("Petals round a disc", Rosette.Petals(n, Radius, centre: 12), 2 * n + 1);
        // N = 2n tips, N crossings, the centre; 2N sides in 2 pieces each, N arcs. 1 + 5N − (2N + 1) = 3N.
        var two = 2 * n > 8 ? 1 : 0;
        yield return ("Overlaid", Rosette.Overlaid(2, n, Radius), 6 * n + two);
        // N tips, N crossings, the centre; N sides in 2 pieces, N in 1, N arcs. 1 + 4N − (2N + 1) = 2N.
        yield return (
            "Overlaid, stopped",
            Rosette.Overlaid(2, n, Radius, PetalCrossing.Stopped),
            4 * n + two
        );
        // The ring has 3n nodes, 2n sides, n + 2n arcs, so n petals and n gaps, and round the inner petals 2n.
        yield return ("Two levels", Rosette.TwoLevel(n, Radius), 4 * n + disc);
        // 2n tips; 2n sides, 2n arcs of both circles. 1 + 4n − 2n = 2n + 1.
        yield return ("Petal ring", Rosette.PetalRing(n, Radius, 20), 2 * n + 1);
        // As petals, and n leaves.
        if (n >= 6)
            yield return ("Wreathed", Rosette.Wreathed(n, Radius), 3 * n + disc);
        // As petals, and n crescents.
        yield return ("Scalloped", Rosette.Scalloped(n, Radius), 3 * n + disc);
        // kn nodes, n tips among them; n lines in 2k − 1 pieces, n arcs. 1 + 2kn − kn = kn + 1.
        for (var every = 2; 2 * every < n && every <= 5; every++)
            yield return ($"Star {n}/{every}", Rosette.Star(n, every, Radius), every * n + 1);
        // Without a disc: 2n corners and the centre; 2n sides, 2n radii, n arcs. 1 + 5n − (2n + 1) = 3n.
        yield return ("Split star", Rosette.SplitStar(n, Radius), 3 * n + disc);
        // 2n corners; 2n sides, n arcs of each circle. 1 + 4n − 2n = 2n + 1.
        yield return ("Rays", Rosette.Rays(n, Radius), 2 * n + 1);
        // 3n corners; 4n sides, n arcs of each circle. 1 + 6n − 3n = 3n + 1.
        yield return ("Diamonds", Rosette.Diamonds(n, Radius), 3 * n + 1);
        // Without a disc: n tips and the centre; n radii, n arcs. 1 + 2n − (n + 1) = n.
        yield return ("Whirl", Rosette.Whirl(n, Radius), n + disc);
        yield return ("Whirl to the right", Rosette.Whirl(n, Radius, WhirlTurn.Right), n + disc);
        yield return (
            "Overlapping circles",
            Rosette.OverlappingCircles(n, Radius, n > 4 ? 16 : 4),
            n > 4 ? Overlapping(n, middle: 24, radius: 16) : Overlapping(n, middle: 21, radius: 19)
        );
        // P pairs, all but the opposite ones, cross once beside the centre; with n places on the rim, 1 + n + P nodes and
        // 2n + 2P + n pieces. 1 + 3n + 2P − (1 + n + P) = 2n + P.
        yield return (
            "Circles through the centre",
            Rosette.OverlappingCircles(n, Radius, 0),
            2 * n + n * (n - 1) / 2 - (n % 2 == 0 ? n / 2 : 0)
        );
        // 3n places where circles touch; 4n pieces of the n circles, n arcs of both others. 1 + 6n − 3n = 3n + 1.
        yield return ("Touching circles", Rosette.TouchingCircles(n, Radius), 3 * n + 1);
        // Without a disc: n tips, 2 corners, the centre; 2n sides, 2 radii, n + 1 arcs. 1 + 3n + 3 − (n + 3) = 2n + 1.
        yield return ("Fan", Rosette.Fan(n, Radius), 2 * n + 1 + disc);
        yield return ("Fan in a corner", Rosette.Fan(n, Radius, 80, 200, 4), 2 * n + 2);
        // The disc of the rays becomes a ring, and the petals add theirs.
        yield return (
            "Nested",
            Rosette.Nested(Rosette.Rays(n, Radius, 15), Rosette.Petals(n, 12)),
            4 * n + 1 + disc
        );
        // The disc of the rays is the petals' rim.
        yield return (
            "Nested, filled",
            Rosette.Nested(Rosette.Rays(n, Radius, 15), Rosette.Petals(n, 15)),
            4 * n + disc
        );
        // Each side touches the rim, so that a corner face remains at each corner.
        yield return ("In a square", Rosette.Petals(n, Radius).WithinPolygon(4), 2 * n + disc + 4);
        yield return (
            "In a wider pentagon",
            Rosette.Petals(n, Radius).WithinPolygon(5, gap: 3),
            2 * n + disc + 1
        );
    }

    /// <summary>
    /// P pairs of circles cross twice; with 2n places where they touch the rim and the disc, 2P + 2n nodes; 4P + 2n
    /// pieces of the circles, 2n of rim and disc. 1 + 4P + 4n − (2P + 2n).
    /// </summary>
    private static int Overlapping(int n, double middle, double radius)
    {
        var pairs = 0;
        for (var one = 0; one < n; one++)
        for (var other = one + 1; other < n; other++)
            if (2 * middle * Math.Sin(Math.PI * (other - one) / n) < 2 * radius)
                pairs++;
        return 1 + 2 * pairs + 2 * n;
    }
}
