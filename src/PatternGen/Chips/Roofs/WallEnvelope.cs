using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// Finds for each place of a site how far its wall goes down: as far as a disc that touches there may grow until another
/// site stops it.
/// </summary>
/// <remarks>
/// The sites are put in one after the other. Each cuts the pieces known so far at the places where it could take over, or
/// cease to; which of the two holds in between is asked half-way, where no rounding matters.
/// </remarks>
internal sealed class WallEnvelope(RoofSites sites) : IDisposable
{
    /// <summary>Share of a site under which pieces are not cut: what differs there is not depth but rounding.</summary>
    private const double Least = 1e-11;

    /// <summary>Twice each: equal curves, touch at the foot, at infinity, at the other's ends, and discs as large as its circle.</summary>
    private const int MostCuts = 10;

    private Scratch<RoofPiece> _pieces = new(16);
    private Scratch<RoofPiece> _renewed = new(16);

    /// <summary>The pieces of one site's wall, from its start to its end.</summary>
    internal ReadOnlySpan<RoofPiece> Of(int number)
    {
        ref readonly var site = ref sites[number];
        _pieces.Cut(0);
        _pieces.Add(new(-site.Half, site.Half, RoofPiece.OwnCentre, default));
        for (var other = 0; other < sites.Span.Length; other++)
            if (
                other != number
                && !sites.GoOn(number, other)
                && site.CurveOf(sites[other]) is { } curve
            )
                PutIn(number, other, curve);
        return _pieces.Span;
    }

    public void Dispose()
    {
        _pieces.Dispose();
        _renewed.Dispose();
    }

    private void PutIn(int number, int other, RoofCurve curve)
    {
        ref readonly var site = ref sites[number];
        _renewed.Cut(0);
        var least = Least * site.Half;
        (double, double)? limits = null;
        var isChanged = false;
        Span<double> cuts = stackalloc double[MostCuts];
        for (var i = 0; i < _pieces.Count; i++)
        {
            var piece = _pieces.Span[i];
            var known = new Cuts(cuts, piece, least);
            var isFree = piece.Partner == RoofPiece.OwnCentre;
            if (!isFree && sites[other].IsEndOf(sites[piece.Partner]))
            {
                // Where a disc touches a side, that is never farther than its end; at the end itself both are equal, and only
                // rounding would tell.
                Keep(piece);
                continue;
            }
            if (!isFree)
            {
                known.Add((curve - piece.Curve).Roots());
                if (known.IsWhole && curve.At(piece.Middle) >= piece.Curve.At(piece.Middle))
                {
                    Keep(piece);
                    continue;
                }
            }
            var (atFoot, atInfinity) = site.Bounds(curve);
            known.Add(atFoot);
            known.Add(atInfinity);
            known.Add(limits ??= site.Limits(sites[other]));
            known.Add(site.WhereAsLargeAs(sites[other], curve));
            isChanged |= Split(number, piece, known, other, curve);
        }
        if (isChanged)
            (_pieces, _renewed) = (_renewed, _pieces);
    }

    /// <summary>Gives each stretch of a piece to the site that stops discs first; tells whether any has changed hands.</summary>
    private bool Split(int number, RoofPiece piece, Cuts cuts, int other, RoofCurve curve)
    {
        ref readonly var site = ref sites[number];
        var isChanged = false;
        var from = piece.From;
        for (var i = 0; i <= cuts.Count; i++)
        {
            var to = i < cuts.Count ? cuts[i] : piece.To;
            var middle = 0.5 * (from + to);
            var takesOver =
                (piece.Partner == RoofPiece.OwnCentre || curve.At(middle) < piece.Curve.At(middle))
                && site.Touches(sites[other], curve, middle, sites.Slack(number, other, middle));
            isChanged |= takesOver;
            Keep(
                takesOver ? new(from, to, other, curve) : new(from, to, piece.Partner, piece.Curve)
            );
            from = to;
        }
        return isChanged;
    }

    /// <summary>Adds a piece, or lengthens the last one if it goes on.</summary>
    private void Keep(RoofPiece piece)
    {
        if (_renewed.Count > 0 && _renewed.Span[^1].Partner == piece.Partner)
            _renewed.Span[^1] = _renewed.Span[^1] with { To = piece.To };
        else
            _renewed.Add(piece);
    }

    /// <summary>Places within a piece, in order.</summary>
    private ref struct Cuts(Span<double> places, RoofPiece piece, double least)
    {
        private readonly Span<double> _places = places;

        internal int Count { get; private set; }

        internal readonly bool IsWhole => Count == 0;

        internal readonly double this[int index] => _places[index];

        internal void Add((double First, double Second) places)
        {
            Add(places.First);
            Add(places.Second);
        }

        private void Add(double place)
        {
            // NaN is refused too.
            if (!(place > piece.From + least && place < piece.To - least))
                return;
            var at = Count;
            while (at > 0 && _places[at - 1] > place)
                at--;
            if (
                (at > 0 && place - _places[at - 1] < least)
                || (at < Count && _places[at] - place < least)
            )
                return;
            _places[at..Count].CopyTo(_places[(at + 1)..]);
            _places[at] = place;
            Count++;
        }
    }
}
