namespace PatternGen;

/// <summary>
/// The sides of the petals of one round, two for each tip: first all that have their needle on the left of the way from
/// the centre to the tip, then all that have it on the right.
/// </summary>
/// <remarks>
/// The pencil draws counter-clockwise, so a side of the first kind is drawn from the centre to the tip, and one of the
/// second kind from the tip to the centre.
/// </remarks>
internal sealed class PetalSides
{
    private readonly MarkedPoint[] _needles;
    private readonly MarkedPoint[] _tips;
    private readonly int _outward;

    /// <param name="tips">The tips.</param>
    /// <param name="left">Where the needle stands for the left of each tip.</param>
    /// <param name="right">Where it stands for the right; none for curved radii, which are sides of one kind.</param>
    internal PetalSides(MarkedPoint[] tips, MarkedPoint[] left, MarkedPoint[] right)
    {
        _needles = [.. left, .. right];
        _tips = [.. tips.Take(left.Length), .. tips.Take(right.Length)];
        _outward = left.Length;
    }

    /// <summary>Where the needle stands for the left of each tip.</summary>
    internal IEnumerable<MarkedPoint> Left => _needles.Take(_outward);

    /// <summary>Draws the sides from the centre.</summary>
    internal IReadOnlyList<DrawnCurve> From(Pencil pencil, MarkedPoint centre, PencilLine line) =>
        From(pencil, [.. _tips.Select(_ => centre)], line);

    /// <summary>Draws each side from a point of its own.</summary>
    internal IReadOnlyList<DrawnCurve> From(
        Pencil pencil,
        IReadOnlyList<MarkedPoint> starts,
        PencilLine line = PencilLine.Drawn
    ) =>
        pencil.Arcs(
            _needles,
            _tips.Select((tip, i) => i < _outward ? starts[i] : tip),
            _tips.Select((tip, i) => i < _outward ? tip : starts[i]),
            line
        );
}
