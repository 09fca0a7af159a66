namespace PatternGen;

/// <summary>A file can't be read. Says what is wrong, where in the file, and what would work.</summary>
/// <remarks>
/// A file that does not exist or can't be opened throws the exception of the system, such as
/// <see cref="FileNotFoundException"/>; a file that is read but holds nothing of use throws a
/// <see cref="PatternException"/>.
/// </remarks>
public class ImportException : Exception
{
    /// <summary>Creates the exception.</summary>
    /// <param name="problem">What is wrong, as a sentence.</param>
    /// <param name="where">Where: "line 12", "element path 3" or "$.parts[0].radius"; null if nowhere in particular.</param>
    /// <param name="remedies">What would work, each as a sentence or phrase; the nearest first.</param>
    /// <param name="inner">What another reader said.</param>
    public ImportException(
        string problem,
        string? where = null,
        IReadOnlyList<string>? remedies = null,
        Exception? inner = null
    )
        : base(Compose(problem, where, remedies ?? []), inner)
    {
        Where = where;
        Remedies = remedies ?? [];
    }

    /// <summary>Where in the file the problem lies: "line 12", "element path 3" or "$.parts[0].radius"; null if nowhere in particular.</summary>
    public string? Where { get; }

    /// <summary>What would work; the nearest first.</summary>
    public IReadOnlyList<string> Remedies { get; }

    private static string Compose(string problem, string? where, IReadOnlyList<string> remedies)
    {
        var place = where is null ? "" : $" At {where}.";
        var what = remedies.Count > 0 ? $" What would work: {string.Join("; ", remedies)}." : "";
        return problem + place + what;
    }
}
