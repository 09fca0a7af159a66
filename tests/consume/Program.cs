using PatternGen;

Rail.Of(length: 742.5, width: 36)
    .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)
    .EndMargins(6)
    .Save("rail.svg");
