using PatternGen.Geometry;

namespace PatternGen;

/// <summary>All that was asked of a field.</summary>
internal sealed record FieldDesign(Region Outline, LatticeSizes Sizes)
{
    internal FieldRim Rim { get; init; }

    /// <summary>Clipped chips narrower than this, in mm, are dropped; null for the usual width.</summary>
    internal double? Narrowest { get; init; }

    /// <summary>Cells that would be drawn smaller than this share of their size are left out.</summary>
    internal double Smallest { get; init; }

    /// <summary>Uncarved width along the outline, in mm.</summary>
    internal double BorderGap { get; init; }

    /// <summary>Width of the ridges between cells, in mm.</summary>
    internal double RidgeGap { get; init; }

    internal FieldAlignment Alignment { get; init; } =
        new FieldAlignment.OnMiddle(FieldMiddle.Extents, null);

    /// <summary>How much the lattice is turned from where its alignment lays it.</summary>
    internal Angle LatticeTurn { get; init; }

    internal CellDivision Division { get; init; }

    /// <summary>Which cells are carved.</summary>
    internal CellChoice Carved { get; init; } = CellChoice.All;

    /// <summary>What stands in the cells, by turns; nothing where they are carved as they are.</summary>
    internal CellTurns<Pattern> Motifs { get; init; } = new(CellScheme.Alike, []);

    /// <summary>How what is in the cells is turned, by turns.</summary>
    internal CellTurns<Angle> Turns { get; init; } = new(CellScheme.Alike, []);

    /// <summary>In which cells it is mirrored left to right.</summary>
    internal CellChoice Mirrored { get; init; } = CellChoice.None;
}
