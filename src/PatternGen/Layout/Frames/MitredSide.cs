using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The chips of a band between two mitres. Repeats run on into both corners and the mitres cut them; what would be too
/// small is left out.
/// </summary>
internal sealed class MitredSide
{
    /// <summary>
    /// A cut chip less deep than this share of a whole one is left out: it would be a nick beside its neighbours. Half a
    /// triangle in a square corner is just half as deep, and stays.
    /// </summary>
    private const double LeastDepth = 0.4;

    /// <summary>
    /// Corners nearer to the mitre than this share of the pitch are drawn onto it. A pitch is seldom off by more; beyond
    /// that a chip would visibly lean.
    /// </summary>
    private const double NearShare = 1.0 / 8;

    private readonly FrameSide _side;
    private readonly TriangleBand _band;
    private readonly MitredFit _fit;
    private readonly bool _turned;
    private readonly MitreCut _first;
    private readonly MitreCut _last;
    private readonly double _start;
    private readonly double _merge;
    private readonly List<IReadOnlyList<RowPiece>> _rows = [];

    /// <summary>The chips near a mitre as they are drawn, whole ones too, and beside them the first ones that are clear of it.</summary>
    private readonly List<Contour> _atMitres = [];

    /// <param name="side">The side.</param>
    /// <param name="band">The band.</param>
    /// <param name="from">Height of its lowest rule over the outer edge.</param>
    /// <param name="middle">Height over the lowest rule of the line that is divided into repeats.</param>
    /// <param name="fit">The repeats.</param>
    /// <param name="turned">Whether the second half is the mirror image of the first.</param>
    /// <param name="settles">Whether corners near to a mitre are drawn onto it.</param>
    internal MitredSide(
        FrameSide side,
        TriangleBand band,
        double from,
        double middle,
        MitredFit fit,
        bool turned,
        bool settles
    )
    {
        _side = side;
        _band = band;
        _fit = fit;
        _turned = turned;
        _start = side.StartAt(from + middle);
        _merge = Tolerance.ForExtent(side.Length).Merge;
        // With room for rounding, or of two corners just that near one would be drawn onto its mitre and one not.
        var near = settles ? NearShare * fit.Pitch + _merge : _merge;
        _first = new(from * side.First, side.First, near);
        _last = new(from * side.Last, side.Last, near);
        foreach (var row in band.Rows)
            _rows.Add([.. Ranges(row).SelectMany(range => Pieces(row, range))]);
        HoldsTogether &= !OverlapAtMitres();
    }

    /// <summary>The pieces of each row, in the side's frame but for y, which starts at the lowest rule.</summary>
    internal IReadOnlyList<IReadOnlyList<RowPiece>> Rows => _rows;

    /// <summary>How much is cut off the chips at the corners, or left out though it lies within, in chips: the less, the better the corner.</summary>
    internal double Cost { get; private set; }

    /// <summary>
    /// Whether no chip that has a corner drawn onto a mitre is spoilt by it or runs into a neighbour: chips bulge, and then a
    /// corner more to the side bulges more, too.
    /// </summary>
    internal bool HoldsTogether { get; private set; } = true;

    /// <summary>Leaning chips that would stand astride the middle where the band turns round.</summary>
    internal int LeftOutAtMiddle =>
        _turned && _fit.Parts == 1
            ? _band.Rows.Count(row => !row.IsUpright && StandsAstride(row))
            : 0;

    private double HalfPitch => _fit.Pitch / 2;

    private int PhaseOf(TriangleRow row) => (_fit.Phase + (row.IsStaggered ? 1 : 0)) % 2;

    private bool StandsAstride(TriangleRow row) =>
        _fit.Parts == 1 && (_fit.Halves - 1 - PhaseOf(row)) % 2 == 0;

    private IEnumerable<RowRange> Ranges(TriangleRow row)
    {
        TriangleShape shape = new(row, _band, _fit.Pitch);
        var mirrors = _turned && !row.IsUpright;
        var mirrored = mirrors
            ? new TriangleShape(row.MirroredLeftRight(), _band, _fit.Pitch)
            : shape;
        var (halves, gap) = (_fit.Halves, _fit.MiddleGap);
        var (from, to) = Reach(row);
        var phase = PhaseOf(row);
        // Without a gap all stations are those of one length, so that neighbours meet across the middle, too.
        Stations left =
            gap == 0
                ? new(_start, _fit.Length, 2 * halves)
                : new(_start, halves * HalfPitch, halves);
        if (gap == 0 && !mirrors && _fit.Parts == 1)
        {
            yield return new(shape, left, Up(from, phase), Down(2 * halves + to, phase));
            yield break;
        }
        yield return new(shape, left, Up(from, phase), Down(halves - 2, phase));
        if (StandsAstride(row) && !mirrors)
            yield return gap == 0
                ? new(shape, left, halves - 1, halves - 1)
                : new(shape, new(_start + (_fit.Length - _fit.Pitch) / 2, _fit.Pitch, 2), 0, 0);
        if (gap == 0)
            yield return new(mirrored, left, Up(halves, phase), Down(2 * halves + to, phase));
        else
            yield return new(
                mirrored,
                new(_start + _fit.Length - halves * HalfPitch, halves * HalfPitch, halves),
                Up(0, phase + halves),
                Down(halves + to, phase + halves)
            );
    }

