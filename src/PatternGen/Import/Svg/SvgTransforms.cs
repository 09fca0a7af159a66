using Svg.Transforms;

namespace PatternGen;

/// <summary>Brings the transforms of the object model into frames.</summary>
internal static class SvgTransforms
{
    /// <summary>A matrix is four single floats; its rounding, as a share of a coordinate.</summary>
    private const double OfMatrix = 2 * SvgFrame.Digit;

    /// <summary>An angle is a single float of up to a whole turn, 2π times the radius.</summary>
    private const double OfTurn = Math.Tau * SvgFrame.Digit;

    /// <summary>Returns the frame inside a list of transforms; the first is the outermost.</summary>
    internal static SvgFrame Within(this SvgFrame frame, SvgTransformCollection? transforms)
    {
        foreach (var transform in transforms ?? [])
            frame = Within(frame, transform);
        return frame;
    }

    private static SvgFrame Within(SvgFrame frame, SvgTransform transform) =>
        transform switch
        {
            SvgTranslate move => frame.Within(
                Affine.Move(move.X, move.Y),
                share: 0,
                Largest(move.X, move.Y)
            ),
            SvgScale scale => frame.Within(Affine.Scale(scale.X, scale.Y), OfMatrix, reach: 0),
            SvgRotate turn => frame.Within(
                Affine.Move(turn.CenterX, turn.CenterY)
                    * Affine.Turn(turn.Angle)
                    * Affine.Move(-turn.CenterX, -turn.CenterY),
                OfTurn,
                Largest(turn.CenterX, turn.CenterY)
            ),
            SvgSkew skew => frame.Within(
                new(1, Tangent(skew.AngleY), Tangent(skew.AngleX), 1, 0, 0),
                OfMatrix,
                reach: 0
            ),
            SvgShear shear => frame.Within(new(1, shear.Y, shear.X, 1, 0, 0), OfMatrix, reach: 0),
            SvgMatrix { Points: [var a, var b, var c, var d, var e, var f] } => frame.Within(
                new(a, b, c, d, e, f),
                OfMatrix,
                Largest(e, f)
            ),
            _ => throw new ImportException(
                $"The transform {transform.GetType().Name} is not one of SVG's.",
                null,
                ["matrix, translate, scale, rotate, skewX or skewY"]
            ),
        };

    private static double Tangent(double degrees) => Math.Tan(double.DegreesToRadians(degrees));

    private static double Largest(double x, double y) => Math.Max(Math.Abs(x), Math.Abs(y));
}
