namespace PatternGen;

public sealed partial class TriangleBand
{
    /// <summary>Rows in different strips can't overlap; two in one strip can only if they fill each other's gaps.</summary>
    private static void RefuseOverlaps(TriangleRow[] ordered)
    {
        for (var i = 0; i < ordered.Length; i++)
        for (var j = i + 1; j < ordered.Length; j++)
        {
            var (a, b) = (ordered[i], ordered[j]);
            if (b.LowerRule >= a.UpperRule || FillEachOther(a, b))
                continue;
            throw new ArgumentException(
                $"The rows between rules {a.LowerRule} and {a.UpperRule} and between {b.LowerRule} and {b.UpperRule} would overlap. "
                    + "Two rows share a strip when they point opposite ways, one of them staggered, with upright tips and "
                    + "opposite curves."
            );
        }
    }

    private static bool FillEachOther(TriangleRow a, TriangleRow b) =>
        a.LowerRule == b.LowerRule
        && a.UpperRule == b.UpperRule
        && a.Pointing != b.Pointing
        && a.IsStaggered != b.IsStaggered
        && a.Lean == 0
        && b.Lean == 0
        && a.LeftSagitta == -b.RightSagitta
        && a.RightSagitta == -b.LeftSagitta;
}
