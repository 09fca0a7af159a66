using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The types of values that many fields have.</summary>
internal static class RecipeSizes
{
    /// <summary>A length or a size in mm, more than 0.</summary>
    internal static readonly NumberType Positive = new(0, Guard.MaxSize, isAbove: true);

    /// <summary>A length in mm, or 0.</summary>
    internal static readonly NumberType NotNegative = new(0, Guard.MaxSize);

    /// <summary>How far something may lie off, in mm.</summary>
    internal static readonly NumberType Accuracy = new(1e-6, 1);

    /// <summary>A share, from 0 to 1.</summary>
    internal static readonly NumberType Share = new(0, 1);

    /// <summary>A length in mm to either side.</summary>
    internal static readonly NumberType Signed = new(-Guard.MaxSize, Guard.MaxSize);

    internal static readonly NumberType Coordinate = new(-Guard.MaxCoordinate, Guard.MaxCoordinate);

    internal static readonly NumberType Shift = new(
        -2 * Guard.MaxCoordinate,
        2 * Guard.MaxCoordinate
    );

    internal static readonly NumberType Bulge = new(-Guard.MaxBulge, Guard.MaxBulge);

    internal static readonly NumberType Degrees = new(-1e9, 1e9);

    internal static readonly AngleType Angle = new();

    internal static readonly FlagType Flag = new();

    internal static readonly TextType Text = new();

    internal static readonly PointType Point = new();

    internal static readonly CornerType Corner = new();

    /// <summary>The corners of a closed outline.</summary>
    internal static readonly MappedType<IReadOnlyList<Vertex>, Contour> Outline = new(
        "outline",
        "The corners of a closed outline, in order; counter-clockwise, holes clockwise.",
        new ListType<Vertex>(Corner, "a list of corners", least: 2),
        corners => new Contour(corners),
        outline => outline.Vertices
    );

    /// <summary>The corners of an open line.</summary>
    internal static readonly MappedType<IReadOnlyList<Vertex>, Chain> Line = new(
        "line",
        "The corners of an open line, in order.",
        new ListType<Vertex>(Corner, "a list of corners", least: 2),
        corners => new Chain(corners),
        line => line.Vertices
    );
}

/// <summary>What is made of a simpler value and written as that.</summary>
internal sealed class MappedType<TFrom, T>(
    string name,
    string about,
    RecipeType<TFrom> from,
    Func<TFrom, T> make,
    Func<T, TFrom> get
) : RecipeType<T>
{
    internal override T Read(RecipeValue value)
    {
        var simple = from.Read(value);
        return Blame.On(value, _ => false, () => make(simple));
    }

    internal override JsonText Write(T value, RecipeWriting writing) =>
        from.Write(get(value), writing);

    internal override JsonText Schema(SchemaDefinitions schema) =>
        schema.Define(name, () => SchemaText.About(about, from.Schema(schema)));
}
