namespace PatternGen;

public partial class Wording
{
    /// <summary>How a band was fitted that runs round without ends: <c>47 repeats all round, pitch 8.0214 mm (8 asked)</c>.</summary>
    /// <param name="repeats">Repeats in all.</param>
    /// <param name="pitch">Length of a repeat in mm.</param>
    /// <param name="asked">The pitch asked for in mm.</param>
    public virtual string ClosedFit(int repeats, double pitch, double asked) =>
        $"{repeats} repeats all round, pitch {Number(pitch, 4)} mm ({Number(asked, 4)} asked)";

    /// <summary>What a ring without a name is called: <c>Ring of 60 mm radius</c>.</summary>
    /// <param name="radius">Radius in mm.</param>
    public virtual string Ring(double radius) => $"Ring of {Millimetres(radius)} radius";

    /// <summary>What part of a circle without a name is called: <c>Arc of 60 mm radius, 120°</c>.</summary>
    /// <param name="radius">Radius in mm.</param>
    /// <param name="degrees">The angle that it spans.</param>
    public virtual string Arc(double radius, double degrees) =>
        $"Arc of {Millimetres(radius)} radius, {Number(degrees, 2)}°";

    /// <summary>Where the pitch of a ring is measured: <c>pitch measured round 60 mm radius</c>.</summary>
    /// <param name="radius">Radius in mm.</param>
    public virtual string PitchRound(double radius) =>
        $"pitch measured round {Millimetres(radius)} radius";

    /// <summary>What a band along a path is called: <c>Band along a path of 512.4 mm</c>.</summary>
    /// <param name="length">Length of the path in mm.</param>
    public virtual string PathBorder(double length) =>
        $"Band along a path of {Millimetres(length)}";

    /// <summary>How a motif is bent: <c>bent along a path of 512.4 mm, 32 repeats of 16.0125 mm</c>.</summary>
    /// <param name="length">Length of the path in mm.</param>
    /// <param name="repeats">Number of repeats.</param>
    /// <param name="pitch">Length of each in mm.</param>
    public virtual string Bent(double length, int repeats, double pitch)
    {
        var path = $"bent along a path of {Millimetres(length)}";
        return repeats == 1 ? path : $"{path}, {repeats} repeats of {Millimetres(pitch, 4)}";
    }
}
