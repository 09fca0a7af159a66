namespace PatternGen.Tests.Importing;

/// <summary>Arcs as the chapter on paths and the implementation notes of SVG 1.1 have them.</summary>
public sealed class SvgArcSpecs
{
    [Fact]
    public void Read_a_lens() =>
        Svgs.Path("M0 0 A10 10 0 0 1 10 10 A10 10 0 0 1 0 0 Z").Contours.Count.ShouldBe(1);
}
