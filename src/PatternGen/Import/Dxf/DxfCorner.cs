namespace PatternGen;

/// <summary>A corner of a polyline or a point of a spline, as the file gives it, coordinate by coordinate.</summary>
internal record struct DxfCorner
{
    internal double X { get; set; }

    internal double Y { get; set; }

    internal double Z { get; set; }

    internal double Bulge { get; set; }
}
