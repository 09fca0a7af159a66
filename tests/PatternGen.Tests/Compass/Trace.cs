using System.Numerics;

namespace PatternGen.Tests.Compass;

/// <summary>What a replay has drawn: a line, or an arc or circle with its centre and radius.</summary>
internal sealed record Trace
{
    private const double Near = 1e-7;

    internal Complex Centre { get; private init; }

    /// <summary>0 for a straight line.</summary>
    internal double Radius { get; private init; }

    internal Complex Start { get; private init; }

    internal Complex End { get; private init; }

    internal bool IsWhole { get; private init; }

    /// <summary>Counter-clockwise from the start to the end.</summary>
    private double Sweep => Turn(Start, End);

    /// <summary>The point half-way.</summary>
    internal Complex Middle =>
        Radius == 0
            ? (Start + End) / 2
            : Centre + (Start - Centre) * Complex.FromPolarCoordinates(1, Sweep / 2);

    internal static Trace Circle(Complex centre, double radius) =>
        new()
        {
            Centre = centre,
            Radius = radius,
            IsWhole = true,
        };

    internal static Trace Arc(Complex centre, Complex start, Complex end) =>
        new()
        {
            Centre = centre,
            Radius = Complex.Abs(start - centre),
            Start = start,
            End = end,
        };

    internal static Trace Line(Complex start, Complex end) => new() { Start = start, End = end };

    /// <summary>A short arc through a place, ten degrees to each side.</summary>
    internal static Trace Tick(Complex needle, Complex at)
    {
        var turn = Complex.FromPolarCoordinates(1, Math.PI / 18);
        return Arc(needle, needle + (at - needle) / turn, needle + (at - needle) * turn);
    }

    internal static double LeftBy(Complex place, Complex from, Complex to) =>
        (Complex.Conjugate(to - from) * (place - from)).Imaginary / Complex.Abs(to - from);

    internal List<Complex> Crossings(Trace other)
    {
        var places = (Radius, other.Radius) switch
        {
            // Parts of one line or circle meet in their ends.
            _ when IsAlong(other) => [.. Ends.Where(end => other.Ends.Any(at => Same(end, at)))],
            (0, 0) => LineWithLine(other),
            (0, _) => LineWithRound(other),
            (_, 0) => other.LineWithRound(this),
            _ => RoundWithRound(other),
        };
        return [.. places.Where(place => Holds(place) && other.Holds(place))];
    }

    /// <summary>The part from an end to the first place where it meets other lines, the end itself not counted.</summary>
    internal Trace UpTo(Complex end, IEnumerable<Trace> limits)
    {
        var isStart = Same(end, Start);
        (isStart || Same(end, End)).ShouldBeTrue();
        var place = limits
            .SelectMany(Crossings)
            .Where(place => !Same(place, end))
            .MinBy(place => isStart ? Covered(Start, place) : Covered(place, End));
        return isStart ? this with { End = place } : this with { Start = place };
    }

    private double Covered(Complex from, Complex to) =>
        Radius == 0 ? Complex.Abs(to - from) : Turn(from, to);

    private Complex[] Ends => IsWhole ? [] : [Start, End];

    private static bool Same(Complex one, Complex other) => Complex.Abs(one - other) < Near;

    private bool IsAlong(Trace other) =>
        Radius == 0
            ? other.Radius == 0
                && Math.Abs(LeftBy(other.Start, Start, End)) < Near
                && Math.Abs(LeftBy(other.End, Start, End)) < Near
            : Same(Centre, other.Centre) && Math.Abs(Radius - other.Radius) < Near;

    private bool Holds(Complex place)
    {
        if (IsWhole)
            return true;
        if (Radius > 0)
            return Complex.Abs(place - Start) < Near
                || Complex.Abs(place - End) < Near
                || Turn(Start, place) < Sweep;
        var along = (Complex.Conjugate(End - Start) * (place - Start)).Real;
        var length = Complex.Abs(End - Start);
        return along / length > -Near && along / length < length + Near;
    }

    private double Turn(Complex from, Complex to)
    {
        var turn = ((to - Centre) / (from - Centre)).Phase;
        return turn > 0 ? turn : turn + Math.Tau;
    }

    private IEnumerable<Complex> LineWithLine(Trace other)
    {
        var (one, two) = (End - Start, other.End - other.Start);
        var share =
            (Complex.Conjugate(other.Start - Start) * two).Imaginary
            / (Complex.Conjugate(one) * two).Imaginary;
        yield return Start + share * one;
    }

    private IEnumerable<Complex> LineWithRound(Trace round)
    {
        var along = (End - Start) / Complex.Abs(End - Start);
        var foot = Start + along * (Complex.Conjugate(along) * (round.Centre - Start)).Real;
        return Symmetric(foot, along, round.Radius, Complex.Abs(foot - round.Centre));
    }

    private IEnumerable<Complex> RoundWithRound(Trace other)
    {
        var way = other.Centre - Centre;
        var distance = Complex.Abs(way);
        // The law of cosines, for the foot of the crossings on the way between the centres.
        var share =
            (distance * distance + Radius * Radius - other.Radius * other.Radius) / (2 * distance);
        var foot = Centre + way / distance * share;
        return Symmetric(foot, Complex.ImaginaryOne * way / distance, Radius, Math.Abs(share));
    }

    private static IEnumerable<Complex> Symmetric(
        Complex foot,
        Complex along,
        double radius,
        double distance
    )
    {
        var square = (radius - distance) * (radius + distance);
        if (Math.Abs(square) < Near)
            return [foot];
        var half = Math.Sqrt(square);
        return square < 0 ? [] : [foot - along * half, foot + along * half];
    }
}
