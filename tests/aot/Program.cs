using PatternGen;

// Goes the whole way, from a measured rail to both kinds of file, in a program compiled ahead of time.
var border = Rail.Of(length: 742.5, width: 36)
    .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
    .EndMargins(6);
border.Save("rail.svg");
border.Save("rail.dxf");
Console.WriteLine(border.Fit);

// And back: reading an SVG must not need what the compiler cut away.
Console.WriteLine(
    Import.Drawing("rail.svg", ImportSettings.Default.WithLayers("chips")).Contours.Count
);
