using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Tells runs that lie wholly on one another, whatever their direction and where they start.</summary>
/// <remarks>A segment is told by its ends, in either order, and its middle; a ring by all of its segments.</remarks>
internal sealed class RunKeys(double merge, int expected) : IDisposable
{
    private readonly PointMerger _points = new(merge, 3 * expected);
    private readonly HashSet<(int, int, int)> _segments = [];
    private readonly HashSet<Ring> _rings = [];

    /// <summary>
    /// Whether a run was drawn before: an open one if all of its segments were, a ring as a whole, since rings that are
    /// neighbours share their sides. If not, it counts as drawn from now on.
    /// </summary>
    internal bool IsDrawn(SegmentRun run) => run.IsClosed ? IsDrawnRing(run) : IsDrawnOpen(run);

    public void Dispose() => _points.Dispose();

    private bool IsDrawnOpen(SegmentRun run)
    {
        var isNew = false;
        for (var i = 0; i < run.Count; i++)
            isNew |= _segments.Add(KeyOf(run.At(i)));
        return !isNew;
    }

    private bool IsDrawnRing(SegmentRun ring)
    {
        var keys = new (int, int, int)[ring.Count];
        for (var i = 0; i < keys.Length; i++)
            keys[i] = KeyOf(ring.At(i));
        Array.Sort(keys);
        return !_rings.Add(new(keys));
    }

    private (int, int, int) KeyOf(Segment segment)
    {
        var (start, end) = (_points.IdOf(segment.Start), _points.IdOf(segment.End));
        return (Math.Min(start, end), Math.Max(start, end), _points.IdOf(segment.Middle));
    }

    private readonly struct Ring((int, int, int)[] keys) : IEquatable<Ring>
    {
        private readonly (int, int, int)[] _keys = keys;

        public bool Equals(Ring other) => _keys.AsSpan().SequenceEqual(other._keys);

        public override bool Equals(object? obj) => obj is Ring other && Equals(other);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            foreach (var key in _keys)
                hash.Add(key);
            return hash.ToHashCode();
        }
    }
}
