namespace PatternGen;

public partial class Wording
{
    /// <summary>The bit of groove paths: <c>V bit of 60° included, 12 mm across: walls of 60°</c>.</summary>
    /// <param name="included">Angle between the walls of its groove in degrees.</param>
    /// <param name="diameter">Its diameter in mm.</param>
    /// <param name="walls">Angle between walls and surface in degrees.</param>
    public virtual string GrooveBit(double included, double diameter, double walls) =>
        $"V bit of {Number(included, 2)}° included, {Millimetres(diameter)} across: walls of {Number(walls, 2)}°";

    /// <summary>How deep groove paths go: <c>Deepest 2.598 mm, z = -2.598 (a knife at 65° goes 3.217 mm deep); 1 unit = 1 mm, surface at z = 0</c>.</summary>
    /// <param name="deepest">Their greatest depth in mm.</param>
    /// <param name="knifeAngle">Angle in degrees at which a knife is held for the same chips.</param>
    /// <param name="knifeDepth">The greatest depth that it makes, in mm.</param>
    public virtual string GrooveDepth(double deepest, double knifeAngle, double knifeDepth) =>
        $"Deepest {Millimetres(deepest, 3)}, z = {Number(-deepest, 3)} (a knife at {Number(knifeAngle, 2)}° goes {Millimetres(knifeDepth, 3)} deep); 1 unit = 1 mm, surface at z = 0";

    /// <summary>How true groove paths are: <c>14 paths; within 0.005 mm of the ideal chips, never deeper</c>.</summary>
    /// <param name="accuracy">Height in mm of what stays standing at most.</param>
    /// <param name="paths">Number of paths.</param>
    public virtual string GrooveAccuracy(double accuracy, long paths) =>
        $"{(paths == 1 ? "1 path" : $"{paths} paths")}; within {Millimetres(accuracy, 4)} of the ideal chips, never deeper";

    /// <summary>Where groove paths enter the wood: <c>Paths enter at depth 0 in the tips; 2 without a tip: at depth 0 on the outline, straight down a wall</c>.</summary>
    /// <param name="walls">How many go down a wall.</param>
    /// <param name="plunges">How many start at full depth.</param>
    public virtual string GrooveEntries(long walls, long plunges)
    {
        var wall =
            walls > 0
                ? $"; {walls} without a tip: at depth 0 on the outline, straight down a wall"
                : "";
        var plunge =
            plunges > 0
                ? $"; {plunges} along line cuts that do not taper: a plunge to full depth, and the cone reaches half their width beyond open ends"
                : "";
        return $"Paths enter at depth 0 in the tips{wall}{plunge}";
    }

    /// <summary>How many chips and line cuts a bit can't cut: <c>3 left out, which this bit can't cut: carve them by hand</c>.</summary>
    public virtual string GroovesLeftOut(long count) =>
        $"{count} left out, which this bit can't cut: carve them by hand";

    /// <summary>What groove paths are not.</summary>
    public virtual string GroovesAreNoProgram =>
        "Geometry only, not a machine program: no feeds, speeds, safe heights or passes";

    /// <summary>The cautions for routers.</summary>
    public virtual string RouterCautions =>
        "Guards and hold-downs in place; eye and ear protection, a mask against fine dust. The machine's manual, local codes and licensed practice come first. Test on scrap";
}
