using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A station along a bent band: the origin of a repeat.</summary>
/// <param name="Line">The line that the band is bent along.</param>
/// <param name="Stations">The places along it.</param>
/// <param name="Half">Index of this one.</param>
internal readonly record struct BendStation(BendLine Line, Stations Stations, int Half)
{
    /// <summary>Where it lies.</summary>
    internal double X => Stations.At(Half);

    /// <summary>Where a place counted from here lies along the line.</summary>
    internal double XOf(BendPlace place) => Stations.Map(Half, place.X) + place.Beyond;

    /// <summary>The point where a place counted from here lies.</summary>
    internal Point PointOf(BendPlace place) => Line.Map(XOf(place), place.Y);

    /// <summary>Returns the frame of the station as the stretch sees it on which the middle of a chip lies.</summary>
    /// <param name="middle">x of the middle of the chip, counted from here.</param>
    internal Transform Frame(double middle)
    {
        // Near an end of a stretch the station itself may lie on the next one, or once round.
        var at = Line.Wrapped(X + middle);
        return Line.PieceAt(at).Frame(at - middle);
    }
}
