using PatternGen.Geometry;

namespace PatternGen;

public partial class Wording
{
    /// <summary>What a schedule is called: <c>Carving order: Rail 742.5 × 36 mm</c>.</summary>
    /// <param name="title">What the pattern is.</param>
    public virtual string ScheduleTitle(string title) => $"Carving order: {title}";

    /// <summary>In which order a plan takes the cuts.</summary>
    public virtual string PlanOrder(CarvingOrder order) =>
        order == CarvingOrder.ByChip
            ? "chip by chip, the largest first: that with the most wood to take out"
            : "in passes: all cuts that run one way, then the board is turned";

    /// <summary>With which cuts chips are taken out.</summary>
    public virtual string TechniqueName(Technique technique) =>
        technique == Technique.ThreeCuts
            ? "a leaning cut along each side"
            : "valleys stabbed, sides sliced";

    /// <summary>The hand that holds the knife.</summary>
    public virtual string HandName(Hand hand) => hand == Hand.Right ? "right hand" : "left hand";

    /// <summary>What is carved with, and in what: <c>knife at 65° to the surface, 12 mm of basswood, grain at 0°</c>.</summary>
    /// <param name="knife">Angle between blade and surface.</param>
    /// <param name="thickness">Thickness of the wood in mm.</param>
    /// <param name="species">Name of the wood, or null.</param>
    /// <param name="grain">Direction of the grain from the length of the piece.</param>
    public virtual string KnifeAndStock(
        Angle knife,
        double thickness,
        string? species,
        Angle grain
    ) =>
        $"knife at {Number(knife.Degrees, 1)}° to the surface, {Millimetres(thickness)} of {species ?? "wood"}, grain at {Number(grain.Degrees, 1)}°";

    /// <summary>Said where the knife is not held as usual for all chips: <c>12 chips with the knife at 40° to 53.1° instead; the schedule says which</c>.</summary>
    /// <param name="chips">For how many chips.</param>
    /// <param name="flattest">The least angle between blade and surface.</param>
    /// <param name="steepest">The largest.</param>
    public virtual string OtherKnifeAngles(int chips, Angle flattest, Angle steepest)
    {
        var (least, most) = (Degrees(flattest.Degrees), Degrees(steepest.Degrees));
        var angles = least == most ? least : $"{least} to {most}";
        return $"{ChipCount(chips)} with the knife at {angles} instead; the schedule says which";
    }

    /// <summary>How many chips there are of each size class, which goes by width.</summary>
    public virtual string ChipsBySize(long chips, int small, int medium, int large) =>
        $"{ChipCount(chips)}: {large} wide (6 mm and more), {medium} medium, {small} narrow (under 3 mm)";

    /// <summary>How much is to be cut.</summary>
    /// <param name="cuts">Number of cuts.</param>
    /// <param name="light">Number of those made lightly.</param>
    /// <param name="length">Length of all cuts in mm.</param>
    /// <param name="volume">Wood removed in mm³.</param>
    /// <param name="deepest">Depth of the deepest chip in mm.</param>
    public virtual string CutTotals(
        int cuts,
        int light,
        double length,
        double volume,
        double deepest
    ) =>
        $"{CutCount(cuts)}, {light} of them light; {Number(length / 1000, 3)} m of cuts, {Number(volume / 1000, 3)} cm³ of wood, {Millimetres(deepest)} at the deepest";

    /// <summary>What the line cuts add to the chips.</summary>
    /// <param name="count">Number of line cuts.</param>
    /// <param name="length">Their length in mm.</param>
    /// <param name="volume">Wood that they remove, in mm³.</param>
    public virtual string LineCutTotals(int count, double length, double volume)
    {
        var lines = count == 1 ? "1 line cut" : $"{count} line cuts";
        return $"{lines} besides, {Number(length / 1000, 3)} m, {Number(volume / 1000, 3)} cm³: a leaning cut along either side of each, when the chips are out";
    }

    /// <summary>How many cuts.</summary>
    public virtual string CutCount(int cuts) => cuts == 1 ? "1 cut" : $"{cuts} cuts";

    /// <summary>How often the board is turned.</summary>
    /// <param name="turns">Times.</param>
    /// <param name="saved">How many times fewer than chip by chip; 0 if that is the order.</param>
    public virtual string BoardTurns(int turns, int saved)
    {
        var times = turns == 1 ? "1 turn of the board" : $"{turns} turns of the board";
        return saved switch
        {
            > 0 => $"{times}, {saved} fewer than chip by chip",
            < 0 => $"{times}, {-saved} more than chip by chip",
            _ => times,
        };
    }

    /// <summary>How long it takes.</summary>
    /// <param name="minutes">Minutes at the rate given.</param>
    public virtual string CarvingTime(double minutes) =>
        $"about {Number(minutes, 0)} minutes at the rate given";

    /// <summary>Heads the cautions.</summary>
    public virtual string CautionsTitle => "Before you cut";

    /// <summary>What to mind with a knife, a line each.</summary>
    public virtual IReadOnlyList<string> KnifeCautions =>
        [
            "Keep the knife sharp; a dull one is the more dangerous.",
            "Anchor the thumb of the knife hand, and keep the holding hand out of the blade's path.",
            "Clamp the board or set it against a stop; loosen it only to turn it. A cut-resistant glove and a thumb guard help.",
            "Pupils are supervised, with a first-aid kit at hand.",
            "Depths and order are common practice and no guarantee: test on scrap. Licensed practice and local rules come first.",
        ];

    /// <summary>Heads the explanation.</summary>
    public virtual string HowToReadTitle => "How to read it";

