namespace PatternGen.Geometry;

public sealed partial class FreeCurve
{
    /// <summary>The default accuracy in mm: finer than any knife, router or printer follows a line.</summary>
    private const double Fine = 0.01;

    /// <summary>Length along the curve in mm, to 1e-12 of it.</summary>
    /// <remarks>
    /// By Gauss and Legendre's rule on ever smaller parts. The ellipse of half axes 2 and 1 is 9.68844822054768 round.
    /// </remarks>
    public double Length
    {
        get
        {
            double sum = 0;
            for (var i = 0; i < _pieces.Length; i++)
            {
                var piece = i;
                sum += CurveLength.Between(t => Place(piece, t), 0, 1);
            }
            return sum;
        }
    }

    /// <summary>Returns the lines and arcs that follow the curve, each running smoothly into the next.</summary>
    /// <remarks>
    /// No point of the curve is farther than the accuracy from the chain, and none of the chain from the curve. The arcs come
    /// in pairs (biarcs) that start and end on the curve in its direction, as far apart as the accuracy allows, so that there
    /// are about as few as such pairs can be: halving the accuracy makes a quarter more. Straight pieces become lines, and
    /// pieces of circles that very circle. Only where the curve itself has a corner or a cusp, or turns in less than a
    /// ten-thousandth of the accuracy, the chain has a corner too.
    /// </remarks>
    /// <param name="accuracy">Largest distance in mm between curve and chain, from 0.000001 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The accuracy is not from 0.000001 to 1000 mm.</exception>
    /// <exception cref="PatternException">The curve needs more than 100,000 arcs, or is too small for the accuracy.</exception>
    public Chain ToChain(double accuracy = Fine) => new([.. Corners(accuracy), new Vertex(End)]);

    /// <summary>Returns the ring of lines and arcs that follow a closed curve, each running smoothly into the next.</summary>
    /// <remarks>
    /// As <see cref="ToChain"/> does. Whether the ring crosses itself is not looked at: <see cref="Contour.Validate()"/> tells.
    /// </remarks>
    /// <param name="accuracy">Largest distance in mm between curve and contour, from 0.000001 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">The accuracy is not from 0.000001 to 1000 mm.</exception>
    /// <exception cref="PatternException">The curve is open, needs more than 100,000 arcs, or is too small for the accuracy.</exception>
    public Contour ToContour(double accuracy = Fine)
    {
        if (!IsClosed)
            throw new PatternException(
                $"A contour is closed, but the curve ends {Guard.Text(Start.DistanceTo(End))} mm from where it starts.",
                End,
                [
                    "ToChain, for an open run",
                    "a curve that ends where it starts, such as ThroughClosed",
                ]
            );
        var corners = Corners(accuracy);
        return corners.Count > 1 ? new(corners) : throw TooSmall(accuracy);
    }

    /// <summary>The corners of the run without its end.</summary>
    private List<Vertex> Corners(double accuracy)
    {
        Guard.Within(accuracy, 1e-6, 1e3);
        var corners = new List<Vertex>();
        var smooth = new List<CurveStretch>();
        for (var i = 0; i < _pieces.Length; i++)
        {
            var piece = i;
            if (!_pieces[i].IsStraight)
            {
                smooth.Add(new(at => Place(piece, at - piece), i, i + 1));
                continue;
            }
            Follow();
            corners.Add(new(Place(i, 0).Point));
        }
        Follow();
        if (corners.Count > 0)
            return corners;
        return Start.DistanceTo(End) > 0 ? [new(Start)] : throw TooSmall(accuracy);

        void Follow()
        {
            if (smooth.Count == 0)
                return;
            // The place at the very end of the stretches belongs to the last of them.
            var last = smooth[^1].To;
            foreach (
                var segment in BiarcFitter.Fit(
                    at => at < last ? Place(at) : smooth[^1].Curve(at),
                    smooth,
                    accuracy
                )
            )
                corners.Add(new(segment.Start, segment.Bulge));
            smooth.Clear();
        }
    }

    private PatternException TooSmall(double accuracy) =>
        new(
            $"The curve is too small to follow to {Guard.Text(accuracy)} mm: it is {Guard.Text(Length)} mm long.",
            Start,
            ["a finer accuracy", "a larger curve"]
        );
}
