namespace PatternGen;

/// <summary>A stretch of a wall whose foot runs between two parameters of its site, and the site that meets it in the valley.</summary>
/// <param name="From">Where it begins along its own site.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Partner">Number of the other site, or <see cref="OwnCentre"/>.</param>
/// <param name="Curve">How far the other site lets a disc grow.</param>
internal readonly record struct RoofPiece(double From, double To, int Partner, RoofCurve Curve)
{
    /// <summary>Instead of a partner: the wall of an arc that runs down to the arc's own centre.</summary>
    internal const int OwnCentre = -1;

    internal double Middle => 0.5 * (From + To);
}
