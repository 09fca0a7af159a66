using PatternGen.Geometry;

namespace PatternGen;

/// <summary>One step on the sheet: its picture, its number and its sentence.</summary>
internal sealed class StepCell
{
    private const double TextHeight = 2.3;
    private const double NumberHeight = 3.4;
    private const double Gap = 3;

    private readonly StepPicture _picture;
    private readonly Label _number;
    private readonly List<Label> _sentence = [];
    private readonly int _step;

    /// <param name="sheet">The sheet.</param>
    /// <param name="step">The step that is shown.</param>
    /// <param name="before">The steps before it.</param>
    /// <param name="corner">Upper left corner of the room.</param>
    /// <param name="width">Width of the room; the picture is as high as wide.</param>
    internal StepCell(
        StepSheet sheet,
        CompassStep step,
        IReadOnlyList<CompassStep> before,
        Point corner,
        double width
    )
    {
        _step = step.Number;
        _picture = new(sheet.Drawing, step, before, corner, width);
        var pen = corner - new Vector(0, width + Gap);
        var number = sheet.Wording.Number(step.Number, 0);
        _number = new(number, pen - new Vector(0, NumberHeight), NumberHeight);
        var indent = Lettering.Width(number, NumberHeight) + 0.6 * NumberHeight;
        foreach (var line in TextWrap.Lines(sheet.Wording.Step(step), TextHeight, width - indent))
        {
            _sentence.Add(new(line, pen + new Vector(indent, -TextHeight), TextHeight));
            pen -= new Vector(0, 1.8 * TextHeight);
        }
        Bottom = Math.Min(pen.Y, corner.Y - width - Gap - 1.4 * NumberHeight);
    }

    /// <summary>How far down it reaches.</summary>
    internal double Bottom { get; }

    internal void Write(SvgFile file)
    {
        var meaning = string.Join(' ', _sentence.Select(line => line.Text));
        _picture.Write(file, _step, $"{_number.Text}. {meaning}");
        file.StartGroup($"step-{_step}-text", null, SvgStyle.Line(StepColours.Ink, 0.25));
        file.Text(_number, 1.4 * StepColours.PenWidth * NumberHeight);
        foreach (var line in _sentence)
            file.Text(line, StepColours.PenWidth * TextHeight);
        file.EndGroup();
    }
}
