using System.Globalization;

namespace PatternGen.Tests.Output.Dxf;

internal sealed partial class DxfLint
{
    /// <summary>Ends of open lines nearer than this many mm, but not the same, leave a gap that a machine stops at.</summary>
    private const double Gap = 0.05;

    /// <summary>Shapes agree within this many mm.</summary>
    private const double Same = 1e-4;

    private void CheckShapes()
    {
        foreach (var shape in _document.Shapes)
        {
            var where = $"{shape.Record.Type} at line {shape.Record.Line}";
            var corners = shape.Corners;
            Require(corners.Count >= 2, $"shape: fewer than two corners in {where}");
            if (corners.Count < 2)
                continue;
            Require(
                shape.Record.Value(90) is not { } count
                    || count == corners.Count.ToString(CultureInfo.InvariantCulture),
                $"shape: wrong number of corners in {where}"
            );
            var comesBack = corners[0].DistanceTo(corners[^1]) == 0;
            Require(shape.IsClosed || !comesBack, $"closed: no flag on {where}");
            Require(!shape.IsClosed || !comesBack, $"closed: first corner repeated in {where}");
            foreach (var piece in shape.Pieces.Take(corners.Count - 1))
                Require(piece.Chord > 0, $"shape: doubled corner in {where}");
            foreach (var piece in shape.Pieces)
                CheckBulge(piece, where);
        }
    }

    private void CheckBulge(DxfPiece piece, string where)
    {
        var bulge = Math.Abs(piece.Bulge);
        Require(bulge <= 1, $"bulge: more than a half circle in {where}");
        Require(
            bulge == 0 || (bulge >= 1e-9 && bulge * piece.Chord / 2 >= 0.0005),
            $"bulge: too flat in {where}"
        );
    }

    private void CheckEnds()
    {
        foreach (var layer in _document.Shapes.Where(s => !s.IsClosed).GroupBy(s => s.Layer))
        {
            var ends = layer
                .SelectMany(shape => new[] { shape.Corners[0], shape.Corners[^1] })
                .OrderBy(corner => corner.X)
                .ToList();
            for (var i = 0; i < ends.Count; i++)
            for (var j = i + 1; j < ends.Count && ends[j].X - ends[i].X < Gap; j++)
                Require(
                    ends[i].DistanceTo(ends[j]) is 0 or >= Gap,
                    $"gap: of {ends[i].DistanceTo(ends[j])} mm on {layer.Key} near ({ends[i].X}, {ends[i].Y})"
                );
        }
    }

    private void CheckRepeats()
    {
        foreach (var layer in _document.Shapes.GroupBy(shape => shape.Layer))
        {
            CheckDuplicates(layer.Key, [.. layer]);
            // Sides that closed contours share are no fault where they are wanted.
            var pieces = layer
                .Where(shape => !_mayShareSides || !shape.IsClosed)
                .SelectMany(shape => shape.Pieces)
                .Where(piece => piece.Chord > 0)
                .OrderBy(piece => piece.Box.Left)
                .ToList();
            for (var i = 0; i < pieces.Count; i++)
            for (var j = i + 1; j < pieces.Count; j++)
            {
                if (pieces[j].Box.Left > pieces[i].Box.Right)
                    break;
                var common = pieces[i].Overlap(pieces[j], Same);
                Require(
                    common < 10 * Same,
                    $"overlap: {common} mm on {layer.Key} near ({pieces[j].From.X}, {pieces[j].From.Y})"
                );
            }
        }
    }

    private void CheckDuplicates(string layer, IReadOnlyList<DxfShape> shapes)
    {
        var seen = new HashSet<string>();
        foreach (var shape in shapes)
            Require(
                seen.Add(Likeness(shape)),
                $"duplicate: {shape.Record.Type} at line {shape.Record.Line} on {layer}"
            );
    }

    /// <summary>The same for shapes that are alike, from whichever corner and in whichever direction.</summary>
    private static string Likeness(DxfShape shape) =>
        string.Join(
            ';',
            shape
                .Pieces.Select(piece =>
                {
                    string[] ends =
                    [
                        Text(piece.From.X, piece.From.Y),
                        Text(piece.To.X, piece.To.Y),
                    ];
                    Array.Sort(ends, StringComparer.Ordinal);
                    return $"{ends[0]} {ends[1]} {Text(piece.Middle.X, piece.Middle.Y)}";
                })
                .Order(StringComparer.Ordinal)
        );

    private static string Text(double x, double y) =>
        // Adding 0 makes a negative zero positive.
        FormattableString.Invariant($"{Math.Round(x, 4) + 0.0},{Math.Round(y, 4) + 0.0}");
}
