namespace PatternGen;

internal sealed partial class RosetteDrafting
{
    /// <summary>Draws straight lines from each outer point to the inner ones on both sides of it.</summary>
    /// <param name="outer">Outer points.</param>
    /// <param name="inner">Inner points, each between the outer one beside it and the next.</param>
    internal void DrawZigzag(MarkedPoint[] outer, MarkedPoint[] inner) =>
        Pencil.Join([.. outer, .. outer], [.. inner, .. Turned(inner, -1)]);

    /// <summary>Draws straight lines between points and the centre; where there is a disc, first faintly, to see where they leave it.</summary>
    internal void DrawRadii(MarkedPoint[] ends, DrawnCurve? disc)
    {
        if (disc is null)
            Pencil.Join([Centre], ends);
        else
            Pencil.GoOver(Pencil.Join([Centre], ends, PencilLine.Guide), ends, [disc]);
    }
}
