using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Stem
{
    /// <summary>Leaves that go before the end of a stem by this share of their own length are the last: what comes after is the tip's.</summary>
    private const double TipRoom = 0.35;

    /// <summary>Where the stem is widest, as a share of its length.</summary>
    private const double WidestAt = 0.12;

    /// <summary>More leaves than any stem has, and few enough to refuse a slip of the pen.</summary>
    private const int MostLeaves = 10_000;

    private const double MostTurn = 15;
    private const double MostShrink = 0.25;

    private protected override PatternNode Draw()
    {
        // All of them first: too many are refused before the first one is moved out of the way.
        Transform[] places = [.. Places()];
        var stroke = Stroke.Along(Path, Width).WithWidestAt(WidestAt);
        var clearing = new LeafClearing(stroke.Outline, Leaf, Gap);
        // The stem is the first row, the leaves the rows after it, from base to tip.
        return GroupNode.Of(
            stroke.Root,
            GroupNode.InSameRows(
                places.Select(place =>
                    (PatternNode)new PlacedNode(Leaf.Root, clearing.Clear(place))
                )
            )
        );
    }

    /// <summary>How each leaf is placed, from base to tip.</summary>
    private IEnumerable<Transform> Places()
    {
        var chance = new Chance(Seed);
        var count = 0;
        foreach (var (along, scale) in Stations())
        {
            if (count > MostLeaves)
                throw new PatternException(
                    $"Leaves {Guard.Text(Spacing)} mm apart would be more than {MostLeaves} on this stem.",
                    Path.Start,
                    ["a larger spacing"]
                );
            var isLeft = count % 2 == 0 || Placing == LeafPlacing.Opposite;
            var isRight = count % 2 == 1 || Placing == LeafPlacing.Opposite;
            if (isLeft)
                yield return Place(along, scale, 1, chance);
            if (isRight)
                yield return Place(along, scale, -1, chance);
            count++;
        }
        if (HasTipLeaf)
            yield return AtTip();
    }

    /// <summary>Where leaves stand along the stem, and how large they are there.</summary>
    private IEnumerable<(double Along, double Scale)> Stations()
    {
        for (var along = BareBase; ; )
        {
            var scale = ScaleAt(along);
            if (along > Path.Length - TipRoom * Leaf.Length * scale)
                yield break;
            yield return (along, scale);
            along += Spacing * scale;
        }
    }

    private double ScaleAt(double along) => 1 - (1 - TipScale) * Math.Min(1, along / Path.Length);

    private Transform Place(double along, double scale, int side, Chance chance)
    {
        scale *= 1 - Variation * MostShrink * chance.Next();
        var turn = LeafAngle + Variation * MostTurn * (2 * chance.Next() - 1);
        var stemWidth = new StrokeWidth(Width, Path.Length, WidestAt).At(along).Width;
        var tangent = Path.TangentAt(along);
        var foot = Path.PointAt(along) + tangent.Left * (side * stemWidth / 2);
        return Standing(foot, tangent.Direction + Angle.FromDegrees(side * turn), scale, side < 0);
    }

    private Transform AtTip()
    {
        var tangent = Path.TangentAt(Path.Length);
        return Standing(Path.End, tangent.Direction, TipScale, isMirrored: false);
    }

    private static Transform Standing(Point foot, Angle direction, double scale, bool isMirrored)
    {
        var placed = isMirrored ? Transform.MirrorTopBottom() : Transform.Identity;
        return placed
            .Then(Transform.Resize(scale))
            .Then(Transform.Rotate(direction))
            .Then(Transform.Move(foot - Point.Origin));
    }
}
