using Svg;

namespace PatternGen;

/// <summary>Finds how many millimetres the units of an SVG are, and turns y over: the lower left corner of its sheet is the origin.</summary>
internal sealed class SvgSheetFrame
{
    private const double Pixel = SvgViewport.MillimetresPerInch / SvgViewport.PixelsPerInch;

    private SvgSheetFrame(Affine map, SvgViewport viewport)
    {
        // A unit of 1 is exact; other scales come from two single floats. So does the height, where y starts.
        var share = map is { A: 1, D: -1 } ? 0 : 2 * SvgFrame.Digit;
        Frame = new(map, share, SvgFrame.Digit * Math.Abs(map.F));
        Viewport = viewport;
        Unit = Math.Sqrt(Math.Abs(map.Determinant));
    }

    /// <summary>Where the coordinates of the root's children lie.</summary>
    internal SvgFrame Frame { get; }

    /// <summary>What their percentages are of.</summary>
    internal SvgViewport Viewport { get; }

    /// <summary>Millimetres of a unit; of a sheet that is stretched, the geometric mean of both directions.</summary>
    internal double Unit { get; }

    /// <exception cref="ImportException">The sheet has no size.</exception>
    internal static SvgSheetFrame Of(SvgFragment root, ImportedCurves curves)
    {
        var hasBox = SvgFit.HasSize(root.ViewBox);
        var (width, height) = (Size(root.Width, "width"), Size(root.Height, "height"));
        if (curves.Settings.Unit is { } unit)
            return Scaled(root, hasBox, unit, height / Pixel);
        if (!hasBox)
            return WithoutBox(curves, width, height);
        var box = root.ViewBox;
        var (wide, high) = Sides(curves, box, width, height);
        var fit = SvgFit.Of(box, wide, high, root.AspectRatio);
        return new(Up(high) * fit, new(box.Width, box.Height));
    }

    private static (double Width, double Height) Sides(
        ImportedCurves curves,
        SvgViewBox box,
        double? width,
        double? height
    )
    {
        if (width is { } wide && height is { } high)
            return (wide, high);
        if (width is null && height is null)
        {
            Assumed(
                curves,
                "no width and height in a unit: one unit taken for a pixel of 1/96 inch"
            );
            return (box.Width * Pixel, box.Height * Pixel);
        }
        Assumed(curves, "width or height missing: taken in the proportions of the viewBox");
        var scale = width / box.Width ?? height / box.Height ?? Pixel;
        return (box.Width * scale, box.Height * scale);
    }

    private static SvgSheetFrame Scaled(
        SvgFragment root,
        bool hasBox,
        double unit,
        double? pixelsHigh
    )
    {
        var box = root.ViewBox;
        if (!hasBox)
            return new(Up((pixelsHigh ?? 0) * unit) * Affine.Scale(unit, unit), default);
        var placed = Affine.Scale(unit, unit) * Affine.Move(-box.MinX, -box.MinY);
        return new(Up(box.Height * unit) * placed, new(box.Width, box.Height));
    }

    private static SvgSheetFrame WithoutBox(ImportedCurves curves, double? width, double? height)
    {
        Assumed(curves, "no viewBox: one unit taken for a pixel of 1/96 inch");
        if (height is null)
            Assumed(
                curves,
                "no height in a unit: y counted from the upper edge, downwards negative"
            );
        return new(
            Up(height ?? 0) * Affine.Scale(Pixel, Pixel),
            new((width ?? 0) / Pixel, (height ?? 0) / Pixel)
        );
    }

    private static Affine Up(double height) => new(1, 0, 0, -1, 0, height);

    /// <summary>A side of the sheet in mm; null for a share of a window that nobody knows.</summary>
    private static double? Size(SvgUnit length, string side)
    {
        if (length.Type == SvgUnitType.Percentage)
            return null;
        var size =
            length.Type == SvgUnitType.Millimeter
                ? length.Value
                : SvgViewport.Absolute(length) * Pixel;
        return size is > 0 and < double.PositiveInfinity
            ? size
            : throw new ImportException(
                $"The {side} of the sheet is {length}, so that nothing is left of it.",
                "the root element svg",
                [$"a {side} above 0", $"no {side}"]
            );
    }

    private static void Assumed(ImportedCurves curves, string what) =>
        curves.Note(ImportNoteKind.Assumed, what, "the root element svg");
}
