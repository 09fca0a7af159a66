using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Finds the paths along which a V bit cuts a pattern.</summary>
public static class PatternGrooves
{
    /// <summary>Chips named in an error.</summary>
    private const int MostNamed = 3;

    /// <summary>Returns the paths of a V bit along the valleys of all chips and along the line cuts.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="bit">The bit; its angle sets the walls.</param>
    /// <param name="accuracy">
    /// How much of the ideal chip may stay standing, as a height in mm, from 0.0001 to 1. The default 0.005 is finer than any grain. The path
    /// never cuts deeper than the ideal chip, by more than 1e-9 mm.
    /// </param>
    /// <param name="uncuttable">What becomes of chips that this bit can't cut: wider than the bit, stab-cut, or with a wall angle of their own that is not the bit's.</param>
    /// <returns><c>pattern.GroovePaths(VBit.Of(60, 12)).Save("grooves.dxf")</c> writes them.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The accuracy is out of range.</exception>
    /// <exception cref="PatternException">The bit can't cut some chip, and they are not to be left out; or a chip's outline crosses itself.</exception>
    public static GroovePaths GroovePaths(
        this Pattern pattern,
        VBit bit,
        double accuracy = 0.005,
        Uncuttable uncuttable = Uncuttable.Refuse
    )
    {
        Guard.NotNull(pattern);
        Guard.NotNull(bit);
        Guard.Within(accuracy, 0.0001, 1);
        Guard.Defined(uncuttable);
        var paths = new GroovePaths(pattern, bit, accuracy);
        if (paths.LeftOutCount > 0 && uncuttable == Uncuttable.Refuse)
            throw Refusal(paths);
        return paths;
    }

    private static PatternException Refusal(GroovePaths paths)
    {
        var named = paths.LeftOut.Take(MostNamed).ToList();
        var more = paths.LeftOutCount - named.Count;
        var which = string.Join("; ", named.Select(left => left.ToString()));
        return new(
            $"The {paths.Bit} can't cut all of the pattern: {which}{(more > 0 ? $"; and {more} more" : "")}.",
            named[0].Place,
            [
                .. Remedies(paths),
                "leaving such chips out, with Uncuttable.LeaveOut, and carving them by hand",
            ]
        );
    }

    /// <summary>Of all that is too wide, what helps the widest; and each other remedy once.</summary>
    private static IEnumerable<string> Remedies(GroovePaths paths) =>
        paths
            .LeftOut.Select(left => left.Trouble)
            .Distinct()
            .OrderByDescending(trouble => trouble.Width)
            .DistinctBy(trouble => trouble.Width > 0 ? "" : trouble.Remedy)
            .Select(trouble => trouble.Remedy);
}
