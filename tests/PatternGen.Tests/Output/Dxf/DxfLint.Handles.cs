using System.Globalization;

namespace PatternGen.Tests.Output.Dxf;

internal sealed partial class DxfLint
{
    /// <summary>Records that have no handle: those that only open or close something, and classes.</summary>
    private static readonly string[] WithoutHandle =
    [
        "SECTION",
        "ENDSEC",
        "ENDTAB",
        "CLASS",
        "EOF",
    ];

    private IEnumerable<DxfRecord> Owned =>
        _document.Records.Where(record => !WithoutHandle.Contains(record.Type));

    private void CheckHandles()
    {
        var seen = new HashSet<ulong>();
        foreach (var record in Owned)
        {
            var isHandle = TryHandle(record.Handle, out var handle);
            Require(isHandle, $"handle: none on {record.Type} at line {record.Line}");
            Require(
                !isHandle || seen.Add(handle),
                $"handle: {record.Handle} at line {record.Line} is used twice"
            );
        }
        Require(
            TryHandle(_document.Header("$HANDSEED").FirstOrDefault().Value, out var seed)
                && seed > seen.DefaultIfEmpty().Max(),
            "handle: $HANDSEED is not above all handles"
        );
    }

    private void CheckOwners()
    {
        var byHandle = Owned
            .Where(record => record.Handle is not null)
            .GroupBy(record => record.Handle!)
            .ToDictionary(group => group.Key, group => group.First());
        foreach (var record in Owned)
            Require(
                IsOwner(
                    record,
                    record.Owner is { } owner ? byHandle.GetValueOrDefault(owner) : null
                ),
                $"owner: {record.Owner ?? "none"} of {record.Type} at line {record.Line}"
            );
        foreach (var record in Owned)
        foreach (var pointer in record.Groups.Where(group => group.Code is 340 or 350 or 390))
            Require(
                byHandle.ContainsKey(pointer.Value) || IsNoLayout(record, pointer),
                $"owner: {record.Type} at line {record.Line} points to {pointer.Value}, which is not there"
            );
        var root = _document.Records.FirstOrDefault(record =>
            record.Section == "OBJECTS" && record.Type != "SECTION"
        );
        Require(
            root is { Type: "DICTIONARY", Owner: "0" } && root.Values(3).Contains("ACAD_GROUP"),
            "owner: the root dictionary is not the first object"
        );
    }

    /// <summary>The record of a block that is no space has no layout, which is written as 0.</summary>
    private static bool IsNoLayout(DxfRecord record, DxfGroup pointer) =>
        record.Type == "BLOCK_RECORD"
        && pointer.Value == "0"
        && record.Value(2)?.StartsWith('*') == false;

    private static bool IsOwner(DxfRecord record, DxfRecord? owner)
    {
        if (record.Type == "TABLE")
            return record.Owner == "0";
        if (record.Section == "OBJECTS" && record.Owner == "0")
            return record.Type == "DICTIONARY";
        return record.Section switch
        {
            "TABLES" => owner?.Type == "TABLE" && owner.Table == record.Table,
            "BLOCKS" => owner?.Type == "BLOCK_RECORD",
            "ENTITIES" when record.Type is "VERTEX" or "SEQEND" => owner?.Type == "POLYLINE",
            "ENTITIES" => owner?.Type == "BLOCK_RECORD" && owner.Value(2) == "*Model_Space",
            _ => owner?.Section == "OBJECTS",
        };
    }

    private static bool TryHandle(string? text, out ulong handle) =>
        ulong.TryParse(
            text,
            NumberStyles.AllowHexSpecifier,
            CultureInfo.InvariantCulture,
            out handle
        )
        && handle != 0;
}
