using PatternGen.Geometry;

namespace PatternGen;

/// <summary>
/// The note in a file for a machine: what it is, how large and in which unit, for whoever opens it later. It lies on
/// the wood, clear of all that is cut, or is left out where there is no such place.
/// </summary>
internal static class MachineNote
{
    /// <summary>Heights of the capitals in mm that are tried, the easiest to read first.</summary>
    private static readonly double[] Heights = [3, 2.5];

    /// <summary>Distance kept in mm from the edge of the wood and from what is cut.</summary>
    private const double Clearance = 1;

    /// <summary>Returns the note where it fits, or null.</summary>
    internal static Label? Place(Pattern pattern, Wording wording)
    {
        if (pattern.Bounds(LayerSet.Stock) is not { } wood)
            return null;
        var text = wording.MachineNote(pattern.TitleWithSize(wording), pattern.ChipCount);
        var ground = new FreeGround(pattern, Clearance);
        return Heights
            .SelectMany(height => Candidates(text, height, wood))
            .FirstOrDefault(note => ground.Holds(note.Box()));
    }

    /// <summary>Below the carving, above it, and in the middle of what it may run round.</summary>
    private static IEnumerable<Label> Candidates(string text, double height, Extents wood)
    {
        var box = Lettering.Box(text, height);
        var left = wood.Min.X + 2 * Clearance;
        yield return At(left, wood.Min.Y + 2 * Clearance);
        yield return At(left, wood.Max.Y - 2 * Clearance - box.Height);
        yield return At(wood.Centre.X - box.Width / 2, wood.Centre.Y - box.Height / 2);

        // The base line lies above the lower edge of the box.
        Label At(double x, double y) => new(text, new(x - box.Min.X, y - box.Min.Y), height);
    }
}
