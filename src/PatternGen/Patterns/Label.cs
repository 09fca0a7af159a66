using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A line of text on the drawing, never carved; drawn with the library's own single-stroke alphabet.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Label
{
    /// <summary>Creates a label.</summary>
    /// <param name="text">One line of text.</param>
    /// <param name="at">Where the text starts, on its base line.</param>
    /// <param name="height">Height of a capital letter in mm. 2.5 is easy to read on paper.</param>
    /// <param name="turn">Direction of the base line; level by default.</param>
    /// <exception cref="ArgumentException">The text is empty or has more than one line.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The height is not positive.</exception>
    public Label(string text, Point at, double height, Angle turn = default)
    {
        if (string.IsNullOrWhiteSpace(text) || text.AsSpan().IndexOfAny('\r', '\n') >= 0)
            throw new ArgumentException("A label is one line of text, not empty.", nameof(text));
        Text = text;
        At = new Vertex(at).Point;
        Height = Guard.Positive(height);
        Turn = turn;
    }

    private Label(Label drawn, Transform transform, Angle turn)
    {
        Text = drawn.Text;
        At = transform.Apply(drawn.At);
        Height = drawn.Height * transform.Scale;
        Turn = turn;
        EndsAtPlace = drawn.EndsAtPlace;
        HangsFromPlace = drawn.HangsFromPlace;
    }

    /// <summary>One line of text.</summary>
    public string Text { get; }

    /// <summary>
    /// Where the text starts, on its base line. Once mirrored it is where this place went, at which the text then ends,
    /// or from whose height it hangs: so that it covers the mirrored room and can still be read.
    /// </summary>
    public Point At { get; }

    /// <summary>Height of a capital letter in mm.</summary>
    public double Height { get; }

    /// <summary>Direction of the base line.</summary>
    public Angle Turn { get; }

    /// <summary>Whether the text runs up to <see cref="At"/> instead of from it, mirrored about the upright line there.</summary>
    internal bool EndsAtPlace { get; private init; }

    /// <summary>Whether the text lies below <see cref="At"/> by what it else lies above it, mirrored about the level line there.</summary>
    internal bool HangsFromPlace { get; private init; }

    /// <summary>Returns the label as it lies once its room has been mirrored.</summary>
    internal Label Lying(bool endsAtPlace, bool hangsFromPlace) =>
        new(this, Transform.Identity, Turn)
        {
            EndsAtPlace = endsAtPlace,
            HangsFromPlace = hangsFromPlace,
        };

    /// <summary>
    /// Returns the label where a transform takes it. Its room is mirrored, its letters are not: what could be read
    /// from below or from the right still can.
    /// </summary>
    internal Label Transformed(Transform transform)
    {
        var before = Vector.Towards(Turn);
        var along = transform.Apply(before).Unit();
        if (!transform.IsMirrored)
            return new(this, transform, along.Direction);
        // Letters fit a mirrored room in two ways, one the other turned by 180 degrees.
        return ReadsUpright(along) == ReadsUpright(before)
            ? new(this, transform, along.Direction) { HangsFromPlace = !HangsFromPlace }
            : new(this, transform, (-along).Direction) { EndsAtPlace = !EndsAtPlace };
    }

    /// <summary>Whether text in a direction is read from below, or, if it is upright, from the right.</summary>
    private static bool ReadsUpright(Vector along)
    {
        // What arithmetic leaves of a level component of an upright direction is no direction.
        const double noise = 1e-9;
        return Math.Abs(along.X) > noise ? along.X > 0 : along.Y > 0;
    }
}
