using System.Globalization;

namespace PatternGen.Tests.Output.Dxf;

internal sealed partial class DxfLint
{
    /// <summary>DXF Reference, TABLES section.</summary>
    private static readonly string[] AllTables =
    [
        "VPORT",
        "LTYPE",
        "LAYER",
        "STYLE",
        "VIEW",
        "UCS",
        "APPID",
        "DIMSTYLE",
        "BLOCK_RECORD",
    ];

    private void CheckSections()
    {
        string[] expected = IsR12
            ? ["HEADER", "TABLES", "BLOCKS", "ENTITIES"]
            : ["HEADER", "CLASSES", "TABLES", "BLOCKS", "ENTITIES", "OBJECTS"];
        var found = _document
            .Records.Where(record => record.Type == "SECTION")
            .Select(record => record.Value(2));
        Require(found.SequenceEqual(expected), "section: missing, unknown or out of order");
        Require(Count("SECTION") == Count("ENDSEC"), "section: not closed");
        Require(Count("TABLE") == Count("ENDTAB"), "table: not closed");
    }

    private void CheckHeader()
    {
        Require(_document.Version is "AC1009" or "AC1015", "header: unknown $ACADVER");
        if (!IsR12)
        {
            Require(HeaderIs("$INSUNITS", "4"), "header: $INSUNITS is not millimetres");
            Require(HeaderIs("$MEASUREMENT", "1"), "header: $MEASUREMENT is not metric");
            Require(HeaderIs("$DWGCODEPAGE", "ANSI_1252"), "header: no $DWGCODEPAGE");
        }
        var pieces = _document.Shapes.SelectMany(shape => shape.Pieces).ToList();
        if (pieces.Count == 0)
            return;
        RequireExtent(
            "$EXTMIN",
            pieces.Min(piece => piece.Box.Left),
            pieces.Min(piece => piece.Box.Low)
        );
        RequireExtent(
            "$EXTMAX",
            pieces.Max(piece => piece.Box.Right),
            pieces.Max(piece => piece.Box.High)
        );
    }

    private void RequireExtent(string name, double x, double y)
    {
        var stated = _document.Header(name);
        Require(
            stated.Count == 3
                && Math.Abs(stated[0].Number - x) < 1e-4
                && Math.Abs(stated[1].Number - y) < 1e-4,
            $"header: {name} is not that of the drawing, ({x}, {y})"
        );
    }

    private void CheckTables()
    {
        var tables = _document.Records.Where(record => record.Type == "TABLE").ToList();
        foreach (var name in AllTables)
            Require(
                tables.Count(table => table.Table == name) == 1,
                $"table: {name} is not there once"
            );
        foreach (var table in tables)
            Require(
                table.Value(70)
                    == _document
                        .TableRecords(table.Table)
                        .Count()
                        .ToString(CultureInfo.InvariantCulture),
                $"table: {table.Table} does not hold as many records as it says"
            );
        foreach (var space in new[] { "*Model_Space", "*Paper_Space" })
        {
            Require(HasRecord("BLOCK_RECORD", space), $"block: no record for {space}");
            Require(
                _document.Records.Any(record => record.Type == "BLOCK" && record.Value(2) == space),
                $"block: no {space}"
            );
        }
    }

    /// <summary>Every layer, line type and style that is used must be declared, under a name that release 12 allows.</summary>
    private void CheckNames()
    {
        foreach (
            var record in _document.Entities.Concat(_document.Blocks.SelectMany(b => b.Content))
        )
        {
            Require(
                HasRecord("LAYER", record.Layer),
                $"layer: '{record.Layer}' at line {record.Line} is not declared"
            );
            Require(record.Value(62) is null, $"layer: colour by entity at line {record.Line}");
        }
        foreach (var layer in _document.TableRecords("LAYER"))
        {
            var name = layer.Value(2) ?? "";
            Require(
                name.Length is > 0 and <= 31
                    && name.All(c =>
                        char.IsAsciiLetterUpper(c) || char.IsAsciiDigit(c) || c is '_'
                    ),
                $"layer: bad name '{name}'"
            );
            Require(
                int.TryParse(layer.Value(62), out var colour) && colour is >= 1 and <= 255,
                $"layer: bad colour of '{name}'"
            );
            Require(HasRecord("LTYPE", layer.Value(6) ?? ""), $"layer: line type of '{name}'");
        }
    }

    private bool HasRecord(string table, string name) =>
        _document.TableRecords(table).Any(record => record.Value(2) == name);

    private bool HeaderIs(string name, string value) =>
        _document.Header(name) is [var group] && group.Value == value;

    private int Count(string type) => _document.Records.Count(record => record.Type == type);
}
