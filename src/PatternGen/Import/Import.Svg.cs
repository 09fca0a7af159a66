using Svg;

namespace PatternGen;

public static partial class Import
{
    /// <summary>Reads the curves of a caller's SVG document, as those of a file.</summary>
    /// <remarks>
    /// The object model keeps single floats: places are true to about 1e-4 mm on a metre, which <see cref="ImportedDrawing.Accuracy"/>
    /// tells exactly. Nothing that the document refers to is opened. It stays as it is.
    /// </remarks>
    /// <param name="document">The document; no other thread may change it meanwhile.</param>
    /// <param name="settings">How it is read; <see cref="ImportSettings.Default"/> if not given.</param>
    /// <returns>The curves, never null; what could not be read stands in <see cref="ImportedDrawing.Notes"/>.</returns>
    /// <exception cref="ImportException">It is beyond the limits, or refers to itself.</exception>
    public static ImportedDrawing Drawing(SvgDocument document, ImportSettings? settings = null)
    {
        Geometry.Guard.NotNull(document);
        return Drawable(() => Joined(SvgReader.Read(document, settings ?? ImportSettings.Default)));
    }

    /// <summary>Reads the area that the closed curves of a caller's SVG document bound.</summary>
    /// <inheritdoc cref="Drawing(SvgDocument, ImportSettings)" path="/remarks"/>
    /// <inheritdoc cref="Drawing(SvgDocument, ImportSettings)" path="/param"/>
    /// <exception cref="ImportException">It is beyond the limits, or refers to itself.</exception>
    /// <exception cref="PatternException">No curve is closed; the message says where the open ones end and what would close them.</exception>
    public static Geometry.Region Outline(SvgDocument document, ImportSettings? settings = null) =>
        Drawing(document, settings).Outline();
}
