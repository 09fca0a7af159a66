namespace PatternGen;

/// <summary>Reads the curves of a DXF file.</summary>
/// <remarks>
/// The format orders its sections: header, layers and blocks come before the entities, so that these are drawn as they are
/// read and the file is never held. What is read of a block is kept to be drawn where it is placed.
/// </remarks>
internal sealed class DxfReader
{
    private readonly DxfGroupReader _groups;
    private readonly ImportedCurves _curves;
    private readonly DxfLayerTable _layers;
    private readonly DxfBlockTable _blocks = new();
    private readonly DxfHeader _header = new();
    private readonly DxfPen _pen;
    private DxfUnit? _unit;
    private bool _hasEntities;
    private int _kept;
    private long _keptSegments;

    private DxfReader(Stream stream, ImportedCurves curves)
    {
        _groups = new(stream);
        _curves = curves;
        _layers = new(curves.Settings);
        _pen = new(_curves, _layers, _blocks);
    }

    /// <summary>Reads to the end of the drawing; the stream stays open.</summary>
    internal static ReadDrawing Read(Stream stream, ImportedCurves curves) =>
        new DxfReader(stream, curves).Read();

    /// <summary>How many millimetres one unit is, settled when it is first needed: by then the header has passed.</summary>
    private double Unit => (_unit ??= DxfUnit.Of(_header, _curves)).Millimetres;

    private ReadDrawing Read()
    {
        if (!_groups.Next())
            throw new ImportException("The file is empty.", null, ["a file with a drawing in it"]);
        do
        {
            if (_groups.IsStartOf("EOF"u8))
                return Done();
            if (!_groups.IsStartOf("SECTION"u8))
                throw _groups.Error(
                    $"A section must begin here, with the group code 0 and the word SECTION, but there is {_groups.Code} and \"{_groups.Quoted()}\"."
                );
            _groups.Require("a section");
            if (_groups.Code != DxfCode.Name)
                throw _groups.Error(
                    "A section has a name, with the group code 2, but there is none."
                );
            ReadSection(DxfText.Decoded(_groups.Value));
        } while (!_groups.IsStartOf("ENDSEC"u8) || _groups.Next());
        _curves.Note(
            ImportNoteKind.Assumed,
            "no EOF at the end: the file was taken for whole",
            _groups.Line
        );
        return Done();
    }

    private ReadDrawing Done()
    {
        if (!_hasEntities)
            throw new ImportException(
                "The file has no section ENTITIES, so it draws nothing.",
                _groups.Where,
                ["a DXF file with a drawing in it"]
            );
        _layers.ThrowIfMissed();
        return new(_curves, Unit, _pen.HasFreeCurves ? _curves.Settings.Accuracy : 0);
    }

    /// <summary>Reads up to the group that ends the section, or that begins what must not stand in one.</summary>
    private void ReadSection(string name)
    {
        if (_hasEntities && (name is "HEADER" or "TABLES" or "BLOCKS"))
            throw _groups.Error($"The section {name} must come before the section ENTITIES.");
        _groups.Require($"the section {name}");
        switch (name)
        {
            case "HEADER":
                _header.Read(_groups);
                break;
            case "TABLES":
                ReadTables();
                break;
            case "BLOCKS":
                ReadBlocks();
                break;
            case "ENTITIES":
                _hasEntities = true;
                ReadEntities();
                break;
            default:
                while (!IsEnd())
                    _groups.Require($"the section {name}");
                break;
        }
        if (!_groups.IsStartOf("ENDSEC"u8))
            _curves.Note(
                ImportNoteKind.Assumed,
                $"section {name} without ENDSEC: it ends where the next one begins",
                _groups.Line
            );
    }

    private bool IsEnd() =>
        _groups.Code == DxfCode.Start
        && (
            _groups.IsStartOf("ENDSEC"u8)
            || _groups.IsStartOf("SECTION"u8)
            || _groups.IsStartOf("EOF"u8)
        );

    private void ReadEntities()
    {
        var items = new DxfItemReader(_groups, _curves, Unit);
        var map = DxfMap.Scaled(Unit);
        while (!IsEnd())
            if (_groups.Code != DxfCode.Start)
                throw _groups.Error("An entity must begin here, with the group code 0.");
            else if (items.Read() is { } item)
                _pen.Draw(item, map, null);
    }

    private void ReadTables()
    {
        var entry = new DxfEntity(_curves);
        while (!IsEnd())
            if (_groups.IsStartOf("LAYER"u8))
            {
                entry.Read(_groups, DxfKind.Other);
                Keep(segments: 0);
                _layers.Add(entry.Name, entry.Whole(DxfCode.Flags), entry.Whole(62, 7));
            }
            else
                _groups.Require("the section TABLES");
    }

    private void ReadBlocks()
    {
        const int OutsideFlags = 4 | 8;
        var items = new DxfItemReader(_groups, _curves, Unit);
        var block = new DxfEntity(_curves);
        DxfBlockItems? open = null;
        while (!IsEnd())
        {
            if (_groups.Code != DxfCode.Start)
                throw _groups.Error("A block or an entity must begin here, with the group code 0.");
            if (_groups.IsStartOf("BLOCK"u8))
            {
                block.Read(_groups, DxfKind.Insert);
                open = new(
                    new(block.Number(10), block.Number(20)),
                    (block.Whole(DxfCode.Flags) & OutsideFlags) != 0
                );
                Keep(segments: 0);
                _blocks.Add(block.Name, open);
            }
            else if (_groups.IsStartOf("ENDBLK"u8))
            {
                open = null;
                block.Read(_groups, DxfKind.Other);
            }
            else if (items.Read() is { } item)
            {
                Keep(item.Size);
                open?.Items.Add(item);
            }
        }
    }

    /// <summary>Counts what is kept, and so takes memory, whether it is drawn or not.</summary>
    private void Keep(int segments)
    {
        if (++_kept > _curves.Settings.Limits.Elements)
            throw _curves.TooManyElements(_groups.Where);
        _keptSegments += segments;
        if (_keptSegments > _curves.Settings.Limits.Segments)
            throw _curves.TooManySegments(_groups.Where);
    }
}
