using PatternGen.Geometry;

namespace PatternGen;

/// <summary>The frame of a station on a bent band.</summary>
internal static class BentStation
{
    /// <summary>Returns the frame of a station as the stretch sees it on which the middle of a chip lies.</summary>
    /// <param name="line">The line.</param>
    /// <param name="station">x of the station.</param>
    /// <param name="middle">x of the middle of the chip, counted from the station.</param>
    internal static Transform Frame(BendLine line, double station, double middle)
    {
        // Near an end of a stretch the station itself may lie on the next one, or once round.
        var at = line.Wrapped(station + middle);
        return line.PieceAcross(at, at).Frame(at - middle);
    }
}
