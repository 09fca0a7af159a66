namespace PatternGen;

/// <summary>Something that can't be drawn: told where it would be drawn, so not from a block that nothing shows.</summary>
internal sealed class DxfSkipped(string layer, int line, string what) : DxfItem(layer, line)
{
    internal override void Draw(DxfPen pen, DxfMap map, string layer) => pen.Skip(what, Line);
}
