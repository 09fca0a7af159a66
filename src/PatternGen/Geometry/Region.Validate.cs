namespace PatternGen.Geometry;

public sealed partial class Region
{
    /// <summary>Returns whether every ring is sound and no two rings cross or run along each other; they may touch in points.</summary>
    /// <remarks>Holes outside their outer ring and wrong directions cannot occur: a region works both out for itself.</remarks>
    public Validity Validate()
    {
        var flaws = new List<Flaw>();
        for (var i = 0; i < _contours.Length; i++)
            foreach (var flaw in _contours[i].Validate().Flaws)
                flaws.Add(new(flaw.Kind, flaw.Place, flaw.Segment, flaw.Reason, i));
        VisitTouchingRings((first, second) => AddContacts(first, second, flaws));
        return new(flaws);
    }

    /// <summary>Calls <paramref name="visit"/> with each two rings whose extents touch.</summary>
    private void VisitTouchingRings(Action<int, int> visit)
    {
        if (_contours.Length > 1)
            new ExtentsGrid(Array.ConvertAll(_contours, contour => contour.Extents)).VisitPairs(
                visit
            );
    }

    private void AddContacts(int first, int second, List<Flaw> flaws)
    {
        foreach (var contact in _contours[first].Intersections(_contours[second]))
        {
            if (contact.Kind == ContactKind.Touching)
                continue;
            var (kind, what) =
                contact.Kind == ContactKind.Crossing
                    ? (FlawKind.RingsCrossing, "cross")
                    : (FlawKind.RingsOverlapping, "run along each other");
            var segment = contact.SegmentOnFirst;
            flaws.Add(
                new(kind, contact.Point, segment, $"the rings {first} and {second} {what}.", first)
            );
        }
    }
}
