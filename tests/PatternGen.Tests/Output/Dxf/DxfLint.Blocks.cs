namespace PatternGen.Tests.Output.Dxf;

internal sealed partial class DxfLint
{
    private void CheckBlocks()
    {
        var inserts = _document.Entities.Where(record => record.Type == "INSERT").ToList();
        foreach (var block in _document.Blocks)
        {
            CheckBlock(block);
            Require(
                block.IsSpace || inserts.Any(insert => insert.Value(2) == block.Name),
                $"block: {block.Name} is not used"
            );
        }
        foreach (var insert in inserts)
            Require(
                _document.Blocks.Any(block => !block.IsSpace && block.Name == insert.Value(2)),
                $"block: '{insert.Value(2)}' at line {insert.Line} is not there"
            );
        Require(
            _document
                .Blocks.Select(block => block.Name)
                .Order()
                .SequenceEqual(
                    _document.TableRecords("BLOCK_RECORD").Select(r => r.Value(2) ?? "").Order()
                ),
            "block: blocks and their records are not the same"
        );
    }

    private void CheckBlock(DxfBlock block)
    {
        var record = _document
            .TableRecords("BLOCK_RECORD")
            .FirstOrDefault(record => record.Value(2) == block.Name);
        Require(block.Begin.Value(3) == block.Name, $"block: two names of {block.Name}");
        Require(block.End is not null, $"block: {block.Name} is not closed");
        foreach (var part in (DxfRecord?[])[block.Begin, .. block.Content, block.End])
            Require(
                part is null || part.Owner == record?.Handle,
                $"block: {part?.Type} at line {part?.Line} is not owned by the record of {block.Name}"
            );
        Require(block.IsSpace == (block.Content.Count == 0), $"block: content of {block.Name}");
        Require(
            block.Content.All(entity => entity.Type != "INSERT"),
            $"block: {block.Name} refers to another"
        );
    }
}
