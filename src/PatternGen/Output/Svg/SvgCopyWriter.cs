using System.Text;

namespace PatternGen;

/// <summary>Writes shapes that are drawn many times: each once, and then references that move and turn it.</summary>
internal sealed class SvgCopyWriter(OutputBuffer output, SvgSheet sheet, int decimals)
{
    /// <summary>Writes the shapes, unseen, each with its first corner at the origin.</summary>
    internal void Define(IReadOnlyList<ChipShape> shapes)
    {
        output.Write("<defs>\n"u8);
        for (var i = 0; i < shapes.Count; i++)
            Define(i, shapes[i]);
        output.Write("</defs>\n"u8);
    }

    internal void Use(ChipCopy copy)
    {
        output.Write("<use href=\"#chip-"u8);
        output.Write(copy.Shape + 1);
        var (x, y) = (sheet.X(copy.At.X), sheet.Y(copy.At.Y));
        if (copy.Degrees == 0)
            Moved(x, y);
        else
            MovedAndTurned(x, y, copy.Degrees);
        output.Write("/>\n"u8);
    }

    private void Define(int number, ChipShape shape) =>
        new SvgPathWriter(
            output,
            SvgSheet.From(shape.Corners[0].Point),
            RepeatedShapes.Decimals(decimals)
        ).Chip(new(default, shape), Encoding.ASCII.GetBytes($" id=\"chip-{number + 1}\""));

    private void Moved(double x, double y)
    {
        output.Write("\" x=\""u8);
        output.Write(x, decimals);
        output.Write("\" y=\""u8);
        output.Write(y, decimals);
        output.Write("\""u8);
    }

    private void MovedAndTurned(double x, double y, double degrees)
    {
        output.Write("\" transform=\"translate("u8);
        output.Write(x, decimals);
        output.Write(" "u8);
        output.Write(y, decimals);
        // With y turned over, SVG counts turns clockwise.
        output.Write(") rotate("u8);
        output.Write(-degrees, ChipCopy.TurnDecimals);
        output.Write(")\""u8);
    }
}
