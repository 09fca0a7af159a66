namespace PatternGen.Tests.Output.Dxf;

/// <summary>One line or arc of a shape, measured through its centre and angles, unlike in the library.</summary>
internal readonly record struct DxfPiece(string Layer, DxfCorner From, DxfCorner To)
{
    public double Bulge => From.Bulge;

    public double Chord => From.DistanceTo(To);

    public bool IsLine => Bulge == 0;

    /// <summary>R = c (1 + b²) / (4 |b|), from the DXF Reference's definition of the bulge.</summary>
    public double Radius => Chord * (1 + Bulge * Bulge) / (4 * Math.Abs(Bulge));

    public double Length => IsLine ? Chord : Radius * 4 * Math.Atan(Math.Abs(Bulge));

    /// <summary>The point half-way along: half the bulge times the chord to the right of the chord's middle.</summary>
    public (double X, double Y) Middle =>
        (
            (From.X + To.X) / 2 + (To.Y - From.Y) * Bulge / 2,
            (From.Y + To.Y) / 2 - (To.X - From.X) * Bulge / 2
        );

    public (double X, double Y) Centre
    {
        get
        {
            var towards = (1 - Bulge * Bulge) / (4 * Bulge);
            var (x, y) = (To.X - From.X, To.Y - From.Y);
            return ((From.X + To.X) / 2 - y * towards, (From.Y + To.Y) / 2 + x * towards);
        }
    }

    /// <summary>Angles of an arc, from the lower one counter-clockwise to the upper one, the lower in [0, 2π).</summary>
    public (double Lower, double Upper) Angles
    {
        get
        {
            var start = Bulge > 0 ? From : To;
            var lower = Math.Atan2(start.Y - Centre.Y, start.X - Centre.X);
            if (lower < 0)
                lower += Math.Tau;
            return (lower, lower + 4 * Math.Atan(Math.Abs(Bulge)));
        }
    }

    public (double Left, double Low, double Right, double High) Box
    {
        get
        {
            var box = (
                Left: Math.Min(From.X, To.X),
                Low: Math.Min(From.Y, To.Y),
                Right: Math.Max(From.X, To.X),
                High: Math.Max(From.Y, To.Y)
            );
            if (IsLine)
                return box;
            var (lower, upper) = Angles;
            for (var quarter = 0; quarter < 8; quarter++)
            {
                var angle = quarter * Math.PI / 2;
                if (angle < lower || angle > upper)
                    continue;
                var x = Centre.X + Radius * Math.Cos(angle);
                var y = Centre.Y + Radius * Math.Sin(angle);
                box = (
                    Math.Min(box.Left, x),
                    Math.Min(box.Low, y),
                    Math.Max(box.Right, x),
                    Math.Max(box.High, y)
                );
            }
            return box;
        }
    }

    /// <summary>Length in mm that both have in common.</summary>
    public double Overlap(DxfPiece other, double tolerance)
    {
        if (IsLine != other.IsLine)
            return 0;
        return IsLine ? OverlapOfLines(other, tolerance) : OverlapOfArcs(other, tolerance);
    }

    private double OverlapOfLines(DxfPiece other, double tolerance)
    {
        var (x, y) = ((To.X - From.X) / Chord, (To.Y - From.Y) / Chord);
        var from = From;
        double Across(DxfCorner at) => Math.Abs(x * (at.Y - from.Y) - y * (at.X - from.X));
        double Along(DxfCorner at) => x * (at.X - from.X) + y * (at.Y - from.Y);
        if (Across(other.From) > tolerance || Across(other.To) > tolerance)
            return 0;
        var (a, b) = (Along(other.From), Along(other.To));
        return Math.Max(0, Math.Min(Chord, Math.Max(a, b)) - Math.Max(0, Math.Min(a, b)));
    }

    private double OverlapOfArcs(DxfPiece other, double tolerance)
    {
        var apart = double.Hypot(Centre.X - other.Centre.X, Centre.Y - other.Centre.Y);
        if (apart > tolerance || Math.Abs(Radius - other.Radius) > tolerance)
            return 0;
        double common = 0;
        foreach (var turn in new[] { -Math.Tau, 0, Math.Tau })
            common += Math.Max(
                0,
                Math.Min(Angles.Upper, other.Angles.Upper + turn)
                    - Math.Max(Angles.Lower, other.Angles.Lower + turn)
            );
        return common * Radius;
    }
}
