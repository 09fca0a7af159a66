namespace PatternGen.Geometry;

/// <summary>A piece of a free curve, with a parameter from 0 to 1 and no corner inside, save where it stands still.</summary>
internal abstract class CurvePiece
{
    /// <summary>Whether it is a straight line.</summary>
    internal virtual bool IsStraight => false;

    /// <summary>Where it is, and its derivative.</summary>
    internal abstract CurvePlace At(double t);
}
