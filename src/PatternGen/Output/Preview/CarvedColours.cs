namespace PatternGen;

/// <summary>How carved wood is coloured.</summary>
internal static class CarvedColours
{
    internal const string Table = "#f6f3ee";
    internal const string Wood = "#e6d0a6";
    internal const string WoodEdge = "#a98a58";
    internal const string Grain = "#a77c45";
    internal const string Valley = "#6f4826";
    internal const string Shade = "#51280b";

    /// <summary>The light that catches on an edge: two chips side by side share it as their ridge.</summary>
    internal const string Edge = "#fbf0d8";

    internal const string Ink = "#5d4b37";

    /// <summary>The wood under depth colours: nothing that could be taken for one of them.</summary>
    internal const string Plain = "#fbfaf7";

    internal const string DepthEdge = "#4c4740";
    internal const string DepthLine = "#fff6e0";
    internal const string DepthLineOnColours = "#ffffff";
}
