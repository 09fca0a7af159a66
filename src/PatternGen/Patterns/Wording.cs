using System.Globalization;

namespace PatternGen;

/// <summary>
/// Every word that the library prints. English by default; derive from this class to print in another language.
/// </summary>
/// <remarks>
/// Errors are English and not part of this. Implementations must be pure: the same arguments give the same words, or
/// the same pattern would no longer give the same file.
/// </remarks>
public partial class Wording
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

    /// <summary>
    /// How a band was fitted: <c>91 repeats, pitch 8.0275 mm (8 asked), 6 mm margins, ends alike</c>.
    /// </summary>
    /// <param name="parts">Number of equal bands that the repeats are shared among: 1, or 2 beside a centre motif.</param>
    /// <param name="repeats">Repeats in each.</param>
    /// <param name="pitch">Length of a repeat in mm.</param>
    /// <param name="asked">The pitch asked for in mm.</param>
    /// <param name="leftMargin">Uncarved length at the left end in mm.</param>
    /// <param name="rightMargin">Uncarved length at the right end in mm.</param>
    /// <param name="ends">How the ends match.</param>
    public virtual string Fit(
        int parts,
        int repeats,
        double pitch,
        double asked,
        double leftMargin,
        double rightMargin,
        EndMatch ends
    )
    {
        var count = parts == 1 ? "" : $"{parts} × ";
        var what = parts * repeats == 1 ? "repeat" : "repeats";
        var (left, right) = (Number(leftMargin, 4), Number(rightMargin, 4));
        var margins =
            left == right ? $"{left} mm margins" : $"margins {left} mm left and {right} mm right";
        return $"{count}{repeats} {what}, pitch {Number(pitch, 4)} mm ({Number(asked, 4)} asked), {margins}, {Ends(ends)}";
    }

    /// <summary>How far a pitch is off the one asked for: <c>each repeat 0.0275 mm longer than asked</c>.</summary>
    /// <param name="deviation">Pitch less the pitch asked, in mm.</param>
    public virtual string Deviation(double deviation)
    {
        var size = Number(Math.Abs(deviation), 4);
        if (size == "0")
            return "each repeat as long as asked";
        return $"each repeat {size} mm {(deviation > 0 ? "longer" : "shorter")} than asked";
    }

    /// <summary>How many chips a band goes without where it turns round: <c>1 chip left out at the middle</c>.</summary>
    public virtual string LeftOutAtMiddle(int chips) =>
        $"{ChipCount(chips)} left out at the middle";

    /// <summary>How the ends of a band match.</summary>
    public virtual string Ends(EndMatch ends) =>
        ends switch
        {
            EndMatch.Alike => "ends alike",
            EndMatch.AlikeByHalfTurn => "ends alike by a half turn",
            _ => "ends differ",
        };

    /// <summary>What a rail without a name is called: <c>Rail 742.5 × 36 mm</c>.</summary>
    /// <param name="length">Length seen between the shoulders, in mm.</param>
    /// <param name="width">Width in mm.</param>
    public virtual string Rail(double length, double width) => $"Rail {Size(length, width)}";

    /// <summary>What a layer is called for readers of a file.</summary>
    public virtual string LayerTitle(Layer layer) =>
        layer switch
        {
            Layer.Stock => "Outline of the wood",
            Layer.LayoutLines => "Layout lines",
            Layer.LineCuts => "Line cuts",
            Layer.Chips => "Chips to cut away",
            Layer.Labels => "Labels",
            Layer.Grooves => "Groove paths",
            Layer.Grid => "Grid",
            _ => "Note",
        };

    /// <summary>What a pattern without a name is called in a file.</summary>
    public virtual string Untitled => "Chip-carving pattern";

    /// <summary>The note in a file for a machine: <c>Rail 742.5 × 36 mm, 182 chips, 1 unit = 1 mm</c>.</summary>
    /// <param name="title">What the pattern is.</param>
    /// <param name="chips">Number of chips.</param>
    public virtual string MachineNote(string title, long chips) =>
        $"{title}, {ChipCount(chips)}, 1 unit = 1 mm";

    /// <summary>Said at the check bar of a printed sheet.</summary>
    /// <param name="length">Length of the bar in mm.</param>
    public virtual string CheckBar(double length) =>
        $"Print at actual size (100 %). This bar is {Millimetres(length)} long: measure it.";
}
