using F = PatternGen.RecipeFieldOf<PatternGen.Leaf>;

namespace PatternGen;

/// <summary>Leaves, by themselves and on stems.</summary>
internal static class LeafKind
{
    private const string About =
        "A leaf from (0, 0) to (length, 0): two sides that meet in points.";

    private static readonly RecipeField<Leaf, double> Length = F.Needed(
        "length",
        "Length in mm.",
        RecipeSizes.Positive,
        leaf => leaf.Length
    );

    private static readonly RecipeField<Leaf, double> Width = F.Needed(
        "width",
        "Greatest width in mm.",
        RecipeSizes.Positive,
        leaf => leaf.Width
    );

    private static readonly RecipeField<Leaf, double> Bend = F.Usually(
        "bend",
        0,
        "By how many degrees it is bent.",
        RecipeSizes.Degrees,
        leaf => leaf.Bend
    );

    private static readonly RecipeField<Leaf, double> WidestAt = F.Usually(
        "widestAt",
        0.5,
        "Where it is widest, as a share of its length.",
        RecipeSizes.Share,
        leaf => leaf.WidestAt
    );

    private static readonly RecipeField<Leaf, double?> Vein = F.Maybe(
        "vein",
        "Width in mm of a vein that stays standing, so that each half is a chip.",
        RecipeSizes.NotNegative,
        leaf => leaf.Vein
    );

    private static readonly RecipeFields<Leaf> Table = new(Length, Width, Bend, WidestAt, Vein);

    /// <summary>A leaf on a stem.</summary>
    internal static readonly ObjectType<Leaf> Type = new("leaf", About, Table, Make);

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, Leaf>(
        "leaf",
        About,
        pattern => pattern as Leaf,
        Table,
        Make
    );

    private static Leaf Make(GivenFields given)
    {
        var leaf = Leaf.Of(given.Of(Length), given.Of(Width))
            .Bent(given.Of(Bend))
            .WithWidestAt(given.Of(WidestAt));
        return given.Of(Vein) is { } vein ? leaf.WithVein(vein) : leaf;
    }
}
