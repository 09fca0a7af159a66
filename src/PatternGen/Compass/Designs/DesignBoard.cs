namespace PatternGen;

/// <summary>What designs of a figure are chosen from: the orbits under the symmetry kept, and where the full symmetry takes them.</summary>
/// <remarks>
/// Nouns. A <em>kept orbit</em> is the parts that the kept symmetries take to each other. Those without a plain part are
/// <em>choices</em>, numbered from 0. A <em>mask</em> holds a bit for each choice, that of choice 0 the highest, so that of
/// two masks with as many bits the larger one comes first in the order of the choices.
/// The kept symmetries are a normal subgroup of all: turns in turns and mirrors always are. So every symmetry takes kept
/// orbits to kept orbits, and acts on masks.
/// </remarks>
internal sealed partial class DesignBoard
{
    /// <summary>Bits of a mask.</summary>
    internal const int MaxChoices = 128;

    private readonly Dictionary<int, int> _choiceOfOrbit = [];

    internal DesignBoard(DrawingFigure figure, Symmetry keep)
    {
        Figure = figure;
        Keep = keep;
        var kept = keep.TurnsIn(figure.Symmetry);
        Orbits = OrbitsUnder(figure, kept, keep.IsFull);
        OrbitParts =
        [
            .. Orbits.Select(
                DrawingPart[] (orbit) => [.. orbit.Select(part => figure.Parts[part])]
            ),
        ];
        for (var orbit = 0; orbit < Orbits.Length; orbit++)
            if (IsChoice(Orbits[orbit]))
                _choiceOfOrbit[orbit] = _choiceOfOrbit.Count;
        Choices = [.. _choiceOfOrbit.Keys];
        RefuseTooMany();
        ChipCounts = [.. Choices.Select(orbit => Orbits[orbit].Length)];
        Shares = [.. Choices.Select(ShareOf)];
        All = Choices.Length == MaxChoices ? UInt128.MaxValue : (UInt128.One << Choices.Length) - 1;
        Permutations = PermutationsOf();
    }

    internal DrawingFigure Figure { get; }

    internal Symmetry Keep { get; }

    /// <summary>The parts, counted from 0, of each kept orbit.</summary>
    internal int[][] Orbits { get; }

    internal DrawingPart[][] OrbitParts { get; }

    /// <summary>The kept orbit of each choice.</summary>
    internal int[] Choices { get; }

    internal int[] ChipCounts { get; }

    /// <summary>Share of the figure's area that each choice carves.</summary>
    internal double[] Shares { get; }

    /// <summary>The mask of every choice.</summary>
    internal UInt128 All { get; }

    /// <summary>Where each symmetry takes the choices, those that do the same once; the first leaves all where they are.</summary>
    internal int[][] Permutations { get; }

    internal UInt128 BitOf(int choice) => UInt128.One << (Choices.Length - 1 - choice);

    internal bool Has(UInt128 mask, int choice) => (mask & BitOf(choice)) != 0;

    /// <summary>The choices of a mask, in order.</summary>
    internal IEnumerable<int> ChoicesOf(UInt128 mask)
    {
        for (var choice = 0; choice < Choices.Length; choice++)
            if (Has(mask, choice))
                yield return choice;
    }

    /// <summary>The parts of a mask, counted from 0, in ascending order.</summary>
    internal IEnumerable<int> PartsOf(UInt128 mask) =>
        ChoicesOf(mask).SelectMany(choice => Orbits[Choices[choice]]).Order();

    /// <summary>Whether a mask comes later than another one in the order of designs.</summary>
    internal static bool IsLater(UInt128 mask, UInt128 other)
    {
        var (size, otherSize) = (UInt128.PopCount(mask), UInt128.PopCount(other));
        return size == otherSize ? mask < other : size > otherSize;
    }

    /// <summary>The mask of parts; null if they are not whole choices.</summary>
    internal UInt128? MaskOf(IReadOnlySet<int> parts)
    {
        UInt128 mask = 0;
        var found = 0;
        for (var choice = 0; choice < Choices.Length; choice++)
            if (parts.Contains(Orbits[Choices[choice]][0]))
            {
                mask |= BitOf(choice);
                found += ChipCounts[choice];
            }
        // As many parts as there are, if each is one of them.
        return found == parts.Count && PartsOf(mask).All(parts.Contains) ? mask : null;
    }

    /// <summary>The orbits under a number of turns, with the mirrors or without.</summary>
    internal static int[][] OrbitsUnder(DrawingFigure figure, int turns, bool withMirrors) =>
        PartOrbits.Of(
            figure.Parts.Count,
            [
                figure.Group.Turn(figure.Symmetry.Order / turns),
                withMirrors ? figure.Group.Mirror : null,
            ]
        );

    private bool IsChoice(int[] orbit) => !Array.Exists(orbit, part => Figure.Parts[part].IsPlain);

    private double ShareOf(int orbit) =>
        OrbitParts[orbit].Sum(part => part.Area) / Figure.TotalArea;

    private int[][] PermutationsOf()
    {
        var orbitOf = new int[Figure.Parts.Count];
        for (var orbit = 0; orbit < Orbits.Length; orbit++)
            foreach (var part in Orbits[orbit])
                orbitOf[part] = orbit;
        var found = new List<int[]>();
        foreach (var taken in Figure.Group.All())
        {
            // An orbit is plain or not together with those that the symmetry takes it to, unless a drawing marks but
            // some of them: such a symmetry takes designs to what may not be carved.
            var permutation = Array.ConvertAll(
                Choices,
                orbit => _choiceOfOrbit.GetValueOrDefault(orbitOf[taken[Orbits[orbit][0]]], -1)
            );
            if (
                !permutation.Contains(-1)
                && !found.Exists(known => known.SequenceEqual(permutation))
            )
                found.Add(permutation);
        }
        return [.. found];
    }
}
