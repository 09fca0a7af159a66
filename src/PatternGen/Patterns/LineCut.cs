using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A V groove cut along a line: as wide all along, or tapering to a point at both ends.</summary>
/// <remarks>Immutable and safe to share between threads.</remarks>
public sealed class LineCut
{
    /// <summary>Creates a line cut that is as wide all along.</summary>
    /// <param name="path">The line at the bottom of the groove.</param>
    /// <param name="width">Width of the groove at the surface, in mm.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is not positive.</exception>
    public LineCut(Chain path, double width)
        : this(Guard.NotNull(path), Guard.Positive(width), GrooveProfile.Constant) { }

    private LineCut(Chain path, double width, GrooveProfile profile)
    {
        Path = path;
        Width = width;
        Profile = profile;
    }

    /// <summary>The line at the bottom of the groove.</summary>
    public Chain Path { get; }

    /// <summary>Width of the groove at the surface, in mm; of a tapering one, where it is widest.</summary>
    public double Width { get; }

    /// <summary>How the groove runs out at its ends. Default <see cref="GrooveProfile.Constant"/>.</summary>
    public GrooveProfile Profile { get; }

    /// <summary>Returns a line cut that tapers to a point at both ends, as <see cref="GrooveProfile.Tapering"/> says.</summary>
    /// <param name="path">The line at the bottom of the groove.</param>
    /// <param name="width">Width in mm at the surface where it is widest.</param>
    /// <param name="over">Length of the taper at either end in mm, along the path; if not given, the groove is widest in its middle only.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the length is not positive.</exception>
    /// <exception cref="PatternException">The groove is too wide to taper to a point over that length, or over half the path.</exception>
    public static LineCut Tapering(Chain path, double width, double? over = null)
    {
        Guard.NotNull(path);
        Guard.Positive(width);
        var profile = over is { } length
            ? GrooveProfile.TaperingOver(Guard.Positive(length, nameof(over)))
            : GrooveProfile.Tapering;
        profile.RefuseBlunt(path, width);
        return new(path, width, profile);
    }

    /// <summary>Returns the groove as a solid.</summary>
    /// <param name="cutter">What it is cut with, which leans the walls as for a chip of half the groove's width.</param>
    [Pure]
    public Groove CutWith(Cutter cutter) =>
        new(Path, Width, Guard.NotNull(cutter).WallAngleFor(Width / 2), Profile);

    /// <summary>A line cut as a tree places it; what held where it was drawn still does.</summary>
    internal static LineCut Placed(Chain path, double width, GrooveProfile profile) =>
        new(path, width, profile);
}
