using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.Heading>;

namespace PatternGen;

/// <summary>Which way repeats along a path look.</summary>
internal static class HeadingType
{
    private static readonly RecipeField<Heading, HeadingKind> To = F.Usually(
        "to",
        HeadingKind.Along,
        "Which way the motif's x axis points.",
        new WordType<HeadingKind>(),
        heading => heading.Kind
    );

    private static readonly RecipeField<Heading, Angle> Turned = F.Usually(
        "turned",
        Angle.Zero,
        "By how much it is then turned.",
        RecipeSizes.Angle,
        heading => heading.Turn
    );

    private static readonly RecipeField<Heading, Angle> Direction = F.Usually(
        "direction",
        Angle.Zero,
        "Where it is fixed: the direction.",
        RecipeSizes.Angle,
        heading => heading.Direction
    );

    private static readonly RecipeField<Heading, Point> Place = F.Usually(
        "point",
        Point.Origin,
        "Where it points towards or away from a point: the point.",
        RecipeSizes.Point,
        heading => heading.Target
    );

    internal static readonly ObjectType<Heading> Type = new(
        "heading",
        "Which way each repeat looks.",
        new(To, Turned, Direction, Place),
        given =>
        {
            var heading = given.Of(To) switch
            {
                HeadingKind.Across => Heading.Across,
                HeadingKind.Inwards => Heading.Inwards,
                HeadingKind.Outwards => Heading.Outwards,
                HeadingKind.Fixed => Heading.Fixed(given.Of(Direction)),
                HeadingKind.Towards => Heading.Towards(given.Of(Place)),
                HeadingKind.AwayFrom => Heading.AwayFrom(given.Of(Place)),
                _ => Heading.Along,
            };
            return given.Of(Turned) == Angle.Zero ? heading : heading.Turned(given.Of(Turned));
        }
    );
}
