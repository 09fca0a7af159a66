namespace PatternGen.Tests.Architecture.Surface;

/// <summary>The rules of <see cref="SurfaceTests"/>, each tried on a type that breaks it.</summary>
public class SurfaceRulesTests
{
    [Fact]
    public void A_type_that_can_change_is_noticed() =>
        Immutability
            .Violations([typeof(Changeable), typeof(Derived), typeof(Sound)])
            .ShouldBe([
                "Changeable: field _count is not read-only",
                "Changeable: field Shared is not read-only",
                "Changeable: property Initial can be set",
                "Changeable: property Array hands out a changeable collection",
                "Changeable: property List hands out a changeable collection",
                "Derived: field _count is not read-only",
                "Derived: field Shared is not read-only",
                "Derived: property Initial can be set",
                "Derived: property Array hands out a changeable collection",
                "Derived: property List hands out a changeable collection",
            ]);

    [Fact]
    public void A_missing_equality_operator_is_noticed() =>
        Equality
            .Violations([typeof(OnlyEquatable), typeof(Sound)])
            .ShouldBe(["OnlyEquatable is equatable and has no =="]);

    [Fact]
    public void A_type_of_another_package_is_noticed() =>
        ForeignTypes
            .Violations([typeof(Leaking), typeof(Sound)])
            .ShouldBe([
                "Leaking shows Svg.SvgElement",
                "Leaking shows NetTopologySuite.Geometries.Coordinate",
            ]);

    [Fact]
    public void A_name_of_the_implicit_usings_is_noticed() =>
        NameClashes
            .WithImplicitUsings([
                typeof(System.IO.Path),
                typeof(System.Text.Rune),
                typeof(Changeable),
            ])
            .ShouldBe(["Path is also a name in the implicit usings"]);

    [Fact]
    public void A_type_named_like_a_namespace_is_noticed() =>
        NameClashes
            .WithNamespaces([typeof(Surface), typeof(Changeable)])
            .ShouldBe([$"{typeof(Surface).FullName} is named like a namespace"]);

    public class Changeable
    {
        private int _count;

        public static int Shared = 1;

        public int Initial { get; init; }

        public int[] Array => [_count++];

        public IList<int> List { get; } = [];

        public IReadOnlyList<int> Fine { get; } = [];
    }

    public class Derived : Changeable;

    public sealed class OnlyEquatable : IEquatable<OnlyEquatable>
    {
        public bool Equals(OnlyEquatable? other) => other is not null;

        public override bool Equals(object? other) => Equals(other as OnlyEquatable);

        public override int GetHashCode() => 0;
    }

    public static class Leaking
    {
        public static Svg.SvgElement? Element() => null;

        public static void Take(IEnumerable<NetTopologySuite.Geometries.Coordinate[]> parts) =>
            _ = parts;

        public static Svg.SvgDocument? Meant() => null;
    }

    public static class Surface;

    public readonly record struct Sound
    {
        public Sound(int value) => Value = value;

        public int Value { get; }

        public Func<int, int> Twice => static value => 2 * value;
    }
}
