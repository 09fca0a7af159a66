using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Sets the pictures and sentences of a step sheet in rows, and writes them.</summary>
internal sealed class StepSheetWriter
{
    private const double Width = 190;
    private const double Margin = 8;
    private const double Gutter = 6;
    private const double TitleHeight = 4.5;
    private const double NoteHeight = 2.2;
    private const int Decimals = 4;

    private readonly StepSheet _sheet;
    private readonly List<StepCell> _cells = [];
    private readonly TextColumn _heading = new(new(Margin, -Margin), Width - 2 * Margin);
    private double _pen;

    internal StepSheetWriter(StepSheet sheet)
    {
        _sheet = sheet;
        _heading.Add(DrawingTitle.Of(sheet.Drawing, sheet.Wording), TitleHeight);
        _heading.Add(sheet.Wording.StepSheetNote, NoteHeight);
        _pen = _heading.Pen;
        AddCells();
    }

    internal void Write(OutputBuffer output)
    {
        var file = new SvgFile(output, new(0, 0, Width, Math.Ceiling(Margin - _pen)), Decimals);
        var title = DrawingTitle.Of(_sheet.Drawing, _sheet.Wording);
        file.Start(title, _sheet.Wording.StepCount(_cells.Count));
        file.Background(StepColours.Paper);
        _heading.Write(file, "heading");
        foreach (var cell in _cells)
            cell.Write(file);
        file.Finish();
    }

    /// <summary>Rows as high as their longest sentence.</summary>
    private void AddCells()
    {
        var columns = _sheet.Columns;
        var width = (Width - 2 * Margin - (columns - 1) * Gutter) / columns;
        var seen = new List<CompassStep>();
        foreach (var row in _sheet.Drawing.Instructions.Chunk(columns))
        {
            _pen -= Gutter;
            var lowest = _pen;
            for (var i = 0; i < row.Length; i++)
            {
                var corner = new Point(Margin + i * (width + Gutter), _pen);
                var cell = new StepCell(_sheet, row[i], [.. seen], corner, width);
                seen.Add(row[i]);
                _cells.Add(cell);
                lowest = Math.Min(lowest, cell.Bottom);
            }
            _pen = lowest;
        }
    }
}
