using PatternGen.Geometry;

namespace PatternGen;

/// <summary>An INSERT: a block placed once, or in columns and rows.</summary>
/// <param name="entity">Its layer, its line and the name of the block.</param>
/// <param name="facing">What takes its own plane to that of the drawing.</param>
internal sealed class DxfInsert(DxfEntity entity, DxfMap facing)
    : DxfItem(entity.Layer, entity.Line)
{
    private readonly Point _at = new(entity.Number(10), entity.Number(20));
    private readonly double _scaleX = entity.Number(41, 1);
    private readonly double _scaleY = entity.Number(42, 1);
    private readonly Angle _turn = Angle.FromDegrees(entity.Number(50));
    private readonly int _columns = entity.Whole(70, 1);
    private readonly int _rows = entity.Whole(71, 1);
    private readonly double _columnPitch = entity.Number(44);
    private readonly double _rowPitch = entity.Number(45);

    internal string Block { get; } = entity.Name;

    internal override void Draw(DxfPen pen, DxfMap map, string layer)
    {
        if (_scaleX == 0 || _scaleY == 0)
            pen.Skip("block scaled to nothing", Line);
        else
            pen.Draw(this, map, layer);
    }

    /// <summary>Where the block's own coordinates go, for each of its places in turn.</summary>
    internal IEnumerable<DxfMap> Places(Point origin, DxfMap map)
    {
        var (sin, cos) = (_turn.Sin(), _turn.Cos());
        var shape = DxfMap
            .Moved(-origin.X, -origin.Y)
            .Then(new(_scaleX * cos, _scaleX * sin, -_scaleY * sin, _scaleY * cos, 0, 0));
        // Programs write 0 for a single one.
        for (var row = 0; row < Math.Max(1, _rows); row++)
        for (var column = 0; column < Math.Max(1, _columns); column++)
        {
            var (x, y) = (column * _columnPitch, row * _rowPitch);
            var place = DxfMap.Moved(_at.X + x * cos - y * sin, _at.Y + x * sin + y * cos);
            yield return shape.Then(place).Then(facing).Then(map);
        }
    }
}
