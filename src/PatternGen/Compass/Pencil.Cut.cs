using PatternGen.Geometry;

namespace PatternGen;

public sealed partial class Pencil
{
    /// <summary>Marks where the compass, as it is set, cuts a curve.</summary>
    /// <param name="needle">Where the needle stands.</param>
    /// <param name="curve">The curve that the pencil meets.</param>
    /// <param name="choice">Which crossing is meant; not needed where there is only one.</param>
    /// <exception cref="ArgumentException">The point or curve is of another drawing.</exception>
    /// <exception cref="InvalidOperationException">The compass is not set.</exception>
    /// <exception cref="PatternException">The pencil does not meet the curve, or the choice does not tell where.</exception>
    public MarkedPoint Cut(MarkedPoint needle, DrawnCurve curve, CrossingChoice? choice = null)
    {
        var setting = Drawing.PresentSetting();
        var swept = new Circle(Drawing.Of(needle), setting);
        var places = CurveCrossings.Between(Drawing.Of(curve), swept, Drawing.Tolerance);
        if (places.Count == 0)
            throw OutOfReach(needle, curve.Curve, setting);
        var at = Chosen(places, choice);
        var marked = Drawing.Marks.Lettered(at);
        Drawing.Add(
            new(Drawing.NextNumber, StepKind.Cut)
            {
                Setting = setting,
                Needles = [needle],
                Curves = [curve],
                Choice = choice,
                Marked = [marked],
                Drawn = [Tick(needle.Point, at)],
                OutsideOf = Drawing.EdgeInside([needle]),
            }
        );
        return marked;
    }

    /// <summary>Transfers a length: takes the distance of two points into the compass and cuts a curve with it.</summary>
    /// <param name="from">Start of the length.</param>
    /// <param name="to">End of the length.</param>
    /// <param name="needle">Where the length is to start now.</param>
    /// <param name="along">The line (or other curve) on which it is to end.</param>
    /// <param name="choice">To which side; not needed where the compass cuts the line only once.</param>
    /// <inheritdoc cref="Cut"/>
    public MarkedPoint Transfer(
        MarkedPoint from,
        MarkedPoint to,
        MarkedPoint needle,
        DrawnCurve along,
        CrossingChoice? choice = null
    )
    {
        Guard.NotNull(needle);
        Guard.NotNull(along);
        SetRadius(from, to);
        return Cut(needle, along, choice);
    }

    private PatternException OutOfReach(MarkedPoint needle, Curve curve, double setting)
    {
        var (nearest, farthest) = CurveCrossings.Reach(curve, needle.Point, Drawing.Tolerance);
        return new(
            $"From {needle.Label}, a compass set to {Guard.Text(setting)} mm does not meet the curve, which lies {Guard.Text(nearest)} to {Guard.Text(farthest)} mm away.",
            needle.Point,
            [$"a setting between {Guard.Text(nearest)} and {Guard.Text(farthest)} mm"]
        );
    }

    /// <summary>The short arc that finds a place: ten degrees to each side, enough to see where it crosses.</summary>
    internal static DrawnCurve Tick(Point needle, Point at)
    {
        const double halfDegrees = 10;
        var toPlace = at - needle;
        return new(
            Segment.Arc(
                needle,
                toPlace.Length,
                toPlace.Direction - Angle.FromDegrees(halfDegrees),
                Angle.FromDegrees(2 * halfDegrees)
            ),
            PencilLine.Guide
        );
    }
}
