using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The arrow that shows a cut: inside the chip, beside the side, with its head where the cut goes.</summary>
internal static class StrokeArrow
{
    /// <summary>How far inside the side it runs, as a share of the radius of the largest circle in the chip.</summary>
    private const double Inside = 0.2;

    /// <summary>What it leaves free at both ends of the side, as a share of its length: there the walls come together.</summary>
    private const double Free = 0.2;

    /// <summary>A stab starts in the deepest place and so needs no more than this free there.</summary>
    private const double FreeAtStab = 0.08;

    /// <summary>Length of the barbs, as a share of the radius, and how far apart they are.</summary>
    private const double Barb = 0.22;
    private const double Spread = 150;

    /// <summary>Returns the shaft and the head.</summary>
    internal static (Chain Shaft, Chain Head) Of(CarvingStroke cut)
    {
        var radius = cut.Chip.Width / 2;
        var from = cut.Kind == CutKind.Stab ? FreeAtStab : Free;
        var path = cut.Path;
        var part = path.Part(from * path.Length, (1 - Free) * path.Length);
        var shaft = cut.IsAlongValley
            ? part
            : Moved(part, (cut.HasChipOnLeft ? 1 : -1) * Inside * radius);
        var end = shaft.End;
        var back = shaft.TangentAt(shaft.Length);
        var barb = back * (Barb * radius);
        return (
            shaft,
            new(
                new Vertex(end + Transform.Rotate(Spread).Apply(barb)),
                new Vertex(end),
                new Vertex(end + Transform.Rotate(-Spread).Apply(barb))
            )
        );
    }

    /// <summary>The run beside a run, to its left: lines parallel, arcs about the same centres.</summary>
    private static Chain Moved(Chain run, double left)
    {
        var corners = new Vertex[run.Vertices.Count];
        for (var i = 0; i < corners.Length; i++)
        {
            var segment = run.At(Math.Min(i, run.Count - 1));
            var normal = segment.NormalAt(i < run.Count ? 0 : segment.Length);
            corners[i] = new(run.Vertices[i].Point + normal * left, run.Vertices[i].Bulge);
        }
        return new(corners);
    }
}
