using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the chips of a row for a pitch, in the frame of one repeat: the base runs from 0 to the pitch.</summary>
internal sealed class TriangleShape
{
    /// <summary>Halvings of the search for the largest curve that works: enough for a part in a million.</summary>
    private const int SearchSteps = 20;

    private readonly TriangleRow _row;
    private readonly double _low;
    private readonly double _high;
    private readonly double _pitch;

    /// <exception cref="PatternException">The gap leaves no base, or the curves do not fit the repeat.</exception>
    internal TriangleShape(TriangleRow row, TriangleBand band, double pitch)
    {
        _row = row;
        _low = band.Rules[row.LowerRule];
        _high = band.Rules[row.UpperRule];
        _pitch = pitch;
        RefuseWideGap();
        var outline = Draw(curve: 1);
        if (!IsSound(outline))
            RefuseCurves();
        Chip = Cut(outline);
    }

    /// <summary>The chip.</summary>
    internal ChipShape Chip { get; }

    /// <summary>The part of the chip left of the middle of its base: what the right end of a band cuts off.</summary>
    /// <exception cref="PatternException">It is to be stabbed and has more than three sides.</exception>
    internal ChipShape? LeftHalf() => Half(UprightCut.Left(Chip.Outline, _pitch / 2));

    /// <summary>The part of the chip right of the middle of its base.</summary>
    /// <exception cref="PatternException">It is to be stabbed and has more than three sides.</exception>
    internal ChipShape? RightHalf() => Half(UprightCut.Right(Chip.Outline, _pitch / 2));

    /// <summary>
    /// Returns a part of the chip cut as the row says; its outline may lie elsewhere along the band. Null if it is to be
    /// stabbed and can't be.
    /// </summary>
    internal ChipShape? Part(Contour outline)
    {
        if (!_row.IsStabCut)
            return new(outline);
        // Three sides, of which the one across from the tip, the base, is straight.
        var canBeStabbed =
            outline.Count == 3 && outline.At((TipOf(outline) + 1) % outline.Count).IsLine;
        return canBeStabbed ? Cut(outline) : null;
    }

    private double BaseHeight => _row.Pointing == Pointing.Up ? _low : _high;

    private ChipShape? Half(Contour? outline)
    {
        if (outline is null)
            return null;
        if (_row.IsStabCut && outline.Count != 3)
            throw new PatternException(
                $"The half chips at the ends of the row between rules {_row.LowerRule} and {_row.UpperRule} have {outline.Count} sides, "
                    + "and only three-sided chips can be stab-cut.",
                new(_pitch / 2, BaseHeight),
                ["staggered ends with half gaps", "a row that does not lean", "walls all round"]
            );
        return Cut(outline);
    }

    /// <summary>The chip cut as the row says; a stab goes down at the corner farthest from the base, which is the tip.</summary>
    private ChipShape Cut(Contour outline)
    {
        var chip = new ChipShape(outline);
        if (!_row.IsStabCut)
            return chip;
        var stab = _row.Cut.AtCorner(TipOf(outline));
        stab.RefuseUnfit(outline, holes: 0);
        return chip.WithCut(stab);
    }

    private int TipOf(Contour outline) =>
        Enumerable
            .Range(0, outline.Count)
            .MaxBy(corner => Math.Abs(outline.Vertices[corner].Point.Y - BaseHeight));

    private Contour Draw(double curve)
    {
        var left = _row.Gap / 2;
        var right = _pitch - _row.Gap / 2;
        var middle = _pitch / 2 + _row.Lean * (right - left) / 2;
        var (baseY, tipY) = _row.Pointing == Pointing.Up ? (_low, _high) : (_high, _low);
        Point baseLeft = new(left, baseY);
        Point baseRight = new(right, baseY);
        Point tip = new(middle, tipY);
        // Counter-clockwise, where a positive sagitta bulges out of the chip.
        return _row.Pointing == Pointing.Up
            ? new(
                Side(baseLeft, baseRight, _row.BaseSagitta * curve),
                Side(baseRight, tip, _row.RightSagitta * curve),
                Side(tip, baseLeft, _row.LeftSagitta * curve)
            )
            : new(
                Side(tip, baseRight, _row.RightSagitta * curve),
                Side(baseRight, baseLeft, _row.BaseSagitta * curve),
                Side(baseLeft, tip, _row.LeftSagitta * curve)
            );
    }

    private static Vertex Side(Point from, Point to, double sagitta) =>
        new(from, Segment.WithSagitta(from, to, sagitta).Bulge);

    /// <summary>Whether the sides meet at the corners only and stay within their repeat and their rules.</summary>
    private bool IsSound(Contour outline)
    {
        Extents cell = new(new(0, _low), new(_pitch, _high));
        if (!cell.Grown(Tolerance.For(cell).Merge).Contains(outline.Extents))
            return false;
        var sides = outline.ToSegments();
        for (var i = 0; i < sides.Length; i++)
            if (sides[i].Intersect(sides[(i + 1) % sides.Length]).Kind != IntersectionKind.One)
                return false;
        return outline.SignedArea > 0;
    }

    private void RefuseWideGap()
    {
        if (_row.Gap >= _pitch)
            throw new PatternException(
                $"A gap of {Guard.Text(_row.Gap)} mm leaves no chip in a pitch of {Guard.Text(_pitch)} mm.",
                new(0, _low),
                [$"a gap under {Guard.Text(_pitch)} mm", $"a pitch over {Guard.Text(_row.Gap)} mm"]
            );
    }

    private void RefuseCurves()
    {
        var (works, fails) = (0.0, 1.0);
        for (var step = 0; step < SearchSteps; step++)
        {
            var curve = (works + fails) / 2;
            if (IsSound(Draw(curve)))
                works = curve;
            else
                fails = curve;
        }
        double[] sagittas = [_row.LeftSagitta, _row.RightSagitta, _row.BaseSagitta];
        var asked = sagittas.MaxBy(Math.Abs);
        throw new PatternException(
            $"At a pitch of {Guard.Text(_pitch)} mm the curved sides of the row between rules {_row.LowerRule} and {_row.UpperRule} "
                + "cross each other or leave their repeat.",
            new(_pitch / 2, (_low + _high) / 2),
            [
                $"a curve of {Guard.Text(asked * works)} mm instead of {Guard.Text(asked)} mm, or flatter",
                "a longer pitch",
            ]
        );
    }
}
