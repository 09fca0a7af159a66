using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Moves, turns, mirrors and scalings. On writing, the first that gives the same placement to the last digit is taken.</summary>
internal static class PlacingSteps
{
    private static readonly PairType Distances = new(
        RecipeSizes.Shift,
        "two distances: [right, up]"
    );

    internal static IReadOnlyList<RecipeKind<RecipeStep>> All { get; } =
    [
        Of("move", "Moves the pattern.", Moving.Of, new(Moving.By), Moving.Read),
        Of(
            "turn",
            "Turns it counter-clockwise.",
            Turning.Of,
            new(Turning.Degrees, Turning.About),
            Turning.Read
        ),
        Of(
            "mirror-left-right",
            "Swaps left and right.",
            Mirroring.LeftRight,
            new(Mirroring.X),
            Mirroring.ReadX
        ),
        Of(
            "mirror-top-bottom",
            "Swaps top and bottom.",
            Mirroring.TopBottom,
            new(Mirroring.Y),
            Mirroring.ReadY
        ),
        Of(
            "scale",
            "Scales it evenly.",
            Scaling.Of,
            new(Scaling.Factor, Scaling.About),
            Scaling.Read
        ),
        Of(
            "place",
            "Places it by a similarity.",
            Placing.Of,
            new(Placing.XTo, Placing.Mirrored, Placing.By),
            Placing.Read
        ),
    ];

    private static RecipeKind<RecipeStep> Of<T>(
        string name,
        string about,
        Func<Transform, T?> say,
        RecipeFields<T> table,
        Func<GivenFields, Transform> read
    )
        where T : class =>
        new RecipeKind<RecipeStep, T>(
            name,
            about,
            step => step.Done is PlacedOrigin placed ? say(placed.Placement) : null,
            table,
            given =>
            {
                var placement = read(given);
                return new(null, pattern => pattern.Transformed(placement));
            }
        );

    /// <summary>The point that a turn or a scaling leaves where it is, as a person would name it.</summary>
    private static Point FixedPoint(Transform placement)
    {
        const int decimals = 6;
        var (a, b) = (1 - placement.A, -placement.B);
        var (x, y) = (placement.Translation.X, placement.Translation.Y);
        var size = a * a + b * b;
        return new(
            Math.Round((a * x + b * y) / size, decimals),
            Math.Round((a * y - b * x) / size, decimals)
        );
    }

    private sealed record Moving(double Right, double Up)
    {
        internal static readonly RecipeField<Moving, (double Right, double Up)> By =
            RecipeFieldOf<Moving>.Needed(
                "by",
                "Distances to the right and up in mm.",
                Distances,
                moving => (moving.Right, moving.Up)
            );

        internal static Moving? Of(Transform placement)
        {
            var (right, up) = (placement.Translation.X, placement.Translation.Y);
            return
                Math.Abs(right) <= 2 * Guard.MaxCoordinate
                && Math.Abs(up) <= 2 * Guard.MaxCoordinate
                && Transform.Move(right, up) == placement
                ? new(right, up)
                : null;
        }

        internal static Transform Read(GivenFields given) =>
            Transform.Move(given.Of(By).Right, given.Of(By).Up);
    }

    private sealed record Turning(double By, Point Round)
    {
        internal static readonly RecipeField<Turning, double> Degrees =
            RecipeFieldOf<Turning>.Needed(
                "degrees",
                "By how much, counter-clockwise.",
                RecipeSizes.Degrees,
                turning => turning.By
            );

        internal static readonly RecipeField<Turning, Point> About = RecipeFieldOf<Turning>.Usually(
            "about",
            Point.Origin,
            "The point that stays where it is; the origin if left out.",
            RecipeSizes.Point,
            turning => turning.Round
        );

        internal static Turning? Of(Transform placement)
        {
            const int decimals = 9;
            if (placement.IsMirrored || placement.B == 0 && placement.A > 0)
                return null;
            var degrees = Math.Round(placement.Turn.Degrees, decimals);
            var round = FixedPoint(placement);
            foreach (var by in (double[])[degrees, degrees - 360, degrees + 360])
            foreach (var about in (Point[])[Point.Origin, round])
                if (IsPlace(about) && Transform.Rotate(by, about) == placement)
                    return new(by, about);
            return null;
        }

