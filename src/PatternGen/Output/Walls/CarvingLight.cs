using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Light from one side, and some from the whole sky, on carved wood.</summary>
/// <remarks>
/// By Lambert's law a surface is as bright as the cosine of the angle between its normal and the light. The sky's share is
/// that of a sky that is brightest where the light stands, (1 + cosine) / 2, so that walls in the shade still
/// differ. A wall that falls at the angle a in the direction d has the normal (d sin a, cos a).
/// </remarks>
internal sealed class CarvingLight
{
    /// <summary>Share of the sky's light. Less, and the shade is black; more, and walls look alike.</summary>
    private const double Sky = 0.38;

    private readonly Vector _level;
    private readonly double _upright;

    /// <param name="direction">Where the light comes from, in degrees clockwise from the top of the sheet.</param>
    /// <param name="height">Its height above the surface, in degrees.</param>
    internal CarvingLight(double direction, double height)
    {
        var rise = Angle.FromDegrees(height);
        _level = Vector.Towards(Angle.FromDegrees(90 - direction)) * rise.Cos();
        _upright = rise.Sin();
        Ground = BrightnessOf(default, Angle.Zero);
    }

    /// <summary>From the upper left, and half-way up: what drawings are lit by, so that eyes see pits and not bumps.</summary>
    internal static CarvingLight Usual { get; } = new(320, 45);

    /// <summary>Brightness of the uncarved surface.</summary>
    internal double Ground { get; }

    /// <summary>Returns the brightness of a wall, from 0 to 1.</summary>
    /// <param name="downhill">The direction in which it goes down, of length 1.</param>
    /// <param name="slope">Its angle to the surface.</param>
    internal double BrightnessOf(Vector downhill, Angle slope) =>
        BrightnessOf(downhill * slope.Sin(), slope.Cos());

    /// <summary>The same by the parts of the wall's normal: level, and upright.</summary>
    internal double BrightnessOf(Vector level, double upright)
    {
        var cosine = level.Dot(_level) + upright * _upright;
        return Sky * (1 + cosine) / 2 + (1 - Sky) * Math.Max(0, cosine);
    }
}
