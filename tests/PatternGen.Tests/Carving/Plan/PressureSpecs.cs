namespace PatternGen.Tests.Carving.Plan;

/// <summary>Which cuts are light, found again by walking through the plan and looking at every chip that is out by then.</summary>
public class PressureSpecs
{
    private const int Samples = 60;

    [Fact]
    public void A_cut_is_light_exactly_where_the_chip_beyond_the_ridge_is_out()
    {
        var light = 0;
        foreach (var plan in Plans.AllWays(Plans.Combined))
        {
            var left = plan.Chips.ToDictionary(chip => chip, chip => chip.Strokes.Count);
            var removed = new List<Chip>();
            foreach (var cut in plan.Strokes)
            {
                var isNext = cut.Side > 0 && removed.Exists(other => IsBeyond(cut, other));
                cut.Pressure.ShouldBe(isNext ? Pressure.Light : Pressure.Full, $"{plan}: {cut}");
                light += isNext ? 1 : 0;
                if (--left[cut.Chip] == 0)
                    removed.Add(cut.Chip.Chip);
            }
        }
        light.ShouldBePositive();
    }

    /// <summary>The larger of two neighbours is out before the smaller one is, in either order.</summary>
    [Fact]
    public void The_larger_of_two_neighbours_comes_out_first()
    {
        var found = 0;
        foreach (var plan in Plans.AllWays(Plans.Combined))
        foreach (var cut in plan.Strokes.Where(cut => cut.Side > 0))
        foreach (var other in plan.Chips)
            if (
                other.Solid.Volume > cut.Chip.Solid.Volume * 1.001
                && other.Chip.Outline.Extents.Grown(1).Touches(cut.Path.Extents)
                && IsBeyond(cut, other.Chip)
            )
            {
                other.Number.ShouldBeLessThan(cut.Chip.Number);
                found++;
            }
        found.ShouldBePositive();
    }

    /// <summary>
    /// Whether the other chip shares a part of the side, so that two places of it next to each other lie on its outline, or comes nearer
    /// than 0.8 mm (common practice, no source) to where the side is cut deepest, in its middle if it is stabbed upright.
    /// </summary>
    private static bool IsBeyond(CarvingStroke cut, Chip other)
    {
        var path = cut.Path;
        var isOn = Enumerable
            .Range(0, Samples + 1)
            .Select(i => DistanceTo(other, path.PointAt(path.Length * i / Samples)) < 1e-6)
            .ToArray();
        if (isOn.Zip(isOn.Skip(1)).Any(pair => pair.First && pair.Second))
            return true;
        var deepest = cut.Kind == CutKind.Stab ? path.Length / 2 : cut.DeepestAlong;
        return DistanceTo(other, path.PointAt(deepest)) < 0.8;
    }

    private static double DistanceTo(Chip chip, Point point) =>
        chip.Holes.Prepend(chip.Outline).Min(ring => ring.DistanceTo(point));
}
