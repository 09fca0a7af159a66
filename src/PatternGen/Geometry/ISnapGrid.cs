namespace PatternGen.Geometry;

/// <summary>What snapping and printing ask of a grid.</summary>
internal interface ISnapGrid
{
    /// <summary>Returns the nearest point of the grid.</summary>
    Point Snap(Point point);

    /// <summary>About how many lines of the grid pass through a rectangle.</summary>
    double LineCount(Extents room);

    /// <summary>What would bring that number down to a given one, in words.</summary>
    string Coarser(Extents room, int most);

    /// <summary>Returns the lines of the grid, those that reach into a rectangle, longer than it if need be.</summary>
    IEnumerable<SegmentRun> Lines(Extents room);
}
