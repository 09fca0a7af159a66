using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the part of a rosette of petals between two radii.</summary>
internal sealed class FanDrafting(
    RosetteDrafting drafting,
    int count,
    double radius,
    Angle from,
    Angle span
)
{
    private Pencil Pencil => drafting.Pencil;

    private MarkedPoint Centre => drafting.Centre;

    /// <param name="plain">Radius in mm of the disc whose part stays plain; 0 if there is none.</param>
    internal void Draw(double plain)
    {
        var rim = drafting.Rim(radius, PencilLine.Guide);
        MarkedPoint[] ends = [Pencil.MarkOn(rim, from), Pencil.MarkOn(rim, from + span)];
        var tips = Tips(rim, ends[0]);
        var radii = Pencil.Join([Centre], ends);
        Pencil.SetRadius(radius);
        Pencil.Arc(Centre, ends[0], ends[1]);
        var disc = plain > 0 ? PartOfDisc(plain, radii) : null;
        Pencil.SetRadius(radius / (2 * Math.Sin(span.Radians / (2 * count))));
        var left = PetalArcs.Outward(Centre, drafting.Needles(tips, LineSide.Left), tips);
        var right = PetalArcs.Inward(Centre, drafting.Needles(tips, LineSide.Right), tips);
        drafting.DrawFromDisc(left.And(right), tips, disc);
        drafting.MarkPetals(tips);
    }

    /// <summary>Steps off half petals from the first radius: the first step ends at a tip, the next between two.</summary>
    private MarkedPoint[] Tips(DrawnCurve rim, MarkedPoint start)
    {
        Pencil.SetRadius(2 * radius * Math.Sin(span.Radians / (4 * count)));
        return [.. Pencil.Walk(rim, start, 2 * count - 1).Where((_, i) => i % 2 == 1)];
    }

    private DrawnCurve PartOfDisc(double plain, IEnumerable<DrawnCurve> radii)
    {
        var disc = drafting.Ring(plain, PencilLine.Guide);
        var ends = Pencil.Cross(radii, [disc]);
        Pencil.Arc(Centre, ends[0], ends[1]);
        drafting.MarkPlain(plain, towards: from + span / 2);
        return disc;
    }
}
