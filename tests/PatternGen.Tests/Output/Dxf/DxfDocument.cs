using System.Globalization;
using System.Text;

namespace PatternGen.Tests.Output.Dxf;

/// <summary>A pair of a code and a value, and the line where the code stands.</summary>
internal readonly record struct DxfGroup(int Code, string Value, int Line)
{
    /// <summary>The value as a number, or NaN if it is none.</summary>
    public double Number =>
        double.TryParse(Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : double.NaN;
}

/// <summary>A group with code 0 and those up to the next one.</summary>
internal sealed record DxfRecord(string Section, string Table, IReadOnlyList<DxfGroup> Groups)
{
    public string Type => Groups[0].Value;

    public int Line => Groups[0].Line;

    /// <summary>A DIMSTYLE record keeps its handle under 105.</summary>
    public string? Handle => Value(Type == "DIMSTYLE" ? 105 : 5);

    public string? Owner => Value(330);

    public string Layer => Value(8) ?? "";

    public IEnumerable<string> Markers => Values(100);

    public string Codes => string.Join(' ', Groups.Skip(1).Select(group => group.Code));

    public IEnumerable<string> Values(int code) =>
        Groups.Where(group => group.Code == code).Select(group => group.Value);

    public string? Value(int code) => Values(code).FirstOrDefault();

    public double Number(int code) => Groups.First(group => group.Code == code).Number;
}

/// <summary>A DXF read from its bytes, by its own reading of the format and none of the library's.</summary>
internal sealed class DxfDocument
{
    private DxfDocument(IReadOnlyList<DxfGroup> groups)
    {
        Groups = groups;
        Records = Split(groups);
        Blocks = DxfBlock.ReadAll(Records);
        Shapes = DxfShape.ReadAll(Records.Where(record => record.Section == "ENTITIES"), Blocks);
    }

    public IReadOnlyList<DxfGroup> Groups { get; }

    public IReadOnlyList<DxfRecord> Records { get; }

    public IReadOnlyList<DxfBlock> Blocks { get; }

    /// <summary>What is drawn, in the order of the file, references to blocks resolved.</summary>
    public IReadOnlyList<DxfShape> Shapes { get; }

    public string Version => Header("$ACADVER").FirstOrDefault().Value ?? "";

    public IEnumerable<DxfRecord> Entities =>
        Records.Where(record =>
            record.Section == "ENTITIES" && record.Type is not ("SECTION" or "ENDSEC")
        );

    public IEnumerable<DxfRecord> TableRecords(string table) =>
        Records.Where(record => record.Table == table && record.Type == table);

    /// <summary>The values of a header variable; none if it is missing.</summary>
    public IReadOnlyList<DxfGroup> Header(string name) =>
        [
            .. Groups
                .SkipWhile(group => group.Code != 9 || group.Value != name)
                .Skip(1)
                .TakeWhile(group => group.Code is not (9 or 0)),
        ];

    public static DxfDocument Parse(byte[] file)
    {
        var lines = Encoding.Latin1.GetString(file).ReplaceLineEndings("\n").Split('\n');
        var groups = new List<DxfGroup>();
        for (var line = 0; line + 1 < lines.Length; line += 2)
            groups.Add(
                new(int.Parse(lines[line], CultureInfo.InvariantCulture), lines[line + 1], line + 1)
            );
        return new(groups);
    }

    private static List<DxfRecord> Split(IReadOnlyList<DxfGroup> groups)
    {
        var records = new List<DxfRecord>();
        var (section, table) = ("", "");
        for (var start = 0; start < groups.Count; )
        {
            var end = start + 1;
            while (end < groups.Count && groups[end].Code != 0)
                end++;
            var type = groups[start].Value;
            var name =
                end > start + 1 && groups[start + 1].Code == 2 ? groups[start + 1].Value : "";
            (section, table) = type switch
            {
                "SECTION" => (name, ""),
                "TABLE" => (section, name),
                "EOF" => ("", ""),
                _ => (section, table),
            };
            records.Add(new(section, table, [.. groups.Skip(start).Take(end - start)]));
            start = end;
        }
        return records;
    }
}
