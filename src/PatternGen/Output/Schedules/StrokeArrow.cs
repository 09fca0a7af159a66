using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The arrow that shows a cut: inside the chip, beside the side, with its head where the cut goes; of a stab along a valley, in the valley.</summary>
internal static class StrokeArrow
{
    /// <summary>How far inside the side it runs, as a share of the radius of the largest circle in the chip.</summary>
    private const double Inside = 0.2;

    /// <summary>What it leaves free at both ends of the side, as a share of its length: at least, and where the walls come together.</summary>
    private const double Free = 0.15;
    private const double FreeInTips = 0.4;
    private const double Step = 0.05;

    /// <summary>Room for its head, in which no other side is nearer: as a share of how far inside it runs.</summary>
    private const double Room = 1.8;

    /// <summary>Radius round the middle of the chip that stabs leave free for the number, as a share of the largest circle's.</summary>
    private const double NumberRoom = 0.62;

    /// <summary>Length of the barbs, as a share of the radius, and how far they are turned from the way.</summary>
    private const double Barb = 0.22;
    private const double Spread = 150;

    /// <summary>Returns the shaft and the head.</summary>
    internal static (Chain Shaft, Chain Head) Of(CarvingStroke cut)
    {
        var shaft = cut.IsAlongValley ? InValley(cut) : BesideSide(cut);
        var end = shaft.End;
        var barb = shaft.TangentAt(shaft.Length) * (Barb * cut.Chip.Width / 2);
        return (
            shaft,
            new(
                new Vertex(end + Transform.Rotate(Spread).Apply(barb)),
                new Vertex(end),
                new Vertex(end + Transform.Rotate(-Spread).Apply(barb))
            )
        );
    }

    private static Chain InValley(CarvingStroke cut)
    {
        var path = cut.Path;
        var room = NumberRoom * cut.Chip.Width / 2 - path.Start.DistanceTo(cut.Chip.Middle);
        var from = Math.Clamp(room, Free * path.Length, path.Length / 2);
        return path.Part(from, (1 - Free) * path.Length);
    }

    private static Chain BesideSide(CarvingStroke cut)
    {
        var path = cut.Path;
        var left = (cut.HasChipOnLeft ? 1 : -1) * Inside * cut.Chip.Width / 2;
        var from = FreeAt(cut, path, left, share => share);
        var to = 1 - FreeAt(cut, path, left, share => 1 - share);
        return Moved(path.Part(from * path.Length, to * path.Length), left);
    }

    /// <summary>As much as the other walls need, so that heads and shafts keep clear of each other in the tips.</summary>
    private static double FreeAt(
        CarvingStroke cut,
        Chain path,
        double left,
        Func<double, double> along
    )
    {
        var back = cut.Chip.Chip.Placement.Inverse();
        var needed = Room * Math.Abs(left) / cut.Chip.Chip.Placement.Scale;
        for (var free = Free; free < FreeInTips; free += Step)
        {
            var at = along(free) * path.Length;
            var point = path.PointAt(at) + path.NormalAt(at) * (Room * left);
            // A little less, since rounding decides where no other side is near.
            if (cut.Chip.Chip.Roof.ClearanceAt(back.Apply(point)) > 0.99 * needed)
                return free;
        }
        return FreeInTips;
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
