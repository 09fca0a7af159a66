using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band that runs round a frame and is mitred at each corner.</summary>
/// <remarks>
/// The corner is worked out first, as Foster says of borders that run round four sides (Carpentry and Woodwork, 1911): of
/// the two ways to begin a band at a mitre, with the place where two repeats meet or with the middle of a repeat, the one
/// is taken that cuts less off the chips at the corners; the sides are then filled between.
/// </remarks>
internal sealed class MitredRing
{
    private readonly FrameOutline _outline;
    private readonly FrameRing _ring;
    private readonly bool _samePitch;
    private readonly bool _turned;
    private readonly double _middle;

    internal MitredRing(FrameOutline outline, FrameRing ring, bool samePitch, bool mirrored)
    {
        _outline = outline;
        _ring = ring;
        _samePitch = samePitch;
        _turned = mirrored && ring.Leans;
        _middle = DividedRule(ring.Band);
        FrameTrouble.RefuseInMitre(ring.Fitting, _turned);
        (Fits, Sides) = Best();
    }

    /// <summary>How each side is fitted.</summary>
    internal IReadOnlyList<MitredFit> Fits { get; }

    /// <summary>The chips of each side.</summary>
    internal IReadOnlyList<MitredSide> Sides { get; }

    /// <summary>Height over the outer edge, in mm, of the line that is divided into repeats.</summary>
    internal double DividedHeight => _ring.From + _middle;

    private (MitredFit[] Fits, MitredSide[] Sides) Best()
    {
        PatternException? trouble = null;
        (MitredFit[] Fits, MitredSide[] Sides)? best = null;
        var least = double.PositiveInfinity;
        for (var phase = 0; phase <= 1; phase++)
        {
            MitredFit[] fits;
            try
            {
                fits = Fitted(phase);
            }
            catch (PatternException none)
            {
                // The other way may need another number of repeats.
                trouble ??= none;
                continue;
            }
            var sides = Carved(fits, settles: !FillsGaps);
            // All corners alike, so that the mirrors stay.
            if (!sides.All(side => side.HoldsTogether))
                sides = Carved(fits, settles: false);
            var cost = sides.Sum(side => side.Cost);
            // As good to a thousandth of a chip is as good: the first one, then, whatever the rounding.
            if (cost >= least - 1e-3)
                continue;
            least = cost;
            best = (fits, sides);
        }
        return best ?? throw trouble!;
    }

    /// <summary>
    /// Whether rows lie in each other's gaps with ground between them: there corners that lie near each other, one drawn onto
    /// the mitre and one not, would use it up.
    /// </summary>
    private bool FillsGaps =>
        _ring.Band.Rows.Any(row =>
            row.Gap > 0
            && _ring.Band.Rows.Any(other => other != row && other.LowerRule == row.LowerRule)
        );

    private MitredSide[] Carved(MitredFit[] fits, bool settles) =>
        [
            .. _outline.Sides.Zip(
                fits,
                (side, fit) =>
                    new MitredSide(side, _ring.Band, _ring.From, _middle, fit, _turned, settles)
            ),
        ];

    private MitredFit[] Fitted(int phase)
    {
        FitSolver[] solvers = [.. _outline.Sides.Select((side, i) => Solver(side, i, phase))];
        double? shared = _samePitch
            ? SharedPitch.Find(
                [.. solvers.Select(solver => solver.Question)],
                _ring.Fitting.PitchStep
            )
            : null;
        return [.. solvers.Zip(_outline.Sides, (solver, side) => Fit(solver, side, shared, phase))];
    }

    private MitredFit Fit(FitSolver solver, FrameSide side, double? shared, int phase)
    {
        var fit = (shared is { } pitch ? solver.AtPitch(pitch) : solver.Solve()).Fit;
        return new(
            side.LengthAt(DividedHeight),
            fit.Parts,
            fit.RepeatsInPart,
            fit.Pitch,
            fit.AskedPitch,
            phase
        );
    }

    private FitSolver Solver(FrameSide side, int index, int phase)
    {
        var length = side.LengthAt(DividedHeight);
        if (!(side.LengthAt(_ring.From) > 0 && side.LengthAt(_ring.To) > 0 && length > 0))
            throw FrameTrouble.NoRoomBetween(_outline, index, _ring);
        var fitting = _ring.Fitting.InMitre(phase, _turned);
        return new(
            length,
            _ring.Band,
            _samePitch ? fitting.ForSharedPitch(_ring.Band) : fitting,
            x => side.Placement.Apply(new Point(side.StartAt(DividedHeight) + x, DividedHeight))
        );
    }

    /// <summary>
    /// The rule nearest to the middle of the carved rows, over the lowest rule: where the pitch does not fit the corner's
    /// angle exactly, it is then off as little to both sides.
    /// </summary>
    private static double DividedRule(TriangleBand band)
    {
        var rules = band
            .Rows.SelectMany(row => (int[])[row.LowerRule, row.UpperRule])
            .Distinct()
            .Order()
            .Select(rule => band.Rules[rule])
            .ToArray();
        var middle = (rules[0] + rules[^1]) / 2;
        // Rules read twice differ by rounding; of two as near the outer one.
        return rules.MinBy(rule => Math.Round(Math.Abs(rule - middle), 9));
    }
}
