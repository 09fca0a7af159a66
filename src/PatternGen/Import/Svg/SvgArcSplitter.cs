using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Splits arcs into pieces of about a quarter turn at most.</summary>
/// <remarks>
/// An arc of nearly a half turn is hardly held by its radius: rounding a radius of 20 by 0.0005 moves its middle by 0.14.
/// The object model rounds radii to single floats, so arcs are split before they get there. The conversion from ends to
/// centre is that of the SVG implementation notes.
/// </remarks>
internal static class SvgArcSplitter
{
    /// <summary>Draws the arc; one without an extent is a line, and one between equal ends nothing.</summary>
    internal static void Draw(Point from, SvgArc arc, Point to, ISvgPathSink sink)
    {
        if (from == to)
            return;
        var (rx, ry) = (Math.Abs(arc.RadiusX), Math.Abs(arc.RadiusY));
        if (rx == 0 || ry == 0)
        {
            sink.LineTo(to);
            return;
        }
        // The ellipse as the unit circle: turned back, then each axis divided by its radius.
        var shape = Affine.Turn(arc.Turn) * Affine.Scale(rx, ry);
        var middle = from.Towards(to, 0.5);
        var half = Unshaped((from - to) / 2, arc.Turn, rx, ry);
        // Radii that don't reach from end to end grow until they do.
        var growth = Math.Max(1, half.Length);
        var distance = Math.Sqrt(Math.Max(0, (growth - half.Length) * (growth + half.Length)));
        var towards = arc.IsLarge == arc.IsSweeping ? -distance : distance;
        var centre = half.Length > 0 ? -half.Left / half.Length * towards : Vector.Zero;
        // On the unit circle, seen from the centre, the ends are half and -half moved by it.
        var (start, end) = ((half - centre) / growth, (-half - centre) / growth);
        var sweep = Sweep(start, end, arc.IsSweeping);
        var pieces = (int)Math.Ceiling(Math.Abs(sweep) / (Math.PI / 2) - Slack);
        var piece = arc with { RadiusX = rx * growth, RadiusY = ry * growth, IsLarge = false };
        var first = start.Direction.Radians;
        for (var i = 1; i < pieces; i++)
        {
            var (sin, cos) = Math.SinCos(first + sweep * i / pieces);
            var seen = new Point(centre.X + growth * cos, centre.Y + growth * sin);
            sink.ArcTo(piece, shape.Apply(seen) + (middle - Point.Origin));
        }
        sink.ArcTo(piece, to);
    }

    /// <summary>Quarter turns whose ends were rounded by a writer stay one piece: a thousandth of them.</summary>
    private const double Slack = 1e-3;

    private static Vector Unshaped(Vector vector, double degrees, double rx, double ry)
    {
        var turned = Affine.Turn(-degrees).Apply(Point.Origin + vector);
        return new(turned.X / rx, turned.Y / ry);
    }

    private static double Sweep(Vector start, Vector end, bool isSweeping)
    {
        var sweep = Math.Atan2(start.Cross(end), start.Dot(end));
        if (isSweeping && sweep < 0)
            sweep += Math.Tau;
        else if (!isSweeping && sweep > 0)
            sweep -= Math.Tau;
        return sweep;
    }
}
