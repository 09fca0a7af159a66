namespace PatternGen;

/// <summary>
/// The digits, as <see cref="GlyphSheet"/> reads them. All are equally wide, so that numbers line up in columns.
/// </summary>
internal static class DigitGlyphs
{
    internal const string Sheet = """
        0 11 11  0,50n ~ 7,86@63 ~ 25,100e ~ 43,86@297 ~ 50,50s ~ 43,14@243 ~ 25,0w ~ 7,14@117 ~ 0,50n
        1 20 31  0,80 21,100 21,0
        2 11 11  1,78 ~ 25,100e ~ 48,75s ~ 38,48 0,0 50,0
        3 11 12  2,86 ~ 24,100e ~ 46,76s ~ 24,53 17,53 | 24,53e ~ 49,27s ~ 24,0w ~ 0,15
        4 10 10  38,0 38,100 0,27 52,27
        5 11 11  45,100 6,100 3,54@48 ~ 25,63e ~ 50,32s ~ 24,0w ~ 0,14
        6 11 11  43,92 ~ 28,100w ~ 7.5,82@246 ~ 0,38s ~ 25,0e ~ 50,31n ~ 26,61w ~ 1,40
        7 11 11  0,100 50,100 17,0
        8 11 11  25,54w ~ 4,77n ~ 25,100e ~ 46,77s ~ 25,54w ~ 0,27s ~ 25,0e ~ 50,27n ~ 25,54w
        9 11 11  7,8 ~ 22,0e ~ 42.5,18@66 ~ 50,62n ~ 25,100w ~ 0,69s ~ 24,39e ~ 49,60
        """;
}
