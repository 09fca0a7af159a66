using PatternGen.Geometry;

namespace PatternGen;

internal sealed partial class DxfItemReader
{
    private const int Closed = 1;

    private DxfItem Line()
    {
        var (low, high) = (_entity.Number(30), _entity.Number(31));
        if (!AreLevel(Math.Min(low, high), Math.Max(low, high)))
            return Skipped("line that is not level");
        NoteHeight(low);
        return new DxfRun(
            _entity,
            [
                (new(_entity.Number(10), _entity.Number(20)), 0),
                (new(_entity.Number(11), _entity.Number(21)), 0),
            ]
        );
    }

    private DxfItem Circle(DxfMap facing)
    {
        var radius = _entity.Number(40);
        if (radius <= 0)
            return Skipped("circle without a radius");
        var centre = new Point(_entity.Number(10), _entity.Number(20));
        _corners.Clear();
        _corners.Add((centre + new Vector(radius, 0), 1));
        _corners.Add((centre - new Vector(radius, 0), 1));
        return Run(facing, isClosed: true);
    }

    /// <summary>In two halves, since the bulge of a nearly whole circle loses digits.</summary>
    private DxfItem Arc(DxfMap facing)
    {
        var radius = _entity.Number(40);
        if (radius <= 0)
            return Skipped("arc without a radius");
        var centre = new Point(_entity.Number(10), _entity.Number(20));
        var (from, to) = (Degrees(_entity.Number(50)), Degrees(_entity.Number(51)));
        var sweep = to > from ? to - from : to - from + 360;
        var bulge = Math.Tan(sweep / 8 * (Math.PI / 180));
        _corners.Clear();
        _corners.Add((At(from), bulge));
        _corners.Add((At(from + sweep / 2), bulge));
        if (from != to)
            _corners.Add((At(to), 0));
        return Run(facing, isClosed: from == to);

        Point At(double degrees) => centre.Polar(radius, Angle.FromDegrees(degrees));

        static double Degrees(double given)
        {
            var rest = given % 360;
            return rest < 0 ? rest + 360 : rest;
        }
    }

    private DxfItem Polyline(DxfMap facing)
    {
        if (_entity.Number(43) != 0 || _entity.Number(40) != 0 || _entity.Number(41) != 0)
            NoteWidth();
        _corners.Clear();
        foreach (var corner in _entity.Corners)
            _corners.Add((new(corner.X, corner.Y), corner.Bulge));
        return Run(facing, _entity.HasFlag(Closed));
    }

    private DxfItem OldPolyline()
    {
        const int InSpace = 8;
        const int Mesh = 16;
        const int ManyFaces = 64;
        const int FrameOfSpline = 16;
        _corners.Clear();
        var (lowest, highest) = (double.PositiveInfinity, double.NegativeInfinity);
        var isWide = _entity.Number(40) != 0 || _entity.Number(41) != 0;
        while (reader.IsStartOf("VERTEX"u8))
        {
            _corner.Read(reader, DxfKind.Vertex);
            if (_corner.HasFlag(FrameOfSpline))
                continue;
            if (_corners.Count >= curves.Settings.Limits.Segments)
                throw curves.TooManySegments(reader.Where);
            _corners.Add((new(_corner.Number(10), _corner.Number(20)), _corner.Number(42)));
            isWide |= _corner.Number(40) != 0 || _corner.Number(41) != 0;
            lowest = Math.Min(lowest, _corner.Number(30));
            highest = Math.Max(highest, _corner.Number(30));
        }
        // Without its end, another entity follows; it is read as any other.
        if (reader.IsStartOf("SEQEND"u8))
            _corner.Read(reader, DxfKind.Other);
        else
            curves.Note(
                ImportNoteKind.Assumed,
                "polyline without SEQEND: it ends here",
                reader.Where
            );
        if (_entity.HasFlag(Mesh) || _entity.HasFlag(ManyFaces))
            return Skipped("mesh");
        var isClosed = _entity.HasFlag(Closed);
        if (!_entity.HasFlag(InSpace))
        {
            if (isWide)
                NoteWidth();
            return InPlane(30, facing => Run(facing, isClosed));
        }
        if (!AreLevel(lowest, highest))
            return Skipped("polyline that is not level");
        if (_corners.Count > 0)
            NoteHeight(lowest);
        return Run(DxfMap.Scaled(1), isClosed);
    }
}
