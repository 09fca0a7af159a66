using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Quiet lines of grain for a picture, the same each time.</summary>
/// <remarks>
/// Lines lie apart as years differ, by sines of the line's number, and wave together, by sums of sines of the place, so gently that none crosses
/// another: the slope of the wave across the grain stays under 1.
/// </remarks>
internal static class WoodGrain
{
    /// <summary>Distance in mm from line to line, on average: lime of slow growth.</summary>
    private const double Years = 1.7;

    /// <summary>Lines at most; on larger wood they lie farther apart.</summary>
    private const int MostLines = 110;

    /// <summary>Distance in mm from corner to corner along a line: under a tenth of the shortest wave, so that none is seen.</summary>
    private const double Step = 6;

    /// <summary>Corners on a line at most.</summary>
    private const int MostCorners = 160;

    /// <summary>Returns the lines over a room, with the width of each in mm.</summary>
    /// <param name="room">What they cover; beyond it they reach a little.</param>
    /// <param name="grain">Their direction.</param>
    /// <param name="least">Distance in mm from line to line, if they are not too many.</param>
    internal static IEnumerable<(Chain Line, double Width)> Lines(
        Extents room,
        Angle grain,
        double least = Years
    )
    {
        var turn = Transform.Rotate(grain, room.Centre);
        var level = Contour.Rectangle(room.Min, room.Max).Transformed(turn.Inverse()).Extents;
        var years = Math.Max(least, level.Height / MostLines);
        var step = Math.Max(Step, level.Width / MostCorners);
        var (columns, lines) = ((int)(level.Width / step) + 2, (int)(level.Height / years) + 4);
        for (var line = -2; line < lines; line++)
        {
            // Years differ: good and bad ones follow each other without a rhythm that eyes find.
            var year = line + 0.35 * Math.Sin(line * 2.4) + 0.25 * Math.Sin(line * 5.1 + 1);
            var height = level.Min.Y + year * years;
            var corners = new Vertex[columns];
            for (var i = 0; i < columns; i++)
            {
                var x = level.Min.X + i * step;
                corners[i] = new(x, height + Wave(x, height));
            }
            var width = years * (0.09 + 0.06 * Math.Sin(line * 1.7));
            yield return (new Chain(corners).Transformed(turn), width);
        }
    }

    private static double Wave(double x, double y) =>
        1.6 * Math.Sin(x / 61 + y / 23)
        + 0.7 * Math.Sin(x / 27 - y / 17 + 2)
        + 0.25 * Math.Sin(x / 13 + y / 9 + 4);
}
