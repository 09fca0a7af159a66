namespace PatternGen;

public partial class Wording
{
    /// <summary>What a frame without a name is called: <c>Frame 320 × 240 mm, members 22 mm wide</c>.</summary>
    /// <param name="sides">Number of sides; 4 for a rectangle.</param>
    /// <param name="width">Width over all in mm.</param>
    /// <param name="height">Height over all in mm.</param>
    /// <param name="member">Width of the members in mm.</param>
    public virtual string Frame(int sides, double width, double height, double member)
    {
        var what = sides == 4 ? "Frame" : $"Frame of {sides} sides,";
        return $"{what} {Size(width, height)}, members {Millimetres(member)} wide";
    }

    /// <summary>What a lid or panel without a name is called: <c>Panel 400 × 300 mm</c>.</summary>
    /// <param name="width">Width over all in mm.</param>
    /// <param name="height">Height over all in mm.</param>
    public virtual string Panel(double width, double height) => $"Panel {Size(width, height)}";

    /// <summary>
    /// How a band was fitted to a side of a frame: <c>37 repeats, pitch 8.0541 mm (8 asked)</c>.
    /// </summary>
    /// <param name="repeats">Repeats in all.</param>
    /// <param name="pitch">Length of a repeat in mm.</param>
    /// <param name="asked">The pitch asked for in mm.</param>
    /// <param name="firstMargin">Uncarved length at the first end in mm.</param>
    /// <param name="lastMargin">Uncarved length at the last end in mm.</param>
    /// <param name="middleGap">Length left free in the middle in mm.</param>
    public virtual string SideFit(
        int repeats,
        double pitch,
        double asked,
        double firstMargin,
        double lastMargin,
        double middleGap
    )
    {
        var count = repeats == 1 ? "1 repeat" : $"{repeats} repeats";
        var (first, last) = (Number(firstMargin, 4), Number(lastMargin, 4));
        var margins =
            first != last ? $", margins {first} and {last} mm"
            : first != "0" ? $", {first} mm margins"
            : "";
        var middle = middleGap > 0 ? $", {Number(middleGap, 4)} mm free in the middle" : "";
        return $"{count}, pitch {Number(pitch, 4)} mm ({Number(asked, 4)} asked){margins}{middle}";
    }

    /// <summary>Which sides a fit holds for: <c>lower and upper side</c>, or <c>sides 1, 2 and 4</c> of a polygon.</summary>
    /// <param name="sides">Their numbers, from 1, counter-clockwise; in a rectangle 1 is the lower one.</param>
    /// <param name="isRectangle">Whether the sides have names.</param>
    /// <param name="isAll">Whether they are all that there are.</param>
    /// <remarks>A band that bends round the corners has no sides: the list is empty.</remarks>
    public virtual string FrameSides(IReadOnlyList<int> sides, bool isRectangle, bool isAll)
    {
        if (isAll || sides.Count == 0)
            return sides.Count == 0 ? "all round" : "all sides";
        string[] names =
        [
            .. sides.Select(side =>
                isRectangle
                    ? side switch
                    {
                        1 => "lower",
                        2 => "right",
                        3 => "upper",
                        _ => "left",
                    }
                    : $"{side}"
            ),
        ];
        var list =
            names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";
        return isRectangle ? $"{list} side"
            : names.Length == 1 ? $"side {list}"
            : $"sides {list}";
    }

    /// <summary>The fit of some sides of a frame: <c>Lower and upper side: 37 repeats, pitch 8.0541 mm (8 asked)</c>.</summary>
    /// <param name="band">Number of the band from the outermost, 1; 0 if there is one only.</param>
    /// <param name="sides">Which sides.</param>
    /// <param name="fit">The fit.</param>
    public virtual string FrameFit(int band, string sides, string fit)
    {
        var line = $"{sides}: {fit}";
        return band > 0 ? $"Band {band}, {line}" : $"{char.ToUpperInvariant(line[0])}{line[1..]}";
    }

    /// <summary>How the corners of a frame are made.</summary>
    public virtual string FrameCorners(FrameCorner corner) =>
        corner switch
        {
            FrameCorner.Mitre => "Corners mitred",
            FrameCorner.Block => "A motif in each corner",
            FrameCorner.Wrapped => "Corner pieces of the band's own",
            FrameCorner.Bent => "Bent round the corners",
            _ => "Corners butted",
        };
}
