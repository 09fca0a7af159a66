using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A board carved all over: a border round it, a motif in the middle, and a field between them.</summary>
/// <remarks>
/// The three may be given in any order, and are drawn and numbered in this one: border, field, centre. Each method returns
/// a changed copy. Immutable and safe to share between threads.
/// </remarks>
public sealed class Panel : Pattern
{
    private readonly Func<Region, Pattern>? _draw;
    private readonly Pattern? _field;

    private Panel(
        Frame board,
        FrameBorder? border,
        Pattern? centre,
        double centreGap,
        Func<Region, Pattern>? draw,
        double fieldMargin
    )
    {
        Board = board;
        FrameBorder = border;
        CentreMotif = centre;
        CentreGap = centreGap;
        FieldMargin = fieldMargin;
        _draw = draw;
        // At once, so that a panel holds what was drawn and not who draws it.
        _field = draw is null ? null : Guard.NotNull(draw(FreeRegion(fieldMargin)), "draw");
    }

    /// <summary>The border; null if there is none.</summary>
    public FrameBorder? FrameBorder { get; }

    /// <summary>The field; null if there is none.</summary>
    public Pattern? FieldPattern => _field;

    /// <summary>Ground between the border and the field in mm.</summary>
    public double FieldMargin { get; }

    /// <summary>The motif in the middle; null if there is none.</summary>
    public Pattern? CentreMotif { get; }

    /// <summary>Ground in mm that the field leaves round the centre motif.</summary>
    public double CentreGap { get; }

    /// <inheritdoc/>
    public override string? Name => Board.Name;

    /// <summary>The middle of the board, where the centre motif comes to lie.</summary>
    public Point Middle => Board.Outer.Centroid;

    internal Frame Board { get; }

    /// <summary>Returns a plain panel with its lower left corner at (0, 0).</summary>
    /// <param name="width">Width in mm.</param>
    /// <param name="height">Height in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not positive, or over 1 km.</exception>
    public static Panel Of(double width, double height)
    {
        Guard.Positive(width);
        Guard.Positive(height);
        // Without a border no member's width is ever asked for; any that leaves an opening will do.
        return Plain(PatternGen.Frame.Of(width, height, Math.Min(width, height) / 4).Lid());
    }

    /// <summary>Returns a panel with the given border, which may be of any shape, have several bands and corners of any kind.</summary>
    /// <remarks>The border's frame is taken as a lid: one board, without an opening. The panel begins where the opening would.</remarks>
    public static Panel Of(FrameBorder border)
    {
        var lid = Guard.NotNull(border).OnLid();
        return new(lid.Frame, lid, null, 0, null, 0);
    }

    /// <summary>Returns the panel with a border; the field is drawn anew within it.</summary>
    /// <param name="band">The band.</param>
    /// <param name="fromEdge">Distance in mm from the edge to its lowest rule; as much ground lies inside its highest one.</param>
    /// <param name="describe">Changes the border, mitred at first: <c>border => border.Wrapped().SamePitch()</c>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is negative.</exception>
    /// <exception cref="PatternException">The border leaves nothing of the panel.</exception>
    [Pure]
    public Panel Frame(
        TriangleBand band,
        double fromEdge = 6,
        Func<FrameBorder, FrameBorder>? describe = null
    )
    {
        Guard.NotNull(band);
        var width = band.Height + 2 * Guard.NotNegative(fromEdge);
        var board = Board.WithMembers(width);
        var border = board.Border(band, fromEdge);
        if (describe is not null)
            border = Guard.NotNull(describe(border), nameof(describe)).OnLid();
        return new(border.Frame, border, CentreMotif, CentreGap, _draw, FieldMargin);
    }

    /// <summary>Returns the panel with a field between border and centre motif.</summary>
    /// <param name="draw">
    /// Draws the field into the free region. It is called at once, and once more when border or centre change afterwards.
    /// </param>
    /// <param name="margin">Ground in mm that is kept free inside the border.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    /// <exception cref="PatternException">Nothing is left for a field.</exception>
    [Pure]
    public Panel Field(Func<Region, Pattern> draw, double margin = 0) =>
        new(
            Board,
            FrameBorder,
            CentreMotif,
            CentreGap,
            Guard.NotNull(draw),
            Guard.NotNegative(margin)
        );

