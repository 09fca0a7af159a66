using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Shows patterns as they will look once carved.</summary>
public static class PatternPreviews
{
    /// <summary>Returns a picture of the pattern as carved with a knife or bit.</summary>
    /// <param name="pattern">What is carved.</param>
    /// <param name="cutter">What it is carved with; it leans the walls.</param>
    public static CarvedPicture Preview(this Pattern pattern, Cutter cutter) =>
        new(Guard.NotNull(pattern), Guard.NotNull(cutter));
}
