using static PatternGen.Tests.Geometry.Arrangements;

namespace PatternGen.Tests.Geometry;

/// <summary>The check of arrangements, tried on faults put into sound ones.</summary>
public class ArrangementFaultSpecs
{
    private static Arrangement Figure => Arrangement.Of([.. RosetteAndRim(4), Line(0, 0, 90, 90)]);

    [Fact]
    public void Half_edges_out_of_order_are_found()
    {
        var sound = Arrangement.Of(Circle(0, 0, 1), Circle(1, 0, 1));
        var order = LeavingOrder.Of(sound.EdgePieces, sound.Nodes.Count);
        var start = order.Starts[0];
        (order.Leaving[start], order.Leaving[start + 1]) = (
            order.Leaving[start + 1],
            order.Leaving[start]
        );

        var wrong = new Arrangement(
            [.. sound.Curves],
            sound.Tolerance,
            [.. sound.Nodes.Select(node => node.Point)],
            sound.EdgePieces,
            order
        );

        wrong
            .Validate()
            .ShouldContain(flaw =>
                flaw.Contains("nodes − edges + faces", StringComparison.OrdinalIgnoreCase)
            );
        wrong.FirstContradiction.ShouldNotBeNull();
        sound.FirstContradiction.ShouldBeNull();
    }

    [Fact]
    public void An_edge_that_leads_elsewhere_is_found() =>
        Faulty(piece => new(piece.From, (piece.To + 1) % 5, piece.Curve, piece.Sources))
            .ShouldContain(flaw => flaw.Contains("does not run from node to node"));

    [Fact]
    public void An_edge_that_crosses_another_is_found() =>
        Faulty(piece =>
                new(
                    piece.From,
                    piece.To,
                    new(piece.Curve.Start, piece.Curve.End, -0.9),
                    piece.Sources
                )
            )
            .ShouldContain(flaw => flaw.Contains("where no node is"));

    [Fact]
    public void An_edge_that_runs_along_another_is_found()
    {
        var lens = Arrangement.Of(Circle(0, 0, 1), Circle(1, 0, 1));
        var sides = lens.EdgePieces.Index().Where(side => !side.Item.HasRest).ToArray();
        var ((_, one), (place, other)) = (sides[0], sides[1]);
        lens.EdgePieces[place] = new(other.From, other.To, one.Curve.Reversed(), other.Sources);

        lens.Validate().ShouldContain(flaw => flaw.Contains("along each other"));
    }

    [Fact]
    public void An_edge_without_a_curve_is_found() =>
        Faulty(piece => piece.With([])).ShouldContain(flaw => flaw.Contains("remembers no curve"));

    private static IReadOnlyList<string> Faulty(Func<EdgePiece, EdgePiece> fault)
    {
        var sound = Figure;
        sound.Validate().ShouldBeEmpty();
        sound.EdgePieces[0] = fault(sound.EdgePieces[0]);
        return sound.Validate();
    }
}
