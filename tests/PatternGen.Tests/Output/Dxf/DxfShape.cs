using System.Globalization;

namespace PatternGen.Tests.Output.Dxf;

/// <summary>A corner as it stands in the file.</summary>
internal readonly record struct DxfCorner(double X, double Y, double Bulge)
{
    public double DistanceTo(DxfCorner other) => double.Hypot(other.X - X, other.Y - Y);
}

/// <summary>A drawn line, circle or polyline. A circle is read as two half circles.</summary>
internal sealed record DxfShape(DxfRecord Record, IReadOnlyList<DxfCorner> Corners, bool IsClosed)
{
    public string Layer => Record.Layer;

    public IEnumerable<DxfPiece> Pieces
    {
        get
        {
            for (var i = 0; i < Corners.Count - (IsClosed ? 0 : 1); i++)
                yield return new(Layer, Corners[i], Corners[(i + 1) % Corners.Count]);
        }
    }

    /// <summary>Returns what the records draw, with what they refer to where they put it.</summary>
    public static List<DxfShape> ReadAll(
        IEnumerable<DxfRecord> records,
        IReadOnlyList<DxfBlock> blocks
    )
    {
        var shapes = new List<DxfShape>();
        DxfRecord? polyline = null;
        var corners = new List<DxfCorner>();
        foreach (var record in records)
            switch (record.Type)
            {
                case "LINE":
                    shapes.Add(new(record, [At(record, 10), At(record, 11)], false));
                    break;
                case "CIRCLE":
                    shapes.Add(new(record, HalfCircles(record), true));
                    break;
                case "LWPOLYLINE":
                    shapes.Add(new(record, CornersOf(record), IsFlagged(record)));
                    break;
                case "INSERT":
                    var named = blocks.Where(block => block.Name == record.Value(2));
                    shapes.AddRange(named.SelectMany(block => block.DrawnBy(record)));
                    break;
                case "POLYLINE":
                    (polyline, corners) = (record, []);
                    break;
                case "VERTEX":
                    corners.AddRange(CornersOf(record));
                    break;
                case "SEQEND" when polyline is not null:
                    shapes.Add(new(polyline, corners, IsFlagged(polyline)));
                    break;
            }
        return shapes;
    }

    private static bool IsFlagged(DxfRecord record) =>
        (int.Parse(record.Value(70) ?? "0", CultureInfo.InvariantCulture) & 1) == 1;

    private static DxfCorner At(DxfRecord record, int code) =>
        new(record.Number(code), record.Number(code + 10), 0);

    private static DxfCorner[] HalfCircles(DxfRecord record)
    {
        var (x, y, radius) = (record.Number(10), record.Number(20), record.Number(40));
        return [new(x + radius, y, 1), new(x - radius, y, 1)];
    }

    /// <summary>A corner's groups begin at its 10; the bulge, if any, belongs to the corner before it.</summary>
    private static List<DxfCorner> CornersOf(DxfRecord record)
    {
        var corners = new List<DxfCorner>();
        foreach (var group in record.Groups)
            if (group.Code == 10)
                corners.Add(new(group.Number, double.NaN, 0));
            else if (corners.Count > 0 && group.Code == 20)
                corners[^1] = corners[^1] with { Y = group.Number };
            else if (corners.Count > 0 && group.Code == 42)
                corners[^1] = corners[^1] with { Bulge = group.Number };
        return corners;
    }
}
