namespace PatternGen.Tests.Output.Dxf;

/// <summary>What stands from a BLOCK to its ENDBLK.</summary>
/// <param name="Begin">The BLOCK.</param>
/// <param name="Content">The entities in it.</param>
/// <param name="End">The ENDBLK; null if there is none.</param>
internal sealed record DxfBlock(DxfRecord Begin, IReadOnlyList<DxfRecord> Content, DxfRecord? End)
{
    public string Name => Begin.Value(2) ?? "";

    /// <summary>Whether it is model or paper space, not a block to refer to.</summary>
    public bool IsSpace => Name.StartsWith('*');

    public static IReadOnlyList<DxfBlock> ReadAll(IReadOnlyList<DxfRecord> records)
    {
        var blocks = new List<DxfBlock>();
        for (var i = 0; i < records.Count; i++)
            if (records[i].Type == "BLOCK")
                blocks.Add(Read(records[i], [.. records.Skip(i + 1)]));
        return blocks;
    }

    private static DxfBlock Read(DxfRecord begin, IReadOnlyList<DxfRecord> rest)
    {
        var content = rest.TakeWhile(record =>
            record.Type is not ("BLOCK" or "ENDBLK" or "ENDSEC")
        );
        var count = content.Count();
        return new(begin, [.. content], rest[count].Type == "ENDBLK" ? rest[count] : null);
    }

    /// <summary>
    /// What a reference to the block draws: first turned about the block's base point by its group 50, then moved
    /// there by its 10 and 20 (DXF Reference, INSERT).
    /// </summary>
    public IEnumerable<DxfShape> DrawnBy(DxfRecord insert)
    {
        var turn = insert.Value(50) is null ? 0 : double.DegreesToRadians(insert.Number(50));
        DxfCorner Placed(DxfCorner corner)
        {
            var (x, y) = (corner.X - Begin.Number(10), corner.Y - Begin.Number(20));
            return new(
                insert.Number(10) + x * Math.Cos(turn) - y * Math.Sin(turn),
                insert.Number(20) + x * Math.Sin(turn) + y * Math.Cos(turn),
                corner.Bulge
            );
        }
        return DxfShape
            .ReadAll(Content, [])
            .Select(shape => shape with { Corners = [.. shape.Corners.Select(Placed)] });
    }
}
