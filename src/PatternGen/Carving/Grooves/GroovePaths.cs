using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The paths of a V bit along the valleys of all chips and along the line cuts of a pattern.</summary>
/// <remarks>
/// <para>
/// A cone that runs along the valleys leaves just the walls of the chips. Its angle sets the walls, so depths differ from the knife's:
/// 60 degrees included make walls of 60 degrees, and a chip 3 mm across its deepest point 2.598 mm deep, which is 3.217 mm deep at the
/// knife's 65. Line cuts come first, each as often as it is drawn, then the chips in their order, each with the least number of paths that pass no
/// valley twice.
/// </para>
/// <para>
/// This is geometry, not a program for a machine: it holds no feeds, speeds or safe heights, and no passes for deep grooves. Guards and
/// hold-downs in place, eyes and ears protected; the machine's manual, local codes and licensed practice come first;
/// test on scrap. Immutable and safe to share between threads; paths are made as they are asked for, one at a time.
/// </para>
/// </remarks>
public sealed class GroovePaths
{
    private readonly GrooveSet _set;
    private readonly IReadOnlyList<LineCut> _lineCuts;
    private readonly GrooveTally _tally = new();

    internal GroovePaths(Pattern pattern, VBit bit, double accuracy)
    {
        (Pattern, Bit, Accuracy) = (pattern, bit, accuracy);
        _lineCuts = pattern.LineCuts;
        _set = new(bit, accuracy);
        foreach (var cut in _lineCuts)
            _tally.Add(_set.RunOf(cut) is { } run ? [run] : [], 1, cut.Width / 2);
        foreach (var chip in PlacedShape.Of(pattern))
        {
            var scale = chip.Placement.Scale;
            _tally.Add(_set.RunsOf(chip), scale, chip.Shape.Roof.Clearance * scale);
        }
    }

    /// <summary>The pattern.</summary>
    public Pattern Pattern { get; }

    /// <summary>The bit.</summary>
    public VBit Bit { get; }

    /// <summary>Height in mm of what stays standing of the ideal chips at most; they are never cut deeper. Default 0.005.</summary>
    public double Accuracy { get; }

    /// <summary>Number of paths.</summary>
    public long PathCount => _tally.Paths;

    /// <summary>Number of places in all paths together.</summary>
    public long PlaceCount => _tally.Places;

    /// <summary>How many paths enter down a wall, since no tip was left to enter by.</summary>
    public long WallEntryCount => _tally.WallEntries;

    /// <summary>How many paths start at their full depth: line cuts that are as wide all along.</summary>
    public long PlungeCount => _tally.Plunges;

    /// <summary>Number of chips and line cuts that are left out.</summary>
    public long LeftOutCount => _tally.LeftOut;

    /// <summary>
    /// The greatest depth in mm that the paths reach: half the width across the deepest point × tan(wall angle of the bit), to within the
    /// accuracy. 0 if there is no path.
    /// </summary>
    public double Deepest => _tally.Reached * _set.Slope;

    /// <summary>The paths in order.</summary>
    public IEnumerable<GroovePath> Paths
    {
        get
        {
            for (var i = 0; i < _lineCuts.Count; i++)
                if (_set.RunOf(_lineCuts[i]) is { } run)
                    yield return new(null, i + 1, run.Entry, run.Placed(default, _set.Slope));
            foreach (var chip in PlacedShape.Of(Pattern))
            foreach (var run in _set.RunsOf(chip) ?? [])
                yield return new(chip.Id, null, run.Entry, run.Placed(chip.Placement, _set.Slope));
        }
    }

    /// <summary>What the bit can't cut, in the order of the paths; empty unless <see cref="Uncuttable.LeaveOut"/> was asked for.</summary>
    public IEnumerable<LeftOutGroove> LeftOut
    {
        get
        {
            if (LeftOutCount == 0)
                yield break;
            for (var i = 0; i < _lineCuts.Count; i++)
                if (BitTrouble.Of(_lineCuts[i], Bit) is { } trouble)
                    yield return new(null, i + 1, _lineCuts[i].Path.Start, trouble);
            foreach (var chip in PlacedShape.Of(Pattern))
                if (BitTrouble.Of(chip.Shape, chip.Placement.Scale, Bit) is { } trouble)
                    yield return new(chip.Id, null, chip.Deepest, trouble);
        }
    }

    /// <summary>Returns how deep another cutter makes the same chips at their deepest, in mm.</summary>
    /// <param name="cutter">A knife, for example. Where the bit of 60 degrees goes 2.598 mm deep, a knife at 65 goes 3.217.</param>
    public double DeepestWith(Cutter cutter) => Guard.NotNull(cutter).DepthFor(_tally.Clearance);

    /// <summary>Returns what whoever runs the paths should know, a line each: bit, walls, depths, accuracy, entries, and the cautions.</summary>
    /// <param name="wording">The language; English by default.</param>
    public IReadOnlyList<string> Notes(Wording? wording = null)
    {
        var words = wording ?? Wording.English;
        var knife = Knife.Held();
        List<string> notes =
        [
            words.GrooveBit(Bit.IncludedAngle.Degrees, Bit.Diameter, Bit.WallAngle.Degrees),
            words.GrooveDepth(Deepest, knife.HeldAt.Degrees, DeepestWith(knife)),
            words.GrooveAccuracy(Accuracy, PathCount),
            words.GrooveEntries(WallEntryCount, PlungeCount),
        ];
        if (LeftOutCount > 0)
            notes.Add(words.GroovesLeftOut(LeftOutCount));
        notes.Add(words.GroovesAreNoProgram);
        notes.Add(words.RouterCautions);
        return notes;
    }

    /// <summary>Returns number and depth, for messages.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{PathCount} groove paths, {Deepest:0.###} mm deep, {Bit}");
}
