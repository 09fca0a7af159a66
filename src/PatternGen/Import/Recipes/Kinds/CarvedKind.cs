using PatternGen.Geometry;
using F = PatternGen.RecipeFieldOf<PatternGen.CarvedDrawing>;

namespace PatternGen;

/// <summary>A compass drawing with some of its parts carved: the parts by their numbers, as they were chosen.</summary>
internal static class CarvedKind
{
    private static readonly ListType<int> Numbers = new(new CountType(1), "a list of numbers");

    private static readonly RecipeField<CarvedDrawing, CompassDrawing> Drawing = F.Needed(
        "drawing",
        "The drawing.",
        DrawingType.Instance,
        carved => carved.Drawing
    );

    private static readonly RecipeField<CarvedDrawing, string?> Fingerprint = F.Maybe(
        "fingerprint",
        "Identifies the figure that the numbers belong to. If given, another figure is refused.",
        RecipeSizes.Text,
        carved => FigureFingerprint.Of(carved.Drawing)
    );

    private static readonly RecipeField<CarvedDrawing, bool> Petals = F.Usually(
        "petals",
        false,
        "Whether all petals are carved.",
        RecipeSizes.Flag,
        _ => false
    );

    private static readonly RecipeField<CarvedDrawing, IReadOnlyList<int>?> Orbits = F.Maybe(
        "orbits",
        "Numbers of orbits, of which every part is carved.",
        Numbers,
        carved => OrNull([.. WholeOrbits(carved)])
    );

    private static readonly RecipeField<CarvedDrawing, IReadOnlyList<int>?> Parts = F.Maybe(
        "parts",
        "Numbers of single parts that are carved too.",
        Numbers,
        carved =>
            OrNull([
                .. carved
                    .Parts.Where(part => !WholeOrbits(carved).Contains(part.Orbit))
                    .Select(part => part.Number),
            ])
    );

    private static readonly RecipeField<CarvedDrawing, IReadOnlyList<IReadOnlyList<int>>?> Joined =
        F.Maybe(
            "joined",
            "Pairs of carved parts that share a side and are one chip.",
            new ListType<IReadOnlyList<int>>(
                new ListType<int>(new CountType(1), "the numbers of two parts", least: 2, most: 2),
                "a list of pairs"
            ),
            carved =>
                OrNull<IReadOnlyList<int>>([
                    .. carved.Joined.Select(pair => (int[])[pair.One.Number, pair.Other.Number]),
                ])
        );

    private static readonly RecipeField<CarvedDrawing, bool> WithDrawing = F.Usually(
        "withDrawing",
        false,
        "Whether the lines that are no side of a chip are drawn as layout lines.",
        RecipeSizes.Flag,
        carved => carved.ShowsLines
    );

    internal static readonly RecipeKind<Pattern> Kind = new RecipeKind<Pattern, CarvedDrawing>(
        "carved",
        "A compass drawing with some of its parts carved.",
        pattern => pattern as CarvedDrawing,
        new(Drawing, Fingerprint, Petals, Orbits, Parts, Joined, WithDrawing),
        Make
    );

    private static Pattern Make(GivenFields given)
    {
        var drawing = given.Of(Drawing);
        if (given.Of(Fingerprint) is { } fingerprint)
            FigureFingerprint.RefuseOther(drawing, fingerprint);
        var carved = new CarvedDrawing(
            drawing,
            PartChoice.Chosen(drawing, [.. Chosen(drawing, given)], "parts")
        );
        if (given.Of(Joined) is { } pairs)
            carved = Join(carved, pairs);
        return given.Of(WithDrawing) ? carved.WithDrawing() : carved;
    }

    private static IEnumerable<DrawingPart> Chosen(CompassDrawing drawing, GivenFields given)
    {
        foreach (var orbit in given.Of(Orbits) ?? [])
        foreach (var part in PartChoice.OfOrbit(drawing, orbit, "orbits"))
            yield return part;
        foreach (var number in given.Of(Parts) ?? [])
            yield return drawing.Parts[Guard.Within(number, 1, drawing.Parts.Count, "parts") - 1];
        if (given.Of(Petals))
            foreach (var part in drawing.Parts.Where(part => part.IsPetal && !part.IsPlain))
                yield return part;
    }

    private static CarvedDrawing Join(CarvedDrawing carved, IReadOnlyList<IReadOnlyList<int>> pairs)
    {
        var asked = pairs.Select(pair => (pair.Min(), pair.Max())).ToHashSet();
        var joined = carved.JoinedWith((a, b) => asked.Contains((a.Number, b.Number)));
        var left = asked.Except(joined.Joined.Select(pair => (pair.One.Number, pair.Other.Number)));
        foreach (var (one, other) in left)
            throw new PatternException(
                $"Parts {one} and {other} can't be joined.",
                remedies: ["two carved parts that share a side"]
            );
        return joined;
    }

    private static IEnumerable<int> WholeOrbits(CarvedDrawing carved) =>
        carved
            .Parts.GroupBy(part => part.Orbit)
            .Where(orbit => orbit.Count() == carved.Drawing.OrbitParts(orbit.Key).Count)
            .Select(orbit => orbit.Key)
            .Order();

    private static IReadOnlyList<T>? OrNull<T>(IReadOnlyList<T> list) =>
        list.Count > 0 ? list : null;
}
