using PatternGen.Geometry;

namespace PatternGen;

/// <summary>Draws the walls of chips from the sides down to the valley, each as light as it faces the light. It is a picture and no measure.</summary>
/// <param name="file">The file.</param>
/// <param name="edge">Width in mm along the sides that is left free.</param>
internal sealed class SvgWallSink(SvgFile file, double edge) : SelectiveSink
{
    /// <summary>How walls lean where nobody has said what they are cut with: common practice, no source.</summary>
    private static readonly Angle UsualSlope = Angle.FromDegrees(65);

    private readonly KnownFacets _facets = new(FacetDetail.Coarse with { Free = edge });
    private readonly WallBrush _brush = new(file.Paths, CarvingLight.Usual, WallTones.Drawn);

    public override void Chip(in PlacedChip chip) =>
        _brush.Draw(
            _facets.Of(chip.Shape, chip.Placement.Scale),
            chip.Placement,
            chip.Shape.Cut.WallAngle
                ?? StabFloor.Of(chip.Shape)?.Slope(chip.Shape.Cut)
                ?? UsualSlope
        );
}
