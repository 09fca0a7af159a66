namespace PatternGen;

/// <summary>Reads outlines and curves from files.</summary>
/// <remarks>
/// Nothing outside the file is opened, and a file that asks too much is refused (<see cref="ImportLimits"/>). A caller's
/// stream stays open.
/// </remarks>
public static partial class Import
{
    /// <summary>Reads a drawing from a file; its name ends in .svg or .dxf.</summary>
    /// <param name="path">The file.</param>
    /// <param name="settings">How it is read; <see cref="ImportSettings.Default"/> if not given.</param>
    /// <returns>The curves, never null; what could not be read stands in <see cref="ImportedDrawing.Notes"/>.</returns>
    /// <exception cref="ImportException">The file is no drawing of its kind, or beyond the limits.</exception>
    /// <exception cref="IOException">It can't be opened or read.</exception>
    public static ImportedDrawing Drawing(string path, ImportSettings? settings = null) =>
        throw new NotImplementedException();
}
