namespace PatternGen;

/// <summary>An ELLIPSE.</summary>
internal sealed class DxfEllipse(DxfEntity entity, EllipseArc arc, bool isWhole)
    : DxfItem(entity.Layer, entity.Line)
{
    internal override void Draw(DxfPen pen, DxfMap map, string layer)
    {
        var corners = Fitted(map, linear => pen.Corners(arc.Mapped(linear), Line));
        pen.Add(isWhole ? corners[..^1] : corners, isWhole, Line);
    }
}
