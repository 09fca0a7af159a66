namespace PatternGen.Tests.Samples;

/// <summary>What the README's table promises for a line each.</summary>
public class ReadmeTableSamples
{
    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    [Fact]
    public void Every_line_of_the_table_works()
    {
        var rail = Rail.Of(418, 60).WithTenons(30, 25).Named("Sideboard, front rail");
        var border = rail.Border(Band.Staggered(), 4);
        var row = TriangleRow.Between(1, 2).Down().Leaning(0.5).Curved(0.4);
        var rim = new Circle(Point.Origin, 8).ToContour();
        var island = new Circle(Point.Origin, 5).ToContour();
        var motif = Pattern.OfChips(rim);
        Pattern[] patterns =
        [
            border.Fitted(fit => fit.StaggeredRows(StaggeredEnds.HalfChips)),
            rail.Border(TriangleBand.Ruled(2, 5, 2).Adjacent()),
            rail.Border(Band.WithRows(row)),
            border.Fitted(fit => fit.Pitch(8).PitchBetween(7.5, 8.5)),
            border.Fitted(fit => fit.PitchOnGrid(0.5)),
            border.Fitted(fit => fit.RepeatOnCentre()),
            border.Fitted(fit => fit.GapOnCentre()),
            rail.Border(Band).Fitted(fit => fit.CentreMotif(motif, width: 20)),
            Pattern.OfChips(new Region(rim, island).Parts),
            border.Fitted(fit => fit.MirroredEnds()),
            border.Fitted(fit => fit.HalfTurnEnds().StaggeredRows(StaggeredEnds.Shifted)),
            border.Fitted(fit => fit.TurnedAtMiddle()),
            rail.Border(Band, 4).With(rail.Border(Band, 40)),
        ];

        foreach (var pattern in patterns)
            pattern
                .Save(
                    Stream.Null,
                    FileFormat.Dxf,
                    For.Machine,
                    SaveOptions.Default.WithDxfVersion(DxfVersion.R12).WithWording(new German())
                )
                .ChipCount.ShouldBePositive();
        patterns[0].Caption(new German())[^1].ShouldEndWith("Kerben");
    }

    [Fact]
    public void Every_line_of_the_table_of_rosettes_works()
    {
        var drawing = Rosette.Petals(12, radius: 40);
        var petals = drawing.Carve(part => part.IsPetal);
        var carved = petals.And(part => part.Orbit == 3);
        var id = drawing.AllDesigns().First().Id;

        drawing.Carve(part => part.Sides == 3 && part.Ring > 1).ChipCount.ShouldBe(12);
        drawing.CarveAt(new Point(0, 12)).Parts[0].IsPetal.ShouldBeTrue();
        petals.WithDrawing().LayoutLines.ShouldNotBeEmpty();
        carved.ChipCount.ShouldBe(24);
        carved.JoinedWith((a, b) => a.Orbit != b.Orbit).ChipCount.ShouldBe(1);
        petals.Without(part => part.Number == 2).ChipCount.ShouldBe(11);
        drawing.AllDesigns().UpToReversal().Count().ShouldBe(2);
        drawing.AllDesigns(Symmetry.Turns).WithCarvedShare(0.4, 0.6).ShouldBeEmpty();
        drawing.AllDesigns().After(id).Count().ShouldBe(2);
        Rosette.Nested(Rosette.Rays(24, 40, 26), Rosette.Petals(6, 24)).Curves.ShouldNotBeEmpty();
        Rosette.Petals(6, 40).WithinPolygon(4).Curves.ShouldNotBeEmpty();
    }

    private sealed class German : Wording
    {
        public override string ChipCount(long count) => $"{count} Kerben";
    }
}
