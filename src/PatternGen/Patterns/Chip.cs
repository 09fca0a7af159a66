using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One chip of a pattern: a piece of wood to cut away, seen from above.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class Chip
{
    private readonly ChipShape _shape;
    private readonly MemberGrain _grain;

    internal Chip(in PlacedChip chip)
    {
        // Inside the tree rows and places are counted from 0.
        Id = new(chip.Id.Row + 1, chip.Id.Index + 1);
        _shape = chip.Shape;
        _grain = chip.Grain;
        Placement = chip.Placement;
        Cut = chip.Cut;
        Outline = chip.ToOutline();
        Holes = chip.ToHoles();
    }

    /// <summary>Row and place.</summary>
    public ChipId Id { get; }

    /// <summary>The outline where it lies on the wood, in mm, counter-clockwise. Corners shared with a neighbour are the same to the last digit.</summary>
    public Contour Outline { get; }

    /// <summary>
    /// Where the ground stays standing inside the chip, as it lies on the wood, in mm, clockwise; empty for nearly all
    /// chips. Holes may touch the outline and each other in points.
    /// </summary>
    public IReadOnlyList<Contour> Holes { get; }

    /// <summary>The outline in the motif's own frame; all repeats of a chip share this one object.</summary>
    public Contour Shape => _shape.Outline;

    /// <summary>The holes in the motif's own frame, in the order of <see cref="Holes"/>; all repeats of a chip share these objects.</summary>
    public IReadOnlyList<Contour> ShapeHoles => _shape.Holes;

    /// <summary>How <see cref="Shape"/> and <see cref="ShapeHoles"/> are placed on the wood; they agree with <see cref="Outline"/> and <see cref="Holes"/> to 1e-9 mm.</summary>
    public Transform Placement { get; }

    /// <summary>
    /// How the chip is cut where it lies: the apex of a stab is a corner of <see cref="Outline"/>, its depth is in mm on
    /// the wood. Default <see cref="ChipCut.Walls"/>.
    /// </summary>
    public ChipCut Cut { get; }

    /// <summary>How the chip is cut in the motif's own frame: the apex of a stab is a corner of <see cref="Shape"/>.</summary>
    public ChipCut ShapeCut => _shape.Cut;

    /// <summary>The member that it lies on.</summary>
    internal MemberGrain Grain => _grain;

    /// <summary>
    /// How the walls go down from <see cref="Shape"/>, as seen from above; all repeats of a chip share this one object, which is
    /// made when first asked for.
    /// </summary>
    /// <exception cref="PatternException">The outline crosses or runs along itself.</exception>
    public Roof Roof => _shape.Roof;

    /// <summary>Returns the chip as a solid where it lies: how deep it gets, and what wood is cut away.</summary>
    /// <remarks>
    /// Walls lean as <see cref="Cut"/> says, or else as the cutter does: a chip with sides of 3, 4 and 5 mm is 2.1445 mm deep with a knife
    /// held at 65 degrees, and 1.7321 with a bit of 60 degrees included.
    /// </remarks>
    /// <param name="cutter">What it is cut with.</param>
    /// <exception cref="PatternException">The outline crosses or runs along itself.</exception>
    public ChipSolid SolidFor(Cutter cutter)
    {
        Guard.NotNull(cutter);
        if (Cut.IsStabbed)
            return Cut.StabbedSolid(Outline);
        var clearance = Roof.Clearance * Placement.Scale;
        return ChipSolid.Walled(Roof, Cut.WallAngleWith(cutter, clearance), Placement);
    }

    /// <summary>Returns the direction of the grain where the chip lies, counter-clockwise from x: from 0 (included) to 180 degrees (excluded).</summary>
    /// <remarks>
    /// It is that of the stock, measured from the length of the member that the chip lies on as that is placed: on a rail
    /// turned upright, a grain along its length is 90 degrees. On no member it is measured from x; a
    /// <see cref="Pattern.WithGrain(double)"/> takes the stock's place.
    /// </remarks>
    /// <param name="stock">The wood.</param>
    public Angle GrainOn(Stock stock)
    {
        var grain = _grain.On(Guard.NotNull(stock));
        // There and back is one grain; what points down or straight to the left is turned round.
        return (grain.Y < 0 || (grain.Y == 0 && grain.X < 0) ? -grain : grain).Direction;
    }

    /// <summary>Returns the id and the extents, for messages.</summary>
    public override string ToString() => $"chip {Id}, {Outline.Extents}";
}
