using System.Diagnostics.CodeAnalysis;
using Svg;

namespace PatternGen;

/// <summary>Gives patterns to programs that work with Svg.NET's object model.</summary>
public static class PatternDocuments
{
    /// <summary>Returns the pattern as an <see cref="SvgDocument"/>: what <c>Save</c> would write, read back.</summary>
    /// <remarks>
    /// The object model keeps single floats: coordinates are true to about 1e-4 mm on a metre, while files are true to
    /// 1e-6 mm. To write a file, <c>Save</c> is many times faster.
    /// </remarks>
    /// <param name="pattern">The pattern.</param>
    /// <param name="purpose">What the document is for; <see cref="For.Viewing"/> by default.</param>
    /// <param name="options">How to write it; <see cref="SaveOptions.Default"/> by default.</param>
    /// <exception cref="PatternException">The pattern is empty, or impossible as designed.</exception>
    [RequiresUnreferencedCode("Svg.NET finds the properties of its elements by reflection.")]
    [RequiresDynamicCode("Svg.NET finds the converters of its properties by reflection.")]
    public static SvgDocument ToSvgDocument(
        this Pattern pattern,
        For purpose = For.Viewing,
        SaveOptions? options = null
    )
    {
        using var file = new MemoryStream();
        pattern.Save(file, FileFormat.Svg, purpose, options);
        file.Position = 0;
        return SvgDocument.Open<SvgDocument>(file);
    }
}
