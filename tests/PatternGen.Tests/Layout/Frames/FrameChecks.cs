namespace PatternGen.Tests.Layout.Frames;

/// <summary>What every carved frame must be.</summary>
internal static class FrameChecks
{
    /// <summary>
    /// Stations are rounded to 2^-36 mm, 1.5e-11, and coordinates to a few units of 3e-14 at 200 mm; what agrees by symmetry
    /// agrees to much less than this.
    /// </summary>
    internal const double Same = 1e-9;

    internal static TheoryData<string> Bands => [.. BandSampler.All.Select(band => band.Name)];

    internal static TheoryData<string> UprightBands =>
        [
            .. BandSampler
                .All.Where(band => band.Band.Rows.All(row => row.IsUpright))
                .Select(band => band.Name),
        ];

    /// <summary>A square, a rectangle, five to three, and one hardly larger than its corners.</summary>
    internal static (double Width, double Height)[] Sizes =>
        [(120, 120), (160, 112), (150, 90), (62, 54)];

    internal static TriangleBand Band(string name) =>
        BandSampler.All.Single(band => band.Name == name).Band;

    internal static FrameBorder Border(string band, double width, double height) =>
        Frame.Of(width, height, Band(band).Height + 3).Border(Band(band));

    internal static void ShouldBeCarvable(this Pattern border)
    {
        border.ChipCount.ShouldBeGreaterThan(0);
        foreach (var chip in border.Chips)
        {
            chip.Outline.SignedArea.ShouldBeGreaterThan(0);
            chip.Outline.Validate().IsValid.ShouldBeTrue(chip.ToString());
        }
        border
            .Inspect(Knife.Held(65), Stock.Thick(60))
            .Findings.Where(finding =>
                finding.Kind is FindingKind.ChipsOverlap or FindingKind.OffStock
            )
            .ShouldBeEmpty();
    }

    internal static void ShouldFillItsSides(this FrameBorder border)
    {
        foreach (var fit in border.Fits)
            (fit.Repeats * fit.Pitch + fit.FirstMargin + fit.LastMargin + fit.MiddleGap).ShouldBe(
                fit.Length,
                Same
            );
    }

    /// <summary>About both centre lines of a rectangle, and by a quarter turn if it is a square.</summary>
    internal static void ShouldHaveTheMirrorsOf(this Pattern pattern, double width, double height)
    {
        pattern.ShouldBeTheSameUnder(Transform.MirrorLeftRight(width / 2));
        pattern.ShouldBeTheSameUnder(Transform.MirrorTopBottom(height / 2));
        if (width == height)
            pattern.ShouldBeTheSameUnder(Transform.Rotate(90, new(width / 2, height / 2)));
    }

    internal static void ShouldBeTheSameUnder(this Pattern pattern, Transform map)
    {
        Figure[] figures = [.. pattern.Chips.Select(chip => new Figure(chip.Outline))];
        foreach (var chip in pattern.Chips)
            ShouldBeAmong(chip.Outline.Transformed(map), figures);
    }

    /// <summary>Each chip that is chosen must have its image among all the others.</summary>
    internal static void ShouldHaveImages(
        this Pattern pattern,
        Func<Chip, bool> which,
        Transform map
    )
    {
        Figure[] figures = [.. pattern.Chips.Select(chip => new Figure(chip.Outline))];
        var chosen = pattern.Chips.Where(which).ToArray();
        chosen.ShouldNotBeEmpty();
        foreach (var chip in chosen)
            ShouldBeAmong(chip.Outline.Transformed(map), figures);
    }

    private static void ShouldBeAmong(Contour image, Figure[] figures)
    {
        var seen = new Figure(image);
        figures
            .Any(figure => figure.IsSameAs(seen))
            .ShouldBeTrue($"no chip lies where {image.Extents} is expected");
    }

    /// <summary>Corners and middles of the sides, in any order.</summary>
    private sealed class Figure(Contour outline)
    {
        private readonly Point _middle = outline.Extents.Centre;
        private readonly Point[] _points =
        [
            .. outline.Segments.SelectMany(side => (Point[])[side.Start, side.Middle]),
        ];

        internal bool IsSameAs(Figure other) =>
            _middle.DistanceTo(other._middle) <= Same
            && _points.Length == other._points.Length
            && _points.All(point => other._points.Any(p => p.DistanceTo(point) <= Same));
    }
}