        internal static Transform Read(GivenFields given) =>
            Transform.Rotate(given.Of(Degrees), given.Of(About));
    }

    private sealed record Mirroring(double At)
    {
        internal static readonly RecipeField<Mirroring, double> X =
            RecipeFieldOf<Mirroring>.Usually(
                "x",
                0,
                "Where the upright line stands that stays where it is.",
                RecipeSizes.Coordinate,
                mirroring => mirroring.At
            );

        internal static readonly RecipeField<Mirroring, double> Y =
            RecipeFieldOf<Mirroring>.Usually(
                "y",
                0,
                "Where the level line lies that stays where it is.",
                RecipeSizes.Coordinate,
                mirroring => mirroring.At
            );

        internal static Mirroring? LeftRight(Transform placement) =>
            At2(placement.Translation.X) is { } x && Transform.MirrorLeftRight(x) == placement
                ? new(x)
                : null;

        internal static Mirroring? TopBottom(Transform placement) =>
            At2(placement.Translation.Y) is { } y && Transform.MirrorTopBottom(y) == placement
                ? new(y)
                : null;

        internal static Transform ReadX(GivenFields given) =>
            Transform.MirrorLeftRight(given.Of(X));

        internal static Transform ReadY(GivenFields given) =>
            Transform.MirrorTopBottom(given.Of(Y));

        /// <summary>The mirror lies half-way.</summary>
        private static double? At2(double shift) =>
            Math.Abs(shift) <= 2 * Guard.MaxCoordinate ? shift / 2 : null;
    }

    private sealed record Scaling(double By, Point From)
    {
        internal static readonly RecipeField<Scaling, double> Factor =
            RecipeFieldOf<Scaling>.Needed(
                "factor",
                "2 doubles all lengths.",
                new NumberType(1e-6, 1e6),
                scaling => scaling.By
            );

        internal static readonly RecipeField<Scaling, Point> About = RecipeFieldOf<Scaling>.Usually(
            "about",
            Point.Origin,
            "The point that stays where it is; the origin if left out.",
            RecipeSizes.Point,
            scaling => scaling.From
        );

        internal static Scaling? Of(Transform placement)
        {
            if (placement is not { IsMirrored: false, B: 0, A: >= 1e-6 and <= 1e6 and not 1 })
                return null;
            foreach (var about in (Point[])[Point.Origin, FixedPoint(placement)])
                if (IsPlace(about) && Transform.Resize(placement.A, about) == placement)
                    return new(placement.A, about);
            return null;
        }

        internal static Transform Read(GivenFields given) =>
            Transform.Resize(given.Of(Factor), given.Of(About));
    }

    private sealed record Placing(Transform Placement)
    {
        internal static readonly RecipeField<Placing, (double X, double Y)> XTo =
            RecipeFieldOf<Placing>.Needed(
                "xTo",
                "Where the vector (1, 0) goes, before all is moved.",
                new PairType(new NumberType(-1e100, 1e100), "a vector: [x, y]"),
                placing => (placing.Placement.A, placing.Placement.B)
            );

        internal static readonly RecipeField<Placing, bool> Mirrored =
            RecipeFieldOf<Placing>.Usually(
                "mirrored",
                false,
                "Whether top and bottom are swapped before all else.",
                RecipeSizes.Flag,
                placing => placing.Placement.IsMirrored
            );

        internal static readonly RecipeField<Placing, (double Right, double Up)> By =
            RecipeFieldOf<Placing>.Usually(
                "by",
                (0.0, 0.0),
                "How far all is moved then, to the right and up, in mm.",
                new PairType(new NumberType(-1e100, 1e100), "two distances: [right, up]"),
                placing => (placing.Placement.Translation.X, placing.Placement.Translation.Y)
            );

        internal static Placing Of(Transform placement) => new(placement);

        internal static Transform Read(GivenFields given) =>
            Transform.Of(
                given.Of(XTo).X,
                given.Of(XTo).Y,
                given.Of(Mirrored),
                new(given.Of(By).Right, given.Of(By).Up)
            );
    }

    private static bool IsPlace(Point point) =>
        Math.Abs(point.X) <= Guard.MaxCoordinate && Math.Abs(point.Y) <= Guard.MaxCoordinate;
}
