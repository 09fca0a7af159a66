using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What a design asks for cannot be made. Says what, where, and what would work.</summary>
/// <remarks>Misuse of the library (a negative length, NaN) throws an <see cref="ArgumentException"/> instead.</remarks>
public class PatternException : Exception
{
    /// <summary>Creates the exception.</summary>
    /// <param name="problem">What cannot be made, as a sentence.</param>
    /// <param name="place">Where, in the pattern's coordinates (mm), if at one place.</param>
    /// <param name="remedies">What would work, each as a sentence or phrase; the nearest first.</param>
    public PatternException(
        string problem,
        Point? place = null,
        IReadOnlyList<string>? remedies = null
    )
        : base(Compose(problem, place, remedies ?? []))
    {
        Problem = Compose(problem, place, []);
        Place = place;
        Remedies = remedies ?? [];
    }

    /// <summary>Where the problem lies, if at one place.</summary>
    public Point? Place { get; }

    /// <summary>What would work; the nearest first.</summary>
    public IReadOnlyList<string> Remedies { get; }

    /// <summary>What is wrong, and where, without what would work.</summary>
    internal string Problem { get; }

    private static string Compose(string problem, Point? place, IReadOnlyList<string> remedies)
    {
        var where = place is { } at ? $" At {at} mm." : "";
        var what = remedies.Count > 0 ? $" What would work: {string.Join("; ", remedies)}." : "";
        return problem + where + what;
    }
}
