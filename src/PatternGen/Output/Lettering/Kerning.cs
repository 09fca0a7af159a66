namespace PatternGen;

/// <summary>
/// Pairs of characters that stand closer than their margins, because their shapes open towards each other.
/// </summary>
internal static class Kerning
{
    /// <summary>Two characters and a space.</summary>
    private const int PairLength = 3;

    private const string FarIn = "AT TA AV VA LT LV LY L’ P. P, F. F, T. T, V. V, Y. Y, AY YA";

    private const string In =
        "AW WA LW W. W, Ta Tc Td Te Tg To Tq Ts Ya Yc Yd Ye Yg Yo Yq Ys PA FA";

    private const string ALittleIn = "Va Vc Vd Ve Vg Vo Vq Vs v. v, w. w, y. y, r. r, A’ Fa Fe Fo";

    /// <summary>Returns how much closer the two stand than their margins say.</summary>
    internal static double Between(char left, char right)
    {
        if (Holds(FarIn, left, right))
            return 12;
        if (Holds(In, left, right))
            return 8;
        return Holds(ALittleIn, left, right) ? 5 : 0;
    }

    private static bool Holds(string pairs, char left, char right)
    {
        for (var i = 0; i < pairs.Length; i += PairLength)
            if (pairs[i] == left && pairs[i + 1] == right)
                return true;
        return false;
    }
}
