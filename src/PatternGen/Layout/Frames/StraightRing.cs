using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band that runs along each side of a frame from one corner's treatment to the next, with ends of its own.</summary>
internal sealed class StraightRing
{
    private readonly FrameOutline _outline;
    private readonly FrameRing _ring;
    private readonly IReadOnlyList<(double First, double Last)> _taken;
    private readonly Fitting _fitting;

    /// <param name="outline">The frame.</param>
    /// <param name="ring">The band.</param>
    /// <param name="taken">Length that the corners take from each side, at its first and at its last end, in mm.</param>
    /// <param name="samePitch">Whether all sides have one pitch.</param>
    /// <param name="mirrored">Whether a leaning band turns round at the middle of each side.</param>
    internal StraightRing(
        FrameOutline outline,
        FrameRing ring,
        IReadOnlyList<(double First, double Last)> taken,
        bool samePitch,
        bool mirrored
    )
    {
        _outline = outline;
        _ring = ring;
        _taken = taken;
        var turns =
            mirrored && ring.Leans && ring.Fitting is { Ends: EndRule.AsTheyCome, Centre: null };
        _fitting = turns ? ring.Fitting.TurnedAtMiddle() : ring.Fitting;
        if (samePitch)
            _fitting = _fitting.ForSharedPitch(ring.Band);
        FitSolver[] solvers = [.. outline.Sides.Select((_, side) => Solver(side))];
        double? shared = samePitch
            ? SharedPitch.Find([.. solvers.Select(solver => solver.Question)], _fitting.PitchStep)
            : null;
        Plans =
        [
            .. solvers.Select(solver =>
                shared is { } pitch ? solver.AtPitch(pitch) : solver.Solve()
            ),
        ];
    }

    /// <summary>The plan of each side.</summary>
    internal IReadOnlyList<BandPlan> Plans { get; }

    internal double LengthOf(int side) =>
        _outline.Sides[side].Length - _taken[side].First - _taken[side].Last;

    /// <summary>The band along a side, where it lies.</summary>
    /// <param name="side">The side.</param>
    /// <param name="withRules">Whether its rules and grooves are drawn, from end to end.</param>
    internal PatternNode Draw(int side, bool withRules)
    {
        var drawing = new BandDrawing(_ring.Band, _fitting, Plans[side]);
        return new PlacedNode(
            withRules ? drawing.Draw(0, LengthOf(side)) : drawing.Carved(),
            Transform.Move(_taken[side].First, _ring.From).Then(_outline.Sides[side].Placement)
        );
    }

    private FitSolver Solver(int side)
    {
        var length = LengthOf(side);
        if (!(length > 0))
            throw FrameTrouble.NoRoomBeside(_outline, side, _taken[side].First, _taken[side].Last);
        var edge = _outline.Sides[side];
        var first = _taken[side].First;
        return new(
            length,
            _ring.Band,
            _fitting,
            x => edge.Placement.Apply(new Point(first + x, _ring.From))
        );
    }
}
