using PatternGen.Geometry;

namespace PatternGen;

/// <summary>All that was said of motifs along a path, in values.</summary>
/// <param name="Spacing">The spacing aimed at, in mm.</param>
/// <param name="Heading">Which way the motifs face.</param>
internal sealed record PathSettings(double Spacing, Heading Heading)
{
    /// <summary>A joint that turns by less is smooth: free curves come as arcs whose tangents differ by rounding, and outlines from elsewhere by more.</summary>
    private const double LeastCornerDegrees = 10;

    internal (double Min, double Max)? Limits { get; init; }
    internal bool IsExact { get; init; }
    internal double FirstMargin { get; init; }
    internal double LastMargin { get; init; }
    internal double? Start { get; init; }
    internal RepeatParity Parity { get; init; }
    internal bool OnEnds { get; init; }

    /// <summary>To the left of the path, in mm.</summary>
    internal double Offset { get; init; }

    internal PathSides Sides { get; init; }

    /// <summary>Factors of scale, evenly along the way; none leaves motifs as they are.</summary>
    internal IReadOnlyList<double> Factors { get; init; } = [];

    internal bool FactorsBetweenCorners { get; init; }
    internal PathCorners Corners { get; init; }

    /// <summary>Room beside a corner, or how far from it repeats are turned on its bisector, in mm.</summary>
    internal double Clearance { get; init; }

    internal Pattern? CornerMotif { get; init; }
    internal Heading CornerHeading { get; init; }
    internal Angle LeastCorner { get; init; } = Angle.FromDegrees(LeastCornerDegrees);
    internal bool ShowsPath { get; init; }

    internal double Min => Limits?.Min ?? Spacing * 2 / 3;

    internal double Max => Limits?.Max ?? Spacing * 4 / 3;

    /// <summary>Whether each stretch between corners is fitted by itself.</summary>
    internal bool StopsAtCorners => Corners != PathCorners.Turned;
}

/// <summary>On which sides of a path motifs stand.</summary>
internal enum PathSides
{
    /// <summary>As drawn, on the left if offset.</summary>
    One,

    /// <summary>The second, fourth, … mirrored in the path.</summary>
    Alternate,

    /// <summary>Each one a second time, mirrored in the path.</summary>
    Both,
}

/// <summary>What happens at the corners of a path.</summary>
internal enum PathCorners
{
    /// <summary>What comes to stand there is turned on the bisector.</summary>
    Turned,

    /// <summary>They stay free.</summary>
    Free,

    /// <summary>A motif stands there.</summary>
    Motif,
}
