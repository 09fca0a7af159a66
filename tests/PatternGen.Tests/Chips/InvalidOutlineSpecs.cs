namespace PatternGen.Tests.Chips;

public class InvalidOutlineSpecs
{
    private static readonly Dictionary<string, Contour> Cases = new()
    {
        ["crosses itself"] = Contour.Polygon(new(0, 0), new(10, 0), new(2, 9), new(10, 5)),
        ["a loop inside"] = Contour.Polygon(
            new(0, 0),
            new(10, 0),
            new(10, 10),
            new(4, 4),
            new(6, 3),
            new(0, 10)
        ),
        ["a star drawn through"] = Contour.Polygon(
            Enumerable.Range(0, 5).Select(i => Point.Origin.Polar(9, Angle.OfTurn(i * 0.4)))
        ),
        ["drawn twice"] = Contour.Polygon(
            new(0, 0),
            new(5, 0),
            new(3, 4),
            new(0, 0),
            new(5, 0),
            new(3, 4)
        ),
        ["arcs that cross"] = new(
            new Vertex(new(0, 0), 0.2),
            new(new(10, 0), 0.1),
            new(new(5, -3))
        ),
        ["a spike"] = Contour.Polygon(new(0, 0), new(10, 0), new(15, 0), new(10, 0), new(5, 8)),
        ["touches a side of its own"] = Contour.Polygon(
            new(0, 0),
            new(10, 0),
            new(10, 10),
            new(7, 10),
            new(5, 0),
            new(3, 10),
            new(0, 10)
        ),
    };

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void An_outline_that_crosses_itself_is_refused_and_told_where(string name)
    {
        Cases[name].Validate().IsValid.ShouldBeFalse();

        var refusal = Should.Throw<PatternException>(() => Roof.Over(Cases[name]));

        refusal.Message.ShouldContain("crosses or touches itself");
        refusal.Place.ShouldNotBeNull();
        refusal.Remedies.ShouldNotBeEmpty();
    }

    [Fact]
    public void An_outline_without_area_is_refused()
    {
        Should
            .Throw<ArgumentException>(() =>
                Roof.Over(Contour.Polygon(new(0, 0), new(5, 0), new(10, 0)))
            )
            .Message.ShouldContain("encloses no area");
        Should.Throw<ArgumentNullException>(() => Roof.Over((Contour)null!));
        Should.Throw<ArgumentNullException>(() => Roof.Over((RegionPart)null!));
    }

    [Fact]
    public void Rings_that_cross_are_refused()
    {
        var square = Contour.Rectangle(new(0, 0), new(10, 10));
        var hole = Contour.Rectangle(new(4, -1), new(6, 3));

        Should
            .Throw<PatternException>(() => Roof.Over(square, [hole.Reversed()]).Moment)
            .Message.ShouldContain("cross");
    }

    [Fact]
    public void A_clockwise_outline_is_turned_round()
    {
        var clockwise = Contour.Rectangle(new(0, 0), new(10, 4)).Reversed();

        var roof = RoofCheck.Sound(clockwise);

        roof.Outline.IsCounterClockwise.ShouldBeTrue();
        roof.Clearance.ShouldBe(2);
    }
}
