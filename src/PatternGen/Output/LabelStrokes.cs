using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Labels as the strokes that draw them.</summary>
internal static class LabelStrokes
{
    /// <summary>Returns the strokes where they lie in the pattern.</summary>
    internal static IEnumerable<Chain> Strokes(this Label label)
    {
        var placement = Placement(label);
        return Lettering
            .Strokes(label.Text, label.Height)
            .Select(stroke => stroke.Transformed(placement));
    }

    /// <summary>Returns the room that the label takes up, in the pattern.</summary>
    internal static Extents Box(this Label label)
    {
        var box = Lettering.Box(label.Text, label.Height);
        return Contour
            .Polygon(box.Min, new(box.Max.X, box.Min.Y), box.Max, new(box.Min.X, box.Max.Y))
            .Transformed(Placement(label))
            .Extents;
    }

    private static Transform Placement(Label label) =>
        Transform
            .Move(FromPlace(label))
            .Then(Transform.Rotate(label.Turn))
            .Then(Transform.Move(label.At - Point.Origin));

    /// <summary>Where the text starts as seen from the label's place: elsewhere only if the label was mirrored.</summary>
    private static Vector FromPlace(Label label)
    {
        if (!label.EndsAtPlace && !label.HangsFromPlace)
            return default;
        // Mirrored about 0, what reached from min to max reaches from -max to -min: moved by -(min + max).
        var box = Lettering.Box(label.Text, label.Height);
        return new(
            label.EndsAtPlace ? -(box.Min.X + box.Max.X) : 0,
            label.HangsFromPlace ? -(box.Min.Y + box.Max.Y) : 0
        );
    }
}