    /// <summary>How a schedule is read, a line each.</summary>
    /// <param name="hand">The hand that holds the knife.</param>
    public virtual IReadOnlyList<string> HowToRead(Hand hand)
    {
        var (lean, chip) = hand == Hand.Right ? ("right", "left") : ("left", "right");
        return
        [
            $"Each cut is drawn straight towards you, the blade's back leaning to your {lean} and the chip on your {chip}. The board is turned so that it can be; \"135° left\" is that far counter-clockwise from how the drawing lies.",
            "No.: the number on the drawing. Chip: the name of a chip, its row and its place in it. Knife: the angle between blade and surface; stabs stand upright.",
            "Sides are named as they lie on the drawing. Cuts go in and come out at no depth in the tips, and are deepest on the way as said.",
            "Light: the chip beyond the ridge is out already. Press less, in two or three passes if need be.",
            "With the grain: ahead of the blade the fibres run out of the ground into the chip, so that the wall comes out clean.",
        ];
    }

    /// <summary>Heads the schedule itself.</summary>
    public virtual string StepsTitle => "Steps";

    /// <summary>The column heads of a schedule chip by chip: number, chip, wood, width, depth, angle of the knife, cuts, reason.</summary>
    public virtual IReadOnlyList<string> ChipColumns =>
        ["No.", "Chip", "Wood", "Wide", "Deep", "Knife", "Cuts, in order", "Why now"];

    /// <summary>The column heads of a schedule in passes: step, board, numbers, chips, how many, cut, depth, angle of the knife, how, reason.</summary>
    public virtual IReadOnlyList<string> PassColumns =>
        ["Step", "Board", "No.", "Chip", "Cuts", "Which", "Deep", "Knife", "How", "Why now"];

    /// <summary>A volume of wood: <c>317 mm³</c>.</summary>
    public virtual string CubicMillimetres(double volume) =>
        $"{Number(volume, volume < 10 ? 1 : 0)} mm³";

    /// <summary>How the board lies: <c>135° left</c>.</summary>
    /// <param name="turn">Counter-clockwise from the drawing, more than -180 degrees and up to 180.</param>
    public virtual string BoardLies(Angle turn)
    {
        var degrees = Math.Round(turn.Degrees);
        if (degrees == 0)
            return "as drawn";
        return Math.Abs(degrees) == 180
            ? "half turned"
            : $"{Number(Math.Abs(degrees), 0)}° {(degrees > 0 ? "left" : "right")}";
    }

    /// <summary>Said where the board is turned before a step.</summary>
    /// <param name="lies">How it then lies.</param>
    public virtual string TurnBoard(string lies) => $"turn: {lies}";

    /// <summary>Which cut: <c>cut, upper left side</c>.</summary>
    /// <param name="kind">What kind of cut.</param>
    /// <param name="facing">Which side, or which way a stab goes along its valley.</param>
    /// <param name="side">Number of the side; 0 for a stab along a valley.</param>
    /// <param name="hole">The hole that the side belongs to; 0 for the outline.</param>
    public virtual string CutName(CutKind kind, SideFacing facing, int side, int hole)
    {
        var place = FacingName(facing);
        var what = kind switch
        {
            CutKind.Stab when side == 0 => $"stab the valley, towards the {place}",
            CutKind.Stab => $"stab, {place} side",
            CutKind.Slice => $"slice, {place} side",
            _ => $"{place} side",
        };
        return hole == 0 ? what : $"{what} of hole {hole}";
    }

    /// <summary>A side or direction as drawn.</summary>
    public virtual string FacingName(SideFacing facing) =>
        facing switch
        {
            SideFacing.Right => "right",
            SideFacing.UpperRight => "upper right",
            SideFacing.Upper => "upper",
            SideFacing.UpperLeft => "upper left",
            SideFacing.Left => "left",
            SideFacing.LowerLeft => "lower left",
            SideFacing.Lower => "lower",
            _ => "lower right",
        };

    /// <summary>How hard to press and how the cut runs to the grain.</summary>
    public virtual string CutManner(Pressure pressure, GrainRun grain) =>
        pressure == Pressure.Light ? $"light, {GrainName(grain)}" : GrainName(grain);

    /// <summary>How a cut runs to the grain.</summary>
    public virtual string GrainName(GrainRun grain) =>
        grain switch
        {
            GrainRun.Along => "along the grain",
            GrainRun.With => "with the grain",
            GrainRun.Across => "across the grain",
            _ => "against the grain",
        };

    /// <summary>Said of a cut that is made lightly.</summary>
    public virtual string Light => "light";

    /// <summary>Which rule decided.</summary>
    public virtual string Reason(PlanReason reason) =>
        reason switch
        {
            PlanReason.LargestFirst => "no larger chip is left",
            PlanReason.NextInLine => "as large, next in line",
            PlanReason.AfterLargerNeighbour => "its larger neighbour is out",
            PlanReason.StabFirst => "stabs before slices",
            PlanReason.NextToRemoved => "next to a chip that is out",
            PlanReason.RoundTheChip => "next round the chip",
            PlanReason.WithTheGrain => "last with the grain",
            _ => "as the board lies",
        };

    /// <summary>Said where nothing is to be carved.</summary>
    public virtual string NothingToCarve => "There are no chips to carve.";

    /// <summary>Explains the arrows of a numbered drawing.</summary>
    public virtual string StrokeArrows =>
        "Numbers: the order in which the chips come out. Arrows: the cuts, dark the first of a chip and pale the last; broken: light.";

    /// <summary>Says how much a numbered drawing is enlarged.</summary>
    /// <param name="scale">Times the true size.</param>
    public virtual string DrawnLarger(double scale) =>
        $"Drawn {Number(scale, 2)} times as large as the piece.";
}
