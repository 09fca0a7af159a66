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

    private sealed class German : Wording
    {
        public override string ChipCount(long count) => $"{count} Kerben";
    }
}
