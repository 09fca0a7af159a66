using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A picture of the carved surface from straight above: every wall as bright as it faces the light, on wood.</summary>
/// <remarks>
/// Walls lean as the cutter leans them, so that wide chips under <see cref="Knife.NoDeeperThan"/> look as flat as they
/// are. By Lambert's law a wall that falls at the angle a is as bright as the cosine between its normal, (d sin a, cos a) for
/// the direction d in which it falls, and the light; a part of the light comes from the whole sky. Layout lines are left out, as they are cleaned
/// off the wood. It is a picture: true in size, with walls of curved sides in facets of 4 degrees. Each
/// method returns a changed copy. Immutable and safe to share between threads.
/// </remarks>
public sealed class CarvedPicture
{
    private const string Kind = "a picture of the carved surface";

    internal CarvedPicture(Pattern pattern, Cutter cutter) => (Pattern, Cutter) = (pattern, cutter);

    private CarvedPicture(CarvedPicture other)
        : this(other.Pattern, other.Cutter)
    {
        LightDirection = other.LightDirection;
        LightHeight = other.LightHeight;
        DepthLineStep = other.DepthLineStep;
        IsInDepthColours = other.IsInDepthColours;
        Wording = other.Wording;
    }

    /// <summary>What is carved.</summary>
    public Pattern Pattern { get; }

    /// <summary>What it is carved with.</summary>
    public Cutter Cutter { get; }

    /// <summary>Where the light comes from, in degrees clockwise from the top of the sheet, as on a compass. Default 315, the upper left.</summary>
    public double LightDirection { get; private init; } = 315;

    /// <summary>Height of the light above the surface in degrees. Default 45.</summary>
    public double LightHeight { get; private init; } = 45;

    /// <summary>Depth in mm from one depth line to the next; null, the default, for none.</summary>
    public double? DepthLineStep { get; private init; }

    /// <summary>Whether depths are shown by colours in place of wood. Default no.</summary>
    public bool IsInDepthColours { get; private init; }

    /// <summary>The words on the picture. Default English.</summary>
    public Wording Wording { get; private init; } = Wording.English;

    /// <summary>Returns the picture under another light.</summary>
    /// <param name="direction">Where the light comes from, in degrees from 0 to 360, clockwise from the top of the sheet: 90 is the right.</param>
    /// <param name="height">
    /// Above the surface, in degrees, more than 0 and at most 90. Low light shows small chips; under 90, straight above, all
    /// walls of one angle look alike.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">An angle is out of range.</exception>
    [Pure]
    public CarvedPicture LitFrom(double direction, double height)
    {
        Guard.Within(direction, 0, 360);
        if (!(height is > 0 and <= 90))
            Guard.Throw(
                nameof(height),
                "The light's height in degrees",
                height,
                "must be more than 0 and at most 90"
            );
        return new(this) { LightDirection = direction, LightHeight = height };
    }

    /// <summary>Returns the picture with lines of equal depth: exact parallels of the outlines.</summary>
    /// <param name="step">Depth in mm from line to line. At walls of 65 degrees, lines 1 mm apart in depth lie 0.466 mm apart on the picture.</param>
    /// <exception cref="ArgumentOutOfRangeException">The step is not from 0.05 to 100 mm.</exception>
    [Pure]
    public CarvedPicture WithDepthLines(double step) =>
        new(this) { DepthLineStep = Guard.Within(step, 0.05, 100) };

    /// <summary>Returns the picture with depths shown by colours, from light sand to dark blue, and a scale in mm that ends at the deepest chip.</summary>
    [Pure]
    public CarvedPicture WithDepthColours() => new(this) { IsInDepthColours = true };

    /// <summary>Returns the picture with other words.</summary>
    [Pure]
    public CarvedPicture WithWording(Wording wording) =>
        new(this) { Wording = Guard.NotNull(wording) };

    /// <summary>Saves the picture.</summary>
    /// <param name="path">Path that ends in .svg.</param>
    /// <exception cref="ArgumentException">It does not.</exception>
    /// <exception cref="PatternException">The pattern is empty, or a chip can't be cut as it should.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    public void Save(string path) => PictureFile.Save(path, Kind, Write);

    /// <summary>Saves the picture without holding up the caller.</summary>
    /// <param name="path">Path that ends in .svg.</param>
    /// <param name="cancellation">Asks to stop; then no file is left and an older one is as it was.</param>
    /// <inheritdoc cref="Save(string)"/>
    public Task SaveAsync(string path, CancellationToken cancellation = default) =>
        PictureFile.SaveAsync(path, Kind, Write, cancellation);

    /// <summary>Writes the picture to a stream as SVG, forwards only; the stream stays open.</summary>
    /// <param name="stream">Any writable stream.</param>
    /// <exception cref="ArgumentException">The stream can't be written to.</exception>
    /// <exception cref="PatternException">The pattern is empty, or a chip can't be cut as it should; then nothing is written.</exception>
    public void Save(Stream stream) => PictureFile.Save(stream, Write);

    /// <summary>Writes the picture to a stream by its asynchronous methods; the stream stays open.</summary>
    /// <param name="stream">Any writable stream.</param>
    /// <param name="cancellation">Asks to stop; the stream may then hold a part of the picture.</param>
    /// <inheritdoc cref="Save(Stream)"/>
    public Task SaveAsync(Stream stream, CancellationToken cancellation = default) =>
        PictureFile.SaveAsync(stream, Write, cancellation);

    private void Write(OutputBuffer output) => new CarvedPictureWriter(this).Write(output);
}
