namespace PatternGen.Gallery;

/// <summary>What the program tells a script.</summary>
internal static class ExitCode
{
    internal const int Done = 0;

    /// <summary>The pattern is impossible, or a file could not be written.</summary>
    internal const int Failed = 1;

    /// <summary>The command line itself is wrong.</summary>
    internal const int Usage = 2;

    /// <summary>Stopped by the user, as shells number it.</summary>
    internal const int Cancelled = 130;
}
