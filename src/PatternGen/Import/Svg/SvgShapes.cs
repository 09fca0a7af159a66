using PatternGen.Geometry;
using Svg;
using Svg.Pathing;

namespace PatternGen;

/// <summary>Draws the shapes of the object model with a pen, as the chapter on basic shapes gives their paths.</summary>
internal static class SvgShapes
{
    /// <summary>Draws a shape. Returns false if the element is none.</summary>
    internal static bool TryDraw(SvgElement element, SvgViewport viewport, SvgPen pen)
    {
        switch (element)
        {
            case SvgPath path:
                Path(path.PathData, pen);
                return true;
            case SvgRectangle rectangle:
                Rectangle(rectangle, viewport, pen);
                return true;
            case SvgCircle circle:
                var radius = viewport.Length(circle.Radius);
                Ellipse(
                    new(viewport.X(circle.CenterX), viewport.Y(circle.CenterY)),
                    radius,
                    radius,
                    pen
                );
                return true;
            case SvgEllipse ellipse:
                Ellipse(
                    new(viewport.X(ellipse.CenterX), viewport.Y(ellipse.CenterY)),
                    viewport.X(ellipse.RadiusX),
                    viewport.Y(ellipse.RadiusY),
                    pen
                );
                return true;
            case SvgLine line:
                pen.MoveTo(new(viewport.X(line.StartX), viewport.Y(line.StartY)));
                pen.LineTo(new(viewport.X(line.EndX), viewport.Y(line.EndY)));
                return true;
            case SvgPolyline polyline:
                Polygon(polyline.Points, isClosed: false, pen);
                return true;
            case SvgPolygon polygon:
                Polygon(polygon.Points, isClosed: true, pen);
                return true;
            default:
                return false;
        }
    }

    private static void Path(SvgPathSegmentList? data, SvgPen pen)
    {
        foreach (var command in data ?? [])
        {
            var from = command.IsRelative ? pen.Current : Point.Origin;
            switch (command)
            {
                case SvgMoveToSegment:
                    pen.MoveTo(Place(command.End, from));
                    break;
                case SvgLineSegment:
                    pen.LineTo(
                        // Level and upright lines leave one coordinate open.
                        new(
                            float.IsNaN(command.End.X) ? pen.Current.X : from.X + command.End.X,
                            float.IsNaN(command.End.Y) ? pen.Current.Y : from.Y + command.End.Y
                        )
                    );
                    break;
                case SvgCubicCurveSegment cubic:
                    pen.CubicTo(
                        Control(cubic.FirstControlPoint, from),
                        Place(cubic.SecondControlPoint, from),
                        Place(command.End, from)
                    );
                    break;
                case SvgQuadraticCurveSegment quadratic:
                    pen.QuadraticTo(
                        Control(quadratic.ControlPoint, from),
                        Place(command.End, from)
                    );
                    break;
                case SvgArcSegment arc:
                    pen.ArcTo(
                        new(
                            arc.RadiusX,
                            arc.RadiusY,
                            arc.Angle,
                            arc.Size == SvgArcSize.Large,
                            arc.Sweep == SvgArcSweep.Positive
                        ),
                        Place(command.End, from)
                    );
                    break;
                case SvgClosePathSegment:
                    pen.Close();
                    break;
            }
        }
    }

    private static Point Place(System.Drawing.PointF place, Point from) =>
        new(from.X + place.X, from.Y + place.Y);

    // Shorthands leave the control point open.
    private static Point? Control(System.Drawing.PointF place, Point from) =>
        float.IsNaN(place.X) || float.IsNaN(place.Y) ? null : Place(place, from);

    private static void Rectangle(SvgRectangle rectangle, SvgViewport viewport, SvgPen pen)
    {
        var (x, y) = (viewport.X(rectangle.X), viewport.Y(rectangle.Y));
        var (width, height) = (viewport.X(rectangle.Width), viewport.Y(rectangle.Height));
        if (!(width > 0 && height > 0))
            return;
        var rx = Math.Clamp(viewport.X(rectangle.CornerRadiusX), 0, width / 2);
        var ry = Math.Clamp(viewport.Y(rectangle.CornerRadiusY), 0, height / 2);
        var corner = new SvgArc(rx, ry, Turn: 0, IsLarge: false, IsSweeping: true);
        var (left, right) = (x + rx, x + width - rx);
        var (top, bottom) = (y + ry, y + height - ry);
        pen.MoveTo(new(left, y));
        pen.LineTo(new(right, y));
        pen.ArcTo(corner, new(x + width, top));
        pen.LineTo(new(x + width, bottom));
        pen.ArcTo(corner, new(right, y + height));
        pen.LineTo(new(left, y + height));
        pen.ArcTo(corner, new(x, bottom));
        pen.LineTo(new(x, top));
        pen.ArcTo(corner, new(left, y));
        pen.Close();
    }

    private static void Ellipse(Point centre, double rx, double ry, SvgPen pen)
    {
        if (!(rx > 0 && ry > 0))
            return;
        var half = new SvgArc(rx, ry, Turn: 0, IsLarge: false, IsSweeping: true);
        pen.MoveTo(new(centre.X + rx, centre.Y));
        pen.ArcTo(half, new(centre.X - rx, centre.Y));
        pen.ArcTo(half, new(centre.X + rx, centre.Y));
        pen.Close();
    }

    private static void Polygon(SvgPointCollection? points, bool isClosed, SvgPen pen)
    {
        // An odd number at the end is no place.
        for (var i = 0; i + 1 < (points?.Count ?? 0); i += 2)
        {
            var point = new Point(points![i].Value, points[i + 1].Value);
            if (i == 0)
                pen.MoveTo(point);
            else
                pen.LineTo(point);
        }
        if (isClosed)
            pen.Close();
    }
}