    /// <summary>Returns the panel with a field that is drawn already, where it lies.</summary>
    [Pure]
    public Panel Field(Pattern field)
    {
        Guard.NotNull(field);
        return Field(_ => field);
    }

    /// <summary>Returns the panel with a motif in the middle; the field is drawn anew round it.</summary>
    /// <param name="motif">The motif, drawn about the origin.</param>
    /// <param name="gap">Ground in mm between the circle round it and the field, 0 by default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gap is negative.</exception>
    /// <exception cref="PatternException">The motif is too large for the panel.</exception>
    [Pure]
    public Panel Centre(Pattern motif, double gap = 0)
    {
        Guard.NotNull(motif);
        Guard.NotNegative(gap);
        return new(Board, FrameBorder, motif, gap, _draw, FieldMargin);
    }

    /// <summary>Returns the panel with a compass drawing in the middle: its petals carved if it has any, else all that may be carved.</summary>
    /// <inheritdoc cref="Centre(Pattern, double)"/>
    [Pure]
    public Panel Centre(CompassDrawing motif, double gap = 0) =>
        Centre(FrameBorder.PetalsOf(Guard.NotNull(motif)), gap);

    /// <summary>Returns the panel under a name, for captions.</summary>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    [Pure]
    public new Panel Named(string name)
    {
        var board = Board.Named(name);
        return new(board, FrameBorder?.On(board), CentreMotif, CentreGap, _draw, FieldMargin);
    }

    /// <summary>Returns what is free for a field: inside the border, round the centre motif.</summary>
    /// <param name="margin">Ground in mm that is kept free inside the border.</param>
    /// <exception cref="ArgumentOutOfRangeException">The margin is negative.</exception>
    /// <exception cref="PatternException">Nothing is left, or the centre motif reaches beyond.</exception>
    public Region FreeRegion(double margin = 0)
    {
        var inside = Inside(Guard.NotNegative(margin));
        if (CentreMotif is null)
            return new(inside);
        var room = MotifReach.Of(CentreMotif) + CentreGap;
        var free = inside.Contains(Middle) ? inside.DistanceTo(Middle) : 0;
        if (room >= free)
            throw new PatternException(
                $"The centre motif takes a circle of radius {Guard.Text(room)} mm, but the border lets it have {Guard.Text(free)} mm.",
                Middle,
                [$"less than {Guard.Text(free)} mm for the motif and its gap", "a narrower border"]
            );
        return room > 0 ? new(inside, new Circle(Middle, room).ToContour()) : new(inside);
    }

    internal override IEnumerable<string> Facts(Wording words) =>
        [
            Name is { } name
                ? $"{name}, {words.Size(Board.Width, Board.Height)}"
                : Board.Title(words),
            .. FrameBorder?.Facts(words).Skip(1) ?? [],
            .. _field?.Facts(words) ?? [],
            .. CentreMotif?.Facts(words) ?? [],
        ];

    private protected override PatternNode Draw()
    {
        // A motif that reaches into the border is refused without a field, too.
        _ = FreeRegion();
        List<PatternNode> nodes =
        [
            FrameBorder?.Root ?? Board.Draw(FrameCorner.Mitre, FrameThrough.Upright),
        ];
        if (_field is not null)
            nodes.Add(_field.Root);
        if (CentreMotif is not null)
            nodes.Add(new PlacedNode(CentreMotif.Root, Transform.Move(Middle - Point.Origin)));
        return GroupNode.Of(nodes);
    }

    /// <summary>Returns a plain panel that is a board of any outline.</summary>
    internal static Panel On(Frame board) => Plain(board.Lid());

    private static Panel Plain(Frame board) => new(board, null, null, 0, null, 0);

    private Contour Inside(double margin)
    {
        var taken = (FrameBorder is null ? 0 : Board.MemberWidth) + margin;
        return Board.Outline.IsOpenAt(taken)
            ? Board.Outline.Ring(taken)
            : throw new PatternException(
                $"{Guard.Text(taken)} mm from each edge leave nothing inside a panel of {Guard.Text(Board.Width)} × {Guard.Text(Board.Height)} mm.",
                remedies: ["a smaller margin", "a narrower border", "a larger panel"]
            );
    }
}
