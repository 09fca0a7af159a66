namespace PatternGen.Tests.Carving.Grooves;

/// <summary>
/// The one demand on groove paths: the cone that runs along them leaves at most the accuracy standing, and crosses no wall by more than
/// 1e-9 mm. Judged by <see cref="SweptCone"/>, which knows nothing of valleys.
/// </summary>
public class SweptConeSpecs
{
    private static readonly VBit Bit = VBit.Of(60, 40);

    public static TheoryData<string, double> Cases()
    {
        var data = new TheoryData<string, double>();
        foreach (var (name, _) in GrooveShapes.All())
        foreach (var accuracy in new[] { 0.05, 0.005, 0.0005 })
            data.Add(name, accuracy);
        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void I_can_cut_every_shape_within_the_accuracy_and_never_too_deep(
        string name,
        double accuracy
    )
    {
        var pattern = GrooveShapes.All().Single(shape => shape.Name == name).Pattern;
        Judge(pattern, accuracy);
    }

    [Fact]
    public void I_can_cut_chips_that_are_turned_mirrored_and_scaled()
    {
        var placed = Pattern
            .OfChips(GrooveShapes.Sail)
            .Transformed(
                Transform.Resize(2.7).Then(Transform.Rotate(33)).Then(Transform.Move(100, -40))
            )
            .With(Pattern.OfChips(GrooveShapes.Crescent).MirroredTopBottom())
            .With(Pattern.OfChips(GrooveShapes.Crescent).Transformed(Transform.Resize(0.2)));
        foreach (var chip in placed.Chips)
            Judge(placed, 0.005, chip.Id);
    }

    [Fact]
    public void I_can_cut_a_rail_border_and_a_rosette()
    {
        Pattern border = Rail.Of(60, 36).Border(TriangleBand.Ruled(2, 4, 4, 2).Curved(0.4), 6);
        Pattern rosette = Rosette.Overlaid(2, 6, 40).Carve(part => part.IsPetal);
        foreach (var chip in border.Chips.Take(4))
            Judge(border, 0.005, chip.Id);
        foreach (var chip in rosette.Chips.Take(4))
            Judge(rosette, 0.005, chip.Id);
    }

    /// <summary>Random stars of straight, bulging and hollow sides; those that cross themselves are no chips.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void I_can_cut_chips_of_any_shape(int seed)
    {
        var random = new Random(seed);
        var judged = 0;
        for (var i = 0; i < 40; i++)
            if (RandomChip(random) is { } chip)
            {
                Judge(chip, 0.02, points: 600);
                judged++;
            }
        judged.ShouldBeGreaterThan(15);
    }

    private static Pattern? RandomChip(Random random)
    {
        var sides = random.Next(2, 9);
        var corners = Enumerable
            .Range(0, sides)
            .Select(i => new Vertex(
                Point.Origin.Polar(
                    4 + 8 * random.NextDouble(),
                    Angle.OfTurn((i + 0.7 * random.NextDouble()) / sides)
                ),
                random.Next(3) * (random.NextDouble() - 0.45)
            ))
            .ToArray();
        try
        {
            return Pattern.OfChips(new Contour(corners));
        }
        catch (PatternException)
        {
            return null;
        }
    }

    [Theory]
    [InlineData(20)]
    [InlineData(60)]
    [InlineData(120)]
    public void I_can_use_bits_of_any_angle(double included)
    {
        Judge(Pattern.OfChips(GrooveShapes.Hollow), 0.005, bit: VBit.Of(included, 40));
    }

    /// <summary>A leaf whose sides meet all but smoothly at one corner, within 1e-7 of a radian: rounding decides whether a valley begins there.</summary>
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.005)]
    [InlineData(0.0005)]
    public void A_joint_that_is_all_but_smooth_neither_stops_the_tracing_nor_lets_it_cut_too_deep(
        double accuracy
    )
    {
        var leaf = new Contour(
            new Vertex(32.447083, -3.3906039999999997, 0.18930505381993748),
            new(39.167626, -0.776879, 0.15361202538030772),
            new(45.608549, 10.450069, 0.01455499594946349),
            new(36.289795, 2.34279, 0.1181611770710077)
        );

        var paths = Pattern.OfChips(leaf).GroovePaths(Bit, accuracy).Paths;

        new SweptCone(paths, 60)
            .DeepestCrossing([leaf], samples: 24)
            .ShouldBeLessThanOrEqualTo(1e-9);
        paths.Sum(path => path.Places.Count).ShouldBeLessThan(1_000_000);
    }

    private static void Judge(
        Pattern pattern,
        double accuracy,
        ChipId? only = null,
        VBit? bit = null,
        int points = 4000
    )
    {
        bit ??= Bit;
        var walls = 90 - bit.IncludedAngle.Degrees / 2;
        var slope = Math.Tan(walls * Math.PI / 180);
        var chip = pattern.Chips.Single(chip => only is null || chip.Id == only);
        var paths = pattern.GroovePaths(bit, accuracy).Paths.Where(path => path.Chip == chip.Id);
        var cone = new SweptCone(paths, walls);
        Contour[] rings = [chip.Outline, .. chip.Holes];
        cone.DeepestCrossing(rings, samples: 24).ShouldBeLessThanOrEqualTo(1e-9);

        var random = new Random(7);
        var box = chip.Outline.Extents;
        double standing = 0;
        double cut = 0;
        for (var i = 0; i < points; i++)
        {
            var x = box.Min.X + box.Width * random.NextDouble();
            var y = box.Min.Y + box.Height * random.NextDouble();
            var isInside =
                chip.Outline.Contains(new(x, y))
                && !chip.Holes.Any(hole => hole.Contains(new(x, y)));
            var ideal = isInside ? rings.Min(ring => SweptCone.Distance(ring, x, y)) * slope : 0;
            var depth = cone.DepthAt(x, y);
            standing = Math.Max(standing, ideal - Math.Max(0, depth));
            cut = Math.Max(cut, depth - ideal);
        }
        // Exact valleys leave only rounding, and no curve is followed without leaving something.
        standing.ShouldBeLessThanOrEqualTo(accuracy + 1e-9);
        cut.ShouldBeLessThanOrEqualTo(1e-9 * slope);
    }
}
