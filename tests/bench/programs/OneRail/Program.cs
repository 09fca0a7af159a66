using PatternGen;

// The main job as a program of its own: fit, SVG and DXF of one rail, into the folder given.
var border = Rail.Of(length: 742.5, width: 36)
    .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
    .EndMargins(6);
border.Save(Path.Combine(args[0], "rail.svg"));
border.Save(Path.Combine(args[0], "rail.dxf"));
