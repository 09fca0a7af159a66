using PatternGen.Geometry;

namespace PatternGen;

/// <summary>An outline filled with a lattice of chips: a pattern with a chip for each cell, and the outline as layout lines.</summary>
/// <remarks>
/// Cells are whole, and the lattice lies about the middle of the outline, unless asked otherwise. The field is worked out
/// when it is first needed, so settings may come in any order; an impossible one throws a <see cref="PatternException"/> then.
/// The outline is no stock: add that with <c>field.With(Pattern.OfStock(lid))</c>. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class CarvedField : Pattern
{
    private readonly Lazy<FieldPlan> _plan;

    internal CarvedField(FieldDesign design)
    {
        Design = design;
        _plan = new(Solve);
    }

    /// <summary>The outline.</summary>
    public Region Outline => Design.Outline;

    /// <summary>What the outline is filled with.</summary>
    public FieldLattice Lattice => Design.Sizes.Family;

    /// <summary>How the cells came out.</summary>
    /// <exception cref="PatternException">No cell fits, or there would be far too many.</exception>
    public FieldFit Fit => _plan.Value.Fit;

    /// <summary>All settings.</summary>
    internal FieldDesign Design { get; }

    internal override IEnumerable<string> Facts(Wording words)
    {
        var extents = Outline.Extents;
        yield return words.Field(
            Lattice,
            Design.Sizes.Width,
            Design.Sizes.Height,
            Design.Sizes.Strips,
            extents.Width,
            extents.Height
        );
        if (Design.Motifs.Values.Length > 0)
            yield return words.FieldMotifs([
                .. Design.Motifs.Values.Select(motif => motif.Title(words)),
            ]);
        yield return Fit.InWords(words);
        if (Design.Rim == FieldRim.ShrunkCells && Fit.LeftOutCells > 0)
            yield return words.FieldSmallest(Design.Smallest);
    }

    private protected override PatternNode Draw() => GroupNode.Of(Lines(), _plan.Value.Chips);

    private MotifNode Lines() =>
        new()
        {
            LayoutLines =
            [
                .. Outline
                    .Contours.Concat(Design.BorderGap > 0 ? Edge().Contours : [])
                    .Select(ring => Chain.Of(ring.Segments)),
            ],
        };

    private Region Edge() => Outline.Inset(Design.BorderGap);

    private FieldPlan Solve()
    {
        var region = Design.BorderGap > 0 ? Edge() : Outline;
        if (region.IsEmpty)
            throw FieldTrouble.GapTooWide(Design);
        var edge = new FieldEdge(region);
        var plan = new FieldSolver(Design, edge).Solve();
        return plan.Chips.ChipCount > 0 ? plan : throw FieldTrouble.NothingFits(Design, edge);
    }

    private CarvedField With(Func<FieldDesign, FieldDesign> change) => new(change(Design));
}
