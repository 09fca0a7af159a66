namespace PatternGen.Tests.Importing.Recipes;

/// <summary>Recipes in which every kind, step and field stands, to be mutated.</summary>
internal static class RecipeSamples
{
    internal static IReadOnlyList<string> All { get; } =
    [
        .. Patterns()
            .Concat(LayoutSamples.All.Values)
            .Select(pattern => pattern.ToRecipe().ToString()),
        .. Directory
            .EnumerateFiles(Repository.File("gallery", "recipes"), "*.json")
            .Order(StringComparer.Ordinal)
            .Select(File.ReadAllText),
    ];

    private static IEnumerable<Pattern> Patterns()
    {
        var petals = Rosette.Petals(6, 9).Carve(part => part.IsPetal);
        var band = TriangleBand
            .Ruled(2.1, 4.2, 3.9, 2.3)
            .WithRows(
                TriangleRow
                    .Between(1, 2)
                    .Leaning(0.3)
                    .Curved(0.2, -0.1)
                    .WithGap(0.4)
                    .HollowBase(0.35),
                TriangleRow.Between(2, 3).Down().Staggered().StabCut(slope: 25)
            )
            .WithPitch(7.7)
            .WithLineCuts(0.8);
        yield return Rail.Of(233.3, 40)
            .WithTenons(31, 28.5)
            .Named("Stile")
            .Border(band, fromEdge: 9.25)
            .Fitted(fit =>
                fit.Pitch(7.5)
                    .PitchBetween(6.9, 8.8)
                    .EndMargins(5.5, 7)
                    .CentreMotif(petals, 30)
                    .StaggeredRows(StaggeredEnds.HalfChips)
                    .MirroredEnds()
            );
        yield return Rails.Of(150, 90).Wide(20).SamePitch().Border(band)[1];
        yield return Rail.Of(99, 30)
            .Border(TriangleBand.Ruled(2, 4, 2))
            .Fitted(fit => fit.PitchOnGrid(0.5).RepeatOnCentre());
        yield return Pattern
            .Combine(
                petals.Moved(3, 4),
                petals.Turned(30, new(1, 2)).Scaled(1.5).MirroredLeftRight(3).MirroredTopBottom(2),
                petals.Transformed(Transform.Mirror(new(1, 0), Angle.FromDegrees(20))),
                petals.Repeated(3, 40).WithGrain(30).Named("Petals").With(petals)
            )
            .WithCut(ChipCut.WallsAt(50));
        foreach (var family in RosetteSampler.All.GroupBy(sample => sample.Rosette.Family))
            yield return family.First().Carved;
        yield return Rosette
            .Overlaid(2, 6, 20)
            .Carve(part => part.Centroid.Y > 1)
            .JoinedWith((a, b) => a.Centroid.X > 0 && b.Centroid.X > 0)
            .WithDrawing();
        yield return CompassDrawing
            .Of(pencil =>
            {
                var centre = pencil.Mark(0, 0);
                pencil.SetRadius(20);
                MarkedPoint[] points = [.. pencil.DivideCircle(pencil.Circle(centre), 5)];
                pencil.JoinRound(points, 2);
                pencil.ArcThrough(points[0], points[2]);
            })
            .CarveOrbits(1);
        var ring = new Region(
            new Circle(new(0, 0), 20).ToContour(),
            new Circle(new(0, 0), 12).ToContour().Reversed()
        );
        var label = Pattern.OfLabels(new Label("A", new(1, 2), 3));
        var triangle = Contour.Polygon(new(0, 0), new(9, 0), new(4, 7));
        yield return Pattern
            .OfChips(ring.Parts)
            .With(Pattern.OfChips(triangle, triangle).WithCut(ChipCut.Stabbed(1, depth: 2)))
            .With(
                Pattern.OfLineCuts(
                    LineCut.Tapering(Chain.Line(new(0, 0), new(30, 1)), 1.5, over: 9)
                )
            )
            .With(Pattern.OfLayoutLines(Chain.Line(new(0, 0), new(30, 1))))
            .With(Pattern.OfStock(Contour.Rectangle(new(-30, -30), new(40, 40))))
            .With(
                Pattern.OfLabels([
                    .. label.MirroredLeftRight().Labels,
                    .. label.MirroredTopBottom().Labels,
                ])
            )
            .WithCut(shape =>
                shape.Count == 3 ? ChipCut.Stabbed(2) : ChipCut.WallsAt(Angle.FromRadians(1.1))
            );
    }
}
