using PatternGen.Geometry;

namespace PatternGen;

/// <summary>A band bent along a path: fits it and draws it. What rings, bands along paths and rounded frames share.</summary>
/// <remarks>
/// Made for a path, it knows <see cref="Line"/> and its length. <see cref="Solve"/> fits whole repeats; a layout that
/// decides for itself makes a plan of its own (<see cref="ClosedFit.Plan"/>, or <see cref="BandPlan"/> with any stations
/// along the line). <see cref="Draw"/> draws either.
/// </remarks>
internal sealed class BentBand
{
    private readonly TriangleBand _band;
    private readonly Fitting _fitting;
    private readonly BentStyle _style;
    private readonly BandSpan _span;

    private BentBand(
        TriangleBand band,
        Fitting fitting,
        BentStyle style,
        BandSpan span,
        BendLine line
    ) => (_band, _fitting, _style, _span, Line) = (band, fitting, style, span, line);

    /// <summary>The line, whose x counts along <see cref="BentStyle.PitchLine"/>.</summary>
    internal BendLine Line { get; }

    /// <summary>Returns a band along a path of lines and arcs that go on smoothly.</summary>
    /// <param name="path">The path; round a closed one the band closes.</param>
    /// <param name="band">The band.</param>
    /// <param name="offset">Distance in mm from the path to the lowest rule, positive to the left of travel.</param>
    /// <param name="fitting">How it is fitted; margins, ends and a centre motif on open paths only.</param>
    /// <param name="style">How it is bent.</param>
    /// <param name="from">Where the first repeat begins on a closed path: distance along it in mm.</param>
    /// <exception cref="PatternException">The path has a corner, or an arc too tight for the band.</exception>
    internal static BentBand Along(
        SegmentRun path,
        TriangleBand band,
        double offset,
        Fitting fitting,
        BentStyle style,
        double from = 0
    )
    {
        var span = style.Span(band, offset, fitting);
        return new(band, fitting, style, span, BendLineBuilder.Along(path, span, from));
    }

    /// <summary>Returns a band along an arc or round a circle about the origin.</summary>
    /// <param name="radius">Radius of the path.</param>
    /// <param name="from">Direction from the centre to where the first repeat begins.</param>
    /// <param name="sweep">Positive counter-clockwise; a whole turn for a circle.</param>
    /// <param name="band">The band.</param>
    /// <param name="offset">Distance in mm from the path to the lowest rule, positive to the left of travel.</param>
    /// <param name="fitting">How it is fitted.</param>
    /// <param name="style">How it is bent.</param>
    /// <exception cref="PatternException">The circle is too small for the band.</exception>
    internal static BentBand Round(
        double radius,
        Angle from,
        Angle sweep,
        TriangleBand band,
        double offset,
        Fitting fitting,
        BentStyle style
    )
    {
        var span = style.Span(band, offset, fitting);
        var line = BendLineBuilder.Round(Point.Origin, radius, from, sweep, span);
        return new(band, fitting, style, span, line);
    }

    /// <summary>Fits whole repeats to the line.</summary>
    /// <exception cref="PatternException">No fit is possible.</exception>
    internal BandPlan Solve() =>
        Line.IsClosed
            ? ClosedFit.Solve(Line.Length, _band, _fitting)
            : new FitSolver(Line.Length, _band, _fitting, x => Line.Map(x, 0)).Solve();

    /// <summary>Draws the band: chips, rules all along and grooves.</summary>
    /// <param name="plan">Where its parts lie along the line.</param>
    /// <exception cref="PatternException">Straight sides would cut across a rule.</exception>
    internal PatternNode Draw(BandPlan plan)
    {
        _span.RefuseStraightSides(Line, plan.Fit.Pitch);
        var sides = new SideBender(Line, _style.Sides, _style.Accuracy, _band.Rules);
        var track = new BentTrack(Line, new(Line, sides));
        return new BandDrawing(_band, _fitting, plan, track).Draw(0, Line.Length);
    }
}
