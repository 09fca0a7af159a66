using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A valley as a walk passes it.</summary>
internal readonly record struct ValleyStep(Valley Valley, bool IsBackwards)
{
    internal RoofNode From => IsBackwards ? Valley.End : Valley.Start;

    internal RoofNode To => IsBackwards ? Valley.Start : Valley.End;

    /// <summary>The point of the outline where a wall starts that ends where the step begins.</summary>
    internal Point FootAtStart => Valley.FootAt(IsBackwards ? 1 : 0);
}
