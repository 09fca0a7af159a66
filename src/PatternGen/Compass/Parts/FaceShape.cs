using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A face of a figure, measured, before parts are numbered.</summary>
internal sealed class FaceShape
{
    private readonly double _near;

    /// <param name="face">A bounded face.</param>
    /// <param name="centre">The figure's centre.</param>
    /// <param name="near">Distance in mm under which places are the same.</param>
    internal FaceShape(Face face, Point centre, double near)
    {
        _near = near;
        FaceIndex = face.Index;
        Part = face.ToPart();
        Area = Part.Area;
        Centroid = Part.Centroid;
        var from = Centroid - centre;
        Distance = BandRound(Part, centre) ?? from.Length;
        Angle = from.Length > near ? Turned(from, near) : Angle.Zero;
    }

    internal int FaceIndex { get; }

    internal RegionPart Part { get; }

    internal double Area { get; }

    internal Point Centroid { get; }

    /// <summary>Distance in mm from the figure's centre, by which rings are told apart.</summary>
    internal double Distance { get; }

    internal Angle Angle { get; }

    /// <summary>Sides, tips and the sharpest tip of the outline.</summary>
    internal (int Sides, int Tips, Angle? Sharpest) Corners()
    {
        var (sides, tips) = (0, 0);
        double? sharpest = null;
        var ring = Part.Outer;
        for (var i = 0; i < ring.Count; i++)
        {
            var (arriving, leaving) = (ring.At((i + ring.Count - 1) % ring.Count), ring.At(i));
            if (SmoothJoint.GoesOn(arriving, leaving, _near))
                continue;
            sides++;
            var angle = SmoothJoint.AngleOnLeft(arriving, leaving);
            if (!SmoothJoint.IsTip(angle))
                continue;
            tips++;
            sharpest = Math.Min(sharpest ?? angle, angle);
        }
        return (Math.Max(1, sides), tips, sharpest is { } least ? Angle.FromRadians(least) : null);
    }

    /// <summary>
    /// How far a part that runs all round the centre lies from it, half-way between hole and outline; null for others. Every
    /// symmetry leaves such a part where it is, and so its centroid is the centre.
    /// </summary>
    private static double? BandRound(RegionPart part, Point centre) =>
        part.Holes.FirstOrDefault(hole => Winding.Of(hole, centre) != 0) is { } hole
            ? (hole.DistanceTo(centre) + part.Outer.DistanceTo(centre)) / 2
            : null;

    /// <summary>A hair above or below level, to the right, is level: rounding must not move the first part of a ring to its end.</summary>
    private static Angle Turned(Vector from, double near)
    {
        var angle = from.Direction.Normalized();
        var off = Math.Min(angle.Radians, Math.Tau - angle.Radians) * from.Length;
        return off <= near ? Angle.Zero : angle;
    }
}
