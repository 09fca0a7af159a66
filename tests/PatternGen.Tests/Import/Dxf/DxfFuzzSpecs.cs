using CsCheck;
using PatternGen.Tests.Output.Dxf;

namespace PatternGen.Tests.Importing.Dxf;

public sealed class DxfFuzzSpecs
{
    private static readonly string[] Words =
    [
        "0",
        "1",
        "2",
        "8",
        "10",
        "11",
        "20",
        "30",
        "40",
        "41",
        "42",
        "50",
        "62",
        "70",
        "71",
        "210",
        "230",
        "-1",
        "1e400",
        "NaN",
        "1e300",
        "-1e-300",
        "2147483647",
        "32767",
        "99999999999999999999",
        "LINE",
        "ARC",
        "CIRCLE",
        "ELLIPSE",
        "SPLINE",
        "INSERT",
        "POLYLINE",
        "LWPOLYLINE",
        "VERTEX",
        "SEQEND",
        "BLOCK",
        "ENDBLK",
        "SECTION",
        "ENDSEC",
        "EOF",
        "ENTITIES",
        "BLOCKS",
        "HEADER",
        "PART",
        "PAIR",
        "",
    ];

    /// <summary>Small enough that a case which draws all that it may ends soon.</summary>
    private static readonly ImportSettings Settings = ImportSettings
        .Default.WithAccuracy(0.5)
        .WithLimits(ImportLimits.Default.WithElements(2_000).WithSegments(20_000));

    [Fact]
    public void A_damaged_file_is_a_drawing_or_one_clear_error()
    {
        byte[][] files =
        [
            .. new[] { "lines", "curves", "blocks", "behind" }.Select(name =>
                DxfFile.SectionsRead(name)
            ),
            DxfSamples.Write(DxfSamples.Everything()),
            DxfSamples.Write(
                DxfSamples.Everything(),
                SaveOptions.Default.WithDxfVersion(DxfVersion.R12)
            ),
        ];

        Fuzz.Damaged(files, Words)
            .Sample(file => HostileDxfSpecs.End(file, Settings), iter: Fuzz.Cases);
    }
}
