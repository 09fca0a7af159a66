namespace PatternGen.Tests.Output.Dxf;

internal sealed partial class DxfLint
{
    /// <summary>DXF Reference, POLYLINE: a polyline in space has 70 = 8, 9 if closed; its corners have 70 = 32 each, and it ends with SEQEND.</summary>
    private void CheckSpatial()
    {
        DxfRecord? open = null;
        foreach (var record in _document.Entities)
        {
            var isPart = record.Type is "VERTEX" or "SEQEND";
            Require(
                isPart == (open is not null),
                $"polyline: {record.Type} at line {record.Line} out of place"
            );
            if (record.Type == "POLYLINE")
                open = record;
            var isSpatial = open?.Value(70) is "8" or "9";
            Require(
                open is null || isSpatial || IsR12,
                $"polyline: not in space at line {record.Line}"
            );
            if (record.Type == "VERTEX")
                Require(
                    record.Value(70) == (isSpatial ? "32" : null),
                    $"polyline: corner of another kind at line {record.Line}"
                );
            if (isPart)
                Require(
                    record.Layer == open?.Layer && (IsR12 || record.Owner == open.Handle),
                    $"polyline: {record.Type} at line {record.Line} belongs elsewhere"
                );
            if (record.Type == "SEQEND")
                open = null;
        }
        Require(open is null, "polyline: not closed by SEQEND");
    }
}
