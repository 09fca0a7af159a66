using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds where a line runs from one wall of a chip to another, so that between these places its depth is one smooth curve.</summary>
internal static class RoofCrossings
{
    /// <summary>Stretches of a valley that is looked at for crossings: a conic meets a line twice at most, and these are short enough to part them.</summary>
    private const int Stretches = 24;

    /// <summary>Halvings that find a crossing to the last digits.</summary>
    private const int Halvings = 60;

    /// <summary>Adds the places where the line crosses valleys, or the boundary of two walls that go on into each other.</summary>
    internal static void Add(List<double> places, SectionLine line, WalledChip chip)
    {
        foreach (var valley in chip.Roof.Valleys)
            AddValley(places, line, valley, chip.Placement);
        foreach (var wall in chip.Roof.Walls)
        {
            // The walls beside a corner that points in meet its cone along these.
            AddFall(places, line, wall.FallAt(0), chip.Placement);
            AddFall(places, line, wall.FallAt(1), chip.Placement);
        }
    }

    private static void AddFall(
        List<double> places,
        SectionLine line,
        WallFall fall,
        Transform placement
    )
    {
        var (edge, foot) = (placement.Apply(fall.Edge), placement.Apply(fall.Valley));
        if (edge.DistanceTo(foot) > line.Near)
            line.AddCrossings(places, Chain.Line(edge, foot));
    }

    private static void AddValley(
        List<double> places,
        SectionLine line,
        Valley valley,
        Transform placement
    )
    {
        var steps = valley.Kind == ValleyKind.Line ? 1 : Stretches;
        var sides = new double[steps + 1];
        for (var i = 0; i <= steps; i++)
        {
            sides[i] = Side((double)i / steps);
            // A valley along the line, and one that ends on it.
            if (Math.Abs(sides[i]) <= line.Near)
                places.Add(line.Along(PlaceAt((double)i / steps)));
        }
        for (var i = 0; i < steps; i++)
            AddBetween((double)i / steps, (i + 1.0) / steps);
        for (var i = 1; i < steps; i++)
            if (IsNearest(i) && Turned(i) is { } nearest)
            {
                AddBetween((i - 1.0) / steps, nearest);
                AddBetween(nearest, (i + 1.0) / steps);
            }

        Point PlaceAt(double share) => placement.Apply(valley.PlaceAt(share).Point);

        double Side(double share) => line.Side(PlaceAt(share));

        void AddBetween(double from, double to)
        {
            var first = Side(from);
            if (first * Side(to) >= 0)
                return;
            for (var i = 0; i < Halvings; i++)
            {
                var middle = 0.5 * (from + to);
                if (Side(middle) * first > 0)
                    from = middle;
                else
                    to = middle;
            }
            places.Add(line.Along(PlaceAt(from)));
        }

        // Whether the valley comes near the line and goes away again without having crossed it at a place looked at.
        bool IsNearest(int i) =>
            sides[i - 1] * sides[i] > 0
            && sides[i] * sides[i + 1] > 0
            && Math.Abs(sides[i]) <= Math.Abs(sides[i - 1])
            && Math.Abs(sides[i]) <= Math.Abs(sides[i + 1]);

        // Where it is nearest, if it has crossed the line by then.
        double? Turned(int i)
        {
            var sign = Math.Sign(sides[i]);
            var (from, to) = ((i - 1.0) / steps, (i + 1.0) / steps);
            for (var n = 0; n < Halvings; n++)
            {
                var (a, b) = (from + (to - from) / 3, to - (to - from) / 3);
                if (sign * Side(a) < sign * Side(b))
                    to = b;
                else
                    from = a;
            }
            return sign * Side(from) < 0 ? from : null;
        }
    }
}
