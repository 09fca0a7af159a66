using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds the stretches of a section that run through chips and grooves.</summary>
internal sealed class SectionSurvey(SectionLine line, Cutter cutter, Stock stock) : SelectiveSink
{
    private readonly List<SectionStretch> _stretches = [];

    /// <summary>In the order in which they begin.</summary>
    internal IReadOnlyList<SectionStretch> Stretches =>
        [.. _stretches.OrderBy(stretch => stretch.Start)];

    /// <summary>Direction of the grain at the first chip, counted as the pattern has it; null if there is none.</summary>
    internal Vector? Grain { get; private set; }

    /// <summary>Where the chip nearest to the line is deepest, for those whose line meets none.</summary>
    internal Point? Nearest { get; private set; }

    public override void Chip(in PlacedChip chip)
    {
        var outline = chip.ToOutline();
        Grain ??= chip.Grain.On(stock);
        if (!outline.Extents.Grown(line.Near).Touches(line.Extents))
        {
            if (_stretches.Count == 0)
                Remember(chip);
            return;
        }
        var solid = ChipSolids.Of(chip, cutter);
        var places = new List<double>();
        line.AddCrossings(places, outline);
        foreach (var hole in chip.ToHoles())
            line.AddCrossings(places, hole);
        var breaks = new List<double>();
        if (solid is WalledChip walled)
            RoofCrossings.Add(breaks, line, walled);
        // In the counting of those outside, rows and places begin at 1.
        var id = new ChipId(chip.Id.Row + 1, chip.Id.Index + 1);
        var before = _stretches.Count;
        Add(
            id,
            places,
            breaks,
            solid.DepthAt,
            solid is StabCutChip stab ? stab.FloorDepthAt : null
        );
        if (_stretches.Count == before)
            Remember(chip);
    }

    public override void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile)
    {
        var groove = Grooves.Of(path, width, profile, cutter);
        var edge = new Contour(GrooveFacets.Below(groove, 0)!);
        if (!edge.Extents.Touches(line.Extents))
            return;
        var places = new List<double>();
        line.AddCrossings(places, edge);
        line.AddCrossings(places, groove.Path);
        Add(null, places, [], groove.DepthAt, null);
    }

    /// <summary>Adds the stretches between places at which something is cut.</summary>
    /// <param name="chip">What is cut there.</param>
    /// <param name="places">Where the line crosses its outline.</param>
    /// <param name="breaks">Where the depth bends in between.</param>
    /// <param name="depthAt">Depth at a point, 0 outside.</param>
    /// <param name="within">The same for points that are inside or on the outline, if the walls are upright.</param>
    private void Add(
        ChipId? chip,
        List<double> places,
        List<double> breaks,
        Func<Point, double> depthAt,
        Func<Point, double>? within
    )
    {
        var ends = line.Sorted(places.Append(0).Append(line.Length));
        var sorted = line.Sorted(breaks.Concat(ends));
        List<double>? open = null;
        for (var i = 0; i + 1 < sorted.Count; i++)
        {
            var isCut = depthAt(line.At(0.5 * (sorted[i] + sorted[i + 1]))) > 0;
            if (isCut)
                (open ??= [sorted[i]]).Add(sorted[i + 1]);
            if (open is not null && (!isCut || i + 2 == sorted.Count))
            {
                _stretches.Add(new(chip, open, within ?? depthAt));
                open = null;
            }
        }
    }

    private void Remember(in PlacedChip chip)
    {
        var deepest = chip.Placement.Apply(chip.Shape.Roof.Deepest);
        if (Nearest is not { } known || Distance(deepest) < Distance(known))
            Nearest = deepest;
    }

    private double Distance(Point point)
    {
        var along = Math.Clamp(line.Along(point), 0, line.Length);
        return line.At(along).DistanceTo(point);
    }
}
