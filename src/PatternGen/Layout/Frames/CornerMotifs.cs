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

    private void RefuseTooLarge(int corner)
    {
        var side = _frame.Outline.Sides[corner];
        if (
            _design.Motif!.Root.Bounds(
                Placement(corner).Then(side.Placement.Inverse()),
                LayerSet.Drawn
            )
            is not { } drawn
        )
            return;
        var rounding = Tolerance.ForExtent(_frame.MemberWidth).Merge;
        var beside = drawn.Max.X - (_middle * side.First + _size / 2);
        var within = drawn.Max.Y - _frame.MemberWidth;
        var beyond = side.First > 0 ? -drawn.Min.Y : double.NegativeInfinity;
        var over = Math.Max(beside, Math.Max(within, beyond));
        if (over <= rounding)
            return;
        var size = Math.Max(drawn.Width, drawn.Height);
        throw new PatternException(
            $"The corner motif is {Guard.Text(size)} mm across and reaches {Guard.Text(over)} mm beyond its place: a block of {Guard.Text(_size)} mm in a member {Guard.Text(_frame.MemberWidth)} mm wide.",
            FrameOutline.PointAt(side, _middle),
            [
                $"a motif scaled to {Guard.Text(Math.Floor(1e3 * (size - 2 * over) / size) / 1e3)} of its size",
                $"a block of {Guard.Text(Math.Ceiling(1e3 * size) / 1e3)} mm, and members as wide",
            ]
        );
    }
}
