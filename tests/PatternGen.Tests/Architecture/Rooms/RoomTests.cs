namespace PatternGen.Tests.Architecture.Rooms;

public class RoomTests
{
    [Fact]
    public void Rooms_use_only_the_rooms_before_them() =>
        RoomRules
            .Violations(typeof(Vector).Assembly.Location, "/src/PatternGen/", "PatternGen")
            .ShouldBeEmpty();

    [Fact]
    public void Every_kind_of_use_is_noticed() =>
        RoomRules
            .Violations(
                typeof(RoomTests).Assembly.Location,
                "/Architecture/Rooms/Sample/",
                "PatternGen.Tests.Architecture.Rooms.Sample"
            )
            .ShouldBe([
                "Geometry/ByArray uses Layout/Later",
                "Geometry/ByAttribute uses Layout/LaterAttribute",
                "Geometry/ByBase uses Layout/Later",
                "Geometry/ByCatch uses Layout/LaterException",
                "Geometry/ByConstraint`1 uses Layout/Later",
                "Geometry/ByDelegate uses Layout/Later",
                "Geometry/ByEnum uses Layout/LaterKind",
                "Geometry/ByField uses Layout/Later",
                "Geometry/ByInterface uses Layout/ILater",
                "Geometry/ByIterator uses Layout/Later",
                "Geometry/ByLambda uses Layout/Later",
                "Geometry/ByNestedType uses Layout/Later",
                "Geometry/ByTypeArgument uses Layout/Later",
                "Geometry/ByTypeOf uses Layout/Later",
                "Homeless stands in no room",
                "Split stands in Geometry and Layout",
            ]);
}
