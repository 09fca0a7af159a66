using System.Globalization;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Says what is wrong with a field, and what would work.</summary>
internal static class FieldTrouble
{
    /// <summary>The most cells that a field may have: more than a lifetime of carving, and few enough to be worked out in seconds.</summary>
    private const double MostCells = 1_000_000;

    /// <summary>The most steps from the origin of a lattice to a field: whole numbers still hold them, and doubles tell them apart well.</summary>
    private const double MostSteps = 1e8;

    /// <summary>The step by which smaller cells are tried.</summary>
    private const double Smaller = 0.8;

    /// <summary>Refuses what would take too many cells, before any is made.</summary>
    internal static void RefuseTooMany(CellLattice cells, Extents extents)
    {
        var count = extents.Width * extents.Height / cells.RepeatArea * cells.Kinds.Length;
        if (count <= MostCells)
            return;
        var factor = FitTrouble.Up(cells.Sizes.Width * Math.Sqrt(count / MostCells));
        throw new PatternException(
            string.Create(
                CultureInfo.InvariantCulture,
                $"A field {Guard.Text(extents.Width)} × {Guard.Text(extents.Height)} mm would have about {count:0} cells of {Guard.Text(cells.Sizes.Width)} mm; a field has at most {MostCells:0}."
            ),
            remedies: [$"cells of at least {factor} mm", "a smaller outline"]
        );
    }

    /// <summary>Refuses a lattice whose cells on the field are too many steps from its origin to be counted.</summary>
    internal static void RefuseTooFar(CellLattice cells, Lattice lattice, Extents extents)
    {
        var (i, j) = lattice.NumbersOf(extents.Centre);
        if (Math.Max(Math.Abs(i), Math.Abs(j)) <= MostSteps)
            return;
        throw new PatternException(
            $"The field lies too many cells of {Guard.Text(cells.Sizes.Width)} mm from where its lattice starts.",
            lattice.Origin,
            ["a lattice that starts near the field", "larger cells"]
        );
    }

    internal static PatternException GapTooWide(FieldDesign design)
    {
        var widest = design.Outline.Parts.Select(InsidePlace.Of).MaxBy(place => place.Clearance);
        return new(
            $"A border gap of {Guard.Text(design.BorderGap)} mm leaves nothing of the field.",
            widest.Point,
            [$"a border gap of less than {FitTrouble.Down(widest.Clearance)} mm"]
        );
    }

    internal static PatternException RidgesTooWide(Contour cell, double gap)
    {
        var clearance = InsidePlace.Of(new(cell, [])).Clearance;
        return new(
            $"Ridges {Guard.Text(gap)} mm wide leave nothing of the cells between them.",
            remedies: [$"ridges narrower than {FitTrouble.Down(2 * clearance)} mm", "larger cells"]
        );
    }

    internal static PatternException MotifTooLarge(double reach, double fits) =>
        new(
            $"The motif, which reaches {Guard.Text(reach)} mm from its origin, does not fit in a cell.",
            remedies: fits > 0
                ?
                [
                    $"the motif scaled by {FitTrouble.Down(fits)}",
                    "larger cells",
                    "narrower ridges",
                ]
                : ["a motif with its origin at its middle"]
        );

    internal static PatternException DividedAlready(LatticeSizes sizes) =>
        new(
            $"The cells of {Name(sizes)} consist of several chips, so they are not divided from their centre.",
            remedies: ["another lattice", "cells as they are"]
        );

    internal static PatternException OddSides(LatticeSizes sizes, int sides) =>
        new(
            $"Cells of {Name(sizes)} have {sides} sides, so not every second of the chips from their centre can be left standing.",
            remedies: ["all chips from the centre", "cells with an even number of sides"]
        );

    internal static PatternException NotItsCell(LatticeSizes sizes, Angle angle, bool mirrored) =>
        new(
            $"A cell of {Name(sizes)} {(mirrored ? "mirrored and " : "")}turned by {angle} no longer fills its place.",
            remedies:
            [
                "a turn that takes the cell into itself, as a quarter turn does a square",
                "a motif in the cells, which may be turned by any angle",
            ]
        );

    /// <summary>Says that no cell fits, and how large cells may be.</summary>
    internal static PatternException NothingFits(FieldDesign design, FieldEdge edge)
    {
        var place = design.Outline.Extents.Centre;
        double fits = 1;
        for (var tries = 0; !Holds(fits); tries++)
        {
            if (tries == 60)
                return new(
                    "No cell fits in the outline.",
                    place,
                    ["a wider outline", "cells clipped at the edge or drawn smaller there"]
                );
            fits *= Smaller;
        }
        var over = fits / Smaller;
        for (var halving = 0; halving < 20; halving++)
        {
            var half = (fits + over) / 2;
            if (Holds(half))
                fits = half;
            else
                over = half;
        }
        var what =
            design.Motifs.Values.Length > 0
                ? $"motif and cells scaled by {FitTrouble.Down(fits)}"
                : $"{Name(design.Sizes)} of at most {FitTrouble.Down(design.Sizes.Width * fits)} mm";
        return new(
            $"No cell of {Guard.Text(design.Sizes.Width)} mm fits in the outline, which measures {Guard.Text(edge.Extents.Width)} × {Guard.Text(edge.Extents.Height)} mm where it may be carved.",
            place,
            [
                what,
                "the lattice moved or turned",
                "cells clipped at the edge or drawn smaller there",
            ]
        );

        bool Holds(double factor)
        {
            try
            {
                return new FieldSolver(Scaled(design, factor), edge).Solve().Chips.ChipCount > 0;
            }
            // Too many cells, or ridges wider than they are: then smaller ones will not do either.
            catch (PatternException)
            {
                return false;
            }
        }
    }

    private static FieldDesign Scaled(FieldDesign design, double factor) =>
        design with
        {
            Sizes = design.Sizes.Scaled(factor),
            Motifs = design.Motifs with
            {
                Values = [.. design.Motifs.Values.Select(motif => motif.Scaled(factor))],
            },
        };

    private static string Name(LatticeSizes sizes) =>
        sizes.Family switch
        {
            FieldLattice.Triangles => "triangles",
            FieldLattice.Squares => "squares",
            FieldLattice.Diamonds => "diamonds",
            FieldLattice.Hexagons => "hexagons",
            FieldLattice.Circles or FieldLattice.CirclesOnSquares => "circles",
            FieldLattice.Scales => "scales",
            FieldLattice.BasketWeave => "basket weave",
            _ => "hourglasses",
        };
}
