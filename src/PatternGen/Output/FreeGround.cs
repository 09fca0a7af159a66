using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The wood that nothing is cut from, drawn or written on. Rules and shoulders do not cross it either.</summary>
internal sealed class FreeGround
{
    private const LayerSet Marked = LayerSet.Chips | LayerSet.LineCuts | LayerSet.LayoutLines;

    private readonly Pattern _pattern;
    private readonly double _clearance;
    private readonly IReadOnlyList<Contour> _wood;
    private readonly Extents? _taken;

    /// <param name="pattern">A pattern with an outline of the wood.</param>
    /// <param name="clearance">Distance kept in mm from the wood's edge and from what is cut.</param>
    internal FreeGround(Pattern pattern, double clearance)
    {
        _pattern = pattern;
        _clearance = clearance;
        _wood = pattern.Stock;
        _taken = DrawingSurvey.Of(pattern, Marked);
    }

    /// <summary>Whether a rectangle lies on it.</summary>
    internal bool Holds(Extents box)
    {
        var room = box.Grown(_clearance);
        return LiesOnWood(room) && IsClear(room);
    }

    private bool LiesOnWood(Extents room)
    {
        var turns = _wood.Sum(outline => outline.Contains(room.Centre) ? Turns(outline) : 0);
        return turns > 0
            && !Sides(room).Any(CrossesEdge)
            && !_wood.Any(edge => HasCornerIn(edge, room));
    }

    /// <summary>Outlines count up, holes in them count down.</summary>
    private static int Turns(Contour outline) => outline.IsCounterClockwise ? 1 : -1;

    private bool CrossesEdge(Segment side) =>
        _wood.Any(outline =>
            outline.Segments.Any(edge => edge.Intersect(side).Kind != IntersectionKind.None)
        );

    private static bool HasCornerIn(Contour edge, Extents room) =>
        edge.Vertices.Any(corner => room.Contains(corner.Point));

    private bool IsClear(Extents room)
    {
        // What is cut lies within these bounds; only a place inside them needs every chip looked at.
        if (_taken is not { } taken || !taken.Touches(room))
            return true;
        var probe = new Probe(room);
        _pattern.Root.Draw(probe, Marked | LayerSet.Labels);
        return !probe.IsTouched;
    }

    private static IEnumerable<Segment> Sides(Extents room) =>
        Contour.Rectangle(room.Min, room.Max).Segments;

    /// <summary>Notices pieces whose extents touch a rectangle.</summary>
    private sealed class Probe(Extents room) : SelectiveSink
    {
        internal bool IsTouched { get; private set; }

        public override void Chip(in PlacedChip chip)
        {
            for (var ring = 0; ring < chip.RingCount; ring++)
                Look(chip.Ring(ring), closed: true, 0);
            // Where no side reaches, the rectangle lies in the chip as a whole, or clear of it.
            IsTouched = IsTouched || Surrounds(chip);
        }

        public override void LayoutLine(ReadOnlySpan<Vertex> path) => Look(path, closed: false, 0);

        public override void LineCut(
            ReadOnlySpan<Vertex> path,
            double width,
            GrooveProfile profile
        ) => Look(path, closed: false, width / 2);

        public override void Label(Label label) => IsTouched |= room.Touches(label.Box());

        private void Look(ReadOnlySpan<Vertex> run, bool closed, double reach)
        {
            for (var i = 0; i < run.Length && !IsTouched; i++)
                if (closed || i + 1 < run.Length)
                    IsTouched = room.Touches(SideOf(run, i).Extents.Grown(reach));
        }

        private bool Surrounds(in PlacedChip chip)
        {
            var turns = 0;
            for (var ring = 0; ring < chip.RingCount; ring++)
            {
                var corners = chip.Ring(ring);
                for (var i = 0; i < corners.Length; i++)
                    turns += Winding.Share(SideOf(corners, i), room.Centre);
            }
            return turns != 0;
        }

        private static Segment SideOf(ReadOnlySpan<Vertex> run, int at) =>
            new(run[at].Point, run[(at + 1) % run.Length].Point, run[at].Bulge);
    }
}
