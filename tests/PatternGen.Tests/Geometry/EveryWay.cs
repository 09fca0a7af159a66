namespace PatternGen.Tests.Geometry;

/// <summary>Reruns a case for each first corner, both directions and several sizes, since none of them may matter.</summary>
internal static class EveryWay
{
    private static readonly double[] Scales = [1e-3, 0.1, 1, 37, 1e4];

    internal static void Check(Contour contour, Action<Contour, double> check)
    {
        foreach (var scale in Scales)
        {
            var scaled = contour.Transformed(Transform.Resize(scale));
            for (var i = 0; i < scaled.Count; i++)
            {
                check(scaled.StartingAt(i), scale);
                check(scaled.StartingAt(i).Reversed(), scale);
            }
        }
    }
}
