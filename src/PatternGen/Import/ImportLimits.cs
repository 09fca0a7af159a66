using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>What a file may ask of its reader: a file beyond them is refused in one clear error, before it costs time or memory.</summary>
/// <remarks>Each method returns a changed copy. Immutable and safe to share between threads.</remarks>
public sealed class ImportLimits
{
    private ImportLimits() { }

    private ImportLimits(ImportLimits other)
    {
        Bytes = other.Bytes;
        Elements = other.Elements;
        Segments = other.Segments;
        Depth = other.Depth;
    }

    /// <summary>256 MB, a million elements, 4 million segments, 64 levels.</summary>
    public static ImportLimits Default { get; } = new();

    /// <summary>Largest file in bytes. Default 256 MB (268,435,456).</summary>
    public long Bytes { get; private init; } = 256L << 20;

    /// <summary>Most elements (entities), those that references and arrays repeat counted each time. Default 1,000,000.</summary>
    public int Elements { get; private init; } = 1_000_000;

    /// <summary>Most lines and arcs that are made of them. Default 4,000,000.</summary>
    public int Segments { get; private init; } = 4_000_000;

    /// <summary>Deepest nesting of groups, references and blocks. Default 64.</summary>
    public int Depth { get; private init; } = 64;

    /// <summary>Returns limits with another largest file.</summary>
    /// <param name="bytes">At least 1.</param>
    [Pure]
    public ImportLimits WithBytes(long bytes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(bytes, 1);
        return new(this) { Bytes = bytes };
    }

    /// <summary>Returns limits with another number of elements.</summary>
    /// <param name="elements">At least 1.</param>
    [Pure]
    public ImportLimits WithElements(int elements) =>
        new(this) { Elements = Guard.Within(elements, 1, int.MaxValue) };

    /// <summary>Returns limits with another number of segments.</summary>
    /// <param name="segments">At least 1.</param>
    [Pure]
    public ImportLimits WithSegments(int segments) =>
        new(this) { Segments = Guard.Within(segments, 1, int.MaxValue) };

    /// <summary>Returns limits with another depth.</summary>
    /// <param name="depth">From 1 to 256; deeper could exhaust the stack.</param>
    [Pure]
    public ImportLimits WithDepth(int depth) => new(this) { Depth = Guard.Within(depth, 1, 256) };
}
