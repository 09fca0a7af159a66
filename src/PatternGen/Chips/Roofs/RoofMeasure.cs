namespace PatternGen;

/// <summary>Sums over the walls of a roof, by Gauss's quadrature along the sites.</summary>
/// <remarks>
/// Below a stretch dl of a side with curvature k, the wall reaches r far, and covers (r - k r²/2) dl; the distances from the
/// outline add up to (r²/2 - k r³/3) dl. Round a corner it is (r²/2) dψ and (r³/3) dψ. Of straight sides these are
/// polynomials, and the sums are exact; others are halved until they agree to <see cref="Accuracy"/>.
/// </remarks>
internal readonly struct RoofMeasure(RoofWork work)
{
    /// <summary>
    /// Share of a whole piece's sum by which that of a part may differ from those of its halves. Doubles hold little more; and it is
    /// a share of the whole, or parts whose digits are rounding would be halved without end.
    /// </summary>
    private const double Accuracy = 1e-12;

    /// <summary>Halvings at most: where the valley runs into a cusp, quadrature converges slowly, but there is nothing left there.</summary>
    private const int MostHalvings = 14;

    private static readonly double[] Places =
    [
        0.1834346424956498,
        0.5255324099163290,
        0.7966664774136267,
        0.9602898564975363,
    ];

    private static readonly double[] Weights =
    [
        0.3626837833783620,
        0.3137066458778873,
        0.2223810344533745,
        0.1012285362903763,
    ];

    /// <summary>What the walls cover as seen from above, in mm², and the sum of the distances from the outline over it, in mm³.</summary>
    internal (double Area, double Moment) Sum()
    {
        double area = 0;
        double moment = 0;
        for (var site = 0; site < work.Sites.Span.Length; site++)
        {
            var (wallArea, wallMoment) = SumOf(site);
            area += wallArea;
            moment += wallMoment;
        }
        return (area, moment);
    }

    /// <summary>The same of one wall.</summary>
    internal (double Area, double Moment) SumOf(int site)
    {
        double area = 0;
        double moment = 0;
        var pieces = work.PiecesOf(site);
        if (pieces.Length > 0 && work.Sites.SmoothTurnAfter(site) is var turn and not 0)
        {
            // The walls of two sides that go on smoothly leave a cone between them, or overlap by one.
            var r = work.RadiusAt(site, pieces[^1], pieces[^1].To);
            area -= turn * r * r / 2;
            moment -= turn * r * r * r / 3;
        }
        foreach (var piece in pieces)
        {
            var whole = Gauss(site, piece, piece.From, piece.To);
            var sum = work.Sites[site].IsStraight
                ? whole
                : Halved(site, piece, piece.From, piece.To, whole, whole, MostHalvings);
            area += sum.Area;
            moment += sum.Moment;
        }
        return (area, moment);
    }

    private (double Area, double Moment) Halved(
        int site,
        in RoofPiece piece,
        double from,
        double to,
        (double Area, double Moment) part,
        (double Area, double Moment) whole,
        int halvings
    )
    {
        var middle = 0.5 * (from + to);
        var first = Gauss(site, piece, from, middle);
        var second = Gauss(site, piece, middle, to);
        var (area, moment) = (first.Area + second.Area, first.Moment + second.Moment);
        if (
            halvings == 0
            || (
                Math.Abs(area - part.Area) <= Accuracy * Math.Abs(whole.Area)
                && Math.Abs(moment - part.Moment) <= Accuracy * Math.Abs(whole.Moment)
            )
        )
            return (area, moment);
        first = Halved(site, piece, from, middle, first, whole, halvings - 1);
        second = Halved(site, piece, middle, to, second, whole, halvings - 1);
        return (first.Area + second.Area, first.Moment + second.Moment);
    }

    private (double Area, double Moment) Gauss(int site, in RoofPiece piece, double from, double to)
    {
        var (middle, half) = (0.5 * (from + to), 0.5 * (to - from));
        double area = 0;
        double moment = 0;
        for (var i = 0; i < Places.Length; i++)
        {
            var before = Strip(site, piece, middle - half * Places[i]);
            var after = Strip(site, piece, middle + half * Places[i]);
            area += Weights[i] * (before.Area + after.Area);
            moment += Weights[i] * (before.Moment + after.Moment);
        }
        return (area * half, moment * half);
    }

    private (double Area, double Moment) Strip(int site, in RoofPiece piece, double s)
    {
        ref readonly var from = ref work.Sites[site];
        var r = work.RadiusAt(site, piece, s);
        var step = 1 / from.Weight(s);
        return from.IsCorner
            ? (step * r * r, 2 * step * r * r * r / 3)
            : (
                step * r * (1 - from.Curvature * r / 2),
                step * r * r * (0.5 - from.Curvature * r / 3)
            );
    }
}
