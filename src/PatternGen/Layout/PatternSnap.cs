using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Snaps all that is drawn of a pattern together.</summary>
/// <param name="Root">The snapped pattern.</param>
/// <param name="LargestMove">How far the corner that moved most was moved, in mm.</param>
/// <param name="LeftAlone">What was left as it was.</param>
/// <param name="PieceCount">Number of chips and lines in all.</param>
internal sealed record PatternSnap(
    PatternNode Root,
    double LargestMove,
    IReadOnlyList<UnsnappedPiece> LeftAlone,
    int PieceCount
)
{
    internal static PatternSnap Of(Pattern pattern, ISnapGrid grid)
    {
        Chip[] chips = [.. pattern.Chips];
        var content = PatternReader.Read(pattern.Root);
        var runs = new List<SegmentRun>();
        var groups = new List<int>();
        var names = new List<(ChipId? Chip, Layer Layer)>();
        foreach (var chip in chips)
            AddGroup(chip.Holes.Prepend(chip.Outline), chip.Id, Layer.Chips);
        foreach (var cut in content.LineCuts)
            AddGroup([cut.Path], null, Layer.LineCuts);
        foreach (var line in content.LayoutLines)
            AddGroup([line], null, Layer.LayoutLines);

        var snapper = new GridSnapper(grid, [.. runs], [.. groups]);
        var snapped = new Queue<SegmentRun>(snapper.Run());
        PatternNode root = GroupNode.Of(
            SnappedChips(chips, snapped),
            new MotifNode
            {
                LineCuts =
                [
                    .. content.LineCuts.Select(cut =>
                        LineCut.Placed((Chain)snapped.Dequeue(), cut.Width, cut.Profile)
                    ),
                ],
                LayoutLines = [.. content.LayoutLines.Select(_ => (Chain)snapped.Dequeue())],
                Stock = [.. content.Stock],
                Labels = [.. content.Labels],
                GridLines = [.. content.GridLines],
            }
        );
        return new(root, snapper.LargestMove(), LeftAlone(), names.Count);

        void AddGroup(IEnumerable<SegmentRun> group, ChipId? chip, Layer layer)
        {
            foreach (var run in group)
            {
                runs.Add(run);
                groups.Add(names.Count);
            }
            names.Add((chip, layer));
        }

        IReadOnlyList<UnsnappedPiece> LeftAlone() =>
            [
                .. snapper
                    .Refusals.Select((refusal, run) => (Refusal: refusal, Group: groups[run]))
                    .Where(run => run.Refusal is not null)
                    .DistinctBy(run => run.Group)
                    .Select(run => new UnsnappedPiece(
                        names[run.Group].Chip,
                        names[run.Group].Layer,
                        run.Refusal!.Place,
                        run.Refusal.Reason
                    )),
            ];
    }

    /// <summary>The chips in their rows; neighbours that lie on the same member stay on it together.</summary>
    private static PatternNode SnappedChips(Chip[] chips, Queue<SegmentRun> snapped)
    {
        // In the order of ids, which is that of a row's places.
        var shapes = chips.Select(chip => (chip.Id, chip.Grain, Shape: ShapeOf(chip, snapped)));
        return GroupNode.InSameRows(
            shapes
                .ToArray()
                .GroupBy(chip => chip.Id.Row)
                .OrderBy(row => row.Key)
                .SelectMany(row => Members(row.Key, row.OrderBy(chip => chip.Id.Index)))
        );
    }

    private static IEnumerable<PatternNode> Members(
        int row,
        IEnumerable<(ChipId Id, MemberGrain Grain, ChipShape Shape)> chips
    )
    {
        var together = new List<ChipShape>();
        MemberGrain? grain = null;
        foreach (var chip in chips)
        {
            if (grain is { } before && !before.Equals(chip.Grain))
            {
                yield return Member(row, together, before);
                together = [];
            }
            together.Add(chip.Shape);
            grain = chip.Grain;
        }
        yield return Member(row, together, grain ?? default);
    }

    private static MemberNode Member(int row, List<ChipShape> chips, MemberGrain grain)
    {
        var rows = new ChipShape[row][];
        Array.Fill(rows, []);
        rows[^1] = [.. chips];
        return new(new MotifNode { ChipRows = rows }, grain);
    }

    private static ChipShape ShapeOf(Chip chip, Queue<SegmentRun> snapped)
    {
        var outline = (Contour)snapped.Dequeue();
        Contour[] holes = [.. chip.Holes.Select(_ => (Contour)snapped.Dequeue())];
        return new ChipShape(outline, holes).WithCut(chip.Cut);
    }
}
