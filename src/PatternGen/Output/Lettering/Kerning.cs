namespace PatternGen;

/// <summary>
/// Pairs of characters that stand closer than their margins, because their shapes open towards each other.
/// </summary>
internal static class Kerning
{
    private static readonly Dictionary<(char Left, char Right), double> Pairs = Read(
        (12, "AT TA AV VA LT LV LY L’ P. P, F. F, T. T, V. V, Y. Y, AY YA"),
        (8, "AW WA LW W. W, Ta Tc Td Te Tg To Tq Ts Ya Yc Yd Ye Yg Yo Yq Ys PA FA"),
        (5, "Va Vc Vd Ve Vg Vo Vq Vs v. v, w. w, y. y, r. r, A’ Fa Fe Fo")
    );

    /// <summary>Returns how much closer the two stand than their margins say.</summary>
    internal static double Between(char left, char right) => Pairs.GetValueOrDefault((left, right));

    private static Dictionary<(char, char), double> Read(
        params (double Closer, string Pairs)[] groups
    ) =>
        groups
            .SelectMany(
                group => group.Pairs.Split(' '),
                (group, pair) => (group.Closer, Pair: pair)
            )
            .ToDictionary(entry => (entry.Pair[0], entry.Pair[1]), entry => entry.Closer);
}
