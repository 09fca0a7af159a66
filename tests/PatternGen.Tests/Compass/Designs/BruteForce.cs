using System.Numerics;

namespace PatternGen.Tests.Compass.Designs;

/// <summary>All designs of a figure of n-fold symmetry with a level mirror, by trying every choice.</summary>
internal sealed class BruteForce
{
    private readonly int _choices;
    private readonly List<int[]> _moves = [];

    private BruteForce(int choices) => _choices = choices;

    internal static BruteForce Of(
        CompassDrawing drawing,
        int n,
        IReadOnlyList<IReadOnlyList<DrawingPart>> orbits
    )
    {
        var all = new BruteForce(orbits.Count);
        foreach (var mirrored in (bool[])[false, true])
            for (var i = 0; i < n; i++)
            {
                var turn = Transform.Rotate(Angle.OfTurn((double)i / n));
                var move = mirrored ? Transform.MirrorTopBottom().Then(turn) : turn;
                all._moves.Add([
                    .. orbits.Select(orbit =>
                    {
                        var at = drawing.PartAt(move.Apply(orbit[0].InsidePoint))!;
                        return Enumerable
                            .Range(0, orbits.Count)
                            .Single(other => orbits[other].Contains(at));
                    }),
                ]);
            }
        return all;
    }

    internal static uint MaskOf(IEnumerable<int> orbits) =>
        orbits.Aggregate(0u, (mask, orbit) => mask | (1u << (orbit - 1)));

    /// <summary>The first of each class in the order of designs: by number of orbits, then by the orbits.</summary>
    internal IEnumerable<uint> Firsts() =>
        InOrder().Where(mask => Images(mask).All(image => !ComesBefore(image, mask)));

    /// <summary>Of the firsts within limits, those whose reverse is nothing, beyond the limits, or not earlier.</summary>
    internal IEnumerable<uint> FirstsUpToReversal(Func<uint, bool> isWithin)
    {
        var everything = (1u << _choices) - 1;
        return Firsts().Where(isWithin).Where(mask => !IsLeftOut(mask, everything & ~mask));

        bool IsLeftOut(uint mask, uint reverse) =>
            reverse != 0
            && isWithin(reverse)
            && Images(reverse).Any(image => ComesBefore(image, mask));
    }

    private IEnumerable<uint> InOrder() =>
        Enumerable
            .Range(1, (1 << _choices) - 1)
            .Select(mask => (uint)mask)
            .Order(Comparer<uint>.Create(Compare));

    private IEnumerable<uint> Images(uint mask) =>
        _moves.Select(move =>
            Enumerable
                .Range(0, _choices)
                .Where(i => (mask >> i & 1) != 0)
                .Aggregate(0u, (image, i) => image | (1u << move[i]))
        );

    private static bool ComesBefore(uint one, uint other) => Compare(one, other) < 0;

    private static int Compare(uint one, uint other)
    {
        if (one == other)
            return 0;
        var sizes = BitOperations.PopCount(one).CompareTo(BitOperations.PopCount(other));
        if (sizes != 0)
            return sizes;
        // The one with the lowest orbit that the other lacks.
        return (one & (one ^ other) & (uint)-(int)(one ^ other)) != 0 ? -1 : 1;
    }
}
