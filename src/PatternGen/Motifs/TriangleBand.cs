using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band of ruled lines with rows of three-sided chips between them.</summary>
/// <remarks>
/// The rules are numbered from 0 at the lower edge. The band knows its shape, not its length: a rail fits it, at a pitch
/// near <see cref="NominalPitch"/>. Each method returns a changed copy. Immutable and safe to share between threads.
/// </remarks>
public sealed partial class TriangleBand
{
    /// <summary>More rules than a band can use, and few enough to refuse a slip of the pen.</summary>
    internal const int MaxRules = 1000;

    private readonly double[] _rules;
    private readonly TriangleRow[] _rows;

    private TriangleBand(double[] spacings, double[] rules, TriangleRow[] rows)
    {
        Spacings = spacings;
        _rules = rules;
        _rows = rows;
        NominalPitch = 2 * rows.Max(RowHeight);
    }

    private TriangleBand(TriangleBand other, TriangleRow[] rows)
        : this(other.Spacings, other._rules, rows)
    {
        Margins = other.Margins;
        LineCutWidth = other.LineCutWidth;
        if (other.HasOwnPitch)
            (HasOwnPitch, NominalPitch) = (true, other.NominalPitch);
    }

    /// <summary>Heights of the ruled lines over the lower edge of the band in mm, from 0 up.</summary>
    public IReadOnlyList<double> Rules => _rules;

    /// <summary>The rows of chips, from the lowest.</summary>
    public IReadOnlyList<TriangleRow> Rows => _rows;

    /// <summary>Height over all, in mm. Rules 2, 4, 4, 2 mm apart make 12.</summary>
    public double Height => _rules[^1];

    /// <summary>Length of one repeat in mm that a fit aims at. Default twice the height of the tallest row.</summary>
    public double NominalPitch { get; private init; }

    /// <summary>What becomes of the strips beside the rows. Default <see cref="BandMargin.PlainGround"/>.</summary>
    public BandMargin Margins { get; private init; }

    /// <summary>Width of the margins' line cuts in mm. Default 1.</summary>
    public double LineCutWidth { get; private init; } = 1;

    /// <summary>The symmetry of the band's chips, as if it ran on for ever. <c>Ruled(2, 4, 4, 2)</c> has p2mm.</summary>
    public FriezeGroup FriezeGroup => BandSymmetry.GroupOf(this);

    /// <summary>The distances between the rules as they were given, in mm: sums of them may be rounded.</summary>
    internal double[] Spacings { get; }

    /// <summary>Whether <see cref="NominalPitch"/> was chosen, rather than following from the rows.</summary>
    internal bool HasOwnPitch { get; init; }

    /// <summary>Returns a band of ruled lines with the given distances between them.</summary>
    /// <param name="spacings">
    /// Distances in mm, from the lower edge up. Of three or more the outermost two are margins, and each strip between
    /// them carries a row; one or two carry rows in every strip. <c>Ruled(2, 4, 4, 2)</c> is 12 mm high with two rows of
    /// 4 mm triangles, tips facing.
    /// </param>
    /// <exception cref="ArgumentException">There is no spacing, or too many.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A spacing is not positive.</exception>
    public static TriangleBand Ruled(params double[] spacings)
    {
        var strips = Guard.NotNull(spacings).ToArray();
        if (strips.Length is 0 or >= MaxRules)
            throw new ArgumentException(
                $"A band has from 1 to {MaxRules - 1} spacings between its rules, but {strips.Length} are given.",
                nameof(spacings)
            );
        var rules = new double[strips.Length + 1];
        for (var i = 0; i < strips.Length; i++)
            rules[i + 1] = rules[i] + Guard.Positive(strips[i], $"spacings[{i}]");
        Guard.Positive(rules[^1], "the height of the band");
        var margins = strips.Length >= 3 ? 1 : 0;
        var carved = Enumerable.Range(margins, strips.Length - 2 * margins);
        return new TriangleBand(
            strips,
            rules,
            [.. carved.Select(i => TriangleRow.Between(i, i + 1))]
        ).Facing();
    }

    /// <summary>Returns the band with the given rows, in any order.</summary>
    /// <exception cref="ArgumentException">There is no row, a rule does not exist, or two rows would overlap.</exception>
    [Pure]
    public TriangleBand WithRows(params TriangleRow[] rows)
    {
        TriangleRow[] ordered = [.. Guard.NotNull(rows)];
        Array.Sort(ordered, FromBelow);
        if (ordered.Length == 0)
            throw new ArgumentException("A band needs at least one row of chips.", nameof(rows));
        foreach (var row in ordered)
            if (row.UpperRule >= _rules.Length)
                throw new ArgumentException(
                    $"A row reaches to rule {row.UpperRule}, but the rules of this band are numbered 0 to {_rules.Length - 1}.",
                    nameof(rows)
                );
        RefuseOverlaps(ordered);
        return new(this, ordered);
    }

    /// <summary>Returns the band with the rows of its lower half pointing up and those of its upper half down; a middle row points up.</summary>
    [Pure]
    public TriangleBand Facing() =>
        WithEachRow((row, i) => i <= (_rows.Length - 1) / 2 ? row.Up() : row.Down());

    /// <summary>Returns the band with the rows of its lower half pointing down and those of its upper half up; a middle row points down.</summary>
    [Pure]
    public TriangleBand BackToBack() =>
        WithEachRow((row, i) => i <= (_rows.Length - 1) / 2 ? row.Down() : row.Up());

