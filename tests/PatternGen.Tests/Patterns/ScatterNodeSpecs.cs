namespace PatternGen.Tests.Patterns;

public class ScatterNodeSpecs
{
    private static readonly Pattern Two = Pattern.Combine(
        Pattern.OfChips(Contour.Polygon(new(0, 0), new(4, 0), new(1, 3))),
        Pattern.OfChips(Contour.Polygon(new(0, 5), new(4, 5), new(1, 8)))
    );

    private static readonly Pattern One = Pattern
        .OfChips(
            Contour.Polygon(new(0, 0), new(2, 0), new(2, 2)),
            Contour.Rectangle(new(5, 0), new(6, 1))
        )
        .With(Pattern.OfLayoutLines(Chain.Line(new(0, 0), new(9, 9))));

    private static readonly Transform[] Places =
    [
        Transform.Move(10, 0),
        Transform.Rotate(70).Then(Transform.Move(0, 30)),
        Transform.MirrorLeftRight().Then(Transform.Resize(1.5)),
        Transform.Move(-20, 0),
    ];

    [Fact]
    public void Chips_lie_where_each_place_puts_them_and_count_along_the_places()
    {
        var node = new ScatterNode(
            [Two.Root, One.Root],
            [new(Places[0], 0), new(Places[1], 1), new(Places[2], 0), new(Places[3], 1)]
        );
        var chips = PatternReader.Chips(node).ToArray();

        // Two has a chip in each of two rows, one has two chips in the first.
        chips
            .Select(chip => chip.Id.ToString())
            .ShouldBe(["1.1", "2.1", "1.2", "1.3", "1.4", "2.2", "1.5", "1.6"]);
        node.RowSizes.ShouldBe([6, 2]);
        node.PieceCount.ShouldBe(10);
        Outlines(chips)
            .ShouldBe(
                Outlines(
                    Two.Transformed(Places[0])
                        .Chips.Concat(One.Transformed(Places[1]).Chips)
                        .Concat(Two.Transformed(Places[2]).Chips)
                        .Concat(One.Transformed(Places[3]).Chips)
                )
            );
    }

    [Fact]
    public void Chips_are_counted_alike_whichever_layers_are_drawn_and_how_often()
    {
        var node = new ScatterNode(
            [One.Root, Pattern.OfLayoutLines(Chain.Line(new(0, 0), new(1, 0))).Root],
            [new(Places[0], 0), new(Places[1], 1), new(Places[2], 0)]
        );
        var ids = new Ids();

        var draw = node.Bind(ids, LayerSet.Chips);
        draw();
        draw();

        ids.Seen.ShouldBe(["0.0", "0.1", "0.2", "0.3", "0.0", "0.1", "0.2", "0.3"]);
    }

    [Fact]
    public void The_bounds_are_those_of_all_the_places()
    {
        var node = new ScatterNode(One.Root, Places);
        var outer = Transform.Rotate(20);
        foreach (var layers in (LayerSet[])[LayerSet.Chips, LayerSet.LayoutLines, LayerSet.Drawn])
        {
            var expected = Places
                .Select(place => One.Root.Bounds(place.Then(outer), layers))
                .Aggregate(PatternNode.Union);
            node.Bounds(outer, layers).ShouldBe(expected);
        }
        node.Bounds(outer, LayerSet.Stock).ShouldBeNull();
    }

    [Fact]
    public void A_changed_copy_shares_what_was_shared()
    {
        var motif = One.Root;
        var pair = GroupNode.Of(new ScatterNode(motif, Places), new ScatterNode(motif, Places));

        var changed = new LeafChange(leaf =>
            leaf.WithChips(shape => shape.WithCut(ChipCut.WallsAt(50)))
        ).Of(pair);

        var chips = PatternReader.Chips(changed).ToArray();
        chips.Length.ShouldBe(16);
        chips
            .Select(chip => chip.Shape)
            .Distinct(ReferenceEqualityComparer.Instance)
            .Count()
            .ShouldBe(2);
        chips.ShouldAllBe(chip => chip.Cut == ChipCut.WallsAt(50));
    }

    [Fact]
    public void Drawing_ten_times_the_places_allocates_no_more()
    {
        Allocated(10_000).ShouldBe(Allocated(1000));

        static long Allocated(int places)
        {
            var node = new ScatterNode(
                One.Root,
                Enumerable.Range(0, places).Select(i => Transform.Rotate(i))
            );
            node.Draw(new Count());
            var before = GC.GetAllocatedBytesForCurrentThread();
            node.Draw(new Count());
            return GC.GetAllocatedBytesForCurrentThread() - before;
        }
    }

    [Fact]
    public void More_than_can_be_carved_is_refused()
    {
        var many = Pattern
            .OfChips(Contour.Rectangle(new(0, 0), new(1, 1)))
            .Repeated(50_000_000, 0.01)
            .Root;

        Should
            .Throw<PatternException>(() => new ScatterNode(many, Places))
            .Message.ShouldContain("200000000 pieces");
    }

    private static string[] Outlines(IEnumerable<Chip> chips) =>
        [.. chips.Select(chip => string.Join(' ', chip.Outline.Vertices))];

    private sealed class Ids : SelectiveSink
    {
        internal List<string> Seen { get; } = [];

        public override void Chip(in PlacedChip chip) => Seen.Add($"{chip.Id.Row}.{chip.Id.Index}");
    }

    private sealed class Count : SelectiveSink
    {
        private int _chips;

        public override void Chip(in PlacedChip chip) => _chips++;
    }
}
