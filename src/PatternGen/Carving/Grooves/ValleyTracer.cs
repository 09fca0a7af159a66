namespace PatternGen;

/// <summary>Puts corners on valleys, as close as the accuracy asks for.</summary>
internal sealed class ValleyTracer
{
    /// <summary>Share of the chip's clearance below which a node is a tip: all that is left there is rounding.</summary>
    private const double TipShare = 1e-9;

    /// <summary>A valley is halved this often at most: then its pieces are as short as rounding.</summary>
    private const int MostHalvings = 30;

    /// <summary>Pieces that a valley is cut into at once at most.</summary>
    private const int MostPieces = 1 << 12;

    private readonly Roof _roof;
    private readonly GrooveAccuracy _accuracy;

    /// <param name="roof">The chip's roof.</param>
    /// <param name="clearance">How much may be left standing, as clearance in the roof's own frame.</param>
    internal ValleyTracer(Roof roof, double clearance)
    {
        _roof = roof;
        _accuracy = new(clearance, IsConvex(roof));
    }

    /// <summary>Whether a node is a place where the bit enters at depth 0.</summary>
    internal static bool IsTip(Roof roof, RoofNode node) =>
        node.Clearance <= TipShare * roof.Clearance;

    /// <summary>Returns the corners of a valley from its start to its end.</summary>
    internal List<GrooveKnot> Trace(Valley valley)
    {
        var knots = new List<GrooveKnot>();
        Add(knots, valley, At(valley, 0), At(valley, 1), (0, 1), MostHalvings);
        knots.Add(new(At(valley, 1).Point, At(valley, 1).Clearance, 0));
        return knots;
    }

    /// <summary>Where a path passes a node.</summary>
    internal ValleyPlace PlaceOf(RoofNode node)
    {
        if (!IsTip(_roof, node))
            return new(node.Place, Math.Min(node.Clearance, _roof.ClearanceAt(node.Place)));
        // The corner itself, not where rounding puts it.
        var corner = _roof
            .Holes.Prepend(_roof.Outline)
            .SelectMany(ring => ring.Vertices)
            .MinBy(vertex => vertex.Point.DistanceTo(node.Place));
        return new(corner.Point, 0);
    }

    private void Add(
        List<GrooveKnot> knots,
        Valley valley,
        ValleyPlace from,
        ValleyPlace to,
        (double From, double To) shares,
        int halvings
    )
    {
        var (rise, excess) = _accuracy.Of(
            from,
            to,
            valley.OwnPlaceAt,
            shares,
            Beside(valley, from, shares.From) + Beside(valley, to, shares.To)
        );
        if (excess <= 1 || halvings == 0)
        {
            knots.Add(new(from.Point, from.Clearance, rise));
            return;
        }
        // A valley may lie off by more than is allowed: at joints that are all but smooth, rounding decides where it begins. Its
        // corners do not, and between two this near the distance to the outline changes by no more than the way.
        var length = from.Point.DistanceTo(to.Point);
        if (_accuracy.IsShort(length))
        {
            knots.Add(new(from.Point, from.Clearance, _accuracy.RiseOverShort(length)));
            return;
        }
        // The distance from a curve grows with the square of the length.
        var count = (int)Math.Clamp(Math.Ceiling(Math.Sqrt(excess)), 2, MostPieces);
        var last = from;
        for (var i = 1; i <= count; i++)
        {
            var (start, end) = (Share(i - 1), Share(i));
            var next = i < count ? At(valley, end) : to;
            Add(knots, valley, last, next, (start, end), halvings - 1);
            last = next;
        }

        double Share(int piece) => shares.From + (shares.To - shares.From) * piece / count;
    }

    private ValleyPlace At(Valley valley, double share)
    {
        if (share == 0)
            return PlaceOf(valley.Start);
        if (share == 1)
            return PlaceOf(valley.End);
        var place = valley.OwnPlaceAt(share);
        return new(place.Point, Math.Min(place.Clearance, _roof.ClearanceAt(place.Point)));
    }

    /// <summary>How far, at most, a corner is from the valley's own place: nodes that valleys share lie beside some of them by rounding.</summary>
    private static double Beside(Valley valley, ValleyPlace corner, double share)
    {
        if (share is > 0 and < 1)
            return 0;
        var own = valley.OwnPlaceAt(share);
        return own.Point.DistanceTo(corner.Point) + Math.Abs(own.Clearance - corner.Clearance);
    }

    private static bool IsConvex(Roof roof)
    {
        if (roof.Holes.Count > 0)
            return false;
        var outline = roof.Outline;
        for (var i = 0; i < outline.Count; i++)
        {
            var (before, after) = (outline.At(i), outline.At((i + 1) % outline.Count));
            var turn = before.TangentAt(before.Length).Cross(after.TangentAt(0));
            if (before.Bulge < 0 || turn < -1e-12)
                return false;
        }
        return true;
    }
}
