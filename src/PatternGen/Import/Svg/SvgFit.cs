using Svg;

namespace PatternGen;

/// <summary>How a viewBox lies in its viewport.</summary>
internal static class SvgFit
{
    /// <summary>Returns the map from the viewBox's units to those of the viewport, whose corner is at the origin.</summary>
    /// <param name="box">What is to be seen, with a width and a height.</param>
    /// <param name="width">Width of the viewport.</param>
    /// <param name="height">Height of the viewport.</param>
    /// <param name="aspect">How proportions are kept.</param>
    internal static Affine Of(SvgViewBox box, double width, double height, SvgAspectRatio? aspect)
    {
        var (x, y) = (width / box.Width, height / box.Height);
        var align = aspect?.Align ?? SvgPreserveAspectRatio.xMidYMid;
        if (align != SvgPreserveAspectRatio.none)
            x = y = aspect?.Slice == true ? Math.Max(x, y) : Math.Min(x, y);
        var (left, top) = Shares(align);
        return Affine.Move((width - x * box.Width) * left, (height - y * box.Height) * top)
            * Affine.Scale(x, y)
            * Affine.Move(-box.MinX, -box.MinY);
    }

    /// <summary>Which shares of the free width and height lie to the left and above.</summary>
    private static (double Left, double Top) Shares(SvgPreserveAspectRatio align) =>
        align switch
        {
            SvgPreserveAspectRatio.none or SvgPreserveAspectRatio.xMinYMin => (0, 0),
            SvgPreserveAspectRatio.xMidYMin => (0.5, 0),
            SvgPreserveAspectRatio.xMaxYMin => (1, 0),
            SvgPreserveAspectRatio.xMinYMid => (0, 0.5),
            SvgPreserveAspectRatio.xMaxYMid => (1, 0.5),
            SvgPreserveAspectRatio.xMinYMax => (0, 1),
            SvgPreserveAspectRatio.xMidYMax => (0.5, 1),
            SvgPreserveAspectRatio.xMaxYMax => (1, 1),
            _ => (0.5, 0.5),
        };

    internal static bool HasSize(SvgViewBox box) => box.Width > 0 && box.Height > 0;
}
