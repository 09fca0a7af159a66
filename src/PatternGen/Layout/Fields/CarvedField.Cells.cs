using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class CarvedField
{
    /// <summary>Returns the field with some cells carved and the others left standing.</summary>
    /// <param name="scheme">How cells are told apart.</param>
    /// <param name="numbers">The numbers of the cells that are carved: <c>Carve(CellScheme.Checkerboard, 0)</c>. At least one.</param>
    /// <exception cref="ArgumentException">There are none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The scheme is not defined, or has no such number.</exception>
    [Pure]
    public CarvedField Carve(CellScheme scheme, params int[] numbers)
    {
        var choice = Choice(scheme, numbers);
        return With(design => design with { Carved = choice });
    }

    /// <summary>Returns the field with its cells divided into chips.</summary>
    /// <param name="division">How; cells with several chips, as hourglasses are, can't be divided.</param>
    /// <exception cref="ArgumentOutOfRangeException">The division is not defined.</exception>
    [Pure]
    public CarvedField Divided(CellDivision division)
    {
        Guard.Defined(division);
        return With(design => design with { Division = division });
    }

    /// <summary>Returns the field with a motif in every cell instead of a chip.</summary>
    /// <param name="motif">The motif, its origin at the centre of the cell: <c>Rosette.Petals(6, 9).Carve(part => part.IsPetal)</c>.</param>
    /// <remarks>
    /// The cell of a motif is a circle about its origin that holds it, if that fits in the lattice's cell, and the lattice's cell
    /// otherwise; so a motif is whole, or drawn smaller, by that.
    /// </remarks>
    /// <exception cref="ArgumentException">The motif has no chips.</exception>
    [Pure]
    public CarvedField Cells(Pattern motif) => Cells(CellScheme.Alike, motif);

    /// <summary>Returns the field with motifs in its cells by turns.</summary>
    /// <param name="scheme">How cells are told apart.</param>
    /// <param name="motifs">
    /// The motif for each number of the scheme, from the start again if they are fewer; <see cref="Pattern.Empty"/> leaves cells
    /// standing.
    /// </param>
    /// <exception cref="ArgumentException">None of the motifs has chips, or there are more than the scheme tells apart.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The scheme is not defined.</exception>
    [Pure]
    public CarvedField Cells(CellScheme scheme, params Pattern[] motifs)
    {
        Pattern[] all =
        [
            .. Guard.NotNull(motifs).Select(motif => Guard.NotNull(motif, nameof(motifs))),
        ];
        RefuseTooMany(scheme, all.Length, nameof(motifs));
        if (Array.TrueForAll(all, motif => motif.ChipCount == 0))
            throw new ArgumentException("The motifs in the cells have no chips.", nameof(motifs));
        return With(design => design with { Motifs = new(scheme, all) });
    }

    /// <summary>Returns the field with what is in its cells turned, by turns.</summary>
    /// <param name="scheme">How cells are told apart.</param>
    /// <param name="degrees">
    /// For each number of the scheme, from the start again if they are fewer, the angle, counter-clockwise:
    /// <c>Turning(CellScheme.Checkerboard, 0, 90)</c>. Motifs turn by any angle; the chips of a divided cell by one that takes the
    /// cell into itself.
    /// </param>
    /// <exception cref="ArgumentException">There is no angle, or there are more than the scheme tells apart.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The scheme is not defined, or an angle is not finite.</exception>
    [Pure]
    public CarvedField Turning(CellScheme scheme, params double[] degrees)
    {
        Angle[] turns = [.. Guard.NotNull(degrees).Select(Angle.FromDegrees)];
        RefuseTooMany(scheme, turns.Length, nameof(degrees));
        return With(design => design with { Turns = new(scheme, turns) });
    }

    /// <summary>Returns the field with what is in some cells mirrored left to right, before it is turned.</summary>
    /// <param name="scheme">How cells are told apart.</param>
    /// <param name="numbers">The numbers of the cells that are mirrored; at least one.</param>
    /// <exception cref="ArgumentException">There are none.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The scheme is not defined, or has no such number.</exception>
    [Pure]
    public CarvedField Mirroring(CellScheme scheme, params int[] numbers)
    {
        var choice = Choice(scheme, numbers);
        return With(design => design with { Mirrored = choice });
    }

    private static CellChoice Choice(CellScheme scheme, int[] numbers)
    {
        Guard.Defined(scheme);
        var most = CellLattice.NumbersOf(scheme) - 1;
        int[] all =
        [
            .. Guard
                .NotNull(numbers)
                .Select(number => Guard.Within(number, 0, most, nameof(numbers))),
        ];
        return all.Length > 0
            ? new(scheme, all)
            : throw new ArgumentException(
                $"No cell is chosen; the scheme numbers them from 0 to {most}.",
                nameof(numbers)
            );
    }

    private static void RefuseTooMany(CellScheme scheme, int count, string name)
    {
        var most = CellLattice.NumbersOf(Guard.Defined(scheme));
        if (count == 0 || count > most)
            throw new ArgumentException(
                $"{scheme} tells {most} kinds of cells apart, so 1 to {most} values work, but there are {count}.",
                name
            );
    }
}
