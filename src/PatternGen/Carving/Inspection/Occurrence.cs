using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Something found at one place, before what is alike is put together.</summary>
/// <param name="Kind">What.</param>
/// <param name="Chip">Number of the chip in the layout.</param>
/// <param name="Other">Number of the second chip, or -1.</param>
/// <param name="Place">Where.</param>
/// <param name="Value">What was measured.</param>
/// <param name="Limit">What it is held against.</param>
/// <param name="Detail">
/// What remedies or words need beside it: of depths and widths the clearance in mm, of meeting tips the sharpest angle in
/// degrees, off or near edges and lines how far to move or by how much to scale; else 0.
/// </param>
/// <param name="Direction">The way in which moving the (second) chip helps, or how ground that comes to a point lies; else zero.</param>
/// <param name="All">Numbers of all chips whose tips meet; else null.</param>
internal readonly record struct Occurrence(
    FindingKind Kind,
    int Chip,
    int Other,
    Point Place,
    double Value,
    double Limit,
    double Detail = 0,
    Vector Direction = default,
    int[]? All = null
);
