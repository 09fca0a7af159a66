using PatternGen.Geometry;

namespace PatternGen;

internal sealed partial class R2000File
{
    /// <summary>Width over height of the window that the drawing is first seen in.</summary>
    private const double Aspect = 1.5;

    /// <summary>The window is this much larger than the drawing.</summary>
    private const double Margin = 1.1;

    /// <summary>The view when the file is opened: the whole drawing, in the middle.</summary>
    private void WriteViewports(Extents extents)
    {
        WriteTable("VPORT", ViewportTable, 1);
        WriteRecord("VPORT", ActiveViewport, ViewportTable, "AcDbViewportTableRecord");
        _groups.Write(
            """
            2 *Active
            70 0
            10 0.0
            20 0.0
            11 1.0
            21 1.0
            """
        );
        _groups.Write("12\r\n"u8, extents.Centre.X);
        _groups.Write("22\r\n"u8, extents.Centre.Y);
        _groups.Write(
            """
            13 0.0
            23 0.0
            14 10.0
            24 10.0
            15 10.0
            25 10.0
            16 0.0
            26 0.0
            36 1.0
            17 0.0
            27 0.0
            37 0.0
            """
        );
        _groups.Write("40\r\n"u8, Math.Max(extents.Height, extents.Width / Aspect) * Margin);
        _groups.Write("41\r\n"u8, Aspect);
        _groups.Write(
            """
            42 50.0
            43 0.0
            44 0.0
            50 0.0
            51 0.0
            71 0
            72 100
            73 1
            74 3
            75 0
            76 0
            77 0
            78 0
            281 0
            65 0
            """
        );
        WriteTableEnd();
    }
}
