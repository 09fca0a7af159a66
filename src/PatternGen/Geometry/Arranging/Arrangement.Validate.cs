namespace PatternGen.Geometry;

public sealed partial class Arrangement
{
    /// <summary>Returns what is wrong with this arrangement, a sentence each; nothing if it is sound, as it always should be.</summary>
    /// <remarks>
    /// Sound means: each half-edge and its twin run between the same two nodes, the other way; next and previous undo each
    /// other and stay with their face; each node's half-edges leave it, in order; edges meet in nodes only; each bounded face
    /// has an area; the areas of the bounded faces add up to that within the outer boundaries; and nodes − edges + faces =
    /// 1 + components (Euler).
    /// </remarks>
    public IReadOnlyList<string> Validate() => [.. ArrangementCheck.Of(this)];

    /// <summary>Area within the outer boundary of each component that lies in the outer face.</summary>
    internal double AreaWithinBoundary => -HolesOf(0).Sum(_walks.AreaOf);
}
