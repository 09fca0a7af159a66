namespace PatternGen;

/// <summary>How a section is coloured.</summary>
internal static class SectionColours
{
    internal const string Paper = "#fffdf8";
    internal const string Wood = "#ecd9b4";
    internal const string Grain = "#b98f57";
    internal const string Edge = "#3a2614";
    internal const string Surface = "#8d7350";
    internal const string Measure = "#35506b";
    internal const string Ink = "#2b2620";
}
