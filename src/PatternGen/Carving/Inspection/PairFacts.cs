using PatternGen.Geometry;

namespace PatternGen;

/// <summary>How two chips lie to each other, in the first one's own frame. Repeats of both share it.</summary>
internal sealed class PairFacts
{
    internal static readonly PairFacts Apart = new([], [], null);

    internal PairFacts(Neck[] necks, SideTouch[] touches, Vector? parting)
    {
        Necks = necks;
        Touches = touches;
        Parting = parting;
    }

    /// <summary>Where the ground between them is narrower than on both sides of the place.</summary>
    internal Neck[] Necks { get; }

    /// <summary>Where a corner of one lies on a side of the other.</summary>
    internal SideTouch[] Touches { get; }

    /// <summary>The shortest way to move the second chip off the first, if they overlap.</summary>
    internal Vector? Parting { get; }
}

/// <summary>A place where the ground between two sides is narrowest.</summary>
/// <param name="Here">On the first chip.</param>
/// <param name="There">On the second.</param>
/// <param name="Corner">The corner of the first chip that it is, or -1.</param>
/// <param name="OtherCorner">The corner of the second chip that it is, or -1.</param>
/// <param name="IsBetweenTips">Whether both are tips.</param>
internal readonly record struct Neck(
    Point Here,
    Point There,
    int Corner,
    int OtherCorner,
    bool IsBetweenTips
)
{
    internal double Width => Here.DistanceTo(There);
}

/// <summary>A side that passes through a corner of the other chip.</summary>
/// <param name="At">Where.</param>
/// <param name="Along">Its direction there, with its chip on the left.</param>
/// <param name="Curvature">How it bends to the left.</param>
/// <param name="IsOfSecond">Whether it is the second chip's side.</param>
internal readonly record struct SideTouch(
    Point At,
    Vector Along,
    double Curvature,
    bool IsOfSecond
);
