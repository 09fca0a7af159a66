namespace PatternGen;

/// <summary>How a step sheet looks: black and a warm grey, so that a plain printer shows what is new.</summary>
internal static class StepColours
{
    internal const string Paper = "#fffdf9";
    internal const string Frame = "#d9cfbf";
    internal const string Ink = "#1d1a17";
    internal const string Before = "#b5aa9a";
    internal const string BeforeGuide = "#d8d0c4";
    internal const string New = "#8a2f14";

    /// <summary>Width of the pen that writes, as a share of the text's height.</summary>
    internal const double PenWidth = 0.1;
}
