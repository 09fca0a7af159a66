using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Reads entities, in the section of that name and in blocks alike, and makes of them what can be drawn.</summary>
internal sealed partial class DxfItemReader(
    DxfGroupReader reader,
    ImportedCurves curves,
    double unit
)
{
    /// <summary>Sine of the tilt, out of the plane of the drawing, that is still flat: what merges.</summary>
    private const double Flat = 1e-9;

    private readonly DxfEntity _entity = new(curves);

    /// <summary>A corner of an old polyline is an entity of its own.</summary>
    private readonly DxfEntity _corner = new(curves);

    private readonly List<(Point, double)> _corners = [];

    /// <summary>What drawing the present item changes.</summary>
    private readonly List<string> _changes = [];

    /// <summary>Reads the entity that begins with the present group; then the next one's first group is that. Null if it draws nothing.</summary>
    internal DxfItem? Read()
    {
        var kind = DxfKinds.Of(reader.Value);
        var what = kind == DxfKind.Other ? DxfKinds.Called(reader.Value) : "";
        // The end of a list of parts is no thing of its own.
        var isEnd = reader.IsStartOf("SEQEND"u8);
        _entity.Read(reader, kind);
        _changes.Clear();
        var item = Shown(Item(what));
        if (_changes.Count > 0 && item is not DxfSkipped)
            item.Changes = [.. _changes];
        return isEnd ? null : item;
    }

    private DxfItem Item(string what)
    {
        switch (_entity.Kind)
        {
            case DxfKind.Line:
                return Line();
            case DxfKind.Arc:
                return InPlane(30, Arc);
            case DxfKind.Circle:
                return InPlane(30, Circle);
            case DxfKind.Polyline:
                return InPlane(38, Polyline);
            case DxfKind.OldPolyline:
                return OldPolyline();
            case DxfKind.Ellipse:
                return Ellipse();
            case DxfKind.Spline:
                return Spline();
            case DxfKind.Insert:
                return InPlane(30, facing => new DxfInsert(_entity, facing));
            case DxfKind.Vertex:
                return Skipped("corner of no polyline");
            default:
                return Skipped(what);
        }
    }

    /// <summary>The item, unless the file does not show it in the drawing.</summary>
    private DxfItem Shown(DxfItem item)
    {
        const int PaperSpace = 67;
        const int Invisible = 60;
        if (_entity.Whole(PaperSpace) == 1)
            return Skipped("what lies on a sheet of paper space");
        return _entity.Whole(Invisible) == 1 ? Skipped("what is set invisible") : item;
    }

    private DxfSkipped Skipped(string what) => new(_entity.Layer, _entity.Line, what);

    /// <summary>
    /// The item that is drawn in a plane of its own: that of the drawing, or the same seen from behind, where x runs the other
    /// way. The format's rule for the axes of such a plane gives just that for the direction (0, 0, -1).
    /// </summary>
    private DxfItem InPlane(int heightCode, Func<DxfMap, DxfItem> make)
    {
        if (Facing() is not { } facing)
            return Skipped("what lies in a slanted plane");
        NoteHeight(_entity.Number(heightCode));
        return make(facing);
    }

    private DxfMap? Facing()
    {
        if (!_entity.Has(DxfCode.Facing) && !_entity.Has(DxfCode.Facing + 20))
            return DxfMap.Scaled(1);
        var (x, y) = (_entity.Number(DxfCode.Facing), _entity.Number(DxfCode.Facing + 10));
        var z = _entity.Number(DxfCode.Facing + 20, 1);
        if (!(Math.Max(Math.Abs(x), Math.Abs(y)) <= Flat * Math.Abs(z)) || z == 0)
            return null;
        return z > 0 ? DxfMap.Scaled(1) : DxfMap.MirroredX;
    }

    /// <summary>Whether heights, in units of the file, are one: they differ by less than what merges.</summary>
    private bool AreLevel(double lowest, double highest) =>
        (highest - lowest) * unit <= Tolerance.ForExtent(0).Merge;

    private void NoteHeight(double height)
    {
        if (height != 0)
            _changes.Add("drawn at a height, laid flat");
    }

    private void NoteWidth() => _changes.Add("width of a polyline, its centre line taken");

    private DxfRun Run(DxfMap facing, bool isClosed)
    {
        var sense = facing.Determinant < 0 ? -1 : 1;
        return new(
            _entity,
            [.. _corners.Select(corner => (facing.Apply(corner.Item1), sense * corner.Item2))],
            isClosed
        );
    }
}