    /// <summary>Returns the band with all rows pointing the same way.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the named values.</exception>
    [Pure]
    public TriangleBand Following(Pointing pointing = Pointing.Up)
    {
        Guard.Defined(pointing);
        return WithEachRow((row, _) => pointing == Pointing.Up ? row.Up() : row.Down());
    }

    /// <summary>Returns the band with every second row shifted by half a pitch.</summary>
    [Pure]
    public TriangleBand Staggered() =>
        WithEachRow((row, i) => i % 2 == 1 ? row.Staggered() : row.InStep());

    /// <summary>
    /// Returns the band with each strip filled: between the triangles of a row, triangles pointing the other way that
    /// share their sides, curved ones curved into each other. To be called last.
    /// </summary>
    /// <exception cref="ArgumentException">A row leans, so that its gaps are no upright triangles, or a strip is filled already.</exception>
    [Pure]
    public TriangleBand Adjacent()
    {
        if (_rows.Any(row => row.Lean != 0))
            throw new ArgumentException(
                "Adjacent fills the gaps of upright rows, but a row leans; the gaps of leaning triangles are none."
            );
        return WithRows([.. _rows.SelectMany(row => (TriangleRow[])[row, Between(row)])]);
    }

    /// <summary>Returns the band with leaning triangles in every row.</summary>
    /// <param name="lean">From -1, tip over the left end of the base, through 0 to 1, over the right end.</param>
    [Pure]
    public TriangleBand Leaning(double lean) => WithEachRow((row, _) => row.Leaning(lean));

    /// <summary>Returns the band with the slanted sides of every row curved.</summary>
    /// <param name="sagitta">Height of the arcs in mm: positive bulges out of the chips, negative into them.</param>
    [Pure]
    public TriangleBand Curved(double sagitta) => WithEachRow((row, _) => row.Curved(sagitta));

    /// <summary>Returns the band with ground left between the bases of neighbours in every row.</summary>
    /// <param name="gap">In mm, 0 or more.</param>
    [Pure]
    public TriangleBand WithGap(double gap) => WithEachRow((row, _) => row.WithGap(gap));

    /// <summary>Returns the band with stab-cut chips in every row, each deepest at its tip, as <see cref="TriangleRow.StabCut"/> says.</summary>
    /// <param name="slope">Angle between floor and surface in degrees, from 5 to 70; 30 if neither slope nor depth is given.</param>
    /// <param name="depth">Depth at the tips in mm, more than 0.</param>
    [Pure]
    public TriangleBand StabCut(double? slope = null, double? depth = null) =>
        WithEachRow((row, _) => row.StabCut(slope, depth));

    /// <summary>Returns the band with another nominal pitch.</summary>
    /// <param name="pitch">Length of one repeat in mm.</param>
    [Pure]
    public TriangleBand WithPitch(double pitch) =>
        new(this, _rows) { NominalPitch = Guard.Positive(pitch), HasOwnPitch = true };

    /// <summary>Returns the band with the outer rule of each margin cut as a V groove.</summary>
    /// <param name="width">Width of the groove at the surface in mm, 1 by default.</param>
    [Pure]
    public TriangleBand WithLineCuts(double width = 1) =>
        new(this, _rows) { Margins = BandMargin.LineCuts, LineCutWidth = Guard.Positive(width) };

    /// <summary>Returns the band with plain margins.</summary>
    [Pure]
    public TriangleBand WithPlainMargins() => new(this, _rows) { Margins = BandMargin.PlainGround };

    /// <summary>Heights of the rules that the margins cut as grooves.</summary>
    /// <exception cref="PatternException">A groove is so wide that it would run into the chips.</exception>
    internal IEnumerable<double> GrooveHeights()
    {
        if (Margins == BandMargin.PlainGround)
            yield break;
        var below = _rules[_rows.Min(row => row.LowerRule)];
        var above = Height - _rules[_rows.Max(row => row.UpperRule)];
        if (below > 0)
            yield return Groove(0, below);
        if (above > 0)
            yield return Groove(Height, above);
    }

    private double Groove(double height, double margin) =>
        LineCutWidth / 2 < margin
            ? height
            : throw new PatternException(
                $"A line cut {Guard.Text(LineCutWidth)} mm wide on the outer rule would run into the chips, {Guard.Text(margin)} mm away.",
                new(0, height),
                [
                    $"a line cut less than {Guard.Text(2 * margin)} mm wide",
                    $"a margin of more than {Guard.Text(LineCutWidth / 2)} mm",
                ]
            );

    /// <summary>From the lowest row up; of two in one strip the one in step comes first.</summary>
    private static int FromBelow(TriangleRow a, TriangleRow b)
    {
        if (a.LowerRule != b.LowerRule)
            return a.LowerRule.CompareTo(b.LowerRule);
        if (a.UpperRule != b.UpperRule)
            return a.UpperRule.CompareTo(b.UpperRule);
        return a.IsStaggered.CompareTo(b.IsStaggered);
    }

    private double RowHeight(TriangleRow row) => _rules[row.UpperRule] - _rules[row.LowerRule];

    private TriangleBand WithEachRow(Func<TriangleRow, int, TriangleRow> change) =>
        WithRows([.. _rows.Select(change)]);

    /// <summary>The row that fills what a row leaves between its rules.</summary>
    private static TriangleRow Between(TriangleRow row)
    {
        var other = row.Pointing == Pointing.Up ? row.Down() : row.Up();
        return (row.IsStaggered ? other.InStep() : other.Staggered()).Curved(
            -row.RightSagitta,
            -row.LeftSagitta
        );
    }
}
