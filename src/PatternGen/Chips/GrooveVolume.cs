namespace PatternGen;

/// <summary>The volume of a groove, in closed form.</summary>
/// <remarks>
/// <para>
/// Where the clearance h changes by k for each mm, the wall at a place is reached along the direction n = ±cN - kT, where
/// T and N are tangent and normal of the path and c² + k² = 1, over the length h, and depth falls evenly along it. In the
/// coordinates (s, q) of place and length along n, the surface element is (c ∓ qκ) ds dq, and on both sides together the
/// curvature κ cancels: the volume over a slope of 1 is ∫ c h² ds.
/// </para>
/// <para>
/// Between two pieces the directions n differ. Where they spread by an angle β on one side, a sector of a cone of clearance
/// ρ fills the gap, with βρ³/6. Where they cross inside a corner that turns by φ, each side loses the wedge beyond the
/// bisector, ∫ (ρ - u) u tan(φ/2) du over u from 0 to ρ, tan(φ/2) ρ³/6.
/// </para>
/// </remarks>
internal static class GrooveVolume
{
    /// <summary>Volume in mm³ if the walls rise 1 for 1.</summary>
    internal static double UnitSlope(ReadOnlySpan<GroovePiece> pieces, bool isRing)
    {
        double volume = 0;
        for (var i = 0; i < pieces.Length; i++)
        {
            volume += Along(pieces[i]);
            if (i + 1 < pieces.Length)
                volume += Between(pieces[i], pieces[i + 1]);
            else if (isRing)
                volume += Between(pieces[i], pieces[0]);
        }
        return volume;
    }

    private static double Along(in GroovePiece piece)
    {
        var (start, end) = (piece.Start, piece.End);
        return piece.Across * piece.Length * (start * start + start * end + end * end) / 3;
    }

    private static double Between(in GroovePiece before, in GroovePiece after)
    {
        var cube = after.Start * after.Start * after.Start;
        var spread = Math.Asin(before.Growth) - Math.Asin(after.Growth);
        var arriving = before.Segment.TangentAt(before.Length);
        var leaving = after.Segment.TangentAt(0);
        var turn = Math.Abs(Math.Atan2(arriving.Cross(leaving), arriving.Dot(leaving)));
        return cube / 6 * (2 * spread + turn - 2 * Math.Tan(turn / 2));
    }
}
