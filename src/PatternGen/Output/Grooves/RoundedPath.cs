using System.Runtime.InteropServices;

namespace PatternGen;

/// <summary>Rounds groove paths to the decimals that are written, so that they get no deeper by it.</summary>
/// <param name="decimals">Decimals of a coordinate.</param>
/// <param name="slope">Tangent of the wall angle.</param>
internal sealed class RoundedPath(int decimals, double slope)
{
    /// <summary>How far rounding moves a place, in units of the last decimal: half of the diagonal.</summary>
    private const double Moved = 0.7072;

    private readonly double _units = Math.Pow(10, decimals);
    private readonly List<RoundedPlace> _places = [];

    /// <summary>Returns the corners, and whether the path ends where it starts. The span is valid until the next call.</summary>
    internal ReadOnlySpan<RoundedPlace> Round(GroovePath path, out bool isClosed)
    {
        _places.Clear();
        foreach (var place in path.Places)
            Add(
                new(
                    FixedPoint.Scale(place.Point.X, decimals),
                    FixedPoint.Scale(place.Point.Y, decimals),
                    -Depth(place.Depth)
                )
            );
        isClosed = _places.Count > 3 && _places[0] == _places[^1];
        if (isClosed)
            _places.RemoveAt(_places.Count - 1);
        return CollectionsMarshal.AsSpan(_places);
    }

    /// <summary>What rounding moves towards a wall would cut into it, so the place is lifted by as much.</summary>
    private long Depth(double depth) =>
        Math.Max(0, (long)Math.Floor(depth * _units - Moved * slope));

    /// <summary>Of places that round to one, the higher one is kept.</summary>
    private void Add(RoundedPlace place)
    {
        if (_places.Count == 0 || !_places[^1].IsAbove(place))
            _places.Add(place);
        else if (place.Z > _places[^1].Z)
            _places[^1] = place;
    }
}
