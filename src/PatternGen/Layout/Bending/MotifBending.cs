using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Bends what a motif holds.</summary>
/// <param name="line">The line that it is bent along.</param>
/// <param name="accuracy">How far arcs may be off, in mm.</param>
/// <param name="stations">The places along the line.</param>
/// <param name="first">Index of the station where the origin of the first repeat lies.</param>
/// <param name="count">Number of repeats.</param>
internal sealed class MotifBending(
    BendLine line,
    double accuracy,
    Stations stations,
    int first,
    int count
)
{
    private readonly SideBender _sides = new(line, BentSides.Following, accuracy, []);

    internal PatternNode Draw(PatternNode motif) => GroupNode.Of([Lines(motif), .. Rows(motif)]);

    private IEnumerable<PatternNode> Rows(PatternNode motif)
    {
        var track = new BentTrack(line, new(line, _sides));
        return PatternReader
            .Chips(motif)
            .GroupBy(chip => chip.Id.Row)
            .Select(row =>
                GroupNode.InSameRows(
                    row.Select(chip => track.Repeat(Shape(chip), stations, first, count))
                )
            );
    }

    private MotifNode Lines(PatternNode motif)
    {
        var content = PatternReader.Read(motif);
        return new()
        {
            LayoutLines = [.. Each(content.LayoutLines, Bent)],
            LineCuts =
            [
                .. Each(
                    content.LineCuts,
                    (cut, half) => LineCut.Placed(Bent(cut.Path, half), cut.Width, cut.Profile)
                ),
            ],
            Labels = [.. Each(content.Labels, Placed)],
        };
    }

    private IEnumerable<T> Each<T>(IReadOnlyList<T> pieces, Func<T, int, T> bend) =>
        from repeat in Enumerable.Range(0, count)
        from piece in pieces
        select bend(piece, first + 2 * repeat);

    private Chain Bent(Chain chain, int half)
    {
        var station = new BendStation(line, stations, half);
        var corners = _sides
            .Corners(chain, station)
            .Append(new(_sides.At(chain.End), 0))
            .Select(corner => new Vertex(station.PointOf(corner.Place), corner.Bulge));
        return new(corners);
    }

    private Label Placed(Label label, int half)
    {
        var x = stations.Map(half, label.At.X);
        return label.Transformed(Transform.Move(-label.At.X, 0).Then(line.Frame(x)));
    }

    private static ChipShape Shape(Chip chip) =>
        new ChipShape(chip.Outline, [.. chip.Holes]).WithCut(chip.Cut);
}
