namespace PatternGen.Geometry;

public abstract partial class SegmentRun
{
    /// <summary>Returns the part between two places along the run, as a chain of its own.</summary>
    /// <param name="from">Where the part starts: distance along the run in mm.</param>
    /// <param name="to">
    /// Where it ends. In a closed run the part goes on over the first corner if this is not after <paramref name="from"/>,
    /// so that equal places give the whole ring, opened there; in an open run it must lie after it.
    /// </param>
    /// <returns>Of a square of side 3, from 1 to 4: two lines of 2 and 1 mm.</returns>
    /// <remarks>Places nearer to a corner than the merge distance are that corner; arcs keep their circle.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A place is not finite, or not on an open run.</exception>
    /// <exception cref="ArgumentException">The part of an open run would be empty or run backwards.</exception>
    public Chain Part(double from, double to)
    {
        var merge = Tolerance.Merge;
        if (IsClosed)
        {
            var ahead = Wrapped(to) - Wrapped(from);
            return Between(from, ahead > merge ? ahead : ahead + Length, merge);
        }
        Guard.Within(from, 0, Length);
        Guard.Within(to, 0, Length);
        if (to - from <= merge)
            throw new ArgumentException(
                $"A part of a chain ends after it starts, but it goes from {Guard.Text(from)} to {Guard.Text(to)} mm.",
                nameof(to)
            );
        return Between(from, to - from, merge);
    }

    /// <summary>Distance from the first corner, between 0 and the length of the run.</summary>
    private protected double Wrapped(double length)
    {
        var (index, within) = Seek(length);
        return StartOf(index) + within;
    }

    private Chain Between(double from, double length, double merge)
    {
        var (index, within) = Seek(from);
        var first = At(index);
        if (first.Length - within <= merge)
            (index, within) = (index + 1, 0);
        else if (within <= merge)
            within = 0;

        var corners = new List<Vertex>();
        while (true)
        {
            var segment = At(index % Count);
            var rest = segment.Length - within;
            var start = within > 0 ? segment.PointAt(within) : segment.Start;
            if (rest > length + merge)
            {
                corners.Add(new(start, segment.PartBulge(length / segment.Length)));
                corners.Add(new(segment.PointAt(within + length)));
                break;
            }
            var bulge = within > 0 ? segment.PartBulge(rest / segment.Length) : segment.Bulge;
            corners.Add(new(start, bulge));
            (length, within, index) = (length - rest, 0, index + 1);
            if (length > merge && (IsClosed || index < Count))
                continue;
            corners.Add(new(segment.End));
            break;
        }
        return new(VertexRun.Trusted([.. corners]));
    }

    /// <summary>Places in order, without repeats.</summary>
    private protected List<double> Distinct(IEnumerable<double> lengths)
    {
        var merge = Tolerance.Merge;
        var places = new List<double>();
        foreach (var length in Guard.NotNull(lengths).Select(Wrapped).Order())
            if (places.Count == 0 || length - places[^1] > merge)
                places.Add(length);
        return places;
    }
}
