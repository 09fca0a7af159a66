using PatternGen.Gallery.Topics;

namespace PatternGen.Tests.Gallery;

/// <summary>What the gallery shows can be carved: each chip clear of the others, in the wood and cut to the depth wanted.</summary>
public class GalleryPieceSpecs
{
    public static TheoryData<string, Pattern> Pieces =>
        new()
        {
            { "free forms", FreeFormPieces.Sheet },
            { "vine", FreeFormPieces.Vine },
            { "mirror frame", LayoutPieces.MirrorFrame },
            { "picture frame", LayoutPieces.PictureFrame },
            { "tray", LayoutPieces.Tray },
            { "hexagonal box", LayoutPieces.HexagonalBox },
            { "clock face", LayoutPieces.ClockFace },
            { "bread box lid", LayoutPieces.BreadBoxLid },
            { "chest panel", LayoutPieces.ChestPanel },
        };

    [Theory]
    [MemberData(nameof(Pieces), DisableDiscoveryEnumeration = true)]
    public void I_can_carve_each_piece_of_the_gallery(string name, Pattern piece)
    {
        var report = piece.Inspect(Knife.Held(65).NoDeeperThan(4), Stock.Thick(20));

        piece.ChipCount.ShouldBePositive(name);
        report
            .Findings.Where(finding => finding.Severity == FindingSeverity.Error)
            .ShouldBeEmpty(name);
    }
}
