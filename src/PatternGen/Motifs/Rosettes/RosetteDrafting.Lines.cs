namespace PatternGen;

internal sealed partial class RosetteDrafting
{
    /// <summary>Draws straight lines from each outer point to the inner ones on both sides of it.</summary>
    /// <param name="outer">Outer points.</param>
    /// <param name="inner">Inner points, each between the outer one beside it and the next.</param>
    internal void DrawZigzag(MarkedPoint[] outer, MarkedPoint[] inner) =>
        Pencil.Join([.. outer, .. outer], [.. inner, .. Turned(inner, -1)]);

    /// <summary>Draws straight lines to points from the centre, or from the disc on.</summary>
    internal void DrawRadii(MarkedPoint[] ends, DrawnCurve? disc) =>
        Pencil.Join(disc is null ? [Centre] : OnRing(disc, ends), ends);
}
