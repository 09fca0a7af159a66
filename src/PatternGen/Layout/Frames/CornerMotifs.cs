using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The motifs in the corners of a frame, and the room that they take.</summary>
internal sealed class CornerMotifs
{
    private readonly Frame _frame;
    private readonly FrameDesign _design;
    private readonly double _size;
    private readonly double _middle;

    internal CornerMotifs(Frame frame, FrameDesign design)
    {
        _frame = frame;
        _design = design;
        _size = design.BlockSize ?? frame.MemberWidth;
        _middle = (design.Rings[0].From + design.Rings[^1].To) / 2;
        for (var corner = 0; corner < frame.Outline.Corners.Count; corner++)
            RefuseTooLarge(corner);
    }

    /// <summary>Length in mm that a corner takes from a side: up to the block, or to where the bands would meet, and the margin.</summary>
    /// <param name="slope">How far the mitre leaves the side for each mm inwards.</param>
    internal double TakenAt(double slope)
    {
        var block = _middle * slope + _size / 2;
        var outer = _design.Rings[0].From * slope;
        var inner = _design.Rings[^1].To * slope;
        return Math.Max(block, Math.Max(outer, inner)) + (_design.Margin ?? 0);
    }

    internal IEnumerable<PatternNode> Draw() =>
        _frame.Outline.Corners.Select(
            (_, corner) => (PatternNode)new PlacedNode(_design.Motif!.Root, Placement(corner))
        );

    private Transform Placement(int corner)
    {
        var centre = FrameOutline.PointAt(_frame.Outline.Sides[corner], _middle);
        var there = Transform.Move(centre - Point.Origin);
        if (_design.MotifTurn == FrameTurn.Upright)
            return there;
        // The motif's upper edge, a quarter turn on from x, points away from the wood.
        var turn = Transform.Rotate(_frame.Outline.Bisector(corner) + Angle.FromDegrees(90));
        // Every second corner sees its motif in a mirror, or a whirl would make the frame whirl.
        var mirrors = _design.Mirrored && _frame.Outline.Corners.Count % 2 == 0 && corner % 2 == 1;
        return (mirrors ? Transform.MirrorLeftRight().Then(turn) : turn).Then(there);
    }

    /// <summary>Refuses a motif that reaches beyond its place, seen from both sides that meet in the corner.</summary>
    private void RefuseTooLarge(int corner)
    {
        var sides = _frame.Outline.Sides;
        var before = sides[(corner + sides.Count - 1) % sides.Count];
        RefuseTooLarge(corner, sides[corner].Placement.Inverse());
        RefuseTooLarge(corner, before.Placement.Inverse().Then(before.Mirrored));
    }

    /// <param name="corner">The corner.</param>
    /// <param name="seen">Takes the wood to where the corner is at (0, 0), a side along x and the wood above it.</param>
    private void RefuseTooLarge(int corner, Transform seen)
    {
        if (
            _design.Motif!.Root.Bounds(Placement(corner).Then(seen), LayerSet.Drawn)
            is not { } drawn
        )
            return;
        var side = _frame.Outline.Sides[corner];
        var centre = new Point(side.StartAt(_middle), _middle);
        List<(double Reach, double Room)> ways =
        [
            (drawn.Max.X - centre.X, _size / 2),
            (drawn.Max.Y - centre.Y, _frame.MemberWidth - _middle),
        ];
        // Where the corner points in, there is wood beyond the side's line, too.
        if (side.First > 0)
            ways.Add((centre.Y - drawn.Min.Y, _middle));
        var over = ways.Max(way => way.Reach - way.Room);
        if (over <= Tolerance.ForExtent(_frame.MemberWidth).Merge)
            return;
        var share = ways.Where(way => way.Reach > 0).Min(way => way.Room / way.Reach);
        throw new PatternException(
            $"The corner motif reaches {Guard.Text(over)} mm beyond its place: a block of {Guard.Text(_size)} mm in a member {Guard.Text(_frame.MemberWidth)} mm wide.",
            FrameOutline.PointAt(side, _middle),
            [
                $"a motif scaled to {FitTrouble.Down(share)} of its size",
                $"a block of {FitTrouble.Up(2 * ways.Max(way => way.Reach))} mm, and members as wide with the bands in their middle",
            ]
        );
    }
}
