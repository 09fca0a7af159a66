using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// Rounds runs of corners to the decimals that are written, each corner once, so that what met before still meets.
/// </summary>
/// <param name="decimals">Decimals of a coordinate.</param>
/// <param name="origin">The place that coordinates are written from.</param>
internal sealed class RoundedRun(int decimals, Point origin)
{
    /// <summary>An arc that rises less over its chord than this many mm is a line: no machine or screen tells them apart,
    /// readers in single precision lose such arcs' centres, and some draw huge radii wrongly.</summary>
    internal const double FlatSagitta = 0.0005;

    /// <summary>Below it readers lose the arc's centre altogether.</summary>
    internal const double SmallestBulge = 1e-9;

    private readonly double _flatSquared = Square(2 * FlatSagitta * Math.Pow(10, decimals));

    private RoundedVertex[] _vertices = new RoundedVertex[16];

    /// <summary>
    /// Returns the run without segments whose ends round to the same digits. The span is valid until the next call.
    /// </summary>
    internal ReadOnlySpan<RoundedVertex> Round(ReadOnlySpan<Vertex> run, bool closed)
    {
        if (_vertices.Length < run.Length)
            _vertices = new RoundedVertex[run.Length * 2];
        for (var i = 0; i < run.Length; i++)
            _vertices[i] = new(
                FixedPoint.Scale(run[i].Point.X - origin.X, decimals),
                FixedPoint.Scale(run[i].Point.Y - origin.Y, decimals),
                run[i].Bulge
            );
        return _vertices.AsSpan(0, Tidy(_vertices.AsSpan(0, run.Length), closed));
    }

    /// <summary>Whether a closed run goes nowhere, or out and straight back.</summary>
    internal static bool IsNothing(ReadOnlySpan<RoundedVertex> ring) =>
        ring.Length < 2 || (ring.Length == 2 && ring[0].Bulge == -ring[1].Bulge);

    /// <summary>Drops each corner that the next one coincides with, makes flat arcs lines, and returns what is left.</summary>
    private int Tidy(Span<RoundedVertex> run, bool closed)
    {
        var count = 0;
        var first = run[0];
        for (var i = 0; i < run.Length; i++)
        {
            var vertex = run[i];
            var isLast = i == run.Length - 1;
            if (isLast && !closed)
                run[count++] = vertex;
            else
            {
                var next = isLast ? first : run[i + 1];
                if (!vertex.IsAt(next))
                    run[count++] = IsFlat(vertex, next) ? vertex with { Bulge = 0 } : vertex;
            }
        }
        return count;
    }

    private bool IsFlat(in RoundedVertex from, in RoundedVertex to)
    {
        if (from.Bulge == 0)
            return false;
        double x = to.X - from.X;
        double y = to.Y - from.Y;
        return Square(from.Bulge) * (x * x + y * y) < _flatSquared
            || Math.Abs(from.Bulge) < SmallestBulge;
    }

    private static double Square(double value) => value * value;
}
