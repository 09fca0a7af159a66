using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What may be chosen of a drawing's parts, and what to say of choices that carve nothing or the wrong thing.</summary>
internal static class PartChoice
{
    internal static IEnumerable<DrawingPart> Carvable(CompassDrawing drawing) =>
        drawing.Parts.Where(part => !part.IsPlain);

    /// <summary>Parts that were asked for one by one: some, and none that always stays ground.</summary>
    internal static DrawingPart[] Chosen(CompassDrawing drawing, DrawingPart[] parts, string name)
    {
        if (parts.Length == 0)
            throw new ArgumentException("The list is empty; name at least one.", name);
        return Array.Find(parts, part => part.IsPlain) is { } plain
            ? throw new PatternException(
                "This part always stays ground.",
                plain.InsidePoint,
                Others(drawing)
            )
            : parts;
    }

    internal static DrawingPart PartAt(CompassDrawing drawing, Point point)
    {
        var place = drawing.Arrangement.Locate(point);
        if (place.Face is { IsOuter: false })
            return drawing.PartAt(point)!;
        var problem = place.Face is null
            ? "The point lies on a line of the figure, between parts."
            : "The point lies outside the figure.";
        // Open lines bound no part, and then no other point does either.
        throw Carvable(drawing).MinBy(part => part.InsidePoint.DistanceTo(point)) is { } nearest
            ? new(problem, point, [$"the point {nearest.InsidePoint}, well inside the {nearest}"])
            : NothingChosen(drawing);
    }

    /// <summary>The parts of an orbit that was asked for by its number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such orbit.</exception>
    /// <exception cref="PatternException">There is no orbit at all.</exception>
    internal static IReadOnlyList<DrawingPart> OfOrbit(
        CompassDrawing drawing,
        int orbit,
        string name
    ) =>
        drawing.OrbitCount > 0
            ? drawing.OrbitParts(Guard.Within(orbit, 1, drawing.OrbitCount, name))
            : throw NothingChosen(drawing);

    internal static PatternException NothingChosen(CompassDrawing drawing) =>
        Carvable(drawing).Any()
            ? new("No part of the figure answers to the description.", remedies: Others(drawing))
            : new(
                "The lines of the figure bound no part that may be carved.",
                drawing.Symmetry.Centre,
                ["a drawing whose lines cross or close"]
            );

    /// <summary>What there is to carve, orbit by orbit.</summary>
    private static string[] Others(CompassDrawing drawing) =>
        [
            .. Carvable(drawing)
                .GroupBy(part => part.Orbit)
                .OrderBy(orbit => orbit.Key)
                .Select(orbit =>
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"orbit {orbit.Key}: {orbit.Count()} × {orbit.First().Sides} sides, {Guard.Text(orbit.First().Area)} mm², such as at {orbit.First().InsidePoint}"
                    )
                ),
        ];
}
