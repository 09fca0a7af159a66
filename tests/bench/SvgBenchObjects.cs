using System.Drawing;
using Svg;
using Svg.Pathing;

namespace PatternGen.Bench;

/// <summary>The same paths through Svg.NET's object model.</summary>
internal static class SvgBenchObjects
{
    internal static void Write(Stream stream)
    {
        var document = new SvgDocument();
        for (var i = 0; i < SvgBenchChips.Count; i++)
            document.Children.Add(
                new SvgPath { PathData = Path(SvgBenchChips.Margin + SvgBenchChips.Pitch * i) }
            );
        document.Write(stream);
    }

    private static SvgPathSegmentList Path(double left)
    {
        var (low, high) = (SvgBenchChips.Margin + SvgBenchChips.Height, SvgBenchChips.Margin);
        var start = At(left, low);
        var radius = (float)SvgBenchChips.Radius;
        return
        [
            new SvgMoveToSegment(false, start),
            new SvgLineSegment(false, At(left + SvgBenchChips.Pitch, low)),
            new SvgLineSegment(false, At(left + SvgBenchChips.Pitch / 2, high)),
            new SvgArcSegment(
                radius,
                radius,
                0,
                SvgArcSize.Small,
                SvgArcSweep.Positive,
                false,
                start
            ),
            new SvgClosePathSegment(false),
        ];
    }

    private static PointF At(double x, double y) => new((float)x, (float)y);
}
