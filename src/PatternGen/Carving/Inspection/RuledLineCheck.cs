using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Checks that the chips of a ruled band reach the lines that they lie between, and do not cross them.</summary>
/// <remarks>
/// Parallel straight layout lines rule a band. A chip belongs to the space between two neighbouring ones if its middle
/// lies there, the lines go past all of it, and its corners span about as much as the space is wide: within
/// <see cref="Reach"/> on either side. What is lower or higher than that is meant to be, and so is what lies between lines that
/// end before it.
/// </remarks>
internal sealed class RuledLineCheck(InspectionJob job)
{
    /// <summary>How much a chip may differ from its space, in mm on either side, and still be meant to fill it: a ridge of the least width beside it is meant.</summary>
    private const double Reach = 0.8;

    /// <summary>Lines whose directions differ by less than this, in radians, are parallel.</summary>
    private const double Parallel = 1e-6;

    internal void Run()
    {
        var rulings = Rulings();
        if (rulings.Count == 0)
            return;
        for (var i = 0; i < job.Layout.Chips.Count; i++)
            foreach (var ruling in rulings)
                Look(i, ruling);
    }

    /// <summary>The lines of each direction that has more than one, in order across them.</summary>
    private List<Ruling> Rulings()
    {
        var rulings = new List<Ruling>();
        foreach (var line in job.Layout.Lines)
        {
            var along = line.Chord.Unit();
            // There and back is one direction.
            if (along.X < -Parallel || (along.X < Parallel && along.Y < 0))
                along = -along;
            var ruling = rulings.Find(known => Math.Abs(known.Along.Cross(along)) < Parallel);
            if (ruling is null)
                rulings.Add(ruling = new(along));
            ruling.Add(line);
        }
        foreach (var ruling in rulings)
            ruling.Sort();
        return rulings.FindAll(ruling => ruling.Count > 1);
    }

    private void Look(int number, Ruling ruling)
    {
        var chip = job.Layout.Chips[number];
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        var (first, last) = (low, high);
        var (lowest, highest) = (Point.Origin, Point.Origin);
        foreach (var corner in job.Layout.ShapeOf(chip).Corners)
        {
            var place = chip.Placement.Apply(corner.Point);
            var (along, across) = ruling.Measure(place);
            (first, last) = (Math.Min(first, along), Math.Max(last, along));
            if (across < low)
                (low, lowest) = (across, place);
            if (across > high)
                (high, highest) = (across, place);
        }
        if (ruling.Between((low + high) / 2, first, last) is not { } space)
            return;
        if (Math.Abs(high - low - (space.High - space.Low)) > 2 * Reach)
            return;
        // How far it crosses the lines; negative where it falls short.
        var (below, above) = (space.Low - low, high - space.High);
        var isBelow = Math.Abs(below) >= Math.Abs(above);
        var (crosses, away) = isBelow ? (below, above) : (above, below);
        var limit = job.Limits.RuledLine;
        if (Math.Abs(crosses) <= limit + InspectionJob.Slack || Math.Abs(crosses) > Reach + limit)
            return;
        // Moving helps where it crosses the one line by what it falls short of the other.
        var fits = Math.Abs(crosses + away) / 2 <= limit;
        var up = isBelow == (crosses > 0) ? ruling.Along.Left : -ruling.Along.Left;
        job.Found.Add(
            new(
                FindingKind.OffRuledLine,
                number,
                -1,
                isBelow ? lowest : highest,
                crosses,
                limit,
                fits ? Math.Abs(crosses - away) / 2 : (space.High - space.Low) / (high - low),
                fits ? up : Vector.Zero
            )
        );
    }
}
