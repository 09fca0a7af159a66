using System.Globalization;

namespace PatternGen;

/// <summary>
/// Every word that the library prints. English by default; derive from this class to print in another language.
/// </summary>
/// <remarks>
/// Errors are English and not part of this. Implementations must be pure: the same arguments give the same words, or
/// the same pattern would no longer give the same file.
/// </remarks>
public class Wording
{
    /// <summary>The words in English.</summary>
    public static Wording English { get; } = new();

    /// <summary>A number with the given decimals at most, as every printed word of ours writes it: 8.0275.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals at most, 0 to 6; trailing zeros are cut.</param>
    public virtual string Number(double value, int decimals)
    {
        var format = decimals > 0 ? "0." + new string('#', decimals) : "0";
        var text = value.ToString(format, CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>A length: <c>742.5 mm</c>.</summary>
    public virtual string Millimetres(double value, int decimals = 2) =>
        $"{Number(value, decimals)} mm";

    /// <summary>How many chips: <c>182 chips</c>.</summary>
    public virtual string ChipCount(long count) => count == 1 ? "1 chip" : $"{count} chips";

    /// <summary>The size of something: <c>742.5 × 36 mm</c>.</summary>
    public virtual string Size(double width, double height) =>
        $"{Number(width, 2)} × {Number(height, 2)} mm";

    /// <summary>What a layer is called for readers of a file.</summary>
    public virtual string LayerTitle(Layer layer) =>
        layer switch
        {
            Layer.Stock => "Outline of the wood",
            Layer.LayoutLines => "Layout lines",
            Layer.LineCuts => "Line cuts",
            Layer.Chips => "Chips to cut away",
            Layer.Labels => "Labels",
            _ => "Note",
        };

    /// <summary>What a pattern without a name is called in a file.</summary>
    public virtual string Untitled => "Chip-carving pattern";

    /// <summary>Said at the check bar of a printed sheet.</summary>
    /// <param name="length">Length of the bar in mm.</param>
    public virtual string CheckBar(double length) =>
        $"Print at actual size (100 %). This bar is {Millimetres(length)} long: measure it.";
}
