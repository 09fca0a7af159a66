using System.Diagnostics.Contracts;
using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A cut through a carved board along a line: thickness, the profile of the chips, and their depths in numbers.</summary>
/// <remarks>
/// True size: 1 mm is 1 mm, along and down. The profile has a corner wherever the line crosses an outline, a valley or the
/// boundary of two walls, computed exactly; beside arcs, where it is curved, its chords are within 0.005 mm. Immutable and safe to
/// share between threads.
/// </remarks>
public sealed class SectionDrawing
{
    private const string Kind = "a section";

    internal SectionDrawing(Pattern pattern, SectionLine line, Stock stock, Cutter cutter)
    {
        (Pattern, Line, Stock, Cutter) = (pattern, line, stock, cutter);
        Wood = SectionWood.Of(pattern, line);
        var survey = new SectionSurvey(line, cutter, stock);
        pattern.Root.Draw(survey, LayerSet.Chips | LayerSet.LineCuts);
        if (survey.Stretches.Count == 0)
            throw ThroughNothing(survey.Nearest);
        Grain = survey.Grain ?? Vector.Towards(stock.Grain);
        var profile = new SectionProfile(line, survey.Stretches);
        (Profile, Cuts) = (profile.Places, profile.Cuts);
    }

    private SectionDrawing(SectionDrawing other)
    {
        (Pattern, Line, Stock, Cutter) = (other.Pattern, other.Line, other.Stock, other.Cutter);
        (Wood, Grain) = (other.Wood, other.Grain);
        (Profile, Cuts) = (other.Profile, other.Cuts);
        (Exaggeration, Wording) = (other.Exaggeration, other.Wording);
    }

    /// <summary>What is carved.</summary>
    public Pattern Pattern { get; }

    /// <summary>The wood.</summary>
    public Stock Stock { get; }

    /// <summary>What it is carved with.</summary>
    public Cutter Cutter { get; }

    /// <summary>Where the section starts.</summary>
    public Point From => Line.From;

    /// <summary>Where it ends.</summary>
    public Point To => Line.To;

    /// <summary>Its length in mm.</summary>
    public double Length => Line.Length;

    /// <summary>
    /// The carved surface from start to end: straight between one place and the next. Where a wall is upright, two places
    /// at one distance follow each other. Depths are true, whatever the drawing exaggerates.
    /// </summary>
    public IReadOnlyList<SectionPlace> Profile { get; }

    /// <summary>The chips and grooves that it runs through, in the order in which they are entered; one that is left and entered again is there twice.</summary>
    public IReadOnlyList<SectionCut> Cuts { get; }

    /// <summary>How many times as large as true depths and thickness are drawn. Default 1: true size.</summary>
    public double Exaggeration { get; private init; } = 1;

    /// <summary>The words on the drawing. Default English.</summary>
    public Wording Wording { get; private init; } = Wording.English;

    internal SectionLine Line { get; }

    /// <summary>Stretches of the line that lie on wood, in order.</summary>
    internal IReadOnlyList<(double Start, double End)> Wood { get; }

    /// <summary>Direction of the grain, of length 1.</summary>
    internal Vector Grain { get; }

    /// <summary>Returns the drawing with depths and thickness larger than true; it says so.</summary>
    /// <param name="times">From 1, true size, to 20.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is out of range.</exception>
    [Pure]
    public SectionDrawing WithDepthExaggerated(double times) =>
        new(this) { Exaggeration = Guard.Within(times, 1, 20) };

    /// <summary>Returns the drawing with other words.</summary>
    [Pure]
    public SectionDrawing WithWording(Wording wording) =>
        new(this) { Wording = Guard.NotNull(wording) };

    /// <summary>Saves the drawing.</summary>
    /// <param name="path">Path that ends in .svg.</param>
    /// <exception cref="ArgumentException">It does not.</exception>
    /// <exception cref="IOException">The file can't be written; an older one of that name is as it was.</exception>
    public void Save(string path) => PictureFile.Save(path, Kind, Write);

    /// <summary>Saves the drawing without holding up the caller.</summary>
    /// <param name="path">Path that ends in .svg.</param>
    /// <param name="cancellation">Asks to stop; then no file is left and an older one is as it was.</param>
    /// <inheritdoc cref="Save(string)"/>
    public Task SaveAsync(string path, CancellationToken cancellation = default) =>
        PictureFile.SaveAsync(path, Kind, Write, cancellation);

    /// <summary>Writes the drawing to a stream as SVG, forwards only; the stream stays open.</summary>
    /// <param name="stream">Any writable stream.</param>
    /// <exception cref="ArgumentException">The stream can't be written to.</exception>
    public void Save(Stream stream) => PictureFile.Save(stream, Write);

    /// <summary>Writes the drawing to a stream by its asynchronous methods; the stream stays open.</summary>
    /// <param name="stream">Any writable stream.</param>
    /// <param name="cancellation">Asks to stop; the stream may then hold a part of the drawing.</param>
    /// <inheritdoc cref="Save(Stream)"/>
    public Task SaveAsync(Stream stream, CancellationToken cancellation = default) =>
        PictureFile.SaveAsync(stream, Write, cancellation);

    private void Write(OutputBuffer output) => new SectionWriter(this).Write(output);

    private PatternException ThroughNothing(Point? nearest) =>
        new(
            $"The section from {From} to {To} runs through no chip and no groove.",
            From,
            nearest is { } chip
                ? [$"a line through {chip}, where the nearest chip is deepest"]
                : ["chips or line cuts before the section"]
        );
}
