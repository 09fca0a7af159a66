namespace PatternGen.Geometry;

/// <summary>Says what a sound arrangement is, by looking for what one is not.</summary>
internal static class ArrangementCheck
{
    internal static IEnumerable<string> Of(Arrangement arrangement)
    {
        string[] found = [.. HalfEdges(arrangement), .. Nodes(arrangement)];
        // A walk along wrong half-edges might never come back.
        return found.Length > 0
            ? found
            : [.. Meetings(arrangement), .. Faces(arrangement), .. Totals(arrangement)];
    }

    private static IEnumerable<string> HalfEdges(Arrangement arrangement)
    {
        foreach (var edge in arrangement.Edges)
        foreach (var halfEdge in (HalfEdge[])[edge.Forward, edge.Backward])
        {
            var twin = halfEdge.Twin;
            if (twin.Twin != halfEdge || twin == halfEdge)
                yield return $"The twin of {halfEdge} is not mutual.";
            if (twin.Origin != halfEdge.Target || twin.Target != halfEdge.Origin)
                yield return $"{halfEdge} and its twin do not run between the same nodes.";
            if (
                halfEdge.Segments[0].Start != halfEdge.Origin.Point
                || halfEdge.Segments[^1].End != halfEdge.Target.Point
            )
                yield return $"The curve of {halfEdge} does not run from node to node.";
            if (halfEdge.Next.Previous != halfEdge || halfEdge.Previous.Next != halfEdge)
                yield return $"Next and previous of {halfEdge} do not undo each other.";
            if (halfEdge.Next.Origin != halfEdge.Target)
                yield return $"The half-edge after {halfEdge} does not start where it ends.";
            if (halfEdge.Next.Face != halfEdge.Face)
                yield return $"{halfEdge} and the next one have different faces.";
            if (edge.Sources.Count == 0)
                yield return $"{edge} remembers no curve.";
        }
    }

    private static IEnumerable<string> Nodes(Arrangement arrangement)
    {
        foreach (var node in arrangement.Nodes)
        {
            if (node.Degree == 0)
                yield return $"Nothing leaves {node}.";
            foreach (var halfEdge in node.Leaving)
                if (halfEdge.Origin != node)
                    yield return $"{halfEdge} is said to leave {node}, but does not start there.";
        }
    }

    /// <summary>Two edges may share nodes and nothing else.</summary>
    private static IEnumerable<string> Meetings(Arrangement arrangement)
    {
        var curves = arrangement
            .Edges.SelectMany(edge => edge.Forward.Segments.Select(curve => (edge, curve)))
            .ToArray();
        var found = new List<string>();
        // Edges end in merged points, and so stray a little from their curves.
        var tolerance = Tolerance.OfMerge(arrangement.Tolerance.Merge / 4);
        ExtentsGrid
            .Of(Array.ConvertAll(curves, part => part.curve), tolerance)
            .VisitPairs(
                (first, second) =>
                {
                    var (one, other) = (curves[first], curves[second]);
                    var meeting = one.curve.Intersect(other.curve, tolerance);
                    foreach (var point in meeting.Points)
                        if (!IsFromEnd(one.curve, other.curve, point))
                            found.Add(
                                $"{one.edge} and {other.edge} meet at {point}, where no node is."
                            );
                    foreach (var stretch in meeting.Stretches)
                        if (!IsNearEnd(one.curve, other.curve, stretch.Middle))
                            found.Add($"{one.edge} and {other.edge} run along each other.");
                }
            );
        return found;

        // Curves that leave a node at a small angle stay within the tolerance for much longer than that.
        bool IsFromEnd(Segment one, Segment other, Point point) =>
            IsNearEnd(one, other, point)
            || Ends(one, other)
                .Any(end =>
                    other.DistanceTo(one.PointAt((one.LengthAt(end) + one.LengthAt(point)) / 2))
                    <= arrangement.Tolerance.Merge
                );

        bool IsNearEnd(Segment one, Segment other, Point point) =>
            Ends(one, other)
                .Any(end => end.DistanceTo(point) <= 4 * arrangement.Tolerance.AtTangency);

        static Point[] Ends(Segment one, Segment other) =>
            [one.Start, one.End, other.Start, other.End];
    }

    private static IEnumerable<string> Faces(Arrangement arrangement)
    {
        foreach (var face in arrangement.BoundedFaces)
        {
            if (!(face.Area > 0))
                yield return $"{face} has no area.";
            foreach (var walk in face.Walks)
            foreach (var halfEdge in walk)
                if (halfEdge.Face != face)
                    yield return $"{halfEdge} is on a walk round {face}, but belongs to {halfEdge.Face}.";
        }
    }

    private static IEnumerable<string> Totals(Arrangement arrangement)
    {
        var walked = arrangement.Faces.Sum(face => face.Walks.Sum(walk => walk.Count));
        if (walked != arrangement.HalfEdgeCount)
            yield return $"The walks round all faces have {walked} half-edges of {arrangement.HalfEdgeCount}.";
        var (areas, boundary) = (
            arrangement.BoundedFaces.Sum(face => face.Area),
            arrangement.AreaWithinBoundary
        );
        if (Math.Abs(areas - boundary) > RoundingOf(arrangement))
            yield return $"The faces have {areas:R} mm² together, but within the outer boundary are {boundary:R} mm².";
        var euler = arrangement.Nodes.Count - arrangement.Edges.Count + arrangement.Faces.Count;
        if (arrangement.Edges.Count > 0 && euler != 1 + arrangement.ComponentCount)
            yield return $"Nodes − edges + faces is {euler}, but with {arrangement.ComponentCount} components it must be {1 + arrangement.ComponentCount}.";
    }

    /// <summary>Areas are summed of as many terms as there are edges, each off by the last digits of the whole drawing's.</summary>
    private static double RoundingOf(Arrangement arrangement)
    {
        double reach = 0;
        foreach (var node in arrangement.Nodes)
            reach = Math.Max(reach, (node.Point - arrangement.Nodes[0].Point).LengthSquared);
        return 1e-14
            * (reach + arrangement.AreaWithinBoundary)
            * Math.Max(100, arrangement.Edges.Count);
    }
}
