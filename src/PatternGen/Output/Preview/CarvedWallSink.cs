using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the walls of chips and grooves as they are cut.</summary>
internal sealed class CarvedWallSink(SvgFile file, Cutter cutter, CarvingLight light)
    : SelectiveSink
{
    private readonly KnownFacets _facets = new(FacetDetail.Fine);
    private readonly WallBrush _brush = new(file.Paths, light, WallTones.Carved(light));

    public override void Chip(in PlacedChip chip)
    {
        var (shape, scale) = (chip.Shape, chip.Placement.Scale);
        if (StabFloor.Of(shape) is not { } floor)
        {
            _brush.Draw(
                _facets.Of(shape, scale),
                chip.Placement,
                ChipSolids.WallAngleOf(shape, cutter, scale)
            );
            return;
        }
        _brush.Draw(_facets.Of(shape, scale), chip.Placement, floor.Slope(shape.Cut));
        _brush.Draw(floor.Uprights(), chip.Placement, Angle.FromDegrees(90));
    }

    public override void LineCut(ReadOnlySpan<Vertex> path, double width, GrooveProfile profile)
    {
        var groove = Grooves.Of(path, width, profile, cutter);
        _brush.Draw(
            GrooveFacets.Of(groove, FacetDetail.Fine.Turn),
            Transform.Identity,
            groove.WallAngle
        );
    }
}
