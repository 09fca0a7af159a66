namespace PatternGen.Tests.Importing.Recipes;

/// <summary>Patterns of every layout and free-form motif, with settings other than the usual ones.</summary>
internal static class LayoutSamples
{
    private static readonly Pattern Petals = Rosette.Petals(6, 4).Carve(part => part.IsPetal);

    private static readonly Chain Line = new([new(0, 0, 0.3), new(60, 10, -0.2), new(130.3, 7)]);

    private static readonly Chain Arc = new([new(0, 0, 0.2), new(110.3, 7)]);

    private static readonly TriangleBand Band = TriangleBand.Ruled(2, 4, 4, 2);

    private static readonly Contour Round = new([
        new(0, 0),
        new(90, 0, 0.4142135623730951),
        new(120, 30),
        new(120, 70, 0.4142135623730951),
        new(90, 100),
        new(0, 100, 0.4142135623730951),
        new(-30, 70),
        new(-30, 30, 0.4142135623730951),
    ]);

    private static readonly Contour Lid = Contour.Polygon(
        new(0, 0),
        new(120, 0),
        new(120, 80),
        new(0, 80)
    );

    internal static IReadOnlyDictionary<string, Pattern> All { get; } =
        new SortedDictionary<string, Pattern>(StringComparer.Ordinal)
        {
            ["leaf"] = Leaf.Of(24, 8),
            ["leaf with settings"] = Leaf.Of(24, 7).Bent(33).WithWidestAt(0.4).WithVein(0.6),
            ["stroke"] = Stroke.Of(30, 4),
            ["stroke along"] = Stroke.Along(Arc, 5).WithWidestAt(0.35),
            ["stroke with round head"] = Stroke.Of(30, 4).WithRoundHead(),
            ["heart"] = Heart.Of(20, 21),
            ["halved heart"] = Heart.Of(20, 22).Halved(0.8),
            ["scroll"] = Scroll.Of(20),
            ["scroll with settings"] = Scroll.Of(20, 1.2).WithFactor(0.38).WithWidth(2).WithEye(1),
            ["flower"] = Flower.Of(6, 14),
            ["flower with settings"] = Flower
                .Of(7, 16)
                .Overlapping()
                .WithCentre(3.5)
                .WithRidge(0.9)
                .WithPetalWidth(8),
            ["flower with carved centre"] = Flower.Of(5, 15).WithCarvedCentre(),
            ["vine"] = Stem.Vine(150, 22, 3),
            ["fern"] = Stem.Fern(90).WithoutTipLeaf(),
            ["stem with settings"] = Stem.Along(Arc, 2)
                .WithLeaves(Leaf.Of(15, 6), 17)
                .WithPlacing(LeafPlacing.Opposite)
                .WithLeafAngle(47)
                .Diminishing(0.7)
                .WithBareBase(12)
                .WithGap(0.7)
                .Varied(seed: 12, variation: 0.3),
            ["repeats along a line"] = Line.Repeat(Petals, 11),
            ["repeats along a line with settings"] = Line.Repeat(
                    [Petals, Leaf.Of(8, 3)],
                    12,
                    Heading.Across.Turned(20)
                )
                .SpacingBetween(10, 13)
                .EndMargins(4, 5)
                .RepeatsOnEnds()
                .OddRepeats()
                .OffsetBy(3)
                .EverySecondMirrored()
                .RepeatsScaled(0.8, 1.1)
                .PathAsLayoutLine(),
            ["repeats round a lid"] = Lid.Repeat(Petals, 12, Heading.Towards(new(60, 40)))
                .CornerMotif(Heart.Of(6, 6), 9, Heading.Outwards)
                .CornersFrom(20)
                .RepeatsScaledBetweenCorners(0.7, 1)
                .OnBothSides(),
            ["repeats round a lid, exactly spaced"] = Lid.Repeat(Petals, 12, Heading.Fixed(15))
                .ExactSpacing()
                .CornerGaps(6),
            ["repeats round a lid, turned"] = Lid.Repeat(Petals, 12)
                .TurnedAtCorners(5)
                .StartingAt(7.5)
                .EvenRepeats(),
            ["field of triangles"] = Field.Within(Lid).Triangles(9),
            ["field of clipped hexagons"] = Field
                .Within(Lid)
                .Hexagons(8)
                .ClippedCells(1.5)
                .BorderGap(4)
                .RidgeGap(0.8)
                .LatticeTurned(12)
                .Divided(CellDivision.EverySecondFromCentre)
                .Centred(FieldPoint.Corner, FieldMiddle.Centroid),
            ["field of shrunk diamonds"] = Field
                .Within(new Region(Lid, new Circle(new(60, 40), 14).ToContour().Reversed()))
                .Diamonds(9, 15)
                .ShrunkCells(0.5)
                .Carve(CellScheme.Checkerboard, 1)
                .AlongSide(1),
            ["field of squares with motifs"] = Field
                .Within(Lid)
                .Squares(12)
                .Cells(CellScheme.Checkerboard, Petals, Heart.Of(6, 6).Moved(0, -3))
                .Turning(CellScheme.Rows, 0, 33)
                .Mirroring(CellScheme.Columns, 1)
                .From(new(3, 4)),
            ["field of circles"] = Field
                .Within(Lid)
                .Circles(9, CircleGrid.Square, CircleParts.Both),
            ["field of circles on triangles"] = Field.Within(Lid).Circles(10),
            ["field of scales"] = Field.Within(Lid).Scales(14, 6),
            ["field of basket weave"] = Field.Within(Lid).BasketWeave(4, 2),
            ["field of hourglasses"] = Field
                .Within(Lid)
                .Hourglasses(9, 11, HourglassTurn.Upright)
                .On(Grid.Square(4, new(1, 2), Angle.FromDegrees(10))),
            ["ring"] = Ring.Of(40).Border(Band),
            ["ring with settings"] = Ring.Inside(70)
                .Arc(20, 211)
                .OnDisc(75, 30)
                .Named("Tray")
                .Border(Band)
                .FacingIn()
                .WithSides(BentSides.Following, 0.02)
                .PitchOn(BandLine.LowerEdge)
                .EndMargins(3),
            ["ring outside, turned"] = Ring.Outside(50).From(33).Border(Band),
            ["band along an arc"] = Arc.Border(Band),
            ["band round a lid"] = Round
                .Border(Band, 2)
                .WithSides(BentSides.Following)
                .PitchOn(BandLine.UpperEdge)
                .Fitted(fit => fit.Pitch(7))
                .StartingAt(9.5),
            ["motif bent along an arc"] = Arc.Bend(Petals.Moved(20, 0)),
            ["motifs bent round a lid"] = Round
                .Bend(Petals, 13, 1.5)
                .WithAccuracy(0.02)
                .StartingAt(4.4),
            ["polygon frame"] = Frame
                .Polygon(
                    20,
                    new Point(0, 0),
                    new Point(180, 0),
                    new Point(150, 120),
                    new Point(20, 140)
                )
                .Border(Band),
            ["hexagonal frame"] = Frame.AcrossFlats(6, 190, 26).Border(Band),
            ["octagonal frame"] = Frame.Regular(8, 80, 26).Border(Band),
            ["mitred frame"] = Frame.Of(240, 180, 20).Border(Band),
            ["frame with corner blocks"] = Frame
                .Of(240, 180, 22)
                .Named("Mirror frame")
                .OneBoard()
                .Border(Band, 5)
                .Corners(Petals, 18, 1, FrameTurn.Upright)
                .SamePitch(),
            ["wrapped frame"] = Frame.Of(240, 180, 20).Border(Band).Wrapped(),
            ["butted frame"] = Frame
                .Of(240, 180, 20)
                .Border(Band)
                .Butted(FrameThrough.Level, 3)
                .RunningRound(),
            ["bent frame"] = Frame
                .Of(240, 180, 20)
                .Rounded(45)
                .Border(Band)
                .Bent()
                .Fitted(fit => fit.Pitch(7.5)),
            ["hexagonal frame with two bands"] = Frame
                .Regular(6, 120, 40)
                .Border(Band, 3)
                .Inside(TriangleBand.Ruled(2, 3, 2), 4),
            ["plain panel"] = Panel.Of(200, 140).Named("Plain door").Centre(Petals, 3),
            ["panel"] = Panel
                .Of(220, 160)
                .Frame(Band, 5)
                .Named("Door of a corner cupboard")
                .Centre(Rosette.Petals(6, 25), 4)
                .Field(free => Field.Within(free).Squares(9), 3),
            ["snapped to squares"] = Pattern
                .OfChips(Contour.Polygon(new(0.2, 0.1), new(8.1, 0.3), new(4.2, 7)))
                .SnapTo(Grid.Rectangular(0.5, 1, new(0.1, 0.2), Angle.FromDegrees(5))),
            ["snapped to rings and rays"] = Petals
                .Moved(12, 3)
                .SnapTo(PolarGrid.Of(0.5, 48, new(1, 1), 37)),
            ["on a printed grid"] = Petals.With(
                Pattern.OfGrid([Chain.Line(new(0, 0), new(10, 0))])
            ),
        };
}