    /// <summary>The stations, counted from the mitres on the divided line, between which chips of a row may have a part within.</summary>
    private (int From, int To) Reach(TriangleRow row)
    {
        double[] heights = [_band.Rules[row.LowerRule], _band.Rules[row.UpperRule]];
        var before = _start - heights.Min(_first.At);
        var after = _side.Length - heights.Min(_last.At) - (_start + _fit.Length);
        return (-Stations(before) - 2, Stations(after));

        int Stations(double beyond) => (int)Math.Ceiling(beyond / HalfPitch);
    }

    private IEnumerable<RowPiece> Pieces(TriangleRow row, RowRange range)
    {
        double[] heights = [_band.Rules[row.LowerRule], _band.Rules[row.UpperRule]];
        var clearFrom = heights.Max(_first.At) + _first.Near + _merge;
        var clearTo = _side.Length - heights.Max(_last.At) - _last.Near - _merge;
        var stations = range.Stations;
        int? runFrom = null;
        var runTo = 0;
        for (var at = range.From; at <= range.To; at += 2)
        {
            if (stations.At(at) > clearFrom && stations.At(at + 2) < clearTo)
            {
                // All up to the last one that is as clear.
                runFrom ??= at;
                runTo = LastClear(at);
                _atMitres.Add(Placed(range, at));
                if (runTo > at)
                    _atMitres.Add(Placed(range, runTo));
                at = runTo;
                continue;
            }
            if (Shaped(range, at) is not { } chip)
                continue;
            if (chip == range.Shape.Chip)
            {
                runFrom ??= at;
                runTo = at;
                continue;
            }
            if (Run() is { } run)
                yield return run;
            yield return new(chip, null, 0, 1);
        }
        if (Run() is { } last)
            yield return last;

        RowPiece? Run()
        {
            if (runFrom is not { } first)
                return null;
            runFrom = null;
            return new(range.Shape.Chip, stations, first, (runTo - first) / 2 + 1);
        }

        int LastClear(int at)
        {
            var room = (int)Math.Floor((clearTo - stations.At(at)) / HalfPitch) - 2;
            var last = Math.Min(range.To, at + Math.Max(0, room / 2 * 2));
            while (last > at && stations.At(last + 2) >= clearTo)
                last -= 2;
            return last;
        }
    }

    /// <summary>The chip as the mitres leave it: the repeat's own if they are clear of it, null if nothing is left that is worth a cut.</summary>
    private ChipShape? Shaped(RowRange range, int at)
    {
        var whole = range.Shape.Chip;
        var placed = Placed(range, at);
        var part = Cut(placed, _first, _last);
        if (part == placed)
        {
            _atMitres.Add(placed);
            return whole;
        }
        HoldsTogether &=
            part is not null
            || Cut(placed, _first with { Near = _merge }, _last with { Near = _merge })
                is not { } bare
            || Kept(range, bare) is null;
        var share = part is null ? 0 : part.Area / placed.Area;
        var kept = part is null ? null : Kept(range, Settled(part, placed));
        Cost += kept is null ? share : Math.Abs(1 - share);
        if (kept is not null)
            _atMitres.Add(kept.Outline);
        return kept;
    }

    /// <summary>The chip at a station, before a mitre cuts it.</summary>
    private static Contour Placed(RowRange range, int at) =>
        new(
            range.Shape.Chip.Outline.Vertices.Select(vertex => new Vertex(
                range.Stations.Map(at, vertex.Point.X),
                vertex.Point.Y,
                vertex.Bulge
            ))
        );

    /// <summary>Whether chips near a mitre, and the first ones clear of it, take the same wood; the others are as the band draws them.</summary>
    private bool OverlapAtMitres()
    {
        for (var i = 0; i < _atMitres.Count; i++)
        for (var j = i + 1; j < _atMitres.Count; j++)
        {
            var (one, other) = (_atMitres[i], _atMitres[j]);
            if (
                one.Extents.Touches(other.Extents)
                && new Region(one).Intersection(new Region(other)).Area > _merge * one.Length
            )
                return true;
        }
        return false;
    }

    /// <summary>What both mitres leave: the chip itself if they are clear of it, null for nothing.</summary>
    private Contour? Cut(Contour chip, MitreCut first, MitreCut last)
    {
        if (first.Apply(chip, _merge) is not { } part)
            return null;
        var mirror = _side.Mirrored;
        var seen = part.Transformed(mirror);
        var cut = last.Apply(seen, _merge);
        return cut == seen ? part : cut?.Transformed(mirror);
    }

    private static ChipShape? Kept(RowRange range, Contour part)
    {
        var chip = range.Shape.Part(part);
        return
            chip is not null && chip.Roof.Clearance >= LeastDepth * range.Shape.Chip.Roof.Clearance
            ? chip
            : null;
    }

    /// <summary>The part with those corners that no mitre has moved where they were to the last digit.</summary>
    private Contour Settled(Contour part, Contour whole) =>
        new(
            part.Vertices.Select(vertex =>
            {
                foreach (var known in whole.Vertices)
                    if (known.Point.DistanceTo(vertex.Point) <= _merge)
                        return new Vertex(known.Point, vertex.Bulge);
                return vertex;
            })
        );

    private static int Up(int at, int phase) => (at - phase) % 2 == 0 ? at : at + 1;

    private static int Down(int at, int phase) => (at - phase) % 2 == 0 ? at : at - 1;
}
