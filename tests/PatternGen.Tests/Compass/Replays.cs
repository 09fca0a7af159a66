using System.Numerics;

namespace PatternGen.Tests.Compass;

internal static class Replays
{
    /// <summary>Every point and every line of a drawing is where its instructions alone lead, within 1e-9 of its size.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="read">How a measured setting is read; exactly by default.</param>
    internal static void ShouldRebuild(
        this CompassDrawing drawing,
        Func<double, double>? read = null
    )
    {
        var replay = new Replay(drawing.Instructions, read);
        var size = drawing
            .Instructions.SelectMany(step => step.Drawn)
            .Select(drawn => drawn.Curve.Extents)
            .Aggregate((a, b) => a.Including(b));
        var within = 1e-9 * Math.Max(size.Width, size.Height);
        foreach (var step in drawing.Instructions)
        {
            foreach (var mark in step.Marked)
                Same(mark.Point, replay.Points[mark.Label], $"{mark.Label} in step {step.Number}");
            foreach (var drawn in step.Drawn)
                SameCurve(drawn.Curve, replay.Curves[drawn], $"a line of step {step.Number}");
        }

        void Same(Point point, Complex place, string what) =>
            Complex
                .Abs(place - new Complex(point.X, point.Y))
                .ShouldBeLessThanOrEqualTo(within, what);

        void SameCurve(Curve curve, Trace trace, string what)
        {
            trace.IsWhole.ShouldBe(curve.IsCircle, what);
            if (curve.IsCircle)
            {
                Same(curve.Circle.Centre, trace.Centre, what);
                trace.Radius.ShouldBe(curve.Circle.Radius, within, what);
                return;
            }
            Same(curve.Segment.Start, trace.Start, what);
            Same(curve.Segment.End, trace.End, what);
            Same(curve.Segment.Middle, trace.Middle, what);
        }
    }
}
