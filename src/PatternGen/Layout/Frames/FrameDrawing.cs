using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A frame worked out: the fit of each side, and the drawing.</summary>
internal sealed class FrameDrawing
{
    private readonly Frame _frame;
    private readonly FrameDesign _design;
    private readonly FrameOutline _outline;
    private readonly MitreLine[] _mitres;
    private readonly List<SideFit> _fits = [];
    private readonly List<PatternNode> _rings = [];
    private readonly CornerMotifs? _motifs;

    internal FrameDrawing(Frame frame, FrameDesign design)
    {
        _frame = frame;
        _design = design;
        _outline = frame.Outline;
        _mitres = _outline.Mitres();
        if (design.Corner == FrameCorner.Block)
            _motifs = new(frame, design);
        for (var ring = 0; ring < design.Rings.Count; ring++)
        {
            FrameTrouble.RefuseCentreOff(frame, design.Rings[ring]);
            _rings.Add(
                design.Corner switch
                {
                    FrameCorner.Mitre => Mitred(ring),
                    FrameCorner.Bent => Bent(ring),
                    _ => Straight(ring),
                }
            );
        }
    }

    /// <summary>The fits, band by band from the outermost, and side by side.</summary>
    internal IReadOnlyList<SideFit> Fits => _fits;

    internal PatternNode Root()
    {
        var carved = GroupNode.Of([.. _rings, .. Motifs()]);
        RoundedWood.RefuseOff(_frame, carved);
        return GroupNode.Of(_frame.Draw(_design.Corner, _design.Through), carved);
    }

    private IEnumerable<PatternNode> Motifs() => _motifs?.Draw() ?? [];

    private PatternNode Mitred(int index)
    {
        var ring = _design.Rings[index];
        var mitred = new MitredRing(_outline, ring, _design.SamePitch, _design.Mirrored);
        var drawing = new RingDrawing(_outline, ring, _mitres);
        var sides = new PatternNode[_outline.Sides.Count];
        for (var side = 0; side < sides.Length; side++)
        {
            var (fit, chips) = (mitred.Fits[side], mitred.Sides[side]);
            _fits.Add(SideFit.Mitred(side + 1, index + 1, fit, chips.LeftOutAtMiddle));
            List<PatternNode> nodes = [drawing.Rules(side)];
            foreach (var row in chips.Rows)
                nodes.Add(drawing.Row(side, row));
            if (ring.Fitting.Centre is { } centre)
                nodes.Add(CentreOf(side, ring, mitred.DividedHeight, centre));
            sides[side] = Member(side, GroupNode.Of(nodes));
        }
        return GroupNode.Of([drawing.Grooves(), .. sides]);
    }

    private PatternNode Bent(int index)
    {
        var bent = new BentRing(_frame, _design.Rings[index], _design.BendRadiusOn(_frame));
        _fits.Add(SideFit.Round(index + 1, bent.Length, bent.Fit));
        return bent.Draw();
    }

    /// <summary>The centre motif, in the gap that the divided line has in its middle: between unlike corners, other lines have it elsewhere.</summary>
    private PlacedNode CentreOf(int side, FrameRing ring, double divided, Pattern centre)
    {
        var edge = _outline.Sides[side];
        var middle = edge.StartAt(divided) + edge.LengthAt(divided) / 2;
        var height = ring.From + ring.Band.Height / 2;
        return new(centre.Root, Transform.Move(middle, height).Then(edge.Placement));
    }

    private PatternNode Straight(int index)
    {
        var ring = _design.Rings[index];
        var straight = new StraightRing(
            _outline,
            ring,
            [.. _outline.Sides.Select((_, side) => Taken(side, ring))],
            _design.SamePitch,
            _design.Mirrored
        );
        var drawing = new RingDrawing(_outline, ring, _mitres);
        var wraps = _design.Corner == FrameCorner.Wrapped;
        var sides = new PatternNode[_outline.Sides.Count];
        for (var side = 0; side < sides.Length; side++)
        {
            var length = straight.LengthOf(side);
            _fits.Add(SideFit.Straight(side + 1, index + 1, length, straight.Plans[side].Fit));
            var band = straight.Draw(side, withRules: !wraps);
            sides[side] = Member(
                side,
                wraps
                    ? GroupNode.Of(drawing.Rules(side), Wrapping(drawing, ring, side), band)
                    : band
            );
        }
        return wraps ? GroupNode.Of([drawing.Grooves(), .. sides]) : GroupNode.Of(sides);
    }

    private (double First, double Last) Taken(int side, FrameRing ring)
    {
        var edge = _outline.Sides[side];
        switch (_design.Corner)
        {
            case FrameCorner.Block:
                return (_motifs!.TakenAt(edge.First), _motifs.TakenAt(edge.Last));
            case FrameCorner.Wrapped:
                FrameTrouble.RefuseReflex(_outline, "A band's own corner piece");
                var reach = ring.From + WrappedCorner.Reach(ring.Band);
                return (reach * edge.First, reach * edge.Last);
            default:
                var runsThrough =
                    _outline.IsUpright(side) == (_design.Through == FrameThrough.Upright);
                var stop = _frame.IsOneBoard ? _design.Rings[^1].To : _frame.MemberWidth;
                var taken = runsThrough
                    ? _design.Margin ?? _design.Rings[0].From
                    : stop + (_design.Margin ?? 0);
                return (taken, taken);
        }
    }

    /// <summary>The corner pieces' halves on one side.</summary>
    private MotifNode Wrapping(RingDrawing drawing, FrameRing ring, int side)
    {
        var edge = _outline.Sides[side];
        var first = WrappedCorner.Chips(ring.Band, ring.From, edge.First);
        var last = WrappedCorner
            .Chips(ring.Band, ring.From, edge.Last)
            .Select(corners =>
                (Point[])
                    [
                        .. corners
                            .AsEnumerable()
                            .Reverse()
                            .Select(p => new Point(edge.Length - p.X, p.Y)),
                    ]
            );
        return RingDrawing.Chips(
            first
                .Concat(last)
                .Select(corners => new ChipShape(
                    Contour.Polygon(corners.Select(corner => drawing.Place(side, corner)))
                ))
        );
    }

    /// <summary>A side of a frame put together is a piece of wood for itself, and its grain runs with it.</summary>
    private PatternNode Member(int side, PatternNode node) =>
        _frame.IsOneBoard
            ? node
            : new MemberNode(node, MemberGrain.AlongX.Placed(_outline.Sides[side].Placement));
}
