namespace PatternGen.Tests.Samples;

/// <summary>The code of the README, run. What stands between the marks is what the README shows; a test compares them.</summary>
[Collection(nameof(AloneInTheProcess))]
public class ReadmeSamples
{
    [Fact]
    public void A_border_for_a_measured_rail()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        var border = Rail.Of(length: 742.5, width: 36)             // mm seen between the shoulders
            .Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6)   // ruled lines 2, 4, 4, 2 mm apart
            .EndMargins(6);                                        // whole repeats are the default

        border.Save("rail.svg");                                   // to look at
        border.Save("rail-print.svg", For.Paper);                  // true size, with a check bar
        border.Save("rail.dxf");                                   // for a machine: centre lines only
        Console.WriteLine(border.Fit);   // 91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike
        // </readme>
        // csharpier-ignore-end

        border
            .Fit.ToString()
            .ShouldBe("91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike");
        foreach (var file in (string[])["rail.svg", "rail-print.svg", "rail.dxf"])
            new FileInfo(file).Length.ShouldBePositive();
    }

    [Fact]
    public void One_drawing_and_different_designs()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        var drawing = Rosette.Petals(12, radius: 40);
        var petals = drawing.Carve(part => part.IsPetal);
        var reverse = petals.Reverse();                   // what was carved stands, what stood is carved
        petals.Save("petals.svg");
        reverse.Save("reverse.dxf");

        drawing.Key().Save("key.svg", For.Paper);         // number the orbits, to choose from paper
        drawing.CarveOrbits(3).Save("chosen.svg");
        drawing.Steps().Save("how-to-draw-it.svg");       // compass, straightedge and pencil, step by step

        foreach (var design in Rosette.Overlaid(2, 6, radius: 40).AllDesigns(Symmetry.TurnsOf(6)).Take(10))
            design.Carve().Save($"{design.Id}.svg");      // of 29 designs that look the same after a sixth of a turn
        // </readme>
        // csharpier-ignore-end

        petals.ChipCount.ShouldBe(12);
        (petals.CarvedShare + reverse.CarvedShare).ShouldBeLessThan(1); // the plain disc
        Rosette.Overlaid(2, 6, 40).AllDesigns(Symmetry.TurnsOf(6)).Count().ShouldBe(29);
        Directory.GetFiles(".").Length.ShouldBe(15);
    }

    [Fact]
    public void A_drawing_of_ones_own()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        // The compass walk: a circle, and six more round the points at which its radius steps round it.
        var wheel = CompassDrawing.Of(pencil =>
        {
            var centre = pencil.Mark(0, 0);
            pencil.SetRadius(30);
            var rim = pencil.Circle(centre);
            pencil.Circles(pencil.DivideCircle(rim, 6));
        });
        wheel.Carve(part => part.Sides == 2).Save("six-petals.svg");
        Console.WriteLine($"{wheel.Parts.Count} parts, {wheel.AllDesigns().Count} designs");   // 24 parts, 15 designs

        // Compass and straightedge do not divide a circle in nine: what the dividers miss by, read to 0.25 mm.
        var nine = CircleDivision.Of(9, radius: 30);
        Console.WriteLine($"{nine.Chord:0.00} mm misses by {nine.ClosingError(reading: 0.25):0.00} mm");   // 20.52 mm misses by -0.20 mm
        // </readme>
        // csharpier-ignore-end

        (wheel.Parts.Count, (int)wheel.AllDesigns().Count!).ShouldBe((24, 15));
        // 9 × 2 asin(20.5 / 60) - 360° is -0.388°, 0.203 mm of the circle: worked out by hand.
        nine.ClosingError(0.25).ShouldBe(-0.203, 0.001);
    }

    [Fact]
    public void Corners_rings_and_panels()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        var band = TriangleBand.Ruled(2, 4, 4, 2);
        var frame = Frame.Of(300, 220, band: 38).Border(band).Corners(Rosette.Wreathed(6, 13));
        var tray = Frame.Of(280, 200, band: 30).Rounded(50).Border(band.BackToBack()).Bent();
        var clock = Ring.Outside(64).OnDisc(92).Border(band.BackToBack());
        var panel = Panel.Of(300, 200).Frame(band, fromEdge: 8)
            .Field(room => Field.Within(room).Diamonds(9, 9), margin: 5)
            .Centre(Rosette.Wreathed(6, 38), gap: 4);

        panel.Save("panel.svg");
        foreach (var line in frame.Caption())
            Console.WriteLine(line);
        // Frame 300 × 220 mm, members 38 mm wide
        // A motif in each corner
        // Lower and upper side: 28 repeats, pitch 8 mm (8 asked)
        // Right and left side: 18 repeats, pitch 8 mm (8 asked)
        // 232 chips
        // </readme>
        // csharpier-ignore-end

        frame
            .Caption()
            .ShouldBe([
                "Frame 300 × 220 mm, members 38 mm wide",
                "A motif in each corner",
                "Lower and upper side: 28 repeats, pitch 8 mm (8 asked)",
                "Right and left side: 18 repeats, pitch 8 mm (8 asked)",
                "232 chips",
            ]);
        foreach (var pattern in (Pattern[])[frame, tray, clock, panel])
            pattern
                .Inspect(Knife.Held(degrees: 65).NoDeeperThan(4), Stock.Thick(20))
                .IsCarvable.ShouldBeTrue();
    }

    [Fact]
    public void A_vine_along_an_outline_from_a_file()
    {
        using var _ = new WorkingFolder();
        File.Copy(Repository.File("gallery", "drawings", "lid.svg"), "lid.svg");

        // csharpier-ignore-start
        // <readme>
        // The outline of a lid from its maker's drawing; in and out again rounds the corners of the line to follow.
        var lid = Import.Outline("lid.svg");                    // or lid.dxf
        var line = lid.Inset(46).Offset(26).Largest();
        var leaf = Leaf.Of(14, 6).WithWidestAt(0.42).Bent(25).WithVein();
        var leaves = line.Repeat(leaf.Moved(2.4, 0), spacing: 11, heading: Heading.Along.Turned(42)).EverySecondMirrored();

        Pattern.OfStock(lid.Contours)
            .With(Pattern.OfLineCuts(new LineCut(line.Part(0, 0), 1.6)))
            .With(leaves)
            .With(Flower.Of(8, 24).Overlapping().Moved(115, 78))
            .Save("lid-with-vine.svg");
        Console.WriteLine(leaves.Fit);   // 44 repeats, spacing 10.9031 mm (11 asked), closed without a seam
        // </readme>
        // csharpier-ignore-end

        leaves
            .Fit.ToString()
            .ShouldBe("44 repeats, spacing 10.9031 mm (11 asked), closed without a seam");
        leaves.Inspect(Knife.Held(degrees: 65), Stock.Thick(20)).IsCarvable.ShouldBeTrue();
        new FileInfo("lid-with-vine.svg").Length.ShouldBePositive();
    }

    [Fact]
    public void Can_it_be_carved()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        var petals = Rosette.Petals(12, radius: 40).Carve(part => part.IsPetal);
        var stock = Stock.Thick(12).GrainAlong(degrees: 0);

        var report = petals.Inspect(Knife.Held(degrees: 65), stock);
        foreach (var finding in report.Findings)
            Console.WriteLine(finding);
        // Warning: chip 2.1 and 11 more like it, at (20, 0): 5.65 mm deep, over the comfortable 4 mm. Shrink it to 70.8 %, 3.73 mm
        // wide, or hold the knife at 56.6°, or split it by a middle ridge into two parts at most 3.73 mm wide.
        report.Sheet().Save("report.svg");                             // marked on the drawing
        Console.WriteLine(report.IsCarvable);                          // True: a warning is no error

        var flatter = petals.Inspect(Knife.Held(degrees: 65).NoDeeperThan(4), stock);
        Console.WriteLine(flatter.Summary);                            // 1 note: that walls are flattened, to 56.6°
        var chip = petals.Chips.First().SolidFor(Knife.Held(degrees: 65));
        Console.WriteLine($"{chip.Depth:0.00} mm deep, {chip.Volume:0} mm³");   // 5.65 mm deep, 317 mm³
        // </readme>
        // csharpier-ignore-end

        // Petals 40 mm long, less the plain centre of 1.5 mm; tips of 30°, radius 40 / (2 sin 15°): widest 2 (r - √(r² - 20²)),
        // whose half times tan 65° is the depth.
        var radius = 20 / Math.Sin(Math.PI / 12);
        var halfWidth = radius - Math.Sqrt(radius * radius - 400);
        chip.Depth.ShouldBe(halfWidth * Math.Tan(65 * Math.PI / 180), 1e-9);
        report.Findings.Single().Kind.ShouldBe(FindingKind.OverComfortableDepth);
        report.IsCarvable.ShouldBeTrue();
        flatter.Summary.ShouldBe("1 note");
        File.ReadAllText("report.svg").ShouldContain("aria-label=\"1\"");
    }

    [Fact]
    public void How_it_will_look()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        var knife = Knife.Held(degrees: 65).NoDeeperThan(4);
        var lid = Pattern.OfStock(Contour.Rectangle(new Point(-46, -46), new Point(46, 46)))
            .With(Rosette.Wreathed(6, radius: 40).Carve(part => part.IsPetal));

        lid.Preview(knife).Save("carved.svg");
        lid.Preview(knife).LitFrom(direction: 90, height: 30).Save("lit-from-the-right.svg");
        lid.Preview(knife).WithDepthColours().WithDepthLines(0.5).Save("depth.svg");

        var section = lid.Section(new Point(-46, 12), new Point(46, 12), Stock.Thick(12), knife);
        section.Save("section.svg");                      // true size, every chip's depth in numbers
        Console.WriteLine($"{section.Cuts.Max(cut => cut.Depth):0.00} mm deep");   // 4.30 mm deep: never flatter than 40°
        // </readme>
        // csharpier-ignore-end

        Directory.GetFiles(".").Length.ShouldBe(4);
        section.Cuts.Max(cut => cut.Depth).ShouldBe(4.30, 0.005);
    }

    [Fact]
    public void In_which_order_to_carve()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        var rail = Rail.Of(742.5, 36).Border(TriangleBand.Ruled(2, 4, 4, 2), fromEdge: 6).EndMargins(6);
        var plan = rail.Plan(Knife.Held(degrees: 65), Stock.Thick(12).GrainAlong(degrees: 0));
        Console.WriteLine(plan);                  // ByChip: 182 chips, 546 cuts, 545 turns of the board
        Console.WriteLine(plan.ByPasses());       // ByPasses: 182 chips, 546 cuts, 5 turns of the board

        var pace = CarvingRate.Sample(chips: 12, minutes: 18).WithTurns(seconds: 10);   // as you timed it
        plan.ByPasses().Schedule().WithRate(pace).Save("order.md");                     // or .csv, .json
        plan.With(Hand.Left).Sheet().Save("order.svg");                                 // numbers, and an arrow for each cut
        plan.With(Technique.StabAndSlice).Numbered().Save("numbered.dxf");              // numbers on the layer LABELS

        foreach (var cut in plan.Chips[0].Strokes)
            Console.WriteLine($"{cut.Facing} side, board at {cut.BoardTurn}, {cut.Depth:0.0} mm deep, {cut.Grain} the grain");
        // </readme>
        // csharpier-ignore-end

        plan.ToString().ShouldBe("ByChip: 182 chips, 546 cuts, 545 turns of the board");
        plan.ByPasses().ToString().ShouldBe("ByPasses: 182 chips, 546 cuts, 5 turns of the board");
        foreach (var file in (string[])["order.md", "order.svg", "numbered.dxf"])
            new FileInfo(file).Length.ShouldBePositive();
    }

    [Fact]
    public void Leaning_teeth_on_a_set_of_rails()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        // Leaning teeth, turned round at the middle, on rails that get one pitch.
        var borders = Rails.Of(742.5, 742.5, 418, 418).Wide(36).SamePitch()
            .Border(TriangleBand.Ruled(2, 5, 2).Leaning(0.8).WithLineCuts())
            .Fitted(fit => fit.EndMargins(6).TurnedAtMiddle());
        foreach (var border in borders)
            Console.WriteLine(border.Fit);

        // Each side once, for burning the lines; and a length read off an imperial rule.
        var lines = SaveOptions.Default.WithSharedSides(SharedSides.Once);
        Rail.Of(Inches.Parse("29 3/16"), 36).Border(TriangleBand.Ruled(2, 4, 4, 2)).Save("lines.dxf", lines);
        // </readme>
        // csharpier-ignore-end

        borders.ShouldAllBe(border => border.Fit.Ends == EndMatch.Alike);
        new FileInfo("lines.dxf").Length.ShouldBePositive();
    }

    [Fact]
    public void Paths_for_a_v_bit()
    {
        using var _ = new WorkingFolder();

        // csharpier-ignore-start
        // <readme>
        // Along the valleys of six petals with a V bit, whose angle sets the walls.
        var paths = Rosette.Petals(6, radius: 24).Carve(part => part.IsPetal)
            .GroovePaths(VBit.Of(includedDegrees: 90, diameter: 12));
        paths.Save("petal-grooves.dxf");
        Console.WriteLine($"{paths.PathCount} paths, {paths.Deepest:0.00} mm deep");   // 6 paths, 3.22 mm deep
        Console.WriteLine($"with a knife at 65°: {paths.DeepestWith(Knife.Held(degrees: 65)):0.00} mm");   // 6.90 mm
        // </readme>
        // csharpier-ignore-end

        paths.PathCount.ShouldBe(6);
        // A petal of two arcs of 24 mm, each a sixth of the circle, is 24 (2 - √3) mm wide; tan 45° is 1, tan 65° is 2.1445069.
        paths.Deepest.ShouldBe(12 * (2 - Math.Sqrt(3)), 0.005);
        paths.DeepestWith(Knife.Held(65)).ShouldBe(12 * (2 - Math.Sqrt(3)) * 2.1445069, 1e-6);
        new FileInfo("petal-grooves.dxf").Length.ShouldBePositive();
    }
}
